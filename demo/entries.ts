/** Everything in the invented yard's journal, as a person would have typed it in up to today. */

import type { Day } from '../src/days.ts'
import type { Entry } from '../src/journal/index.ts'
import { liveStories } from './live/stories.ts'
import { seasonOf } from './seasons/season.ts'

const PAST_SEASONS = 3

/**
 * The demo's entries in the order in which they were typed in. The colonies of these weeks move with `today`; the
 * seasons before are those of the three calendar years before it.
 */
export function demoEntries(today: Day): Entry[] {
  const year = Number(today.slice(0, 4))
  const seasons = Array.from({ length: PAST_SEASONS }, (_, i) =>
    seasonOf(year - PAST_SEASONS + i, PAST_SEASONS - i),
  )
  return [...seasons.flat(), ...liveStories]
    .flatMap((story) => story.entries(today))
    .sort((a, b) => (a.id < b.id ? -1 : 1))
}
