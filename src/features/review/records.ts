/** Every colony of the yard as Review wants it: facts beside history. */

import type { Store } from '../../store/index.ts'
import { factsInStore } from './journal-facts.ts'
import type { ColonyRecord } from './view.ts'

/**
 * The records, read through once. Kept until an entry is added to the journal or the time zone changes: looking again
 * with other choices costs no reading.
 */
export function reviewRecords(
  store: Pick<Store, 'histories' | 'entry' | 'changes'>,
): (zone: string) => readonly ColonyRecord[] {
  let kept: { seq: number; zone: string; records: readonly ColonyRecord[] } | null = null
  return (zone) => {
    const seq = store.changes({ limit: 1 })[0]?.seq ?? 0
    if (kept === null || kept.seq !== seq || kept.zone !== zone)
      kept = { seq, zone, records: recordsIn(store, zone) }
    return kept.records
  }
}

function recordsIn(store: Pick<Store, 'histories' | 'entry'>, zone: string): ColonyRecord[] {
  const histories = [...store.histories()]
  const facts = factsInStore({ histories: () => histories, entry: (id) => store.entry(id) }, zone)
  return histories.flatMap(({ id, history }, i) => {
    const f = facts[i]
    return f === undefined ? [] : [{ id, facts: f, history }]
  })
}
