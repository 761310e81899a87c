/** An inspection: what was seen, in the order in which it decides. */
import {
  EMERGENCE_AFTER_LOSS,
  FIRST_EGG_AFTER_EMERGENCE,
  FIRST_EGG_AFTER_RELEASE,
  LAYING_WORKERS_POSSIBLE_FROM,
  LOOK_AGAIN_AT_DOUBLES,
  NEW_QUEEN_DOUBLES_DAYS,
  OLD_QUEEN_LAYS_AGAIN,
  WORKER_EGG_LAID,
} from '../../biology/index.ts'
import { addDays, type Day, inWords } from '../../days.ts'
import type { Given, Inspection } from '../../journal/index.ts'
import { type CellStage, emergenceFromCells } from '../rearing.ts'
import { BROOD_GIFTS, conclusive, gifted, type Source, tooOldForFreshComb } from '../sources.ts'
import { expectedEmergence } from '../spans.ts'
import type { State } from '../state.ts'
import { fall } from './ladder.ts'
import { askWorkerBrood, formerLayer, layerLost, layerProven, queenProven } from './layer.ts'
import { noCells, stageOf } from './look.ts'
import { nothingNew } from './nothing.ts'
import { moreCells, seenOut, startRearing } from './raise.ts'
import { checkStrength } from './strength.ts'
import { answerWatch } from './watch.ts'

export function inspect(s: State, look: Inspection): void {
  if (look.framesOfBees !== undefined) {
    s.strength = { frames: look.framesOfBees, on: look.on, counted: true }
    checkStrength(s, look.framesOfBees, look.on)
  }
  if (look.stores !== undefined) s.stores = { level: look.stores, on: look.on }
  if (look.signs !== undefined) {
    const suspected = look.signs.includes('brood-disease-suspected')
    if (look.opened || suspected) lookForDisease(s, look.on, suspected)
    s.beetles = { on: look.on, seen: look.signs.includes('beetles') }
  }
  if (look.opened) inside(s, look)
}

/** A clean look ends a suspicion, unless the protocol asks that somebody records who cleared it. */
function lookForDisease(s: State, on: Day, suspected: boolean): void {
  const before = s.diseaseLook
  const held = before?.suspected === true && s.protocol.clearance === 'recorded'
  s.diseaseLook = suspected
    ? { on, suspected, suspectedOn: on }
    : held
      ? { ...before, on }
      : { on, suspected: false }
}

function inside(s: State, look: Inspection): void {
  answerWatch(s, look)
  if (look.capped === 'drone-in-worker') {
    droneBrood(s, look)
    return
  }
  if (look.eggs === 'multiple' && multipleEggs(s, look)) return
  if (look.eggs === 'single' && s.doublesSince !== null) {
    s.doublesSince = null
    s.answer(look.on, 'laying-workers')
  }
  const can = conclusive(withGiftsOf(s, look.on), look, s.history.intake.on)
  if (tooOldForFreshComb(look, s.history.intake.on))
    s.surprises.push(
      `Brood on fresh comb on ${inWords(look.on)} is older than the colony’s stay here since ${inWords(s.history.intake.on)}. Likeliest: the comb came along; or a date is wrong. It is not taken as proof.`,
    )
  const newEggs = can.eggs && (look.eggs === 'single' || look.eggs === 'multiple')
  const newOpen = can.open && (look.open === 'some' || look.open === 'plenty')
  const newCapped = can.capped && look.capped === 'worker'
  const stage = stageOf(look)
  if (s.queen.is === 'laying-workers' && !newCapped) return
  if (stage !== null && (look.eggs === 'none' || !(newEggs || newOpen || newCapped)))
    cellsSeen(s, look, stage)
  else if (newCapped || newEggs || newOpen) {
    if (newCapped) queenProven(s, look.on)
    if (newEggs || newOpen) {
      if (!(look.eggs === 'none' && !newCapped && s.queen.is === 'laying'))
        layerProven(s, look, newOpen ? addDays(look.on, -WORKER_EGG_LAID.open.last) : look.on)
    } else if (look.eggs === 'none' && look.open === 'none' && noCells(look) && newCapped) layerLost(s, look)
    // An emerged cell is where she came from: it hangs on for weeks and surprises nobody.
    if (stage === 'open' || stage === 'capped')
      s.surprises.push(
        `Queen cells beside a laying queen on ${inWords(look.on)}. Likeliest: she is being replaced, or they mean to swarm; look again before the cells are due.`,
      )
    cappedNone(s, look)
  } else nothingNew(s, look)
  if (look.eggs === 'none') s.lastNoEggs = look.on
}

/** Brood at hand, and what was given later that day by the book's order: the book may not know which came first. */
const withGiftsOf = (s: State, on: Day): Source[] => [
  ...s.sources,
  ...s.history.entries
    .filter((e) => e.kind === 'given' && e.on === on && BROOD_GIFTS.includes(e.what))
    .map((e) => gifted(e as Given)),
]

/** Eggs or larvae, but nothing capped although there was time: the same question once more. */
function cappedNone(s: State, look: Inspection): void {
  const ask = s.pending('worker-brood')
  if (look.capped !== 'none' || ask === undefined || look.on < ask.due || s.queen.is !== 'laying') return
  s.answer(look.on, 'worker-brood')
  askWorkerBrood(s, look.on, s.queen.freshComb)
}

/** When a queen was last known alive in this box, for the early end of the next queen's emergence. */
function aliveOn(s: State): Day | null {
  const q = s.queen
  if (q.is === 'present') return q.seenOn
  if (q.is === 'released') return q.on
  if (q.is === 'laying' || q.is === 'queenright') return addDays(q.lastSeen, -WORKER_EGG_LAID.eggs.first)
  return null
}

function cellsSeen(s: State, look: Inspection, stage: CellStage): void {
  const q = s.queen
  if (q.is === 'rearing') {
    moreCells(s, q, stage, look.on)
    return
  }
  const besideHer = q.is === 'caged' || (look.queen === 'seen' && q.is !== 'none' && q.is !== 'unseen')
  if (besideHer) {
    s.surprises.push(
      q.is === 'caged'
        ? `Queen cells on ${inWords(look.on)} while a queen is caged here: they raise their own. Cut every cell before she comes out, or keep the cells and not her.`
        : `Queen cells on ${inWords(look.on)} beside a queen that was seen. Likeliest: she is being replaced, or they mean to swarm.`,
    )
    s.answer(look.on, 'telling-visit')
    return
  }
  const from = emergenceFromCells(stage, look.on, s.sources, aliveOn(s))
  if (q.is === 'laying' || q.is === 'queenright') {
    s.sources.push(formerLayer(look, q.lastSeen))
    s.void('worker-brood', look.on)
  }
  sayIfLater(s, from.span.latest, look.on)
  s.answer(look.on, 'telling-visit', 'cells-on-egg-frame', 'recheck-eggs', 'eggs-after-introduction')
  startRearing(s, from, stage, look.on)
  if (look.queen === 'seen' && s.queen.is === 'rearing') seenOut(s, s.queen, look.on)
}

/** A span was promised from the day of loss; cells that stretch it contradict it, even inside the measured extremes. */
function sayIfLater(s: State, latest: Day, on: Day): void {
  const promised = expectedEmergence(s)
  if (promised !== null && latest > promised.latest)
    s.surprises.push(
      `Queen cells on ${inWords(on)} are younger than expected: she emerges by ${inWords(latest)}, not ${inWords(promised.latest)}. Likeliest: slow cells at the end of their range; or a queen was still laying here.`,
    )
}

/** Raised drone caps in worker cells: workers lay, or a queen that cannot lay anything else. */
function droneBrood(s: State, look: Inspection): void {
  const tooSoon = look.on < addDays(s.lastOldEgg, LAYING_WORKERS_POSSIBLE_FROM)
  s.answer(
    look.on,
    'telling-visit',
    'recheck-eggs',
    'new-queen-eggs',
    'worker-brood',
    'eggs-after-introduction',
    'cells-on-egg-frame',
  )
  if (look.queen === 'seen' || tooSoon) {
    if (s.queen.is === 'none' && s.queen.failed === 'raised') return
    s.sources.push({ from: 'former-layer', lastEgg: look.on, young: false })
    fall(
      s,
      look.on,
      'only drone brood in worker cells: her queen is not mated. Find her and take her out',
      'raised',
    )
    return
  }
  layingWorkers(s, look.on, `raised drone caps in worker cells on ${inWords(look.on)} and no queen seen`)
}

function layingWorkers(s: State, on: Day, why: string): void {
  if (s.queen.is === 'laying-workers') return
  s.queen = { is: 'laying-workers', since: on }
  s.testFrame = null
  s.doublesSince = null
  for (const rule of [
    'egg-frame',
    'buy-queen',
    'worker-brood',
    'cells-on-egg-frame',
    'recheck-eggs',
  ] as const)
    s.void(rule, on)
  s.ask(
    'laying-workers',
    on,
    `Laying workers: ${why}. Do not waste a queen on them; unite with a strong queenright colony. Shaking out is disputed: the layers fly back.`,
  )
}

/** Several eggs in a cell. True when it settles the matter: laying workers. */
function multipleEggs(s: State, look: Inspection): boolean {
  const tooSoon = look.on < addDays(s.lastOldEgg, LAYING_WORKERS_POSSIBLE_FROM)
  const again = s.doublesSince !== null && look.on >= addDays(s.doublesSince, LOOK_AGAIN_AT_DOUBLES)
  if (s.queen.is === 'queenright' || tooSoon || (newQueenPossible(s, look.on) && !again)) {
    if (s.doublesSince === null) {
      s.doublesSince = look.on
      s.ask(
        'laying-workers',
        look.on,
        `Several eggs in a cell on ${inWords(look.on)}: a queen that has just begun may do so for some days. Look again: one egg a cell, and worker caps, clear her.`,
        { opens: LOOK_AGAIN_AT_DOUBLES - 1, due: LOOK_AGAIN_AT_DOUBLES, closes: LOOK_AGAIN_AT_DOUBLES + 2 },
      )
    }
    return false
  }
  s.answer(look.on, 'telling-visit', 'recheck-eggs', 'new-queen-eggs', 'eggs-after-introduction')
  layingWorkers(
    s,
    look.on,
    again
      ? `several eggs in a cell again on ${inWords(look.on)}`
      : `several eggs in a cell on ${inWords(look.on)} and no queen can be laying`,
  )
  return true
}

/** Could a queen have begun to lay within the week before? Then doubles are hers as likely as theirs. */
function newQueenPossible(s: State, on: Day): boolean {
  const q = s.queen
  const until = (from: Day, days: number): boolean => on <= addDays(from, days + NEW_QUEEN_DOUBLES_DAYS)
  const raisedFrom = EMERGENCE_AFTER_LOSS.latest + FIRST_EGG_AFTER_EMERGENCE.latest
  const ownBrood = s.sources.some((x) => x.young && until(x.lastEgg, raisedFrom))
  switch (q.is) {
    case 'rearing':
      return until(q.emergence.latest, FIRST_EGG_AFTER_EMERGENCE.latest)
    case 'released':
      return until(q.on, FIRST_EGG_AFTER_RELEASE.latest)
    case 'caged':
      return true
    case 'laying':
      return until(q.firstEgg.latest, 0)
    case 'present':
    case 'unseen':
      return ownBrood || until(s.lastOldEgg, OLD_QUEEN_LAYS_AGAIN.latest)
    case 'none':
      return (q.chance || s.testFrame !== null) && ownBrood
    default:
      return q.is === 'queenright'
  }
}
