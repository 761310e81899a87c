/**
 * Gray's test: do groups differ in the share that left one way, by each day, when other ways of leaving compete with it?
 * The log-rank test compares rates among those still there; this compares the cumulative incidence itself, which is what
 * "how many were moved out" asks.
 *
 * Gray RJ (1988) Annals of Statistics 16:1141-1154, with rho = 0 and no strata. Ties are allowed for in the variance as
 * cmprsk 2.2-11 (R) does: one factor for several that left on a day. With colonies entered late the risk sets are those
 * that were followed; the paper has no late entries, so there the test is an approximation.
 */
import type { DayCounts } from './day-counts.ts'
import { at, cholesky, dot, type Matrix, solve, submatrix, zeros } from './matrix.ts'
import { chiSquareAbove } from './special.ts'

export interface GrayTest {
  chisq: number
  df: number
  p: number
}

/** One group on its way through the days. */
interface Walk {
  /** At risk on this day. */
  n: number
  /** Left on this day by the way asked about, and by any other. */
  this: number
  other: number
  /** Share still there, and share left by the way asked about, just before this day. */
  free: number
  share: number
  freeAfter: number
}

/** What adds up over the days: the score, and the pieces of its variance. `V` below is one group's martingale. */
interface Sums {
  score: Float64Array
  variance: Matrix
  /** By pair of groups: weights against the common hazard, summed up to the day. */
  c: Matrix
  /** By group: variance of V, and its covariance with each group's part of the score. */
  own: Float64Array
  cross: Matrix
}

/**
 * Compares groups by the ways named (1 is the first way of the counts); all other ways compete. A group of which nobody was
 * still there when somebody left that way is left out, and not counted in df. Null where fewer than two groups can be compared,
 * or nobody left that way.
 * Example: mgus2 by sex and R's other sets in tests/reference/gray.test.ts.
 */
export function grayTest(all: readonly DayCounts[], ways: readonly number[]): GrayTest | null {
  const groups = all.filter((g) => g.lastDay >= 0)
  if (groups.length < 2) return null
  const sums: Sums = {
    score: new Float64Array(groups.length),
    variance: zeros(groups.length),
    c: zeros(groups.length),
    own: new Float64Array(groups.length),
    cross: zeros(groups.length),
  }
  walk(groups, ways, sums)
  return quadratic(sums)
}

function walk(groups: readonly DayCounts[], ways: readonly number[], sums: Sums): void {
  const last = groups.reduce((m, g) => Math.max(m, g.lastDay), -1)
  const states = groups.map((): Walk => ({ n: 0, this: 0, other: 0, free: 1, share: 0, freeAfter: 1 }))
  let common = 0
  for (let day = 0; day <= last; day++) {
    let gone = 0
    for (const [g, state] of states.entries()) gone += read(state, groups[g], ways, day)
    if (gone === 0) continue
    common = step(states, common, sums)
    for (const s of states) {
      if (s.n > 0) s.share += (s.free * s.this) / s.n
      s.free = s.freeAfter
    }
  }
}

/** Reads a day's counts into a group's state; how many left. */
function read(s: Walk, counts: DayCounts | undefined, ways: readonly number[], day: number): number {
  s.n = counts?.atRisk[day] ?? 0
  s.this = 0
  s.other = 0
  for (const [w, lost] of (counts?.lost ?? []).entries()) {
    const k = lost[day] ?? 0
    if (ways.includes(w + 1)) s.this += k
    else s.other += k
  }
  s.freeAfter = s.n > 0 ? (s.free * (s.n - s.this - s.other)) / s.n : s.free
  return s.this + s.other
}

/** Adds a day on which somebody left; the common share left this way after it, all groups as one. */
function step(states: readonly Walk[], before: number, sums: Sums): number {
  const seen = states.map((s) => s.n > 0 && s.free > 0)
  // R(t)/S(t-): a group's risk set as it would be had nobody left the other ways.
  const size = states.map((s, g) => (seen[g] ? s.n / s.free : 0))
  const all = size.reduce((a, b) => a + b, 0)
  const left = states.reduce((sum, s) => sum + s.this, 0)
  if (all === 0) return before
  const after = before + left / all
  const subdistribution = size.map((r, g) => r * (1 - (states[g]?.share ?? 0)))
  const allSub = subdistribution.reduce((a, b) => a + b, 0)
  const weight: Matrix = size.map((r, g) =>
    Float64Array.from(size, (q, h) => r * ((g === h ? 1 : 0) - q / all)),
  )
  for (const [g, s] of states.entries()) {
    if (!seen[g]) continue
    if (allSub > 0) add(sums.score, g, s.this - (left * (subdistribution[g] ?? 0)) / allSub)
    const row = sums.c[g]
    if (row !== undefined)
      for (let h = 0; h < row.length; h++) add(row, h, (at(weight, g, h) * left) / (all * (1 - before)))
  }
  for (const [k, s] of states.entries()) {
    if (!seen[k]) continue
    addThisWay(sums, weight, k, s, { left, all, after })
    addOtherWays(sums, k, s, after)
  }
  return after
}

/** Variance from those that left this way: under the hypothesis they are spread over all groups. */
function addThisWay(
  sums: Sums,
  weight: Matrix,
  k: number,
  s: Walk,
  { left, all, after }: { left: number; all: number; after: number },
): void {
  if (left === 0) return
  const lever = s.freeAfter > 0 ? 1 - (1 - after) / s.freeAfter : 1
  const ties = left > 1 ? 1 - (left - 1) / (all * s.free - 1) : 1
  const spread = (ties * s.free * left) / (all * s.n)
  const pull = (i: number): number => at(weight, i, k) - lever * at(sums.c, i, k)
  addVariance(sums, k, lever, spread, pull)
}

/** Variance from those that left another way. */
function addOtherWays(sums: Sums, k: number, s: Walk, after: number): void {
  if (s.other === 0 || s.freeAfter <= 0) return
  const lever = (1 - after) / s.freeAfter
  const ties = s.other > 1 ? 1 - (s.other - 1) / (s.n - 1) : 1
  const spread = (ties * s.free * s.free * s.other) / (s.n * s.n)
  addVariance(sums, k, -lever, spread, (i) => lever * at(sums.c, i, k))
}

function addVariance(
  sums: Sums,
  k: number,
  lever: number,
  spread: number,
  pull: (group: number) => number,
): void {
  add(sums.own, k, lever * lever * spread)
  for (const [i, row] of sums.variance.entries()) {
    const pulled = pull(i)
    const cross = sums.cross[i]
    if (cross !== undefined) add(cross, k, pulled * lever * spread)
    for (let j = 0; j < row.length; j++) add(row, j, pulled * pull(j) * spread)
  }
}

const add = (to: Float64Array, i: number, what: number): void => {
  to[i] = (to[i] ?? 0) + what
}

/** A variance so much smaller than the largest is none, but for rounding. */
const SAYS_NOTHING = 1e-12

/** The score in units of its variance; one group is left out, because the score adds up to nothing. */
function quadratic({ score, variance, c, own, cross }: Sums): GrayTest | null {
  const whole = variance.map((row, i) =>
    Float64Array.from(row, (v, j) => {
      let sum = v
      for (let k = 0; k < score.length; k++)
        sum +=
          at(c, i, k) * at(c, j, k) * (own[k] ?? 0) +
          at(c, i, k) * at(cross, j, k) +
          at(c, j, k) * at(cross, i, k)
      return sum
    }),
  )
  // A group nobody of which was still there when somebody left this way says nothing, as in the log-rank test.
  const most = whole.reduce((m, row, g) => Math.max(m, row[g] ?? 0), 0)
  const compared = whole.flatMap((row, g) => ((row[g] ?? 0) > SAYS_NOTHING * most ? [g] : []))
  const keep = compared.slice(0, -1)
  if (keep.length === 0) return null
  const factor = cholesky(submatrix(whole, keep))
  if (factor === null) return null
  const kept = Float64Array.from(keep, (g) => score[g] ?? 0)
  const chisq = dot(kept, solve(factor, kept))
  return { chisq, df: keep.length, p: chiSquareAbove(chisq, keep.length) }
}
