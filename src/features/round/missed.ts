/** A box that was not reached: until when it was put off, and what does not wait for that. */

import { addDays, type Day } from '../../days.ts'
import { type History, type MissedVisit, wasThere } from '../../journal/index.ts'
import type { Urgency } from './urgency.ts'

export interface Missed {
  entry: MissedVisit
  /** The day on which it is to be tried again. */
  again: Day
}

/** The day on which a box that was not reached is to be tried again. */
const againOn = (e: MissedVisit): Day => e.again ?? addDays(e.on, 1)

/** The last time that nobody got to the box, if nobody has been there since; else null. */
export function missedSince(history: History): Missed | null {
  const entry = history.entries.findLast((e): e is MissedVisit => e.kind === 'missed-visit')
  if (entry === undefined) return null
  // Ids are time-ordered: on one day, the later id is what happened later.
  const reached = history.entries.some(
    (e) => wasThere(e) && (e.on > entry.on || (e.on === entry.on && e.id > entry.id)),
  )
  return reached ? null : { entry, again: againOn(entry) }
}

/** Whether a box waits on `day` for the later day it was put off to: never while a window of the bees' own is closing. */
export const isPutOff = (missed: Missed | null, { window }: Urgency, day: Day): boolean =>
  missed !== null && missed.again > day && window === null
