/** What a review needs to know of a colony, from its history. */

import type { Day } from '../days.ts'
import type { EntryKind, History, METHODS, OUTCOMES, QUEEN_AT_INTAKE } from '../journal/index.ts'

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

/** Whether brood came along; null where nothing was said of it. */
export const anyBrood = (frames: readonly (number | undefined)[]): boolean | null => {
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

/** The facts of a colony in the journal. `from`: the day from which it was followed; the intake when left out. */
export function factsOf(history: History, from: Day = history.intake.on): ColonyFacts {
  const { intake, outcome } = history
  const facts: ColonyFacts = {
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
    lastSeen: lastSeenOf(history),
    outcome:
      outcome === null
        ? null
        : {
            what: outcome.what,
            on: outcome.dayUnknown === true ? null : outcome.on,
            into: outcome.into ?? null,
          },
    followedFrom: intake.on,
  }
  return followedSince(facts, from)
}

/** The facts of a colony that was followed from that day only. Who enters a colony late says that it is there. */
export function followedSince(facts: ColonyFacts, from: Day): ColonyFacts {
  const followedFrom = from > facts.intakeOn ? from : facts.intakeOn
  if (followedFrom === facts.followedFrom) return facts
  const { lastSeen } = facts
  return {
    ...facts,
    followedFrom,
    lastSeen: lastSeen !== null && lastSeen > followedFrom ? lastSeen : followedFrom,
  }
}
