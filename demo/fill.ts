/** Fills a store with the invented yard, the way everybody does: entries appended, checked and signed, day by day. */

import type { Day } from '../src/days.ts'
import { type Entry, problemLine } from '../src/journal/index.ts'
import type { Store } from '../src/store/index.ts'
import { demoEntries } from './entries.ts'
import { dayMade, momentOf } from './ids.ts'

/** What one person sent in the evening of one day. */
interface Round {
  day: Day
  by: string
  entries: Entry[]
}

/**
 * Tells the whole story up to `today` to the store. `now` (UTC ISO) is the latest moment at which anything can have been
 * recorded. Throws when an entry is refused: the story is ours, so that is a bug of ours.
 */
export function fill(
  store: Pick<Store, 'append' | 'refresh' | 'together'>,
  today: Day,
  now: string,
  entries: readonly Entry[] = demoEntries(today),
): { entries: number } {
  // In one piece: nobody looks at the plans in between, so they are made once.
  store.together(() => {
    for (const round of roundsOf(entries)) {
      const result = store.append(round.entries, {
        today: round.day,
        recordedAt: recordedAt(round, now),
        recordedBy: round.by,
      })
      if (!result.ok) throw new Error(`demo, ${round.day}: ${result.problems.map(problemLine).join('; ')}`)
    }
  })
  store.refresh(today)
  return { entries: entries.length }
}

/** Entries in the order they were typed in, by day and person. */
function roundsOf(entries: readonly Entry[]): Round[] {
  const rounds: Round[] = []
  for (const e of entries) {
    const day = dayMade(e.id)
    const open = rounds.find((r) => r.day === day && r.by === e.by)
    if (open === undefined) rounds.push({ day, by: e.by, entries: [e] })
    else open.entries.push(e)
  }
  return rounds
}

/** When the last entry of the round was made: that is when the phone sent it. */
function recordedAt(round: Round, now: string): string {
  const last = Math.max(...round.entries.map((e) => momentOf(e.id)))
  return new Date(Math.min(last, Date.parse(now))).toISOString()
}
