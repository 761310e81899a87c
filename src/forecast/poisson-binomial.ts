/** How many of several colonies, each with its own chance: the Poisson-binomial distribution, exactly. */

/**
 * Chances of 0, 1, … n successes, by adding one colony after the other (direct convolution; Biscarri, Zhao & Brunner
 * 2018, Comput. Stat. Data Anal. 122:92-100). Throws RangeError for a chance outside 0-1.
 * Example: poissonBinomial([0.5, 0.5]) = [0.25, 0.5, 0.25].
 */
export function poissonBinomial(chances: readonly number[]): Float64Array {
  const pmf = new Float64Array(chances.length + 1)
  pmf[0] = 1
  chances.forEach((p, i) => {
    if (!(p >= 0 && p <= 1)) throw new RangeError(`poissonBinomial: a chance must be 0 to 1, not ${p}`)
    for (let k = i + 1; k > 0; k--) pmf[k] = (pmf[k] ?? 0) * (1 - p) + (pmf[k - 1] ?? 0) * p
    pmf[0] = (pmf[0] ?? 0) * (1 - p)
  })
  return pmf
}

/** Chance of more than k, summed from the far end so that small chances keep their digits. */
export function moreThan(pmf: Float64Array, k: number): number {
  let sum = 0
  for (let i = pmf.length - 1; i > k; i--) sum += pmf[i] ?? 0
  return sum
}

/** Smallest k with a chance of at most `short` of needing more. Example: enoughFor([0.25, 0.5, 0.25], 0.3) = 1. */
export function enoughFor(pmf: Float64Array, short: number): number {
  let beyond = 0
  for (let k = pmf.length - 1; k > 0; k--) {
    beyond += pmf[k] ?? 0
    if (beyond > short) return k
  }
  return 0
}

/** Smallest k with P(at most k) >= share. */
export function quantile(pmf: Float64Array, share: number): number {
  let run = 0
  for (let k = 0; k < pmf.length; k++) {
    run += pmf[k] ?? 0
    if (run >= share) return k
  }
  return pmf.length - 1
}

/** Expected number. */
export const meanOf = (pmf: Float64Array): number => pmf.reduce((sum, p, k) => sum + p * k, 0)
