/**
 * Restricted mean: days survived on average out of the first `days`, the area under the curve up to there. A curve that
 * ends earlier is carried on at its last value.
 *
 * Variance: sum over losses at t of (area from t on)² d / (n (n - d)), without the n/(n-1) factor some programs apply.
 * Irwin JO (1949) Journal of Hygiene 47:188-189.
 */
import type { Step } from './kaplan-meier.ts'

/** What is read of a curve here. */
interface Falling {
  steps: readonly Pick<Step, 'day' | 'atRisk' | 'lost' | 'survival'>[]
}

export interface RestrictedMean {
  /** Days. */
  mean: number
  stdErr: number
}

/** Example: two colonies, one lost on day 10, one still there on day 30: restrictedMean(curve, 30).mean = 20. */
export function restrictedMean(curve: Falling, days: number): RestrictedMean {
  const steps = curve.steps.filter((s) => s.day <= days)
  let after = 0
  let variance = 0
  let until = days
  for (const s of steps.toReversed()) {
    after += s.survival * (until - s.day)
    until = s.day
    if (s.lost > 0 && after > 0) variance += (after * after * s.lost) / (s.atRisk * (s.atRisk - s.lost))
  }
  return { mean: after + until, stdErr: Math.sqrt(variance) }
}

/**
 * How many of the first `days` the curve covers: up to the last day on which anybody was followed, or all of them where
 * everyone was lost. Example: followed to day 40: coveredDays(curve, 60) = 40.
 */
export function coveredDays({ steps }: Falling, days: number): number {
  const end = steps.at(-1)
  if (end === undefined) return 0
  return end.survival === 0 ? days : Math.min(days, end.day)
}
