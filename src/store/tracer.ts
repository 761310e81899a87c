/** Tracing foulbrood over the file: the colonies in the yard, and all that were ever suspected. */
import type { ColonyId } from '../ids.ts'
import type { Connection } from './connection.ts'
import { type Exposures, exposuresAmong, NO_EXPOSURES } from './exposures.ts'
import type { Folded } from './fold.ts'

export interface Tracer {
  /** Whether brood disease was ever suspected here: where it was not, nothing is traced. */
  any(): boolean
  exposures(): Exposures
}

/** Reads as the file stands now. */
export function tracerOf({ raw }: Connection, known: (id: ColonyId) => Folded): Tracer {
  const newest = raw.prepare('SELECT coalesce(max(seq), 0) FROM entry').pluck()
  const suspectedSince = raw
    .prepare(`SELECT DISTINCT colony FROM entry WHERE seq > ? AND payload LIKE '%brood-disease-suspected%'`)
    .pluck()
  const inYard = raw.prepare('SELECT id FROM colony WHERE closed_on IS NULL').pluck()
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
      if (ever.size === 0) return NO_EXPOSURES
      // One that left without a suspicion is neither held nor a danger.
      const ids = new Set([...ever, ...(inYard.all() as ColonyId[])])
      return exposuresAmong(
        [...ids].flatMap((id) => {
          const { history } = known(id)
          return history === null ? [] : [[id, history] as const]
        }),
      )
    },
  }
}
