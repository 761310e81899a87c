/** A whole import taken back: every entry it made is withdrawn, signed and dated, unless something was entered on top. */

import { v7 } from 'uuid'
import type { Day } from '../../days.ts'
import type { ColonyId, EntryId, Tag } from '../../ids.ts'
import { type Entry, replacements } from '../../journal/index.ts'
import type { ColonyImports, ImportNote, JournalRow, Store } from '../../store/index.ts'

/** Something entered in a colony of the import, or that names one, and that is still there. */
export interface OnTop {
  tag: Tag
  colony: ColonyId
  entry: Entry
  recordedBy: string
}

export interface ImportState {
  note: ImportNote
  /** Entries of the import that still stand as it made them. */
  standing: { id: EntryId; colony: ColonyId }[]
  onTop: OnTop[]
}

type Reading = Pick<Store, 'entry' | 'journal'> & { imports: Pick<ColonyImports, 'list' | 'entries'> }

/** How an import stands now; null when there is none with that id. Reads the journal once. */
export function importState(store: Reading, id: string): ImportState | null {
  const note = store.imports.list().find((n) => n.id === id)
  if (note === undefined) return null
  const own = new Set(store.imports.entries(id))
  const named = new Set<string>()
  const colonies = new Set<string>()
  for (const entry of own) {
    const row = store.entry(entry)
    if (row === null) continue
    colonies.add(row.entry.colony)
    named.add(row.entry.colony).add(row.tag.toLowerCase())
  }
  // What was written down before the import cannot mean its colonies by their tags.
  let begun = false
  const rows = [...store.journal()].filter((r) => {
    begun ||= own.has(r.entry.id)
    return begun && (colonies.has(r.entry.colony) || namesOneOf(r.entry, named))
  })
  const replaced = replacements(rows.map((r) => r.entry))
  const stands = (r: JournalRow): boolean => !replaced.has(r.entry.id) && r.entry.kind !== 'withdrawal'
  const standing = rows
    .filter((r) => own.has(r.entry.id) && stands(r))
    .map((r) => ({ id: r.entry.id, colony: r.entry.colony }))
  const alive = new Set(standing.map((s) => s.colony))
  const onTop = rows
    .filter((r) => !own.has(r.entry.id) && stands(r))
    // What is left of a colony that was taken back already is nobody's business here.
    .filter((r) => alive.has(r.entry.colony) || correctsOwn(r.entry, own) || !colonies.has(r.entry.colony))
    .map((r) => ({
      tag: store.entry(r.entry.id)?.tag ?? r.written,
      colony: r.entry.colony,
      entry: r.entry,
      recordedBy: r.recordedBy,
    }))
  return { note, standing, onTop }
}

const correctsOwn = (e: Entry, own: ReadonlySet<string>): boolean =>
  e.replaces !== undefined && own.has(e.replaces)

/** Whether it says that brood came from one of them, or that a colony was united into one. */
function namesOneOf(e: Entry, named: ReadonlySet<string>): boolean {
  const name = e.kind === 'given' ? e.donor : e.kind === 'outcome' ? e.into : undefined
  return name !== undefined && named.has(name.toLowerCase())
}

/** The withdrawals that take back what still stands. */
export function withdrawalsOf(
  state: ImportState,
  { by, today }: { by: string; today: Day },
): Record<string, unknown>[] {
  return state.standing.map(({ id, colony }) => ({
    id: v7(),
    kind: 'withdrawal',
    colony,
    on: today,
    by,
    replaces: id,
    reason: `Import of ${state.note.source} taken back`.slice(0, 500),
  }))
}
