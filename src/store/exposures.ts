/** Which colonies are bound to one with suspected brood disease. Pure over histories, so that the phone traces the same way. */
import type { ColonyId } from '../ids.ts'
import type { History } from '../journal/index.ts'
import { type Exposure, suspicionOn, type Traced, tellsOfBonds, traceFoulbrood } from '../recovery/index.ts'

export type Exposures = ReadonlyMap<ColonyId, Exposure>
export const NO_EXPOSURES: Exposures = new Map()

const FAR = '9999-12-31'

/** What tracing reads of a colony. */
export function traceable(id: ColonyId, { entries, intake, tag }: History): Traced {
  const place = entries.findLast((e) => e.kind === 'move') ?? intake
  return {
    id,
    tag,
    yard: place.yard,
    entries: entries.filter(tellsOfBonds),
    suspectedSince: suspicionOn(entries, FAR)?.since ?? null,
  }
}

/** Traces among what was read of colonies, as it is known now; the same in whatever order they come. */
export function exposuresBetween(traced: readonly Traced[]): Exposures {
  if (traced.every((c) => c.suspectedSince === null)) return NO_EXPOSURES
  const key = (c: Traced): string => c.id ?? c.tag
  return traceFoulbrood([...traced].sort((a, b) => (key(a) < key(b) ? -1 : 1)))
}

/** The same among whole histories, every one with its id. */
export const exposuresAmong = (colonies: Iterable<readonly [ColonyId, History]>): Exposures =>
  exposuresBetween([...colonies].map(([id, history]) => traceable(id, history)))

/** How a colony is held; one that left is held no more. */
export const exposureOf = (all: Exposures, id: ColonyId, history: History): Exposure | null =>
  history.outcome === null ? (all.get(id) ?? null) : null
