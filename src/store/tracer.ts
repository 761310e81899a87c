/** Tracing foulbrood over the file: the colonies in the yard, those that left within a year, and all that were ever suspected. */
import { sql } from 'drizzle-orm'
import { addDays } from '../days.ts'
import type { ColonyId } from '../ids.ts'
import type { Connection } from './connection.ts'
import { type Exposures, exposuresAmong, NO_EXPOSURES } from './exposures.ts'
import type { Folded } from './fold.ts'

/** A colony that left so long ago is traced no more, unless it was suspected itself (judgement). */
const LEFT_WITHIN = 365

export interface Tracer {
  /** Whether brood disease was ever suspected here: where it was not, nothing is traced. */
  any(): boolean
  exposures(): Exposures
}

/** Reads as the file stands now. */
export function tracerOf({ db, raw }: Connection, known: (id: ColonyId) => Folded): Tracer {
  const newest = raw.prepare('SELECT coalesce(max(seq), 0) FROM entry').pluck()
  const suspectedSince = raw
    .prepare(`SELECT DISTINCT colony FROM entry WHERE seq > ? AND payload LIKE '%brood-disease-suspected%'`)
    .pluck()
  const candidates = raw.prepare('SELECT id FROM colony WHERE closed_on IS NULL OR closed_on >= ?').pluck()
  const latest = () =>
    db.get<{ day: string | null } | undefined>(sql`SELECT max(as_of) AS day FROM colony`)?.day ?? null
  let kept: { seq: number; suspects: ReadonlySet<ColonyId> } = { seq: 0, suspects: new Set() }

  /** The journal only grows: what is new since the last time is enough, unless a write was undone meanwhile. */
  const suspects = (): ReadonlySet<ColonyId> => {
    const seq = newest.get() as number
    const from = seq < kept.seq ? { seq: 0, suspects: new Set<ColonyId>() } : kept
    const all = new Set([...from.suspects, ...(suspectedSince.all(from.seq) as ColonyId[])])
    if (!raw.inTransaction) kept = { seq, suspects: all }
    return all
  }

  return {
    any: () => suspects().size > 0,
    exposures() {
      const ever = suspects()
      const day = ever.size === 0 ? null : latest()
      if (day === null) return NO_EXPOSURES
      const ids = new Set([...ever, ...(candidates.all(addDays(day, -LEFT_WITHIN)) as ColonyId[])])
      return exposuresAmong(
        [...ids].flatMap((id) => {
          const { history } = known(id)
          return history === null ? [] : [[id, history] as const]
        }),
      )
    },
  }
}
