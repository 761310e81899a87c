/** Limits for a share seen as x of n, when everyone's fate is known. */
import { betaQuantile, betaQuantileAbove, zFor } from './special.ts'

export type Limits = [lower: number, upper: number]

function check(name: string, x: number, n: number): void {
  if (!(n > 0 && x >= 0 && x <= n))
    throw new RangeError(`${name}: needs 0 <= x <= n and n > 0, not x = ${x}, n = ${n}`)
}

/**
 * Wilson's score interval. Wilson EB (1927) JASA 22:209-212; Newcombe RG (1998) Statistics in Medicine 17:857-872,
 * method 3. Example: wilson(81, 263) = [0.25529, 0.36621].
 */
export function wilson(x: number, n: number, confidence = 0.95): Limits {
  check('wilson', x, n)
  const z = zFor(confidence)
  const half = z * Math.sqrt(z * z + 4 * x * (1 - x / n))
  const middle = 2 * x + z * z
  const width = 2 * (n + z * z)
  // (middle - half) / width, with the difference of near equals multiplied out: x = 1 of a million stays exact.
  const lower = (2 * x * x) / (n * (middle + half))
  return [x === 0 ? 0 : lower, x === n ? 1 : Math.min(1, (middle + half) / width)]
}

/** Wilson's interval with continuity correction; Newcombe's method 4, R's prop.test. Example: [0.2535, 0.3682] for 81/263. */
export function wilsonCorrected(x: number, n: number, confidence = 0.95): Limits {
  check('wilsonCorrected', x, n)
  const z = zFor(confidence)
  // R takes the correction no larger than the distance from one half.
  const c = Math.min(0.5, Math.abs(x - n / 2))
  const side = (count: number, sign: 1 | -1): number => {
    const p = count / n
    const t = p + (z * z) / (2 * n)
    const half = z * Math.sqrt((p * (1 - p)) / n + (z * z) / (4 * n * n))
    return (t + sign * half) / (1 + (z * z) / n)
  }
  return [x === 0 ? 0 : Math.max(0, side(x - c, -1)), x === n ? 1 : Math.min(1, side(x + c, 1))]
}

/** Equal-tailed limits of Beta(a, b). Example: betaLimits(1, 1, 0.95) = [0.025, 0.975]. */
export function betaLimits(a: number, b: number, confidence = 0.95): Limits {
  const tail = (1 - confidence) / 2
  return [betaQuantile(tail, a, b), betaQuantileAbove(tail, a, b)]
}

/**
 * Jeffreys' interval, Beta(x + 1/2, n - x + 1/2), with the end at 0 or 1 kept when x is 0 or n.
 * Brown LD, Cai TT, DasGupta A (2001) Statistical Science 16:101-133.
 */
export function jeffreys(x: number, n: number, confidence = 0.95): Limits {
  check('jeffreys', x, n)
  const [lower, upper] = betaLimits(x + 0.5, n - x + 0.5, confidence)
  return [x === 0 ? 0 : lower, x === n ? 1 : upper]
}

/** Exact limits (Clopper CJ, Pearson ES 1934, Biometrika 26:404-413): too wide rather than too narrow. */
export function exact(x: number, n: number, confidence = 0.95): Limits {
  check('exact', x, n)
  const tail = (1 - confidence) / 2
  return [x === 0 ? 0 : betaQuantile(tail, x, n - x + 1), x === n ? 1 : betaQuantileAbove(tail, x + 1, n - x)]
}
