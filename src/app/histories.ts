/** Every colony's history, read once and kept; after new entries only the colonies they touch are read again. */
import type { History } from '../journal/index.ts'
import type { Store } from '../store/index.ts'

export type Histories = ReadonlyMap<string, History>

/** More changes than this since the last time: everything is read again. */
const MOST_CHANGES = 500

type Source = Pick<Store, 'histories' | 'changes' | 'colony'>

/** One for each store, shared by all that ask. */
const READERS = new WeakMap<Source, () => Histories>()

/** By the colony's id. */
export function yardHistories(store: Source): () => Histories {
  const reader = READERS.get(store) ?? readerOf(store)
  READERS.set(store, reader)
  return reader
}

function readerOf(store: Source): () => Histories {
  let kept: { seq: number; histories: Map<string, History> } | null = null
  return () => {
    const seq = store.changes({ limit: 1 })[0]?.seq ?? 0
    if (kept !== null && kept.seq === seq) return kept.histories
    const touched = kept === null || kept.seq > seq ? null : touchedSince(store, kept.seq)
    if (kept === null || touched === null) {
      kept = { seq, histories: new Map([...store.histories()].map(({ id, history }) => [id, history])) }
      return kept.histories
    }
    kept.seq = seq
    for (const id of touched) {
      const history = store.colony(id)?.history
      if (history === undefined) kept.histories.delete(id)
      else kept.histories.set(id, history)
    }
    return kept.histories
  }
}

/** Ids of colonies with entries newer than `seq`; null when there are too many to tell. */
function touchedSince(store: Pick<Store, 'changes'>, seq: number): Set<string> | null {
  const changes = store.changes({ limit: MOST_CHANGES })
  if (changes.length === MOST_CHANGES && (changes.at(-1)?.seq ?? 0) > seq) return null
  return new Set(changes.filter((r) => r.seq > seq).map((r) => r.entry.colony))
}
