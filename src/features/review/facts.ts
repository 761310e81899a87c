/** What Review needs to know of a colony, from its history or from a row of the colonies CSV. */

import { type Day, daysBetween } from '../../days.ts'
import type { EntryKind, History, METHODS, OUTCOMES, QUEEN_AT_INTAKE } from '../../journal/index.ts'

/** How a colony left; `unknown`: it left, and nobody knows how. */
export type OutcomeKind = (typeof OUTCOMES)[number]

export interface ColonyFacts {
  tag: string
  removalType: string
  /** The yard it was taken to. */
  yard: string | null
  intakeOn: Day
  queen: (typeof QUEEN_AT_INTAKE)[number]
  /** Brood came along; null when not said. */
  broodSalvaged: boolean | null
  /** Outdoor temperature at the removal, °C. */
  outdoorC: number | null
  hoursOpenToBoxed: number | null
  method: (typeof METHODS)[number] | null
  removedBy: string | null
  /** Who made most of the visits; null when there were none, or nobody wrote of them. */
  lookedAfterBy: string | null
  /** `on` is null where the day was not written down: it counts in the plain counts and in no curve. */
  outcome: { what: OutcomeKind; on: Day | null; into: string | null } | null
  /**
   * The last day on which somebody saw the colony: without an outcome it was followed to that day and no further. Null: the
   * file says that it is still in the yard, so it is followed to the day of the look.
   */
  lastSeen: Day | null
  /** The day from which it was followed: later than the intake for a colony that was entered late (left truncation). */
  followedFrom: Day
}

const anyBrood = (frames: readonly (number | undefined)[]): boolean | null => {
  if (frames.every((f) => f === undefined)) return null
  return frames.some((f) => (f ?? 0) > 0)
}

/** Entries made at the box: whoever made one saw that the colony was there. A note may be written at a desk. */
const AT_THE_BOX: ReadonlySet<string> = new Set<EntryKind>([
  'inspection',
  'given',
  'queen-cage',
  'ties-removed',
  'mite-wash',
  'move',
])

/** The last day on which a colony was seen: its intake, or the last thing done at the box. */
const lastSeenOf = ({ intake, entries }: History): Day =>
  entries.reduce((last, e) => (AT_THE_BOX.has(e.kind) && e.on > last ? e.on : last), intake.on)

/** Who made most of the visits; of two with as many, the one who came first. */
function lookedAfterBy({ entries }: History): string | null {
  const visits = new Map<string, number>()
  for (const e of entries) if (AT_THE_BOX.has(e.kind)) visits.set(e.by, (visits.get(e.by) ?? 0) + 1)
  let most: [by: string | null, visits: number] = [null, 0]
  for (const [by, n] of visits) if (n > most[1]) most = [by, n]
  return most[0]
}

/** The facts of a colony in the journal. `followedFrom`: see {@link followedFromDays}; the intake when left out. */
export function factsOf(history: History, from: Day = history.intake.on): ColonyFacts {
  const { intake, outcome } = history
  const followedFrom = from > intake.on ? from : intake.on
  const lastSeen = lastSeenOf(history)
  return {
    tag: history.tag,
    removalType: intake.removal.type,
    yard: intake.yard,
    intakeOn: intake.on,
    queen: intake.queen,
    broodSalvaged:
      intake.brood === undefined
        ? null
        : anyBrood([intake.brood.eggs, intake.brood.open, intake.brood.capped]),
    outdoorC: intake.removal.outdoorC ?? null,
    hoursOpenToBoxed: intake.removal.hoursOpenToBoxed ?? null,
    method: intake.removal.method ?? null,
    removedBy: intake.by,
    lookedAfterBy: lookedAfterBy(history),
    // Who enters a colony late says that it is there.
    lastSeen: lastSeen > followedFrom ? lastSeen : followedFrom,
    outcome:
      outcome === null
        ? null
        : {
            what: outcome.what,
            on: outcome.dayUnknown === true ? null : outcome.on,
            into: outcome.into ?? null,
          },
    followedFrom,
  }
}

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
const LATE_AFTER_DAYS = 3

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
