/** From single colonies to a row of the report, with limits; and rules against each other, colony by colony. */
import type { Fate, Result } from './play.ts'

/** A mean and its 95 % limits. */
export interface Estimate {
  mean: number
  lower: number
  upper: number
}

const Z = 1.959964

/** Of a share: Wilson's limits, which stay inside 0 and 1 (Wilson 1927). */
export function share(hits: number, n: number): Estimate {
  const p = hits / n
  const centre = (p + (Z * Z) / (2 * n)) / (1 + (Z * Z) / n)
  const half = (Z / (1 + (Z * Z) / n)) * Math.sqrt((p * (1 - p)) / n + (Z * Z) / (4 * n * n))
  return { mean: p, lower: Math.max(0, centre - half), upper: Math.min(1, centre + half) }
}

/** Of a mean: normal limits. */
function mean(values: readonly number[]): Estimate {
  const n = values.length
  const m = values.reduce((a, b) => a + b, 0) / n
  const variance = values.reduce((a, b) => a + (b - m) ** 2, 0) / Math.max(1, n - 1)
  const half = Z * Math.sqrt(variance / n)
  return { mean: m, lower: m - half, upper: m + half }
}

export interface Row {
  rule: string
  fates: Record<Fate, Estimate>
  openings: Estimate
  queensLostToOpening: Estimate
  queens: Estimate
  frames: Estimate
  days: Estimate
  cost: Estimate
}

export function rowOf(rule: string, results: readonly Result[]): Row {
  const fate = (f: Fate): Estimate => share(results.filter((r) => r.fate === f).length, results.length)
  const of = (read: (r: Result) => number): Estimate => mean(results.map(read))
  return {
    rule,
    fates: {
      saved: fate('saved'),
      'moved-out-in-error': fate('moved-out-in-error'),
      united: fate('united'),
      died: fate('died'),
      'still-here': fate('still-here'),
    },
    openings: of((r) => r.openings),
    queensLostToOpening: of((r) => r.queensLostToOpening),
    queens: of((r) => r.queens),
    frames: of((r) => r.frames),
    days: of((r) => r.days),
    cost: of((r) => r.cost),
  }
}

/** `a` less `b` on the same colonies: the limits are of the difference, colony by colony, so what both share drops out. */
export function paired(a: readonly Result[], b: readonly Result[], read: (r: Result) => number): Estimate {
  return mean(a.map((r, i) => read(r) - (b[i] === undefined ? Number.NaN : read(b[i]))))
}

export const saved = (r: Result): number => (r.fate === 'saved' ? 1 : 0)
export const cost = (r: Result): number => r.cost
