/** Counting how colonies came by a laying queen, and how long that took. */

import { countByDay, cumulativeIncidence, type Incidence } from '../../statistics/index.ts'
import { PATHS, type Recovery, type RecoveryPath } from '../../stays/index.ts'

export type { RecoveryPath }

export interface PathCount {
  path: RecoveryPath
  colonies: number
  /** Days from intake to the proof, among those that have one (`colonies` of them); null when none has. */
  days: { colonies: number; median: number; least: number; most: number } | null
}

/** How many colonies took each path, and how long it took; every path is listed. */
export function pathCounts(recoveries: readonly Recovery[]): PathCount[] {
  return PATHS.map((path) => {
    const on = recoveries.filter((r) => r.path === path)
    const days = on.flatMap((r) => (r.days === null ? [] : [r.days])).sort((a, b) => a - b)
    const [least, most] = [days[0], days.at(-1)]
    return {
      path,
      colonies: on.length,
      days:
        least === undefined || most === undefined
          ? null
          : { colonies: days.length, median: middle(days), least, most },
    }
  })
}

function middle(sorted: readonly number[]): number {
  const half = Math.floor(sorted.length / 2)
  const upper = sorted[half] ?? 0
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] ?? 0) + upper) / 2
}

/**
 * Share of colonies proven queenright by each day (way 1), against those that left or were lost first (way 2); colonies
 * still open are censored, so the wait of the slow ones is not forgotten.
 */
export function queenrightByDay(recoveries: readonly Recovery[]): Incidence {
  const [counts] = countByDay(
    {
      day: recoveries.map((r) => r.followed),
      way: recoveries.map((r) => (r.days !== null ? 1 : r.path === 'not-yet' ? 0 : 2)),
    },
    2,
  )
  if (counts === undefined) throw new RangeError('queenrightByDay: no counts')
  return cumulativeIncidence(counts)
}
