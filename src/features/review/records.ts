/** Every colony of the yard as Review wants it, out of the store. */

import { addDays, type Day, dayIn } from '../../days.ts'
import { type ColonyFacts, followedSince } from '../../stays/index.ts'
import { toTheEnd } from '../../steps.ts'
import type { ColonyStay, Store } from '../../store/index.ts'
import { followedFromDays, LATE_AFTER_DAYS } from './facts.ts'
import type { ColonyRecord } from './view.ts'

type Source = Pick<Store, 'stays'>

/**
 * The records, read through once. Kept until something is written that they hang on, or the time zone changes: looking
 * again with other choices costs no reading.
 */
export function reviewRecords({ stays }: Source): (zone: string) => readonly ColonyRecord[] {
  let kept: { stamp: string; records: readonly ColonyRecord[] } | null = null
  return (zone) => {
    const stamp = `${zone} ${stays.stamp()}`
    if (kept?.stamp !== stamp) kept = { stamp, records: followed([...stays.all()], zone) }
    return kept.records
  }
}

/**
 * Facts of every colony, with the day from which each was followed (a colony entered late counts from then on).
 * `zone`: the yard's time zone, by which the day of an entry is reckoned.
 */
export const factsInStore = (source: Source, zone: string): ColonyFacts[] =>
  toTheEnd(readingFacts(source, zone))

/** Colonies read at a step: each of those in the yard costs a reading of its journal. */
const AT_A_STEP = 20
/** After so many readings into which somebody wrote, the last is taken as it is. */
const MOST_READINGS = 3

/** The same a few colonies at a step; begun again where something is written meanwhile, so that none is missed or twice in it. */
export function* readingFacts({ stays }: Source, zone: string): Generator<undefined, ColonyFacts[]> {
  for (let reading = 1; ; reading++) {
    const stamp = stays.stamp()
    const found: ColonyStay[] = []
    for (const one of stays.all()) {
      found.push(one)
      if (found.length % AT_A_STEP === 0) yield
    }
    if (stamp === stays.stamp() || reading === MOST_READINGS) return followed(found, zone).map((r) => r.facts)
  }
}

function followed(found: readonly ColonyStay[], zone: string): ColonyRecord[] {
  const from = followedFromDays(
    found.map(({ facts: { intakeOn }, leftOn, recordedAt }) => ({
      intakeOn,
      recordedOn: recordedOn(recordedAt, intakeOn, zone),
      outcomeOn: leftOn,
    })),
  )
  return found.map(({ id, facts, stayOn }, i) => ({
    id,
    facts: followedSince(facts, from[i] ?? facts.intakeOn),
    stayOn,
  }))
}

/** The day on which an intake was entered. In no zone is it more than a day from that of UTC, which is soon told. */
function recordedOn(recordedAt: string, intakeOn: Day, zone: string): Day {
  const inUtc = recordedAt.slice(0, 10)
  return inUtc < addDays(intakeOn, LATE_AFTER_DAYS) ? inUtc : dayIn(zone, new Date(recordedAt))
}
