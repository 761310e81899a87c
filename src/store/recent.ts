/**
 * The last colonies looked at, with their rows and history, so that a page of forty boxes does not parse their whole
 * journals each time. A colony is known by its last row: whoever wrote since, here or in another process, is noticed.
 */
import type { Connection } from './connection.ts'
import { type Folded, fold } from './fold.ts'
import type { JournalRow } from './types.ts'

/** Colonies kept: more than stand in any yard, and some of the past. */
const KEPT = 300

export interface Known extends Folded {
  rows: JournalRow[]
  last: number
}

export function recentOf(
  { raw }: Pick<Connection, 'raw'>,
  ofColony: (id: string) => JournalRow[],
): (id: string) => Known {
  const lastOf = raw.prepare('SELECT max(seq) FROM entry WHERE colony = ?').pluck()
  const known = new Map<string, Known>()
  return (id) => {
    const last = Number(lastOf.get(id) ?? 0)
    const before = known.get(id)
    known.delete(id)
    const now = before?.last === last ? before : read(id, ofColony, last)
    // Rows read inside a transaction may yet be undone, and their places taken by others.
    if (!raw.inTransaction) known.set(id, now)
    const [oldest] = known.keys()
    if (known.size > KEPT && oldest !== undefined) known.delete(oldest)
    return now
  }
}

function read(id: string, ofColony: (id: string) => JournalRow[], last: number): Known {
  const rows = ofColony(id)
  return { rows, last, ...fold(id, rows) }
}
