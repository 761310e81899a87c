/** What is kept of a colony that has left: a pure function of its history, so that a rebuild gives the same bytes. */
import { daysBetween } from '../days.ts'
import type { ColonyId } from '../ids.ts'
import type { History } from '../journal/index.ts'
import type { Protocol } from '../recovery/index.ts'
import { type ColonyFacts, factsOf, type Stay, stayOf } from '../stays/index.ts'
import type { stay } from './schema.ts'

export type StayRow = typeof stay.$inferSelect

/** The row of a colony that has left; null of one in the yard. */
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

/** The facts in a row. */
export const factsIn = (r: StayRow): ColonyFacts => ({
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

/** The stay in a row. */
export const stayIn = (r: StayRow): Stay => {
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
