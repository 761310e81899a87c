/**
 * Day-cohort bookkeeping: bees that emerged on the same day grow old together, brood takes 21 days, and eggs are laid only as
 * many as there are bees to care for.
 *
 * General on purpose (steps shorter than a day, any laying rule, any survival curve), so that it can be held against closed
 * forms and a delay equation. The forecast of strength feeds it a rescued colony.
 */

export interface CohortRun {
  /** Steps to run, and steps in a day. */
  steps: number
  perDay: number
  /** Adults at the start. */
  adults: number
  /** Share of the first adults alive at step i (1 at 0). */
  firstLeft: (i: number) => number
  /** Share alive at step i of those that emerged in the step before j <= i: half a step old where equal, if one is exact. */
  left: (i: number, j: number) => number
  /** Bees that emerge in step i from brood not laid here (salvaged, given). */
  emerging: (i: number) => number
  /** Days from egg to adult, and the share of eggs that get there. */
  development: number
  survival: number
  /** Eggs laid per day at step i, with so many adults and cells of open brood laid here. */
  laying: (i: number, adults: number, open: number) => number
  /** Adults as counted at step i, if they were: the bees are set to that number. */
  counted?: (i: number) => number | undefined
}

export interface CohortResult {
  /** Adults at each step, 0 to `steps`. */
  adults: Float64Array
  /** Cells laid here and not yet emerged, at each step. */
  brood: Float64Array
  /** Adults as reckoned just before each count, by step. */
  beforeCount: Map<number, number>
}

/** Days a cell is open: egg and larva, till capped (handbook: 9). */
const OPEN_DAYS = 9

/** Runs the bookkeeping. Adults at step i are those at its beginning; what is laid in it emerges `development` days later. */
export function runCohorts(run: CohortRun): CohortResult {
  const { steps, perDay } = run
  const delay = Math.round(run.development * perDay)
  const openSteps = OPEN_DAYS * perDay
  const adults = new Float64Array(steps + 1)
  const brood = new Float64Array(steps + 1)
  const laid = new Float64Array(steps + 1)
  const emerged = new Float64Array(steps + 1)
  const beforeCount = new Map<number, number>()
  let first = run.adults
  let [open, inCells] = [0, 0]
  for (let i = 0; i <= steps; i++) {
    if (i > 0) {
      const out = i >= delay + 1 ? (laid[i - 1 - delay] ?? 0) : 0
      emerged[i] = run.emerging(i - 1) + out * run.survival
      inCells += (laid[i - 1] ?? 0) - out
      open += (laid[i - 1] ?? 0) - (i > openSteps ? (laid[i - 1 - openSteps] ?? 0) : 0)
    }
    let now = first * run.firstLeft(i)
    for (let j = 1; j <= i; j++) {
      const e = emerged[j] ?? 0
      if (e !== 0) now += e * run.left(i, j)
    }
    const seen = run.counted?.(i)
    if (seen !== undefined && now > 0) {
      beforeCount.set(i, now)
      const by = seen / now
      first *= by
      for (let j = 1; j <= i; j++) emerged[j] = (emerged[j] ?? 0) * by
      now = seen
    }
    adults[i] = now
    brood[i] = inCells
    laid[i] = run.laying(i, now, open) / perDay
  }
  return { adults, brood, beforeCount }
}
