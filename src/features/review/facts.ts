/** What Review needs to know of a colony, from a row of the colonies CSV; and from which day a late entry counts. */

import { type Day, daysBetween } from '../../days.ts'
import { anyBrood, type ColonyFacts, type OutcomeKind } from '../../stays/index.ts'

export type { ColonyFacts, OutcomeKind }

/** A row of the colonies CSV, as far as Review reads it (`ColonyRow` of src/exchange fits). */
export interface FactsRow {
  tag: string
  removal_type: string
  yard?: string | undefined
  intake_on: Day
  queen_at_intake: ColonyFacts['queen']
  egg_frames?: number | undefined
  open_frames?: number | undefined
  capped_frames?: number | undefined
  outdoor_c?: number | undefined
  hours_open_to_boxed?: number | undefined
  method?: ColonyFacts['method'] | undefined
  outcome?: OutcomeKind | undefined
  outcome_on?: Day | undefined
  into?: string | undefined
}

/** The facts in a row. A file tells whole stories, so every colony is followed from its intake. */
export const factsOfRow = (r: FactsRow): ColonyFacts => ({
  tag: r.tag,
  removalType: r.removal_type,
  yard: r.yard ?? null,
  intakeOn: r.intake_on,
  queen: r.queen_at_intake,
  broodSalvaged: anyBrood([r.egg_frames, r.open_frames, r.capped_frames]),
  outdoorC: r.outdoor_c ?? null,
  hoursOpenToBoxed: r.hours_open_to_boxed ?? null,
  method: r.method ?? null,
  removedBy: null,
  lookedAfterBy: null,
  lastSeen: null,
  outcome:
    r.outcome === undefined ? null : { what: r.outcome, on: r.outcome_on ?? null, into: r.into ?? null },
  followedFrom: r.intake_on,
})

/** Entered more than this many days after the intake counts as late: a weekend away is not (our choice). */
export const LATE_AFTER_DAYS = 3

/** When a colony's intake was recorded, beside when it was. */
export interface Recorded {
  intakeOn: Day
  /** The day on which the intake was entered, in the yard's time zone. */
  recordedOn: Day
  outcomeOn: Day | null
}

/**
 * The day from which each colony was followed. A colony entered late was alive when it was entered: had it died before,
 * it would not have been; so its days before do not count (left truncation). But a whole old book, entered on one day
 * with colonies already gone in it, tells of the dead as of the living: then every colony of that day counts from its
 * intake. Colonies entered on one day are taken as one book.
 *
 * Example: intake 1 May, entered 20 May among colonies all still in the yard: followed from 20 May.
 */
export function followedFromDays(colonies: readonly Recorded[]): Day[] {
  const wholeBooks = new Set(
    colonies
      .filter((c) => c.outcomeOn !== null && c.outcomeOn < c.recordedOn && isLate(c))
      .map((c) => c.recordedOn),
  )
  return colonies.map((c) => (isLate(c) && !wholeBooks.has(c.recordedOn) ? c.recordedOn : c.intakeOn))
}

const isLate = (c: Recorded): boolean => daysBetween(c.intakeOn, c.recordedOn) > LATE_AFTER_DAYS
