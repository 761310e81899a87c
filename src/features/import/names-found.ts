/** Yards and people that a sheet writes in several ways: offered to be taken as one, as the operator says. */

import { bareName, type SameName, sameNames } from '../../words/index.ts'
import type { Target } from './fields.ts'
import type { Sheet } from './sheet.ts'

/** Columns of names. Removal types are among the words. */
export const NAMED = ['yard', 'removed_by'] as const
export type Named = (typeof NAMED)[number]

/** Said to keep names apart. */
export const APART = ''

/** By column and bare name: the spelling to take for all, or {@link APART}. */
export type SaidSame = Partial<Record<Named, Readonly<Record<string, string>>>>

export interface NameFound extends SameName {
  column: Named
  /** As names are compared. */
  key: string
  /** The spelling taken for all of them; {@link APART}: each stays as it is written. */
  taken: string
}

/** Kept is the spelling that the book has already. */
export function namesFound(
  sheet: Sheet,
  targets: readonly Target[],
  said: SaidSame,
  known: { yards: readonly string[]; people: readonly string[] },
): NameFound[] {
  return NAMED.flatMap((column) => {
    const at = targets.indexOf(column)
    if (at < 0) return []
    const written = sheet.rows.map((r) => r.fields[at] ?? '').filter((name) => name !== '')
    return sameNames(written, column === 'yard' ? known.yards : known.people).map((same): NameFound => {
      const key = bareName(same.keep)
      return { column, key, ...same, taken: said[column]?.[key] ?? same.keep }
    })
  })
}

/** A name of the sheet as it goes into the book. */
export function nameTaken(names: readonly NameFound[], column: Named, written: string): string {
  const same = names.find((n) => n.column === column && n.key === bareName(written))
  return same === undefined || same.taken === APART ? written : same.taken
}
