/**
 * The last colonies read or written, with their rows and history, so that a page of forty boxes does not parse forty
 * journals, nor an entry its colony's whole one. What is remembered is held against the file each time: whoever wrote
 * since, here or in another process, and whatever was undone, is noticed.
 */
import type { ColonyId } from '../ids.ts'
import type { Connection } from './connection.ts'
import { type Folded, type Known, knownBy } from './fold.ts'
import type { JournalRow } from './types.ts'

/** Colonies kept: more than stand in any yard, and some of the past. */
const KEPT = 300

export interface Recent {
  of(id: ColonyId): Known
  /** What a colony's rows are after an append, and what they add up to. */
  put(id: ColonyId, rows: readonly JournalRow[], folded: Folded): void
}

export function recentOf({ raw }: Pick<Connection, 'raw'>, ofColony: (id: ColonyId) => JournalRow[]): Recent {
  const newest = raw.prepare(
    `SELECT e.seq, e.id, e.recorded_at AS at, e.recorded_by AS by, n FROM
       (SELECT max(seq) AS last, count(*) AS n FROM entry WHERE colony = ?) JOIN entry e ON e.seq = last`,
  )
  const known = new Map<string, Known>()
  const put = (id: ColonyId, now: Known): Known => {
    known.delete(id)
    known.set(id, now)
    const [oldest] = known.keys()
    if (known.size > KEPT && oldest !== undefined) known.delete(oldest)
    return now
  }
  return {
    of(id) {
      const before = known.get(id)
      return put(
        id,
        before !== undefined && isThere(before, newest.get(id)) ? before : knownBy(id, ofColony(id)),
      )
    },
    put: (id, rows, folded) => {
      put(id, { rows, folded })
    },
  }
}

/** As many rows, and the last one the very one: the journal only ever grows, so then all are. */
function isThere({ rows }: Known, newest: unknown): boolean {
  const last = rows.at(-1)
  const file = newest as { seq: number; id: string; at: string; by: string; n: number } | undefined
  return (
    last !== undefined &&
    file !== undefined &&
    file.n === rows.length &&
    file.seq === last.seq &&
    file.id === last.entry.id &&
    file.at === last.recordedAt &&
    file.by === last.recordedBy
  )
}
