/** What was written down at the wrong box: taken back there, and said again of the right one, all or nothing. */

import type { Entry, StandingEntry } from '../../journal/index.ts'
import type { JournalRow } from '../../store/index.ts'

/** What founds a colony, puts it elsewhere or ends it is no sighting that could be another box's. */
const STAYS: ReadonlySet<Entry['kind']> = new Set([
  'intake',
  'move',
  'outcome',
  'disease-cleared',
  'withdrawal',
])

/** An entry that can be said of another box. */
export type Movable = Exclude<StandingEntry, { kind: 'intake' | 'move' | 'outcome' | 'disease-cleared' }>

export const isMovable = (entry: Entry): entry is Movable => !STAYS.has(entry.kind)

/** What was most likely written down on the same visit: the same day and signature, and still standing. The entry itself is first. */
export function sameVisit(journal: readonly JournalRow[], entry: Movable): Movable[] {
  const replaced = new Set(journal.flatMap((r) => r.entry.replaces ?? []))
  const others = journal
    .map((r) => r.entry)
    .filter(isMovable)
    .filter((e) => e.id !== entry.id && e.on === entry.on && e.by === entry.by && !replaced.has(e.id))
  return [entry, ...others]
}

export interface MoveParts {
  entries: readonly Movable[]
  to: { id: string; tag: string }
  today: string
  /** Who moves it. */
  by: string
  /** Why it is taken back, in the words of who moves it; kept in the journal. */
  reason: string
  /** A new id for every entry that is made, by a name that stays the same when the form is posted again. */
  idOf: (name: string) => string
}

/** The entries that move others: of each, the same said of the right box, then its withdrawal at the wrong one. */
export const movesOf = ({ entries, to, today, by, reason, idOf }: MoveParts): Record<string, unknown>[] =>
  entries.flatMap((e) => {
    const { id, replaces: _replaces, colony, ...said } = e
    return [
      {
        id: idOf(`back.${id}`),
        colony,
        kind: 'withdrawal',
        on: today,
        by,
        replaces: id,
        reason,
      },
      { ...said, id: idOf(`new.${id}`), colony: to.id },
    ]
  })
