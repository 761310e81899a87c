/**
 * Beta-binomial: how many of m succeed when the chance itself is uncertain, Beta(a, b).
 * Skellam JG (1948) JRSS B 10:257-261.
 */
import { logBeta, logGamma } from './special.ts'

/** Chances of 0..m successes. Example: betaBinomial(1, 1, 2) = [2/3, 1/3]. */
export function betaBinomial(m: number, a: number, b: number): Float64Array {
  if (!(m >= 0 && Number.isInteger(m) && a > 0 && b > 0))
    throw new RangeError(`betaBinomial: needs whole m >= 0 and a, b > 0, not m = ${m}, a = ${a}, b = ${b}`)
  const base = logGamma(m + 1) - logBeta(a, b)
  return Float64Array.from({ length: m + 1 }, (_, k) =>
    Math.exp(base - logGamma(k + 1) - logGamma(m - k + 1) + logBeta(k + a, m - k + b)),
  )
}

/** Running sums of chances: chance of at most k. */
export function cumulative(chances: ArrayLike<number>): Float64Array {
  let sum = 0
  return Float64Array.from(chances, (p) => {
    sum += p
    return Math.min(1, sum)
  })
}

/** Smallest k with a chance of at most k that reaches p. Example: quantileOf(betaBinomial(5, 2.5, 3.5), 0.9) = 4. */
export function quantileOf(chances: ArrayLike<number>, p: number): number {
  const k = cumulative(chances).findIndex((c) => c >= p)
  return k < 0 ? chances.length - 1 : k
}
