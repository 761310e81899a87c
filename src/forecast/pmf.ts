/** Distributions over whole days: arrays indexed by day, summing to at most one. */

/** A distribution whose first entry is at `from`. Sums to 1 unless the thing may never happen. */
export interface DayPmf {
  from: number
  p: readonly number[]
}

/** The chance per day of an event that has not happened yet: p(d) / P(not before d). Example: [0.5, 0.5] gives [0.5, 1]. */
export function hazards(pmf: readonly number[]): number[] {
  let left = 1
  return pmf.map((p) => {
    const h = left > 1e-12 ? Math.min(1, p / left) : 1
    left -= p
    return h
  })
}

/** A log-normal with that mean and spread of the logarithm, at whole days from..to, rescaled to sum to 1 (index = day). */
export function logNormalDays(mean: number, log: number, from: number, to: number): number[] {
  const mu = Math.log(mean) - (log * log) / 2
  const raw = Array.from({ length: to + 1 }, (_, d) =>
    d < from ? 0 : Math.exp(-((Math.log(d) - mu) ** 2) / (2 * log * log)) / d,
  )
  const sum = raw.reduce((a, b) => a + b, 0)
  return raw.map((p) => p / sum)
}
