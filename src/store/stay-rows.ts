/** What a review counts of every colony: rows kept of those that have left, their histories of those in the yard. */
import { type Day, daysBetween } from '../days.ts'
import type { ColonyId } from '../ids.ts'
import type { History } from '../journal/index.ts'
import type { Protocol } from '../recovery/index.ts'
import { type ColonyFacts, factsOf, historyUntil, type Stay, stayOf } from '../stays/index.ts'
import type { Connection } from './connection.ts'
import { stay } from './schema.ts'

export type StayRow = typeof stay.$inferSelect

/** A colony, as a review reads it. */
export interface ColonyStay {
  id: ColonyId
  /** Followed from its intake on. */
  facts: ColonyFacts
  /** When its first entry was recorded, UTC ISO. */
  recordedAt: string
  /** The day it left, as the journal has it; null while it is in the yard. */
  leftOn: Day | null
  /** Its stay as it was known at the end of a day. */
  stayOn: (asOf: Day) => Stay
}

export interface Stays {
  /** Every colony with an intake, in no order. */
  all(): Iterable<ColonyStay>
  /** Another text whenever that may have changed. */
  stamp(): string
}

/** The row of a colony that has left; null of one in the yard. Pure, so that a rebuild gives the same bytes. */
export function stayRow(
  id: ColonyId,
  history: History,
  recordedAt: string,
  protocol: Protocol,
): StayRow | null {
  const { intake, outcome } = history
  if (outcome === null) return null
  const facts = factsOf(history)
  const { recovery, spending, phaseBeforeLoss } = stayOf(history, outcome.on, protocol)
  return {
    colony: id,
    tag: history.tag,
    removalType: facts.removalType,
    yard: intake.yard,
    intakeOn: facts.intakeOn,
    recordedAt,
    queen: facts.queen,
    broodSalvaged: facts.broodSalvaged === null ? null : Number(facts.broodSalvaged),
    outdoorC: facts.outdoorC,
    hoursOpenToBoxed: facts.hoursOpenToBoxed,
    method: facts.method,
    removedBy: intake.by,
    lookedAfterBy: facts.lookedAfterBy,
    lastSeen: facts.lastSeen ?? intake.on,
    outcome: outcome.what,
    leftOn: outcome.on,
    dayUnknown: outcome.dayUnknown === true ? 1 : 0,
    into: outcome.into ?? null,
    path: recovery.path,
    queenrightOn: recovery.queenrightOn,
    ...spending,
    phaseBeforeLoss,
  }
}

const factsIn = (r: StayRow): ColonyFacts => ({
  tag: r.tag,
  removalType: r.removalType,
  yard: r.yard,
  intakeOn: r.intakeOn,
  queen: r.queen,
  broodSalvaged: r.broodSalvaged === null ? null : r.broodSalvaged === 1,
  outdoorC: r.outdoorC,
  hoursOpenToBoxed: r.hoursOpenToBoxed,
  method: r.method,
  removedBy: r.removedBy,
  lookedAfterBy: r.lookedAfterBy,
  lastSeen: r.lastSeen,
  outcome: { what: r.outcome, on: r.dayUnknown === 1 ? null : r.leftOn, into: r.into },
  followedFrom: r.intakeOn,
})

const stayIn = (r: StayRow): Stay => {
  const { queens, feed, other, frames, unpricedQueens, unpricedFeed, visits } = r
  const days = r.queenrightOn === null ? null : daysBetween(r.intakeOn, r.queenrightOn)
  return {
    recovery: {
      tag: r.tag,
      path: r.path,
      queenrightOn: r.queenrightOn,
      days,
      followed: days ?? daysBetween(r.intakeOn, r.leftOn),
    },
    spending: { queens, feed, other, frames, unpricedQueens, unpricedFeed, visits },
    phaseBeforeLoss: r.phaseBeforeLoss,
  }
}

/** `historyOf` reads one colony's journal; null when no intake of it stands. */
export function staysOf(
  { raw, db }: Connection,
  historyOf: (id: ColonyId) => History | null,
  protocol: () => Protocol,
): Stays {
  const rows = db.select().from(stay).prepare()
  const recordedAt = raw.prepare('SELECT recorded_at FROM entry WHERE id = ?').pluck()
  const inYard = raw.prepare('SELECT id FROM colony WHERE closed_on IS NULL').pluck()
  const counts = raw.prepare(
    'SELECT (SELECT count(*) FROM colony WHERE closed_on IS NOT NULL) AS gone, (SELECT count(*) FROM stay) AS kept',
  )
  const missing = raw
    .prepare('SELECT id FROM colony WHERE closed_on IS NOT NULL AND id NOT IN (SELECT colony FROM stay)')
    .pluck()
  const newest = raw.prepare('SELECT max(seq) FROM entry').pluck()

  const stayThen = (id: ColonyId, history: History | null, asOf: Day): Stay => {
    if (history === null) throw new RangeError(`stays: ${id} has no intake`)
    return stayOf(historyUntil(history, asOf), asOf, protocol())
  }
  const fromRow = (r: StayRow): ColonyStay => {
    const kept = stayIn(r)
    return {
      id: r.colony,
      facts: factsIn(r),
      recordedAt: r.recordedAt,
      leftOn: r.leftOn,
      // It was still there on the day looked at: what is kept knows too much.
      stayOn: (asOf) => (r.leftOn <= asOf ? kept : stayThen(r.colony, historyOf(r.colony), asOf)),
    }
  }
  /** Of a colony in the yard, and of one that left while an update has yet to make its row. */
  const fromJournal = (id: ColonyId): ColonyStay[] => {
    const history = historyOf(id)
    if (history === null) return []
    return [
      {
        id,
        facts: factsOf(history),
        recordedAt: (recordedAt.get(id) as string | undefined) ?? `${history.intake.on}T12:00:00.000Z`,
        leftOn: history.outcome?.on ?? null,
        stayOn: (asOf) => stayThen(id, history, asOf),
      },
    ]
  }

  return {
    *all() {
      for (const row of rows.all()) yield fromRow(row)
      for (const id of inYard.all() as ColonyId[]) yield* fromJournal(id)
      const { gone, kept } = counts.get() as { gone: number; kept: number }
      if (gone !== kept) for (const id of missing.all() as ColonyId[]) yield* fromJournal(id)
    },
    stamp: () =>
      [newest.get(), raw.pragma('user_version', { simple: true }), JSON.stringify(protocol())].join(' '),
  }
}
