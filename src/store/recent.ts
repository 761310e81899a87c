/**
 * The last colonies read or written, with their rows and history, so that a page of forty boxes does not parse forty
 * journals, nor an entry its colony's whole one. What is remembered is held against the file each time: whoever wrote
 * since, here or in another process, and whatever was undone, is noticed.
 */
import type { ColonyId } from '../ids.ts'
import type { Connection } from './connection.ts'
import { type Folded, type Known, knownBy } from './fold.ts'
import type { JournalRow } from './types.ts'

/** Colonies kept beside those in the yard: a round walks them all in order, so fewer would never be found again. */
const OF_THE_PAST = 100

export interface Recent {
  of(id: ColonyId): Known
  /** What a colony's rows are after an append, and what they add up to. */
  put(id: ColonyId, rows: readonly JournalRow[], folded: Folded): void
  /** What is remembered of anybody may hold what was erased. */
  forget(): void
}

export function recentOf({ raw }: Pick<Connection, 'raw'>, ofColony: (id: ColonyId) => JournalRow[]): Recent {
  const newest = raw.prepare(
    `SELECT e.seq, e.id, e.recorded_at AS at, e.recorded_by AS by, n FROM
       (SELECT max(seq) AS last, count(*) AS n FROM entry WHERE colony = ?) JOIN entry e ON e.seq = last`,
  )
  const inYard = raw.prepare('SELECT count(*) FROM colony WHERE closed_on IS NULL').pluck()
  const known = new Map<string, Known>()
  let most = OF_THE_PAST
  const put = (id: ColonyId, now: Known): Known => {
    known.delete(id)
    known.set(id, now)
    if (known.size > most) most = (inYard.get() as number) + OF_THE_PAST
    const [oldest] = known.keys()
    if (known.size > most && oldest !== undefined) known.delete(oldest)
    return now
  }
  return {
    of(id) {
      const last = newest.get(id)
      // A tag is asked for as if it were an id first. Kept, each would push out a colony that is.
      if (last === undefined) return knownBy(id, [])
      const before = known.get(id)
      return put(id, before !== undefined && isThere(before, last) ? before : knownBy(id, ofColony(id)))
    },
    put: (id, rows, folded) => {
      put(id, { rows, folded })
    },
    forget: () => known.clear(),
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
