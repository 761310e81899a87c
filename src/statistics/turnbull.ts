/**
 * Survival when a loss is known only to lie between two days: the estimate that makes what was found most likely.
 * Turnbull BW (1976) JRSS B 38:290-295; found by self-consistency (EM), which only ever climbs.
 */

/** It was last known alive on day `after`, and known dead on day `until`; null: not known dead. */
export interface Interval {
  after: number
  until: number | null
}

/** A gap in which losses may lie, and the chance that one lies in it: after day `from`, up to day `to` (null: later than any look). */
export interface Mass {
  from: number
  to: number | null
  share: number
}

const ROUNDS = 20_000
const STILL = 1e-12

/** The gaps with their shares, in order; empty without intervals. Within a gap nothing can be said of the day. */
export function turnbull(intervals: readonly Interval[]): Mass[] {
  const gaps = gapsOf(intervals)
  if (gaps.length === 0) return []
  const inside = intervals.map((i) =>
    gaps.map(
      (g) => g.from >= i.after && (g.to ?? Number.POSITIVE_INFINITY) <= (i.until ?? Number.POSITIVE_INFINITY),
    ),
  )
  let shares = gaps.map(() => 1 / gaps.length)
  for (let round = 0; round < ROUNDS; round++) {
    const next = gaps.map(() => 0)
    for (const may of inside) {
      const all = shares.reduce((sum, s, g) => sum + (may[g] ? s : 0), 0)
      for (const [g, s] of shares.entries()) if (may[g] && all > 0) next[g] = (next[g] ?? 0) + s / all
    }
    const better = next.map((s) => s / intervals.length)
    const moved = better.reduce((most, s, g) => Math.max(most, Math.abs(s - (shares[g] ?? 0))), 0)
    shares = better
    if (moved < STILL) break
  }
  return gaps.map((g, i) => ({ ...g, share: shares[i] ?? 0 }))
}

/** Gaps that begin with a last day alive and end with the next known day of death, with nothing between (Turnbull's innermost intervals). */
function gapsOf(intervals: readonly Interval[]): Omit<Mass, 'share'>[] {
  const ends = (i: Interval): number => i.until ?? Number.POSITIVE_INFINITY
  const points = [
    ...intervals.map((i) => ({ day: i.after, opens: true })),
    ...intervals.map((i) => ({ day: ends(i), opens: false })),
  ].sort((a, b) => a.day - b.day || Number(a.opens) - Number(b.opens))
  return points.flatMap((p, i) => {
    const next = points[i + 1]
    if (!p.opens || next === undefined || next.opens) return []
    return [{ from: p.day, to: next.day === Number.POSITIVE_INFINITY ? null : next.day }]
  })
}
