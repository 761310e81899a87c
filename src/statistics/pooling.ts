/**
 * Partial pooling of removal types: each type's share is drawn toward what all types have in common, the more so the
 * fewer its colonies, so that 2 of 2 is not called best. Beta-binomial, empirical Bayes.
 *
 * Each type's true share comes from one Beta(mean × strength, (1 - mean) × strength); both are set to where the marginal
 * likelihood of all types is greatest. Skellam JG (1948) JRSS B 10:257-261; Efron B, Morris C (1975) JASA 70:311-319.
 */
import { betaBinomial, quantileOf } from './beta-binomial.ts'
import { betaLimits } from './intervals.ts'
import type { Curve } from './kaplan-meier.ts'
import { root } from './root.ts'
import { digamma, logBeta } from './special.ts'

/** `kept` of `of` colonies; `times` such rows (1 when left out). Effective numbers need not be whole. */
export interface Counts {
  kept: number
  of: number
  times?: number
}

export interface CommonBeta {
  mean: number
  /** How many colonies what is common to all types weighs; large when types hardly differ. */
  strength: number
  logLikelihood: number
}

/** Marginal log likelihood, without the binomial coefficients. */
function logLikelihood(rows: readonly Counts[], mean: number, strength: number): number {
  const a = mean * strength
  const b = (1 - mean) * strength
  const base = logBeta(a, b)
  return rows.reduce((sum, r) => sum + (r.times ?? 1) * (logBeta(a + r.kept, b + r.of - r.kept) - base), 0)
}

const logistic = (x: number): number => 1 / (1 + Math.exp(-x))

/** The mean for a given strength; `pull` adds half a colony kept and half lost, so that it stays inside 0..1. */
function meanFor(rows: readonly Counts[], strength: number, pull: boolean): number {
  const slope = (logit: number): number => {
    const mean = logistic(logit)
    const a = mean * strength
    const b = (1 - mean) * strength
    const [da, db] = [digamma(a), digamma(b)]
    const sum = rows.reduce(
      (s, r) => s + (r.times ?? 1) * (digamma(a + r.kept) - da - digamma(b + r.of - r.kept) + db),
      0,
    )
    return strength * mean * (1 - mean) * sum + (pull ? 0.5 - mean : 0)
  }
  return logistic(root(slope, -25, 25) ?? 0)
}

/** Derivative of the marginal log likelihood by the log of the strength, the mean held. */
function strengthSlope(rows: readonly Counts[], mean: number, strength: number): number {
  const a = mean * strength
  const b = strength - a
  const base = digamma(strength) - mean * digamma(a) - (1 - mean) * digamma(b)
  const sum = rows.reduce(
    (s, r) =>
      s +
      (r.times ?? 1) *
        (base +
          mean * digamma(a + r.kept) +
          (1 - mean) * digamma(b + r.of - r.kept) -
          digamma(strength + r.of)),
    0,
  )
  return strength * sum
}

/**
 * The Beta common to all types, by maximum marginal likelihood over the strength from `weakest` to `strongest`.
 * `pull`: a Jeffreys prior on the mean, for when every colony was kept or every one lost.
 * Example: Geissler's sibships give a = 34.096, b = 31.572 (tests/review/pooling.test.ts).
 */
export function commonBeta(
  rows: readonly Counts[],
  { weakest = 0.1, strongest = 1e6, pull = false } = {},
): CommonBeta {
  // At the best mean for each strength, the likelihood's slope by the strength is the slope with the mean held.
  const slope = (log: number): number =>
    strengthSlope(rows, meanFor(rows, Math.exp(log), pull), Math.exp(log))
  const [low, high] = [Math.log(weakest), Math.log(strongest)]
  const log = slope(high) >= 0 ? high : slope(low) <= 0 ? low : (root(slope, low, high) ?? high)
  const strength = Math.exp(log)
  const mean = meanFor(rows, strength, pull)
  return { mean, strength, logLikelihood: logLikelihood(rows, mean, strength) }
}

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
 * The strength is held between 1 colony and as many as were seen in all: with types that differ no more than chance
 * would have it, the likelihood rises for ever, and limits would shrink to nothing.
 * Example: pool([{ kept: 30, of: 40 }, { kept: 2, of: 2 }]) puts the second near the first, not at 1.
 */
export function pool(
  types: readonly Counts[],
  confidence = 0.95,
): { common: CommonBeta; types: Pooled[] } | null {
  const seen = types.filter((t) => t.of > 0)
  const all = seen.reduce((sum, t) => sum + t.of, 0)
  if (seen.length < 2) return null
  const common = commonBeta(seen, { weakest: 1, strongest: Math.max(2, all), pull: true })
  const [a, b] = [common.mean * common.strength, (1 - common.mean) * common.strength]
  return {
    common,
    types: types.map((t) => {
      const [kept, lost] = [a + t.kept, b + t.of - t.kept]
      const [lower, upper] = betaLimits(kept, lost, confidence)
      const next = betaBinomial(10, kept, lost)
      const tail = (1 - confidence) / 2
      const ofNextTen: Pooled['ofNextTen'] = [quantileOf(next, tail), quantileOf(next, 1 - tail)]
      return { share: kept / (kept + lost), lower, upper, ofNextTen }
    }),
  }
}

/**
 * What a curve knows about survival to a day, as so many kept of so many: the numbers which, had all fates been known,
 * would give the same survival and the same Greenwood variance. Dorey FJ, Korn EL (1987) Statistics in Medicine
 * 6:679-687. Where the variance is 0: those followed to the day (none lost), or those lost (all lost).
 * Null when nobody was followed that long. Example: without censoring it is the plain count.
 */
export function effectiveCounts(curve: Curve, day: number): Counts | null {
  const last = curve.steps.at(-1)
  const step = curve.steps.findLast((s) => s.day <= day)
  if (last === undefined) return null
  if (step !== undefined && step.survival === 0) return { kept: 0, of: curve.lost }
  if (last.day < day) return null
  if (step === undefined || step.survival === 1) {
    const still = curve.steps.find((s) => s.day >= day)?.atRisk ?? 0
    return { kept: still, of: still }
  }
  const of = (1 - step.survival) / (step.survival * (step.logStdErr ?? 0) ** 2)
  return { kept: of * step.survival, of }
}
