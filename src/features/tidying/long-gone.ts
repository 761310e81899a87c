/** Colonies that nobody has seen for long and that are still in the book as if they stood in the yard. Closed many at once. */

import { type Day, daysBetween } from '../../days.ts'
import type { ColonyId } from '../../ids.ts'
import { type Entry, isVisit, OUTCOMES, type Outcome } from '../../journal/index.ts'
import type { ColonyHistory, IdOf } from './names.ts'

/** Not seen for so many days: a holding yard's colonies are looked at every one or two weeks (common practice). Our choice. */
export const LONG_DAYS = 60

/** What they can be closed as at once; uniting names another colony for each. */
export const CLOSED_AS = OUTCOMES.filter((what) => what !== 'united')
export type ClosedAs = Exclude<Outcome['what'], 'united'>

/** The day a colony is taken to have left on: that of the last sighting, or none that is known. */
export type LeftOn = 'last-seen' | 'not-known'

export interface LongGone {
  id: ColonyId
  tag: string
  yard: string
  intakeOn: Day
  /** The last day on which somebody was at the box; the intake when nobody ever was. */
  lastSeen: Day
  /** The last day of any entry that a closing may not come before. */
  lastEntry: Day
  days: number
}

/** Colonies in the yard that were last seen more than `days` ago, the longest unseen first. */
export function longGone(colonies: Iterable<ColonyHistory>, today: Day, days = LONG_DAYS): LongGone[] {
  const found: LongGone[] = []
  for (const { id, history } of colonies) {
    if (history.outcome !== null) continue
    let [lastSeen, lastEntry] = [history.intake.on, history.intake.on]
    for (const e of history.entries) {
      if (isVisit(e) && e.on > lastSeen) lastSeen = e.on
      if (e.kind !== 'note' && e.on > lastEntry) lastEntry = e.on
    }
    const unseen = daysBetween(lastSeen, today)
    if (unseen <= days) continue
    const { tag, intake } = history
    const yard = history.entries.findLast((e) => e.kind === 'move' || e.kind === 'intake')
    found.push({
      id,
      tag,
      yard: yard?.kind === 'move' || yard?.kind === 'intake' ? yard.yard : intake.yard,
      intakeOn: intake.on,
      lastSeen,
      lastEntry,
      days: unseen,
    })
  }
  return found.sort((a, b) => b.days - a.days || (a.tag < b.tag ? -1 : 1))
}

/** One outcome for each of them. A day stands in each, as one has to; `dayUnknown` says that it stands for none. */
export const closings = (
  colonies: readonly LongGone[],
  how: { what: ClosedAs; day: LeftOn; by: string },
  idOf: IdOf,
): Entry[] =>
  colonies.map((c): Outcome => {
    // Something was written down later than the last sighting, such as a box not reached: it left no earlier than that.
    const on = c.lastEntry > c.lastSeen ? c.lastEntry : c.lastSeen
    const base = { id: idOf(c.id), kind: 'outcome' as const, colony: c.id, on, by: how.by, what: how.what }
    return how.day === 'not-known' ? { ...base, dayUnknown: true } : base
  })
