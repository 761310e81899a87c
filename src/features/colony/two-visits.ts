/** Days on which several people looked at one box: with phones that had no signal, neither knew of the other. */

import type { Day } from '../../days.ts'
import type { History } from '../../journal/index.ts'

export interface SharedDay {
  on: Day
  /** Who looked, in the order of the history. */
  people: string[]
}

/** Days with visits of more than one person, the latest first. */
export function sharedDays(history: Pick<History, 'entries'>): SharedDay[] {
  const days = new Map<Day, Set<string>>()
  for (const e of history.entries)
    if (e.kind === 'inspection') days.set(e.on, (days.get(e.on) ?? new Set()).add(e.by))
  return [...days]
    .filter(([, people]) => people.size > 1)
    .map(([on, people]) => ({ on, people: [...people] }))
    .sort((a, b) => b.on.localeCompare(a.on))
}
