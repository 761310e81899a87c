/**
 * What an old sheet is asked about before it is taken in: names written in several ways, and colonies without an outcome
 * that came so long ago that they are hardly still there. Suggestions only; nothing is changed unasked.
 */
import { type Day, daysBetween } from '../../days.ts'
import { REMOVAL_TYPES } from '../../journal/entry.ts'
import { type SameName, sameNames } from '../review/same-names.ts'
import type { ColonyRow } from './colonies-csv.ts'

export interface Known {
  types: readonly string[]
  yards: readonly string[]
}

export interface Merges {
  types: SameName[]
  yards: SameName[]
}

/** Names to merge, those that the yard has already first. Example: rows with Wall, wall and WALL: keep 'wall'. */
export const mergesIn = (rows: readonly ColonyRow[], known: Known): Merges => ({
  types: sameNames(
    rows.map((r) => r.removal_type),
    [...REMOVAL_TYPES, ...known.types],
  ),
  yards: sameNames(
    rows.flatMap((r) => (r.yard === undefined ? [] : [r.yard])),
    known.yards,
  ),
})

/** The rows with the names that were kept in place of the others. */
export function merged<Row extends ColonyRow>(rows: readonly Row[], merges: Merges): Row[] {
  const byName = (same: readonly SameName[]) => new Map(same.flatMap((s) => s.others.map((o) => [o, s.keep])))
  const [types, yards] = [byName(merges.types), byName(merges.yards)]
  return rows.map((r) => ({
    ...r,
    removal_type: types.get(r.removal_type) ?? r.removal_type,
    ...(r.yard === undefined ? {} : { yard: yards.get(r.yard) ?? r.yard }),
  }))
}

/**
 * Days after which a colony without an outcome is asked about: a holding yard keeps colonies for weeks, and one that came
 * two seasons ago has gone, whatever the sheet leaves out (our choice).
 */
export const LONG_GONE_DAYS = 180

/** Rows without an outcome that came longer ago: most likely gone, and nobody wrote down how. */
export const longGone = <Row extends ColonyRow>(rows: readonly Row[], today: Day): Row[] =>
  rows.filter((r) => r.outcome === undefined && daysBetween(r.intake_on, today) > LONG_GONE_DAYS)

/** The rows with those closed as gone, not known how and when. */
export function closed<Row extends ColonyRow>(rows: readonly Row[], today: Day): Row[] {
  const gone = new Set(longGone(rows, today))
  return rows.map((r) => (gone.has(r) ? { ...r, outcome: 'unknown' } : r))
}
