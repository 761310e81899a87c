/** What somebody did: gave brood, a cell, a queen; looked at her cage; took bands off; washed mites. */

import { type Day, inWords } from '../../days.ts'
import type { Given, MiteWash, QueenCage } from '../../journal/index.ts'
import { emergence, emergenceOfGivenCell, emergenceOfGivenVirgin } from '../rearing.ts'
import { BROOD_GIFTS, cellsPossibleUntil, gifted } from '../sources.ts'
import type { QueenOrigin, State } from '../state.ts'
import { askTellingVisit } from './begin.ts'
import { fall } from './ladder.ts'
import { reaskWorkerBrood } from './layer.ts'
import { startRearing } from './raise.ts'

export function give(s: State, gift: Given): void {
  if (BROOD_GIFTS.includes(gift.what)) giveBrood(s, gift)
  if (gift.what === 'syrup') s.fedOn = gift.on
  if (gift.what === 'treatment') s.treatedOn = gift.on
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
      if (gift.caged === true) askRelease(s, gift.on, 'a virgin')
      return
    case 'mated-queen':
      giveMatedQueen(s, gift)
      return
    default:
      return
  }
}

function giveBrood(s: State, gift: Given): void {
  s.sources.push(gifted(gift))
  if (gift.what !== 'capped-brood' && s.queen.is === 'none') s.queen = { ...s.queen, chance: true }
  reaskWorkerBrood(s)
}

/** A frame of eggs is a question too, unless a queen is known to be here or on her way. */
function readItLater(s: State, on: Day): void {
  if (s.queen.is !== 'none' && s.queen.is !== 'unseen' && s.queen.is !== 'present') return
  s.testFrame = { given: on, read: null }
  s.void('recheck-eggs', on)
  s.ask(
    'cells-on-egg-frame',
    on,
    `Queen cells on the frame of eggs given on ${inWords(on)}? Cells: they have no queen and raise one. None: they behave as if they had one.`,
  )
}

function overtaken(s: State, on: Day): void {
  for (const rule of [
    'telling-visit',
    'cells-on-egg-frame',
    'recheck-eggs',
    'new-queen-eggs',
    'eggs-after-introduction',
    'queen-release',
    'worker-brood',
    'laying-workers',
  ] as const)
    s.void(rule, on)
  s.testFrame = null
  s.doublesSince = null
}

function giveMatedQueen(s: State, gift: Given): void {
  const q = s.queen
  if (q.is === 'rearing')
    s.surprises.push(
      `A mated queen went in on ${inWords(gift.on)} while the colony was raising its own. A virgin or a cell kills her: make sure that none is left.`,
    )
  if (q.is === 'laying-workers')
    s.surprises.push(
      `A mated queen went in on ${inWords(gift.on)} among laying workers: they mostly kill her. Likelier to succeed: take her out and unite with a strong queenright colony.`,
    )
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
  askRelease(s, gift.on, 'a mated queen')
}

const askRelease = (s: State, on: Day, who: string): void => {
  s.ask(
    'queen-release',
    on,
    `Is she out of her cage, and do the bees accept her? ${who === 'a virgin' ? 'A virgin' : 'A mated queen'} went in caged on ${inWords(on)}.`,
  )
}

function release(s: State, on: Day, origin: QueenOrigin): void {
  s.queen = { is: 'released', on, origin, asked: 1 }
  s.ask(
    'eggs-after-introduction',
    on,
    `Does she lay? She was let out on ${inWords(on)}; a queen in good order lays within ten days.`,
  )
}

export function lookAtCage(s: State, cage: QueenCage): void {
  const q = s.queen
  if (cage.found === 'still-caged') {
    if (q.is === 'caged') s.queen = { ...q, stillCagedOn: cage.on }
    s.looked(cage.on, 'queen-release')
    return
  }
  s.answer(cage.on, 'queen-release')
  // A virgin's cage: her days are counted from her emergence, not from her release.
  if (q.is === 'rearing' && cage.found === 'released') return
  const origin: QueenOrigin = q.is === 'caged' || q.is === 'released' ? q.origin : 'salvaged'
  if (cage.found === 'released') {
    if (q.is === 'laying' || q.is === 'queenright') return
    overtaken(s, cage.on)
    for (const rule of ['egg-frame', 'buy-queen'] as const) s.void(rule, cage.on)
    release(s, cage.on, origin)
    return
  }
  queenLost(s, cage, origin)
}

function queenLost(s: State, cage: QueenCage, origin: QueenOrigin): void {
  const how = cage.found === 'dead' ? 'found dead' : 'rejected by the bees'
  s.void('eggs-after-introduction', cage.on)
  if (s.queen.is === 'rearing') {
    fall(s, cage.on, `the queen given was ${how} on ${inWords(cage.on)}`, 'raised')
    return
  }
  if (origin === 'bought') {
    fall(s, cage.on, `the bought queen was ${how} on ${inWords(cage.on)}`, 'bought')
    return
  }
  const until = cellsPossibleUntil(s.sources)
  if (until === null || cage.on > until) {
    fall(
      s,
      cage.on,
      `her own queen was ${how} on ${inWords(cage.on)}, too late for the brood that came along`,
      'own',
    )
    return
  }
  s.queen = {
    is: 'none',
    since: cage.on,
    why: `the queen was ${how} on ${inWords(cage.on)}`,
    chance: true,
    failed: 'own',
  }
  askTellingVisit(s)
}

export function washMites(s: State, wash: MiteWash): void {
  s.mites = { per100: (100 * wash.mites) / wash.bees, on: wash.on }
  const ask = s.pending('mite-wash')
  if (ask === undefined) return
  if (wash.on >= ask.opens) ask.answeredOn = wash.on
  else
    ask.why = `How many mites per 100 bees now? The wash of ${inWords(wash.on)} found ${s.mites.per100.toFixed(1)}, while many were still under caps.`
}
