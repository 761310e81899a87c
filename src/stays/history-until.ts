import type { Day } from '../days.ts'
import type { History } from '../journal/index.ts'

/** A history as it stood at the end of a day. */
export function historyUntil(history: History, asOf: Day): History {
  if (history.entries.every((e) => e.on <= asOf)) return history
  const outcome = history.outcome
  return {
    ...history,
    entries: history.entries.filter((e) => e.on <= asOf),
    outcome: outcome !== null && outcome.on <= asOf ? outcome : null,
  }
}
