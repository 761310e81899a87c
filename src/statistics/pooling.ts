/**
 * Partial pooling of removal types: each type's share is drawn toward what all types have in common, the more so the
 * fewer its colonies, so that 2 of 2 is not called best. Each type's true share comes from one Beta common to all
 * (common-beta.ts), which is uncertain itself.
 */
import { betaBinomial, quantileOf } from './beta-binomial.ts'
import { type Counts, hyperPosterior, logistic } from './common-beta.ts'
import type { Curve } from './kaplan-meier.ts'
import { logBeta } from './special.ts'

export interface Pooled {
  /** Expected share for the next colony of this type. */
  share: number
  lower: number
  upper: number
  /** How many of the next ten to expect, by the beta-binomial: both ends included. */
  ofNextTen: [least: number, most: number]
}

/**
 * Every type's share after pooling, with limits; null for fewer than two types with colonies: nothing to pool with.
 *
 * What the types have in common is not known but estimated, and the limits say so: they are taken over every mean and
 * strength, each weighed by how well it explains the colonies seen ({@link hyperPosterior}). Limits at the best strength
 * alone covered 72 to 86 % where they said 95.
 * Example: pool([{ kept: 30, of: 40 }, { kept: 2, of: 2 }]) puts the second near the first, not at 1.
 */
export function pool(types: readonly Counts[], confidence = 0.95): Pooled[] | null {
  const seen = types.filter((t) => t.of > 0)
  if (seen.length < 2) return null
  const cells = hyperPosterior(seen)
  const tail = (1 - confidence) / 2
  return types.map((t) => {
    const shapes = cells.map(({ mean, strength, weight }) => ({
      kept: mean * strength + t.kept,
      lost: (1 - mean) * strength + t.of - t.kept,
      weight,
    }))
    const next = new Float64Array(NEXT + 1)
    for (const c of shapes)
      for (const [k, p] of betaBinomial(NEXT, c.kept, c.lost).entries())
        next[k] = (next[k] ?? 0) + c.weight * p
    const [lower, upper] = limitsOfMixture(shapes, tail)
    return {
      share: shapes.reduce((sum, c) => sum + (c.weight * c.kept) / (c.kept + c.lost), 0),
      lower,
      upper,
      ofNextTen: [quantileOf(next, tail), quantileOf(next, 1 - tail)],
    }
  })
}

const NEXT = 10

interface Shape {
  kept: number
  lost: number
  weight: number
}

/** Points on the log odds at which a mixture's density is worked out: limits are good to a thousandth of their width. */
const POINTS = 240
/** Beyond these log odds (a share of two in a thousand million) the density is taken as the power that it comes to. */
const FARTHEST = 20

/**
 * The shares below which a mixture of Beta distributions lies with chances of `tail` and 1 - `tail`: its density on the
 * log odds, added up. (Inverting the incomplete beta for every part takes fifty times as long.)
 */
function limitsOfMixture(shapes: readonly Shape[], tail: number): [lower: number, upper: number] {
  const [low, high] = rangeOf(shapes)
  const step = (high - low) / (POINTS - 1)
  const density = new Float64Array(POINTS)
  // Each point's logs are worked out once for all parts; the two beyond the ends stand for what lies outside.
  const at = (odds: number, k: 0 | 1): number => -Math.log1p(Math.exp(k === 0 ? -odds : odds))
  const odds = Float64Array.from({ length: POINTS }, (_, i) => low + i * step)
  const [logShare, logRest] = [odds.map((o) => at(o, 0)), odds.map((o) => at(o, 1))]
  let [before, after] = [0, 0]
  for (const { kept, lost, weight } of shapes) {
    const constant = Math.log(weight) - logBeta(kept, lost)
    for (let i = 0; i < POINTS; i++)
      density[i] =
        (density[i] as number) +
        Math.exp(constant + kept * (logShare[i] as number) + lost * (logRest[i] as number))
    const [below, above] = [low - step / 2, high + step / 2]
    before += Math.exp(constant + kept * at(below, 0) + lost * at(below, 1)) / (kept * step)
    after += Math.exp(constant + kept * at(above, 0) + lost * at(above, 1)) / (lost * step)
  }
  const all = before + density.reduce((a, b) => a + b, 0) + after
  const share = (p: number): number => logistic(crossed(density, all * p - before, low, step))
  return [share(tail), share(1 - tail)]
}

/** Log odds between which a mixture lies, nearly all of it: of Beta(a, b), the variance is below 1/a + 1/b + 1/a² + 1/b². */
function rangeOf(shapes: readonly Shape[]): [low: number, high: number] {
  let [low, high] = [FARTHEST, -FARTHEST]
  for (const { kept: a, lost: b } of shapes) {
    const [centre, reach] = [Math.log(a / b), 6 * Math.sqrt(1 / a + 1 / b + 1 / (a * a) + 1 / (b * b))]
    low = Math.min(low, centre - reach)
    high = Math.max(high, centre + reach)
  }
  return [Math.max(-FARTHEST, low), Math.min(FARTHEST, high)]
}

/** The log odds at which the running sum of a density reaches `target`; between two points along a line. */
function crossed(density: Float64Array, target: number, low: number, step: number): number {
  if (target <= 0) return Number.NEGATIVE_INFINITY
  let sum = 0
  for (const [i, d] of density.entries()) {
    if (sum + d >= target) return low + (i - 0.5 + (target - sum) / d) * step
    sum += d
  }
  return Number.POSITIVE_INFINITY
}

/**
 * What a curve knows about survival to a day, as so many kept of so many: the numbers which, had all fates been known,
 * would give the same survival and the same Greenwood variance. Dorey FJ, Korn EL (1987) Statistics in Medicine
 * 6:679-687. Where the variance is 0: those followed to the day (none lost), or those lost (all lost).
 * Null when nobody was followed that long, or the curve hangs on a handful by then. Example: without censoring it is the plain count.
 */
export function effectiveCounts(curve: Curve, day: number): Counts | null {
  const last = curve.steps.at(-1)
  const step = curve.steps.findLast((s) => s.day <= day)
  if (last === undefined || (curve.thin !== null && curve.thin.day <= day)) return null
  if (step !== undefined && step.survival === 0) return { kept: 0, of: curve.lost }
  if (last.day < day) return null
  if (step === undefined || step.survival === 1) {
    const still = curve.steps.find((s) => s.day >= day)?.atRisk ?? 0
    return { kept: still, of: still }
  }
  const of = (1 - step.survival) / (step.survival * (step.logStdErr ?? 0) ** 2)
  return { kept: of * step.survival, of }
}
