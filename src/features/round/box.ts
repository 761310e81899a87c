/** A colony as the round knows it: where it stands, what the plan asks today, and what stands in its journal. */

import type { Day } from '../../days.ts'
import { type History, type StandingEntry, type StandPlace, wasThere } from '../../journal/index.ts'
import type { Plan } from '../../recovery/index.ts'

export interface Box extends StandPlace {
  /** As of the day of the round, with everything known by then. */
  plan: Plan
  /** May be read only when it is asked for. */
  readonly history: History
  /** False: known without reading the history that nobody was there today, and that no round has missed it lately. */
  touched?: boolean
}

/** What was done at the box on a day. */
export const doneOn = (history: History, day: Day): StandingEntry[] =>
  history.entries.filter((e) => e.on === day && wasThere(e))

/** The history as it was known in the morning of a day; null when the colony came in on that day or later. */
export function beforeThe(day: Day, history: History): History | null {
  if (history.intake.on >= day) return null
  return {
    ...history,
    entries: history.entries.filter((e) => e.on < day),
    outcome: history.outcome !== null && history.outcome.on < day ? history.outcome : null,
  }
}

/** Whether the plan sends anybody to the box on its day. */
export const asks = (plan: Plan): boolean =>
  plan.advice.action !== 'none' && plan.advice.action !== 'leave-alone'
