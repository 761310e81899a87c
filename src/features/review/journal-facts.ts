/** What Review needs, out of the yard's own journal. */

import { type Day, dayIn } from '../../days.ts'
import type { Store } from '../../store/index.ts'
import { type ColonyFacts, factsOf, followedFromDays } from './facts.ts'

/**
 * Facts of every colony, with the day from which each was followed (a colony entered late counts from then on).
 * `zone`: the yard's time zone, by which the day of an entry is reckoned.
 */
export function factsInStore(store: Pick<Store, 'histories' | 'entry'>, zone: string): ColonyFacts[] {
  const colonies = Array.from(store.histories())
  const from = followedFromDays(
    colonies.map(({ id, history }) => ({
      intakeOn: history.intake.on,
      recordedOn: recordedOn(store, id, zone) ?? history.intake.on,
      outcomeOn: history.outcome?.on ?? null,
    })),
  )
  return colonies.map(({ history }, i) => factsOf(history, from[i]))
}

/** The day on which the colony's first entry was recorded; its id is the colony's. */
function recordedOn(store: Pick<Store, 'entry'>, id: string, zone: string): Day | null {
  const row = store.entry(id)
  return row === null ? null : dayIn(zone, new Date(row.recordedAt))
}
