/**
 * Tracing foulbrood over the file: the colonies in the yard, and all that were ever suspected. What was read is kept, and
 * after new entries only their colonies are read again, so that an entry does not read the whole yard. What is kept is
 * held against the file each time: whoever wrote since, and whatever was undone, is noticed.
 */
import type { ColonyId } from '../ids.ts'
import type { Traced } from '../recovery/index.ts'
import { toTheEnd } from '../steps.ts'
import type { Connection } from './connection.ts'
import { type Exposures, exposuresBetween, NO_EXPOSURES, traceable } from './exposures.ts'
import type { Folded } from './fold.ts'

export interface Tracer {
  /** Whether brood disease was ever suspected here: where it was not, nothing is traced. */
  any(): boolean
  /** The very same object for as long as no bond changes. */
  exposures(): Exposures
  /**
   * Colonies that have left since a suspected one was last clean, and are bound to it: nothing holds them any more, and who
   * has them is to be told. Reads a history once, and again after new entries; nothing where nobody is suspected.
   */
  gone(): Exposures
  /**
   * Reads in steps what the first question would read in one piece, which takes a second where many are in the yard.
   * Whoever asks before it is done has it read at once.
   */
  reading(): Generator<void, void>
}

/** Rows of the journal that are looked through in one step: some milliseconds. */
const ROWS = 1000

interface Kept {
  /** The newest row of the journal when this was read, by which it is recognised. */
  newest: { seq: number; id: string }
  /** Colonies in which brood disease was ever suspected. */
  suspects: Set<ColonyId>
  /** Null until the first suspicion. */
  read: Map<ColonyId, { traced: Traced; key: string }> | null
  exposures: Exposures
}

const nothing = (): Kept => ({
  newest: { seq: 0, id: '' },
  suspects: new Set(),
  read: null,
  exposures: NO_EXPOSURES,
})

/** Reads as the file stands now. */
export function tracerOf({ raw }: Connection, known: (id: ColonyId) => Folded): Tracer {
  const newest = raw.prepare('SELECT seq, id FROM entry ORDER BY seq DESC LIMIT 1')
  const at = raw.prepare('SELECT id FROM entry WHERE seq = ?').pluck()
  const suspectedBetween = raw
    .prepare(
      `SELECT DISTINCT colony FROM entry WHERE seq > ? AND seq <= ? AND payload LIKE '%brood-disease-suspected%'`,
    )
    .pluck()
  const touchedSince = raw.prepare('SELECT DISTINCT colony FROM entry WHERE seq > ?').pluck()
  const inYard = raw.prepare('SELECT id FROM colony WHERE closed_on IS NULL').pluck()
  let kept: Kept | null = null

  const isAt = (a: Kept['newest'], b: Kept['newest']): boolean => a.seq === b.seq && a.id === b.id
  const isThere = (row: Kept['newest']): boolean => row.seq === 0 || at.get(row.seq) === row.id

  /** Reads one colony again. Returns whether that changes what tracing knows of it. */
  const reread = (read: NonNullable<Kept['read']>, suspects: Kept['suspects'], id: ColonyId): boolean => {
    const { history } = known(id)
    // One that left without a suspicion is neither held nor a danger.
    if (history === null || (history.outcome !== null && !suspects.has(id))) return read.delete(id)
    const traced = traceable(id, history)
    const key = JSON.stringify(traced)
    if (read.get(id)?.key === key) return false
    read.set(id, { traced, key })
    return true
  }

  const newestRow = (): Kept['newest'] => (newest.get() as Kept['newest'] | undefined) ?? nothing().newest
  const exposuresOf = (read: NonNullable<Kept['read']>): Exposures =>
    exposuresBetween([...read.values()].map((r) => r.traced))

  /** Everything, in steps. What is written meanwhile is newer than its newest row, so the next question reads those colonies again. */
  function* whole(): Generator<void, Kept> {
    const made = { ...nothing(), newest: newestRow() }
    const { newest: last, suspects } = made
    for (let seq = 0; seq < last.seq; seq += ROWS) {
      for (const id of suspectedBetween.all(seq, Math.min(seq + ROWS, last.seq)) as ColonyId[])
        suspects.add(id)
      yield
    }
    if (suspects.size === 0) return made
    const read: NonNullable<Kept['read']> = new Map()
    for (const id of new Set([...suspects, ...(inYard.all() as ColonyId[])])) {
      reread(read, suspects, id)
      yield
    }
    return { ...made, read, exposures: exposuresOf(read) }
  }

  /** The journal only grows: what is new since the last time is enough, unless a write was undone meanwhile. */
  const now = (): Kept => {
    const last = newestRow()
    if (kept !== null && isAt(kept.newest, last)) return kept
    if (kept === null || !isThere(kept.newest)) {
      kept = toTheEnd(whole())
      return kept
    }
    const { newest: from, suspects, read, exposures } = kept
    for (const id of suspectedBetween.all(from.seq, last.seq) as ColonyId[]) suspects.add(id)
    const all: NonNullable<Kept['read']> = read ?? new Map()
    let changed = false
    if (suspects.size > 0) {
      const touched = touchedSince.all(from.seq) as ColonyId[]
      // Colonies that are only being written are in the journal, and not yet among those in the yard.
      const ids = read === null ? [...suspects, ...(inYard.all() as ColonyId[]), ...touched] : touched
      for (const id of new Set(ids)) if (reread(all, suspects, id)) changed = true
    }
    kept = {
      newest: last,
      suspects,
      read: suspects.size > 0 ? all : null,
      exposures: changed ? exposuresOf(all) : exposures,
    }
    return kept
  }

  function* reading(): Generator<void, void> {
    const steps = whole()
    for (;;) {
      const { done, value } = steps.next()
      if (done === true) {
        kept = value
        return
      }
      yield
      if (!raw.open || kept !== null) return
    }
  }

  const leftSince = raw.prepare('SELECT id FROM colony WHERE closed_on >= ?').pluck()
  /** What was read of colonies that have left; null of one without an intake. */
  let past: { newest: Kept['newest']; read: Map<ColonyId, Traced | null> } | null = null
  const readPast = (last: Kept['newest']): Map<ColonyId, Traced | null> => {
    if (past === null || !isThere(past.newest)) past = { newest: last, read: new Map() }
    if (!isAt(past.newest, last)) {
      for (const id of touchedSince.all(past.newest.seq) as ColonyId[]) past.read.delete(id)
      past.newest = last
    }
    return past.read
  }
  const tracedOf = (id: ColonyId): Traced | null => {
    const { history } = known(id)
    return history === null ? null : traceable(id, history)
  }

  const gone = (): Exposures => {
    const current = now()
    const read = [...(current.read ?? [])].map(([, { traced }]) => traced)
    const [since] = read.flatMap((c) => (c.suspectedSince === null ? [] : (c.entries[0]?.on ?? []))).sort()
    if (since === undefined) return NO_EXPOSURES
    const already = readPast(current.newest)
    const left = (leftSince.all(since) as ColonyId[]).flatMap((id): Traced[] => {
      const before = already.get(id)
      const traced = before === undefined ? tracedOf(id) : before
      already.set(id, traced)
      return traced === null ? [] : [traced]
    })
    const ids = new Set(left.map((c) => c.id))
    const all = exposuresBetween([...read.filter((c) => !ids.has(c.id)), ...left])
    return new Map([...all].filter(([id]) => ids.has(id)))
  }

  return { any: () => now().suspects.size > 0, exposures: () => now().exposures, gone, reading }
}
