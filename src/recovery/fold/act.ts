/** What somebody did: gave brood, a cell, a queen; looked at her cage; took bands off; washed mites. */

import { addDays, type Day } from '../../days.ts'
import type { Given, MiteWash, QueenCage } from '../../journal/index.ts'
import { emergence, emergenceOfGivenCell, emergenceOfGivenVirgin } from '../rearing.ts'
import type { Cause } from '../says/inside.ts'
import { BROOD_GIFTS, cellsPossibleUntil, gifted } from '../sources.ts'
import type { QueenOrigin, State } from '../state.ts'
import { askTellingVisit } from './begin.ts'
import { fall } from './ladder.ts'
import { reaskWorkerBrood } from './layer.ts'
import { startRearing } from './raise.ts'

export function give(s: State, gift: Given): void {
  if (BROOD_GIFTS.includes(gift.what)) giveBrood(s, gift)
  if (gift.what === 'syrup') s.fedOn = gift.on
  if (gift.what === 'treatment') treat(s, gift)
  switch (gift.what) {
    case 'egg-frame':
      s.answer(gift.on, 'egg-frame')
      readItLater(s, gift.on)
      return
    case 'capped-brood':
    case 'bees':
      s.answer(gift.on, 'unite-or-boost')
      return
    case 'queen-cell':
      s.answer(gift.on, 'egg-frame', 'buy-queen')
      overtaken(s, gift.on)
      startRearing(s, emergence(emergenceOfGivenCell(gift.on), null), 'capped', gift.on)
      return
    case 'virgin':
      s.answer(gift.on, 'egg-frame', 'buy-queen')
      overtaken(s, gift.on)
      startRearing(s, emergence(emergenceOfGivenVirgin(gift.on), null), 'emerged', gift.on)
      if (gift.caged === true) askRelease(s, gift.on, 'virgin')
      return
    case 'mated-queen':
      giveMatedQueen(s, gift)
      return
    default:
      return
  }
}

/** A wash tells whether it worked, 10 to 14 days on (common practice). */
const WASH_AGAIN = { opens: 10, due: 12, closes: 21 }

function treat(s: State, gift: Given): void {
  s.treatedOn = gift.on
  if (gift.withdrawalDays !== undefined) s.withdrawalUntil = addDays(gift.on, gift.withdrawalDays)
  s.ask('mite-wash', gift.on, { code: 'did-treatment-work', on: gift.on }, WASH_AGAIN)
}

function giveBrood(s: State, gift: Given): void {
  s.sources.push(gifted(gift))
  if (gift.what !== 'capped-brood' && s.queen.is === 'none') s.queen = { ...s.queen, chance: true }
  s.otherQueen = null
  reaskWorkerBrood(s)
}

/** A frame of eggs is a question too, unless a queen is known to be here or on her way. */
function readItLater(s: State, on: Day): void {
  // Laying workers that draw cells again have a future; a queen who is awaited has failed if cells are drawn.
  const asks = ['none', 'unseen', 'present', 'laying-workers', 'rearing'].includes(s.queen.is)
  if (!asks) return
  s.testFrame = { given: on, read: null }
  s.void('recheck-eggs', on)
  s.ask('cells-on-egg-frame', on, { code: 'cells-on-frame', on })
}

function overtaken(s: State, on: Day): void {
  for (const rule of [
    'telling-visit',
    'cells-on-egg-frame',
    'recheck-eggs',
    'new-queen-eggs',
    'eggs-after-introduction',
    'worker-brood',
    'laying-workers',
  ] as const)
    s.void(rule, on)
  s.testFrame = null
  s.doublesSince = null
  s.takeOut = null
  s.otherQueen = null
}

function giveMatedQueen(s: State, gift: Given): void {
  const q = s.queen
  if (q.is === 'rearing') s.surprises.push({ code: 'queen-given-while-raising', on: gift.on })
  if (q.is === 'laying-workers') s.surprises.push({ code: 'queen-given-to-laying-workers', on: gift.on })
  if (q.is === 'laying' || q.is === 'queenright' || q.is === 'laying-workers')
    s.sources.push({ from: 'former-layer', lastEgg: gift.on, young: false })
  s.answer(gift.on, 'egg-frame', 'buy-queen')
  overtaken(s, gift.on)
  if (gift.caged === false) {
    release(s, gift.on, 'bought')
    return
  }
  // A bought queen goes in caged unless it is said that she did not (common practice).
  s.queen = { is: 'caged', since: gift.on, origin: 'bought', stillCagedOn: null }
  askRelease(s, gift.on, 'queen')
}

const askRelease = (s: State, on: Day, who: 'queen' | 'virgin'): void => {
  s.caged = { since: on, who, origin: 'bought', stillCagedOn: null }
  s.ask('queen-release', on, { code: 'caged-given', on, who })
}

function release(s: State, on: Day, origin: QueenOrigin): void {
  s.queen = { is: 'released', on, origin, asked: 1 }
  s.ask('eggs-after-introduction', on, { code: 'does-she-lay', on })
}

export function lookAtCage(s: State, cage: QueenCage): void {
  const q = s.queen
  if (cage.found === 'still-caged') {
    if (q.is === 'caged') s.queen = { ...q, stillCagedOn: cage.on }
    if (s.caged !== null) s.caged = { ...s.caged, stillCagedOn: cage.on }
    s.looked(cage.on, 'queen-release')
    if (q.is === 'laying' || q.is === 'queenright')
      s.surprises.push({ code: 'two-queens-one-caged', on: cage.on })
    return
  }
  s.answer(cage.on, 'queen-release')
  // A virgin's cage: her days are counted from her emergence, not from her release.
  if (q.is === 'rearing' && cage.found === 'released') {
    s.caged = null
    return
  }
  const origin: QueenOrigin =
    q.is === 'caged' || q.is === 'released' ? q.origin : (s.caged?.origin ?? 'salvaged')
  const second = s.caged !== null && (q.is === 'laying' || q.is === 'queenright')
  s.caged = null
  if (cage.found === 'released') {
    if (q.is === 'laying' || q.is === 'queenright') {
      // Eggs were there while she was still shut in: now both are loose.
      if (second) s.disagree(cage.on, { code: 'let-out-beside-another', on: cage.on })
      return
    }
    overtaken(s, cage.on)
    for (const rule of ['egg-frame', 'buy-queen'] as const) s.void(rule, cage.on)
    release(s, cage.on, origin)
    return
  }
  queenLost(s, cage, origin)
}

function queenLost(s: State, cage: QueenCage, origin: QueenOrigin): void {
  const { on } = cage
  const how = cage.found === 'dead' ? 'dead' : 'rejected'
  // One of two queens: the other lays on.
  if (s.queen.is === 'laying' || s.queen.is === 'queenright') return
  s.void('eggs-after-introduction', cage.on)
  if (s.queen.is === 'rearing') {
    fall(s, on, [{ code: 'given-queen-lost', how, on }], 'raised')
    return
  }
  if (origin === 'bought') {
    another(s, on, { code: 'bought-queen-lost', how, on })
    return
  }
  const until = cellsPossibleUntil(s.sources)
  if (until === null || cage.on > until) {
    another(s, on, { code: 'own-queen-lost-late', how, on })
    return
  }
  s.queen = {
    is: 'none',
    since: cage.on,
    why: [{ code: 'queen-lost', how, on }],
    chance: true,
    failed: 'own',
  }
  askTellingVisit(s)
}

/**
 * A queen rejected, or dead in her cage: almost certainly there is another, or cells (a keepers' saying; a queen put into a
 * queenright colony was taken by 1 of 54, Invernizzi et al.). Nothing is bought or united before that is known.
 */
function another(s: State, on: Day, why: Cause): void {
  s.otherQueen = on
  fall(s, on, [why, { code: 'another-likely' }], 'own')
}

export function washMites(s: State, wash: MiteWash): void {
  s.mites = { per100: (100 * wash.mites) / wash.bees, on: wash.on }
  const ask = s.pending('mite-wash')
  if (ask === undefined) return
  if (wash.on >= ask.opens) ask.answeredOn = wash.on
  else ask.why = { code: 'wash-again-later', on: wash.on, per100: s.mites.per100 }
}
