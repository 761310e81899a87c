/** Bees still to emerge from brood that came along or was given, day by day. */
import { BEES_PER_FRAME, BROOD_SURVIVAL, CELLS_PER_FRAME_SIDE, WORKER } from '../biology/index.ts'
import { daysBetween } from '../days.ts'
import type { History } from '../journal/index.ts'
import { LIFE } from './life.ts'
import type { Rates } from './rates.ts'
import { broodAliveChance } from './story/start.ts'

/** Share that becomes adults: of eggs 0.851, of larvae 0.903, of sealed brood 0.985 (Fukuda & Sakagami 1968). */
export const TO_ADULT = {
  eggs: BROOD_SURVIVAL.toAdult,
  open: BROOD_SURVIVAL.toAdult / BROOD_SURVIVAL.toLarva,
  capped: BROOD_SURVIVAL.toAdult / BROOD_SURVIVAL.toSealed,
} as const

/** Days after the frame was at hand in which each stage emerges (worker: hatched at 3, capped at 9, out at 21). */
const EMERGES = { eggs: [18, 20], open: [12, 17], capped: [0, 11] } as const
type Stage = keyof typeof EMERGES

/** Cells in use on so many frames, both sides. Example: 1 frame, 0.7 full: 4,900. */
const cellsOn = (frames: number): number => frames * 2 * CELLS_PER_FRAME_SIDE * LIFE.frameFill

/** Adds the bees from those frames of brood, at hand on day `from`, to what emerges by day. */
export function addBrood(
  byDay: Float64Array,
  from: number,
  stage: Stage,
  frames: number,
  lives: number,
): void {
  const [first, last] = EMERGES[stage]
  const each = (cellsOn(frames) * lives * TO_ADULT[stage]) / (last - first + 1)
  for (let d = from + first; d <= from + last; d++)
    if (d >= 0 && d < byDay.length) byDay[d] = (byDay[d] ?? 0) + each
}

/** A frame of eggs as it is given: young brood on about half its cells (judgement). */
const EGG_FRAME_FULL = 0.5

/** Bees that emerge on each day from the intake on, from brood not laid here. Brood nobody wrote of counts as none. */
export function emergingByDay(history: History, rates: Rates, days: number): Float64Array {
  const out = new Float64Array(days + 1)
  const { intake, removedOn } = history
  const removal = daysBetween(intake.on, removedOn)
  const young = broodAliveChance(intake, rates)
  const { eggs = 0, open = 0, capped = 0 } = intake.brood ?? {}
  addBrood(out, removal, 'eggs', eggs, young)
  addBrood(out, removal, 'open', open, young)
  addBrood(out, removal, 'capped', capped, LIFE.cappedLives)
  for (const e of history.entries) {
    if (e.kind !== 'given') continue
    const on = daysBetween(intake.on, e.on)
    const frames = e.frames ?? 1
    if (e.what === 'capped-brood') addBrood(out, on, 'capped', frames, 1)
    if (e.what === 'open-brood') addBrood(out, on, 'open', frames, 1)
    if (e.what === 'egg-frame') addBrood(out, on, 'eggs', frames * EGG_FRAME_FULL, 1)
    if (e.what === 'bees' && on >= 0 && on <= days) out[on] = (out[on] ?? 0) + frames * BEES_PER_FRAME
  }
  return out
}

/** Last day, counted from the intake, on which open brood that came along or was given is in the box; -1 when there is none. */
export function openBroodUntil(history: History): number {
  const { intake, removedOn } = history
  const removal = daysBetween(intake.on, removedOn)
  const { eggs = 0, open = 0 } = intake.brood ?? {}
  let until = eggs > 0 ? removal + WORKER.cap : open > 0 ? removal + WORKER.cap - WORKER.hatch : -1
  for (const e of history.entries)
    if (e.kind === 'given' && (e.what === 'egg-frame' || e.what === 'open-brood'))
      until = Math.max(until, daysBetween(intake.on, e.on) + WORKER.cap)
  return until
}
