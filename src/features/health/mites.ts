/**
 * Mite washes: mites per 100 bees with the limits of what so small a sample can tell, what changed since the last one,
 * and how that stands to the protocol's threshold in that month.
 *
 * The limits are Wilson's (src/review/intervals.ts), as if every bee were washed by chance on its own. Mites sit unevenly
 * on bees, so the true uncertainty is larger, never smaller.
 */

import { type Day, daysBetween } from '../../days.ts'
import type { MiteWash, StandingEntry } from '../../journal/index.ts'
import { miteThresholdOn, type Protocol } from '../../recovery/index.ts'
import { wilson } from '../../statistics/index.ts'

/** A count and what it says, rates in mites per 100 bees. */
export interface Wash {
  on: Day
  bees: number
  mites: number
  rate: number
  lower: number
  upper: number
  threshold: number
  /** 'either': the limits reach over the threshold, so the sample cannot tell. */
  stands: 'under' | 'over' | 'either'
  /** Few bees give wide limits; common practice asks for about 300 (half a US cup). */
  small: boolean
}

/** Under this many bees a wash is called small: half of the usual 300. Judgement. */
const SMALL = 150

export function washOf(e: MiteWash, protocol: Protocol): Wash {
  const [lower, upper] = wilson(Math.min(e.mites, e.bees), e.bees).map((x) => 100 * x) as [number, number]
  const rate = (100 * e.mites) / e.bees
  const threshold = miteThresholdOn(protocol, e.on)
  return {
    on: e.on,
    bees: e.bees,
    mites: e.mites,
    rate,
    lower,
    upper,
    threshold,
    stands: lower >= threshold ? 'over' : upper < threshold ? 'under' : 'either',
    small: e.bees < SMALL,
  }
}

/** Every wash of a colony up to a day, oldest first. */
export const washesOf = (entries: readonly StandingEntry[], today: Day, protocol: Protocol): Wash[] =>
  entries
    .filter((e): e is MiteWash => e.kind === 'mite-wash' && e.on <= today)
    .map((e) => washOf(e, protocol))

export interface Trend {
  from: Wash
  to: Wash
  days: number
  /** Change in mites per 100 bees, with its limits. */
  change: number
  lower: number
  upper: number
  /** 'unclear': the limits of the change include none. */
  is: 'rising' | 'falling' | 'unclear'
  /** Days in which the rate would double at this pace; only of a rise between two rates above zero. */
  doublesIn: number | null
}

/**
 * What changed between two washes: the difference of two shares with Newcombe's hybrid score limits (Newcombe RG 1998,
 * Statistics in Medicine 17:873-890, method 10). Example: 9 of 300, then 24 of 300: +5 per 100, 1.4 to 8.9.
 */
export function changeBetween(from: Wash, to: Wash): Trend {
  const change = to.rate - from.rate
  const lower = change - Math.hypot(to.rate - to.lower, from.upper - from.rate)
  const upper = change + Math.hypot(to.upper - to.rate, from.rate - from.lower)
  const days = daysBetween(from.on, to.on)
  const rises = change > 0 && from.rate > 0 && days > 0
  return {
    from,
    to,
    days,
    change,
    lower,
    upper,
    is: lower > 0 ? 'rising' : upper < 0 ? 'falling' : 'unclear',
    doublesIn: rises ? (days * Math.LN2) / Math.log(to.rate / from.rate) : null,
  }
}

/** The change from the wash before to the last one, on another day; null when there are not two. */
export function trendOf(washes: readonly Wash[]): Trend | null {
  const last = washes.at(-1)
  const before = last === undefined ? undefined : washes.findLast((w) => w.on < last.on)
  return last === undefined || before === undefined ? null : changeBetween(before, last)
}
