/** The stories a strength forecast is made of: when laying begins, good and bad luck, errors of counting. */
import { BEES_PER_FRAME, WORKER } from '../biology/index.ts'
import type { Day } from '../days.ts'
import { TO_ADULT } from './brood-sources.ts'
import { type CohortResult, runCohorts } from './cohorts.ts'
import { ageing, aliveAt, type Hemisphere, LIFE, mixedLeft } from './life.ts'
import type { DayPmf } from './pmf.ts'

/** Errors of a count by eye, as factors with weights: about 20 % (judgement; Delaplane et al. 2013 ask for two observers). */
export const COUNTS = [
  { factor: 0.8, w: 0.25 },
  { factor: 1, w: 0.5 },
  { factor: 1.25, w: 0.25 },
] as const
export const ASSUMED_FRAMES = 5
export const ASSUMED = [
  { factor: 0.5, w: 0.25 },
  { factor: 1, w: 0.5 },
  { factor: 1.8, w: 0.25 },
] as const
/** Good and bad luck with life span and laying, together, as factors with weights. Judgement. */
export const LUCKS = [
  { life: 0.85, eggs: 0.75, w: 0.25 },
  { life: 1, eggs: 1, w: 0.5 },
  { life: 1.15, eggs: 1.15, w: 0.25 },
] as const
/** Spread of the logarithm of a count against the reckoning. Judgement. */
const COUNT_SPREAD = 0.3
/** First-egg days are gathered into at most so many groups. */
const GROUPS = 14

export interface Laying {
  /** Days after intake of the first egg; null: nobody lays. */
  from: number | null
  w: number
}

/** Possible first-egg days, gathered; what is left over never lays. `shift`: days from removal to intake. */
export function layings(firstEgg: DayPmf, shift: number): Laying[] {
  const total = firstEgg.p.reduce((a, b) => a + b, 0)
  const scale = total > 1 ? 1 / total : 1
  const most = Math.max(1e-9, (total * scale) / GROUPS)
  const out: Laying[] = []
  let [w, days] = [0, 0]
  firstEgg.p.forEach((p, t) => {
    w += p * scale
    days += p * scale * (t - shift)
    if (w >= most || (t === firstEgg.p.length - 1 && w > 1e-9)) {
      out.push({ from: Math.round(days / w), w })
      w = 0
      days = 0
    }
  })
  const never = 1 - out.reduce((a, x) => a + x.w, 0)
  return never > 1e-6 ? [...out, { from: null, w: never }] : out
}

/** Shares of bees left, worked out once for all stories of one luck. */
export interface Left {
  first: Float64Array
  /** Of those that emerged in the step before j, at i: row i, column j. */
  later: Float64Array
}

function leftFor(age: Float64Array, life: number): Left {
  const n = age.length
  const later = new Float64Array(n * n)
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) later[i * n + j] = aliveAt(((age[i] ?? 0) - (age[j] ?? 0)) / life)
  return { first: age.map((a) => mixedLeft(a / life)), later }
}

/** What all stories of a colony share. */
export interface Ground {
  start: Day
  days: number
  hemisphere: Hemisphere
  /** Last day, after intake, on which open brood not laid by the coming layer is in the box; -1: none. */
  openUntil: number
  eggs: Float64Array
  emerging: Float64Array
  counts: Map<number, number>
}

/** Open brood of a new layer is there from the day her first egg hatches. */
const HATCH = WORKER.hatch

/** Shares left under each luck, for one first-egg day: bees with no brood to feed age slower. */
export function leftsFor(g: Ground, lay: Laying): Left[] {
  const broodless = (d: number): boolean => d > g.openUntil && (lay.from === null || d < lay.from + HATCH)
  const age = ageing(g.start, g.days, g.hemisphere, broodless)
  return LUCKS.map(({ life }) => leftFor(age, life))
}

export interface Told {
  adults: number
  lay: Laying
  left: Left
  /** Eggs laid, as a share of what a good queen lays. */
  spirit: number
  count: number
}

/** One story of a colony's strength. */
export function oneStory(g: Ground, { adults, lay, left, spirit, count }: Told): CohortResult {
  const n = g.days + 1
  return runCohorts({
    steps: g.days,
    perDay: 1,
    adults,
    firstLeft: (i) => left.first[i] ?? 0,
    left: (i, j) => left.later[i * n + j] ?? 0,
    emerging: (i) => g.emerging[i] ?? 0,
    development: WORKER.emerge,
    survival: TO_ADULT.eggs,
    laying: (i, bees, open) => {
      if (lay.from === null || i < lay.from) return 0
      const ramp = Math.min(1, (i - lay.from + 1) / LIFE.rampDays)
      const room = Math.max(0, LIFE.cellsPerBee * bees - open)
      return Math.min(ramp * spirit * (g.eggs[i] ?? 0), room)
    },
    counted: (i) => {
      const frames = g.counts.get(i)
      return frames === undefined ? undefined : frames * BEES_PER_FRAME * count
    },
  })
}

/** How well a story foretold the counts. */
export function wellForetold(result: CohortResult, g: Ground, count: number): number {
  let fits = 1
  for (const [i, before] of result.beforeCount) {
    const off = Math.log(before / ((g.counts.get(i) ?? 0) * BEES_PER_FRAME * count)) / COUNT_SPREAD
    fits *= Math.exp(-(off ** 2) / 2) + 1e-6
  }
  return fits
}
