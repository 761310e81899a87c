/** Which colonies are bound to one with suspected brood disease. Pure over histories, so that the phone traces the same way. */
import type { ColonyId } from '../ids.ts'
import type { History } from '../journal/index.ts'
import { type Exposure, suspicionOn, type Traced, traceFoulbrood } from '../recovery/index.ts'

export type Exposures = ReadonlyMap<ColonyId, Exposure>
export const NO_EXPOSURES: Exposures = new Map()

const FAR = '9999-12-31'

/** Traces among these colonies; every one with its id, as it is known now. */
export function exposuresAmong(colonies: Iterable<readonly [ColonyId, History]>): Exposures {
  const traced = [...colonies].map(([id, h]): Traced => {
    const { entries, intake, tag } = h
    const place = entries.findLast((e) => e.kind === 'move') ?? intake
    return {
      id,
      tag,
      yard: place.yard,
      entries,
      suspectedSince: suspicionOn(entries, FAR)?.since ?? null,
    }
  })
  return traced.some((c) => c.suspectedSince !== null) ? traceFoulbrood(traced) : NO_EXPOSURES
}
