/** How many stands of a yard are taken and free by date: what new jobs can be taken on. */
import { addDays, type Day } from '../days.ts'
import { moreThan, poissonBinomial, quantile } from './poisson-binomial.ts'
import type { MoveOutForecast } from './readiness.ts'

export interface OccupancyDay {
  day: Day
  /** Colonies still here: expected number, and the ends of the 80 % band. */
  expected: number
  low: number
  high: number
  /** Stands free nine times in ten; null when the number of stands is not known. */
  freeSurely: number | null
  /** Chance that at least one stand is free; null likewise. */
  anyFree: number | null
}

/** Days from being ready to being gone: the window's due day (protocol, move-out +3). */
const DAYS_TO_GO = 3

/** Chance that a colony is still here so many days from today. One that never gets ready stays. */
export function stillHere(f: MoveOutForecast, ahead: number, daysToGo = DAYS_TO_GO): number {
  let gone = 0
  for (let d = 0; d <= ahead - daysToGo; d++) gone += f.chances.p[d] ?? 0
  return Math.max(0, Math.min(1, 1 - gone))
}

/**
 * The yard by day. Deaths and absconding are left out: a stand is promised only when its colony is expected to move on.
 *
 * @param stands how many stands the yard has; null when nobody said
 */
export function occupancyForecast(
  colonies: readonly MoveOutForecast[],
  today: Day,
  ahead: number,
  stands: number | null,
  daysToGo = DAYS_TO_GO,
): OccupancyDay[] {
  return Array.from({ length: ahead + 1 }, (_, d) => {
    const here = colonies.map((c) => stillHere(c, d, daysToGo))
    const pmf = poissonBinomial(here)
    return {
      day: addDays(today, d),
      expected: here.reduce((a, b) => a + b, 0),
      low: quantile(pmf, 0.1),
      high: quantile(pmf, 0.9),
      freeSurely: stands === null ? null : Math.max(0, stands - quantile(pmf, 0.9)),
      anyFree: stands === null ? null : stands > colonies.length ? 1 : 1 - moreThan(pmf, stands - 1),
    }
  })
}

/** The first day on which so many stands are free nine times in ten; null when not within the forecast. */
export const freeFrom = (days: readonly OccupancyDay[], stands: number): Day | null =>
  days.find((d) => (d.freeSurely ?? 0) >= stands)?.day ?? null
