/**
 * Plans written after entries: each colony's once, however many entries of it were written together, and those of other
 * colonies that a suspected foulbrood binds or frees.
 */
import type { Day } from '../days.ts'
import type { ColonyId } from '../ids.ts'
import type { Connection } from './connection.ts'
import { type Exposures, NO_EXPOSURES } from './exposures.ts'
import type { Folded } from './fold.ts'
import type { Tracer } from './tracer.ts'

/** A colony that was written to. */
interface Touched {
  id: ColonyId
  folded: Folded
}

export interface Settler {
  /** Before the first entry is written. */
  begin(): void
  /**
   * After the last one. `plain`: nothing was written by which a colony is found, in the yard or at all, so while several
   * appends run together its plan may wait for the last of them.
   */
  settle(touched: readonly Touched[], today: Day, plain: boolean): void
  /** Runs several appends in one transaction, and makes their plans at its end. */
  together<T>(work: () => T): T
}

interface Parts {
  connection: Pick<Connection, 'write'>
  tracer: Tracer
  /** Writes a colony's plan as of a day. */
  put: (touched: Touched, today: Day, exposures: Exposures) => void
  /** Makes a plan again as of the day it has, where the colony is in the yard. */
  again: (id: ColonyId, exposures: Exposures) => void
}

export function settlerOf({ connection, tracer, put, again }: Parts): Settler {
  const waiting = new Map<ColonyId, { touched: Touched; today: Day }>()
  /** Bonds before the first entry; null while nothing is being written. */
  let before: Exposures | null = null
  let grouped = false

  const flush = (): void => {
    if (before === null) return
    const now = tracer.exposures()
    for (const { touched, today } of waiting.values()) put(touched, today, now)
    if (now !== before) for (const id of changed(before, now)) if (!waiting.has(id)) again(id, now)
    clear()
  }
  /** What a colony is found by is known at once; what binds others, and those that wait, at the end. */
  const putNow = (touched: readonly Touched[], today: Day): void => {
    const now = tracer.exposures()
    for (const t of touched) {
      put(t, today, now)
      waiting.delete(t.id)
    }
  }
  const clear = (): void => {
    waiting.clear()
    before = null
  }

  return {
    begin() {
      before ??= tracer.any() ? tracer.exposures() : NO_EXPOSURES
    },
    settle(touched, today, plain) {
      for (const t of touched) waiting.set(t.id, { touched: t, today })
      if (grouped) {
        if (!plain) putNow(touched, today)
        return
      }
      try {
        flush()
      } finally {
        clear()
      }
    },
    together: (work) =>
      connection.write(() => {
        if (grouped) return work()
        grouped = true
        try {
          const done = work()
          flush()
          return done
        } finally {
          grouped = false
          clear()
        }
      }),
  }
}

/** Colonies of which the bonds differ. */
function changed(a: Exposures, b: Exposures): ColonyId[] {
  const says = (all: Exposures, id: ColonyId): string => JSON.stringify(all.get(id) ?? null)
  return [...new Set([...a.keys(), ...b.keys()])].filter((id) => says(a, id) !== says(b, id))
}
