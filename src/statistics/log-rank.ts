/**
 * The log-rank test: were groups lost at different rates? With weight 1 the Peto-Peto test, which stresses early losses.
 *
 * Mantel N (1966) Cancer Chemotherapy Reports 50:163-170; Peto R, Peto J (1972) JRSS A 135:185-207;
 * weights S(t-)^rho: Harrington DP, Fleming TR (1982) Biometrika 69:553-566. Variance hypergeometric, ties included.
 */
import { type DayCounts, lostOn } from './day-counts.ts'
import { at, cholesky, dot, type Matrix, solve, submatrix, zeros } from './matrix.ts'
import { chiSquareAbove } from './special.ts'

export interface LogRank {
  /** By group, weighted: losses seen, and losses expected had all groups one rate. */
  observed: Float64Array
  expected: Float64Array
  variance: Matrix
  chisq: number
  df: number
  p: number
}

/**
 * Compares groups; null when fewer than two of them can be compared (nobody at risk when somebody was lost).
 * Left truncation is allowed for. Example: see tests/reference/survival.test.ts.
 */
export function logRank(groups: readonly DayCounts[], rho = 0): LogRank | null {
  return tested(observedAndExpected(groups, rho))
}

/**
 * The same with colonies compared only with those of their own stratum, such as the kind of job: the differences and
 * their variances are added up over the strata. Every stratum lists the same groups in the same order; a group may have
 * nobody in a stratum. Example: see tests/reference/review-tests.test.ts.
 */
export function stratifiedLogRank(strata: readonly (readonly DayCounts[])[], rho = 0): LogRank | null {
  const [first, ...rest] = strata.map((groups) => observedAndExpected(groups, rho))
  if (first === undefined) return null
  const sum = rest.reduce(
    (a, b) => ({
      observed: a.observed.map((x, g) => x + (b.observed[g] ?? 0)),
      expected: a.expected.map((x, g) => x + (b.expected[g] ?? 0)),
      variance: a.variance.map((row, g) => row.map((x, h) => x + at(b.variance, g, h))),
    }),
    first,
  )
  return tested(sum)
}

function tested(sums: Pick<LogRank, 'observed' | 'expected' | 'variance'>): LogRank | null {
  const groups = Array.from(sums.expected, (_, g) => g)
  const compared = groups.filter((g) => (sums.expected[g] ?? 0) > 0)
  // The differences add up to 0, so one group is left out.
  const keep = compared.slice(0, -1)
  if (keep.length === 0) return null
  const factor = cholesky(submatrix(sums.variance, keep))
  if (factor === null) return null
  const difference = Float64Array.from(keep, (g) => (sums.observed[g] ?? 0) - (sums.expected[g] ?? 0))
  const chisq = dot(difference, solve(factor, difference))
  return { ...sums, chisq, df: keep.length, p: chiSquareAbove(chisq, keep.length) }
}

function observedAndExpected(
  groups: readonly DayCounts[],
  rho: number,
): Pick<LogRank, 'observed' | 'expected' | 'variance'> {
  const observed = new Float64Array(groups.length)
  const expected = new Float64Array(groups.length)
  const variance = zeros(groups.length)
  const last = groups.reduce((m, c) => (c.lastDay > m ? c.lastDay : m), -1)
  let survival = 1
  for (let day = 0; day <= last; day++) {
    const lost = groups.map((c) => lostOn(c, day))
    const d = lost.reduce((a, b) => a + b, 0)
    if (d === 0) continue
    const atRisk = groups.map((c) => c.atRisk[day] ?? 0)
    const n = atRisk.reduce((a, b) => a + b, 0)
    const weight = survival ** rho
    const spread = n > 1 ? (weight * weight * d * (n - d)) / (n - 1) : 0
    for (const [g, r] of atRisk.entries()) {
      observed[g] = (observed[g] ?? 0) + weight * (lost[g] ?? 0)
      expected[g] = (expected[g] ?? 0) + (weight * d * r) / n
      addCovariances(variance, g, r, atRisk, n, spread)
    }
    survival *= (n - d) / n
  }
  return { observed, expected, variance }
}

function addCovariances(
  variance: Matrix,
  g: number,
  r: number,
  atRisk: readonly number[],
  n: number,
  spread: number,
): void {
  const row = variance[g]
  if (row === undefined || r === 0 || spread === 0) return
  for (const [h, other] of atRisk.entries())
    row[h] = at(variance, g, h) + spread * (r / n) * ((g === h ? 1 : 0) - other / n)
}
