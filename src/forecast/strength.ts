/** Adults and brood by day, as a median and an 80 % band: from bees and brood at intake, the odds of laying, and every recount. */
import { WORKER } from '../biology/development.ts'
import { BEES_PER_FRAME, framesOfBees } from '../biology/strength.ts'
import { addDays, type Day, daysBetween, later } from '../days.ts'
import type { History } from '../journal/history.ts'
import { addBrood, emergingByDay, TO_ADULT } from './brood-sources.ts'
import { type CohortResult, runCohorts } from './cohorts.ts'
import { ageing, alive, eggsInSeason, type Hemisphere, LIFE, mixedLeft } from './life.ts'
import type { DayPmf } from './pmf.ts'
import type { Story } from './queen-odds.ts'
import { bands } from './weighted.ts'

export interface StrengthOptions {
  /** Frames of bees under which the protocol acts. */
  minFrames: number
  /** Days a colony stays at least. */
  holdDays: number
  hemisphere?: Hemisphere
  /** Days from intake to forecast. */
  days?: number
  /** A frame of capped brood to be given, and how many. */
  extra?: { on: Day; frames: number }
}

export interface StrengthDay {
  day: Day
  /** Frames of bees: median, and the ends of the 80 % band. */
  median: number
  low: number
  high: number
  /** Frames of brood laid here, both sides, expected. */
  brood: number
  /** Chance of fewer bees than the minimum on that day. */
  under: number
}

export interface StrengthForecast {
  days: StrengthDay[]
  /** The lowest point of the median from the intake on, and its day. */
  lowest: { day: Day; frames: number }
  /** Chance of falling under the minimum on some day from today to `until` (end of the hold, or three weeks on). */
  chanceUnder: number
  until: Day
  /** Frames of bees as counted, for the chart. */
  counted: { day: Day; frames: number }[]
  /** No bees were written down: five frames were assumed, give or take half. */
  assumed: boolean
}

/** Errors of a count by eye, as factors with weights: about 20 % (judgement; Delaplane et al. 2013 ask for two observers). */
const COUNTS = [
  { factor: 0.8, w: 0.25 },
  { factor: 1, w: 0.5 },
  { factor: 1.25, w: 0.25 },
] as const
const ASSUMED_FRAMES = 5
const ASSUMED = [
  { factor: 0.5, w: 0.25 },
  { factor: 1, w: 0.5 },
  { factor: 1.8, w: 0.25 },
] as const
/** Good and bad luck with life span and laying, together, as factors with weights. Judgement. */
const LUCKS = [
  { life: 0.85, eggs: 0.75, w: 0.25 },
  { life: 1, eggs: 1, w: 0.5 },
  { life: 1.15, eggs: 1.15, w: 0.25 },
] as const
/** Spread of the logarithm of a count against the reckoning. Judgement. */
const COUNT_SPREAD = 0.3
/** First-egg days are gathered into at most so many groups. */
const GROUPS = 14

interface Laying {
  /** Days after intake of the first egg; null: nobody lays. */
  from: number | null
  w: number
}

/** Possible first-egg days, gathered; what is left over never lays. `shift`: days from removal to intake. */
function layings(firstEgg: DayPmf, shift: number): Laying[] {
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

/** Frames of bees at intake; null when nobody wrote them down. */
export function framesAtIntake(history: History): number | null {
  const { bees } = history.intake
  if (bees === undefined) return null
  return bees.frames ?? (bees.kg === undefined ? null : framesOfBees(bees.kg))
}

function countsOf(history: History, today: Day): { day: Day; frames: number }[] {
  return history.entries.flatMap((e) =>
    e.kind === 'inspection' && e.framesOfBees !== undefined && e.on <= today
      ? [{ day: e.on, frames: e.framesOfBees }]
      : [],
  )
}

/** Shares of bees left, worked out once for all stories of one luck. */
interface Left {
  first: Float64Array
  /** Of those that emerged in the step before j, at i: row i, column j. */
  later: Float64Array
}

function leftFor(age: Float64Array, life: number): Left {
  const n = age.length
  const later = new Float64Array(n * n)
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) later[i * n + j] = alive(((age[i] ?? 0) - (age[j] ?? 0)) / life)
  return { first: age.map((a) => mixedLeft(a / life)), later }
}

interface Ground {
  start: Day
  days: number
  left: Left[]
  eggs: Float64Array
  emerging: Float64Array
  counts: Map<number, number>
}

interface Told {
  adults: number
  lay: Laying
  luck: number
  count: number
}

function oneStory(g: Ground, { adults, lay, luck, count }: Told): CohortResult {
  const left = g.left[luck]
  const n = g.days + 1
  const spirit = LUCKS[luck]?.eggs ?? 1
  return runCohorts({
    steps: g.days,
    perDay: 1,
    adults,
    firstLeft: (i) => left?.first[i] ?? 0,
    left: (i, j) => left?.later[i * n + j] ?? 0,
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
function wellForetold(result: CohortResult, g: Ground, count: number): number {
  let fits = 1
  for (const [i, before] of result.beforeCount) {
    const off = Math.log(before / ((g.counts.get(i) ?? 0) * BEES_PER_FRAME * count)) / COUNT_SPREAD
    fits *= Math.exp(-(off ** 2) / 2) + 1e-6
  }
  return fits
}

/**
 * The strength of a colony by day.
 *
 * @param story the colony's stories, as known on a day
 * @param firstEgg chance by day since the removal that a queen begins to lay (`queenOdds(story).firstEgg`)
 */
export function strengthForecast(story: Story, firstEgg: DayPmf, options: StrengthOptions): StrengthForecast {
  const { history, today } = story
  const { intake } = history
  const { hemisphere = 'north', days = 90, minFrames } = options
  const at = framesAtIntake(history)
  const counted = countsOf(history, today)
  const eggs = Float64Array.from({ length: days + 1 }, (_, d) =>
    eggsInSeason(addDays(intake.on, d), hemisphere),
  )
  const age = ageing(intake.on, days, hemisphere)
  const ground: Ground = {
    start: intake.on,
    days,
    left: LUCKS.map(({ life }) => leftFor(age, life)),
    eggs,
    emerging: emergingByDay(history, story.model.rates, days),
    // Nobody counts no bees: a nought would leave nothing to go on from.
    counts: new Map(counted.map((c) => [daysBetween(intake.on, c.day), Math.max(0.1, c.frames)])),
  }
  const { extra } = options
  if (extra !== undefined)
    addBrood(ground.emerging, daysBetween(intake.on, extra.on), 'capped', extra.frames, 1)
  const start = Math.max(0.1, at ?? ASSUMED_FRAMES) * BEES_PER_FRAME
  const runs = layings(firstEgg, daysBetween(history.removedOn, intake.on)).flatMap((lay) =>
    LUCKS.flatMap(({ w: luckily }, luck) =>
      (at === null ? ASSUMED : COUNTS).map((count) => {
        const result = oneStory(ground, { adults: start * count.factor, lay, luck, count: count.factor })
        return { result, w: lay.w * luckily * count.w * wellForetold(result, ground, count.factor) }
      }),
    ),
  )
  const until = later(addDays(intake.on, options.holdDays), addDays(today, 21))
  return summed(runs, ground, { from: today, until, minFrames, counted, assumed: at === null })
}

interface Summing {
  from: Day
  until: Day
  minFrames: number
  counted: { day: Day; frames: number }[]
  assumed: boolean
}

/** Cells of a full frame of brood, both sides, as frames are counted. */
const CELLS_PER_BROOD_FRAME = 7000 * LIFE.frameFill

function summed(runs: { result: CohortResult; w: number }[], g: Ground, s: Summing): StrengthForecast {
  const total = runs.reduce((a, r) => a + r.w, 0)
  const weights = runs.map((r) => r.w / total)
  const days: StrengthDay[] = []
  for (let d = 0; d <= g.days; d++) {
    const frames = runs.map((r) => (r.result.adults[d] ?? 0) / BEES_PER_FRAME)
    const cells = runs.reduce((sum, r, i) => sum + (weights[i] ?? 0) * (r.result.brood[d] ?? 0), 0)
    const [low = 0, median = 0, high = 0] = bands(frames, weights, [0.1, 0.5, 0.9])
    const under = frames.reduce((sum, f, i) => sum + (f < s.minFrames ? (weights[i] ?? 0) : 0), 0)
    days.push({ day: addDays(g.start, d), median, low, high, brood: cells / CELLS_PER_BROOD_FRAME, under })
  }
  const lowest = days.reduce((a, b) => (b.median < a.median ? b : a))
  const [from, to] = [daysBetween(g.start, s.from), daysBetween(g.start, s.until)]
  const chanceUnder = runs.reduce((sum, r, i) => {
    const within = r.result.adults.subarray(Math.max(0, from), Math.min(g.days, to) + 1)
    return sum + (within.some((n) => n / BEES_PER_FRAME < s.minFrames) ? (weights[i] ?? 0) : 0)
  }, 0)
  return {
    days,
    lowest: { day: lowest.day, frames: lowest.median },
    chanceUnder: Math.min(1, chanceUnder),
    until: s.until,
    counted: s.counted,
    assumed: s.assumed,
  }
}

export interface FrameEffect {
  on: Day
  frames: number
  before: StrengthForecast
  after: StrengthForecast
  /** 'One frame of capped brood on Tue 12 May lifts the lowest point from 2.8 to 4.0 frames…' */
  sentence: string
}

/** What a frame of capped brood given on that day would change. */
export function effectOfCappedFrame(
  story: Story,
  firstEgg: DayPmf,
  options: StrengthOptions,
  on: Day,
  frames = 1,
): FrameEffect {
  const before = strengthForecast(story, firstEgg, options)
  const after = strengthForecast(story, firstEgg, { ...options, extra: { on, frames } })
  const pc = (p: number): string => `${Math.round(p * 100)} %`
  const what = frames === 1 ? 'One frame' : `${frames} frames`
  const sentence =
    `${what} of capped brood lifts the lowest point from ${before.lowest.frames.toFixed(1)} to ` +
    `${after.lowest.frames.toFixed(1)} frames of bees; the chance of falling under ${options.minFrames} goes from ` +
    `${pc(before.chanceUnder)} to ${pc(after.chanceUnder)}.`
  return { on, frames, before, after, sentence }
}
