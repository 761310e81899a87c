/** An inspection: what was seen, in the order in which it decides. */

import { QUEEN, WORKER_EGG_LAID } from '../../biology/index.ts'
import { addDays, type Day } from '../../days.ts'
import type { Given, Inspection } from '../../journal/index.ts'
import { type CellStage, emergenceFromCells } from '../rearing.ts'
import { BROOD_GIFTS, conclusive, gifted, type Source, tooOldForFreshComb } from '../sources.ts'
import { expectedEmergence } from '../spans.ts'
import type { State } from '../state.ts'
import { cellsBesideGone, cellsBesideHer } from './cells-beside.ts'
import { askWorkerBrood, formerLayer, layerLost, layerProven, queenProven } from './layer.ts'
import { droneBrood, multipleEggs } from './laying-workers.ts'
import { leftOut } from './left-out.ts'
import { noCells, stageOf } from './look.ts'
import { failedToLay, nothingNew, readTestFrame } from './nothing.ts'
import { moreCells, seenOut, startRearing } from './raise.ts'
import { checkStrength } from './strength.ts'
import { answerWatch } from './watch.ts'

export function inspect(s: State, look: Inspection): void {
  if (stillThere(s, look)) return
  if (look.temper !== undefined) s.temper = { on: look.on, value: look.temper }
  if (look.framesOfBees !== undefined) {
    const before = s.strength?.counted === true ? s.strength.frames : null
    s.strength = { frames: look.framesOfBees, on: look.on, counted: true }
    checkStrength(s, look.framesOfBees, look.on, before)
  }
  if (look.stores !== undefined) s.stores = { level: look.stores, on: look.on }
  if (look.signs !== undefined) {
    const suspected = look.signs.includes('brood-disease-suspected')
    if (look.opened || suspected) lookForDisease(s, look.on, suspected)
    noteSigns(s, look, look.signs)
  }
  if (!look.opened) return
  if (look.eggs === 'single' || look.eggs === 'multiple' || look.open === 'some' || look.open === 'plenty')
    s.broodSeenOn = look.on
  if (look.cells !== undefined)
    s.cellsSeen = {
      on: look.on,
      holding: look.cells === 'open' || look.cells === 'capped',
      count: look.cellCount ?? null,
    }
  cellsBesideGone(s, look)
  lookedOnceMore(s, look)
  const asked = s.asks.filter((a) => a.answeredOn === null && a.voidSince === null && look.on >= a.opens)
  inside(s, look)
  leftOut(look, asked)
}

/** Seen on combs: a look from outside that does not see them does not say that they are gone. */
const INSIDE_ONLY: readonly string[] = ['beetles', 'moths']

function noteSigns(s: State, look: Inspection, signs: NonNullable<Inspection['signs']>): void {
  const before = s.signs
  const stay = look.opened
    ? []
    : (before?.seen ?? []).filter((x) => INSIDE_ONLY.includes(x) && !signs.includes(x))
  const on = before !== null && stay.length > 0 && signs.length === 0 ? before.on : look.on
  s.signs = { on, seen: [...signs, ...stay] }
  s.beetles = { on, seen: s.signs.seen.includes('beetles') }
}

/** Nothing lives in it: said, and nothing more is read from that visit. Life seen later contradicts it. */
function stillThere(s: State, look: Inspection): boolean {
  const how = look.lost ?? (look.framesOfBees === 0 ? 'no-bees' : null)
  if (how !== null) {
    s.lost = { on: look.on, how, by: look.by }
    if (look.framesOfBees === 0) s.strength = { frames: 0, on: look.on, counted: true }
    return true
  }
  const alive =
    (look.framesOfBees ?? 0) > 0 || look.queen === 'seen' || (look.eggs !== undefined && look.eggs !== 'none')
  if (s.lost !== null && alive) {
    s.disagree(look.on, { code: 'lost-and-alive', lost: s.lost.on, on: look.on })
    s.lost = null
  }
  return false
}

/** A further look at eggs or cells, once it is asked for, settles which of two was right. */
function lookedOnceMore(s: State, look: Inspection): void {
  const ask = s.pending('look-again')
  if (ask === undefined || look.on < ask.opens || look.eggs === undefined) return
  ask.answeredOn = look.on
  s.disagreeSince = null
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
  if (s.queen.is === 'laying-workers' && stageOf(look) === null) readTestFrame(s, look)
  if (look.capped === 'drone-in-worker') {
    if (droneBrood(s, look)) return
    // Drones of the old queen or of a donor, as it may be: the rest of the look is read as if nobody had looked at caps.
    const { capped: _capped, ...rest } = look
    inside(s, rest)
    return
  }
  if (look.eggs === 'multiple' && multipleEggs(s, look)) return
  if (look.eggs === 'single' && s.doublesSince !== null) {
    s.doublesSince = null
    s.answer(look.on, 'laying-workers')
  }
  const can = conclusive(withGiftsOf(s, look.on), look, s.history.intake.on)
  if (tooOldForFreshComb(look, s.history.intake.on))
    s.surprises.push({ code: 'fresh-comb-too-old', on: look.on, since: s.history.intake.on })
  const newEggs = can.eggs && (look.eggs === 'single' || look.eggs === 'multiple')
  const newOpen = can.open && (look.open === 'some' || look.open === 'plenty')
  const newCapped = can.capped && look.capped === 'worker'
  const stage = stageOf(look)
  if (s.queen.is === 'laying-workers' && !newCapped && !(stage !== null && s.testFrame !== null)) return
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
      cellsBesideHer(s, look, { code: 'cells-beside-layer', on: look.on })
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
    cellsBesideHer(s, look, {
      code: q.is === 'caged' ? 'cells-beside-caged' : 'cells-beside-seen',
      on: look.on,
    })
    s.answer(look.on, 'telling-visit')
    return
  }
  const from = emergenceFromCells(stage, look.on, s.sources, aliveOn(s))
  if (q.is === 'laying' || q.is === 'queenright') {
    s.sources.push(formerLayer(look, q.lastSeen))
    s.void('worker-brood', look.on)
    doubtEggs(s, look, stage, q.lastSeen)
  }
  if (q.is === 'laying-workers') s.void('laying-workers', look.on)
  sayIfLater(s, from.span.latest, look.on)
  s.answer(look.on, 'telling-visit', 'cells-on-egg-frame', 'recheck-eggs', 'eggs-after-introduction')
  startRearing(s, from, stage, look.on)
  // An empty cell that has hung there for weeks, and no eggs: she has had her time already.
  if (look.eggs === 'none' && s.queen.is === 'rearing') failedToLay(s, look.on)
  if (look.queen === 'seen' && s.queen.is === 'rearing') seenOut(s, s.queen, look.on)
}

/** Cells older than the last eggs: a colony with a laying queen does not raise one in need, so those eggs are doubted. */
function doubtEggs(s: State, look: Inspection, stage: CellStage, eggsOn: Day): void {
  const begun = addDays(look.on, -QUEEN_CELL_AGE[stage])
  if (eggsOn <= begun) return
  s.surprises.push({ code: 'eggs-doubted', eggs: eggsOn, on: look.on, begun })
}

/** Days since a cell was begun on a just-hatched larva, at least. */
const QUEEN_CELL_AGE: Record<CellStage, number> = {
  open: 0,
  capped: QUEEN.cap - QUEEN.hatch,
  emerged: QUEEN.emerge - QUEEN.hatch,
}

/** A span was promised from the day of loss; cells that stretch it contradict it, even inside the measured extremes. */
function sayIfLater(s: State, latest: Day, on: Day): void {
  const promised = expectedEmergence(s)
  if (promised !== null && latest > promised.latest)
    s.surprises.push({ code: 'cells-younger', on, latest, promised: promised.latest })
}
