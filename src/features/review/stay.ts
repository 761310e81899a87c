/** Days in the yard, whatever the way of leaving. */

import type { Day } from '../../days.ts'
import { countByDay, kaplanMeier, type QuantileDay, quantileDay } from '../../statistics/index.ts'
import { knownOn, staysOf, withDays } from './cohort.ts'
import type { ColonyFacts } from './facts.ts'

export interface YardStay {
  colonies: number
  /** Of these, no longer in the yard. */
  left: number
  /** Day by which a quarter, half and three quarters had left; colonies still there are counted for what they are. */
  quarter: QuantileDay
  median: QuantileDay
  threeQuarters: QuantileDay
}

/** Example: stays of 20, 30 and 40 days, all over: median 30. */
export function yardStay(all: readonly ColonyFacts[], asOf: Day): YardStay {
  const colonies = withDays(knownOn(all, asOf))
  const stays = staysOf(colonies, asOf)
  const gone = Uint8Array.from(colonies, (c) =>
    c.outcome !== null && (c.outcome.on ?? asOf) <= asOf ? 1 : 0,
  )
  const [counts] = countByDay({ ...stays, way: gone })
  if (counts === undefined) throw new RangeError('yardStay: no counts')
  const curve = kaplanMeier(counts)
  return {
    colonies: curve.colonies,
    left: curve.lost,
    quarter: quantileDay(curve, 0.25),
    median: quantileDay(curve, 0.5),
    threeQuarters: quantileDay(curve, 0.75),
  }
}
