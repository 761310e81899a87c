/** Adults and brood by day, as a median and an 80 % band: from bees and brood at intake, the odds of laying, and every recount. */
import { BEES_PER_FRAME, CELLS_PER_FRAME_SIDE, framesOfBees } from '../biology/index.ts'
import { addDays, type Day, daysBetween, later } from '../days.ts'
import type { History } from '../journal/index.ts'
import { addBrood, emergingByDay, openBroodUntil } from './brood-sources.ts'
import type { CohortResult } from './cohorts.ts'
import { eggsInSeason, type Hemisphere, LIFE } from './life.ts'
import type { DayPmf } from './pmf.ts'
import type { Story } from './queen-odds.ts'
import {
  ASSUMED,
  ASSUMED_FRAMES,
  COUNTS,
  type Ground,
  LUCKS,
  layings,
  leftsFor,
  oneStory,
  wellForetold,
} from './strength-stories.ts'
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

/** Days to forecast: to day 90, or a month on for a colony that stays longer, up to 200. */
const daysFor = (since: number): number => Math.min(200, Math.max(90, since + 30))

/**
 * The strength of a colony by day.
 *
 * @param story the colony's stories, as known on a day
 * @param firstEgg chance by day since the removal that a queen begins to lay (`queenOdds(story).firstEgg`)
 */
export function strengthForecast(story: Story, firstEgg: DayPmf, options: StrengthOptions): StrengthForecast {
  const { history, today } = story
  const { intake } = history
  const { hemisphere = 'north', minFrames } = options
  const days = options.days ?? daysFor(daysBetween(intake.on, today))
  const at = framesAtIntake(history)
  const counted = countsOf(history, today)
  const eggs = Float64Array.from({ length: days + 1 }, (_, d) =>
    eggsInSeason(addDays(intake.on, d), hemisphere),
  )
  const ground: Ground = {
    start: intake.on,
    days,
    hemisphere,
    openUntil: openBroodUntil(history),
    eggs,
    emerging: emergingByDay(history, story.model.rates, days),
    // Nobody counts no bees: a nought would leave nothing to go on from.
    counts: new Map(counted.map((c) => [daysBetween(intake.on, c.day), Math.max(0.1, c.frames)])),
  }
  const { extra } = options
  if (extra !== undefined)
    addBrood(ground.emerging, daysBetween(intake.on, extra.on), 'capped', extra.frames, 1)
  const start = Math.max(0.1, at ?? ASSUMED_FRAMES) * BEES_PER_FRAME
  const runs = layings(firstEgg, daysBetween(history.removedOn, intake.on)).flatMap((lay) => {
    const lefts = leftsFor(ground, lay)
    return LUCKS.flatMap(({ w: luckily, eggs: spirit }, luck) => {
      const left = lefts[luck]
      if (left === undefined) return []
      return (at === null ? ASSUMED : COUNTS).map(({ factor: count, w }) => {
        const result = oneStory(ground, { adults: start * count, lay, left, spirit, count })
        return { result, w: lay.w * luckily * w * wellForetold(result, ground, count) }
      })
    })
  })
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

/** Spread of the logarithm of bees within one story: what its few steps of luck leave out. Judgement. */
const WITHIN_STORY = 0.12

/** Chance that bees reckoned at `frames` are fewer than `least`: the normal curve, by its logistic likeness (off by 0.01 at most). */
const chanceBelow = (frames: number, least: number): number =>
  frames <= 0 ? 1 : 1 / (1 + Math.exp((-1.702 * Math.log(least / frames)) / WITHIN_STORY))

/** Cells of a full frame of brood, both sides, as frames are counted. */
const CELLS_PER_BROOD_FRAME = 2 * CELLS_PER_FRAME_SIDE * LIFE.frameFill

function summed(runs: { result: CohortResult; w: number }[], g: Ground, s: Summing): StrengthForecast {
  const total = runs.reduce((a, r) => a + r.w, 0)
  const weights = runs.map((r) => r.w / total)
  const days: StrengthDay[] = []
  for (let d = 0; d <= g.days; d++) {
    const frames = runs.map((r) => (r.result.adults[d] ?? 0) / BEES_PER_FRAME)
    const cells = runs.reduce((sum, r, i) => sum + (weights[i] ?? 0) * (r.result.brood[d] ?? 0), 0)
    const [low = 0, median = 0, high = 0] = bands(frames, weights, [0.1, 0.5, 0.9])
    const under = frames.reduce((sum, f, i) => sum + (weights[i] ?? 0) * chanceBelow(f, s.minFrames), 0)
    days.push({ day: addDays(g.start, d), median, low, high, brood: cells / CELLS_PER_BROOD_FRAME, under })
  }
  const lowest = days.reduce((a, b) => (b.median < a.median ? b : a))
  const [from, to] = [daysBetween(g.start, s.from), daysBetween(g.start, s.until)]
  const chanceUnder = runs.reduce((sum, r, i) => {
    const within = r.result.adults.subarray(Math.max(0, from), Math.min(g.days, to) + 1)
    const least = within.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY) / BEES_PER_FRAME
    return sum + (weights[i] ?? 0) * chanceBelow(least, s.minFrames)
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
