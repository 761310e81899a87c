/** Beetles, moths and robbing: seen when, looked for when, and by when to look again. */

import { addDays, type Day, daysBetween } from '../../days.ts'
import type { Inspection, StandingEntry } from '../../journal/index.ts'

export const WATCHED = ['beetles', 'moths', 'robbing'] as const
export type Watched = (typeof WATCHED)[number]

/**
 * Days after which a box where it was seen is looked at again. Beetles: a weak colony can be slimed within two weeks of
 * warm weather, so within 7 days (reckoned from the beetle's days; judgement). Moths: open comb is at risk within two to
 * three weeks (from memory). Robbing: the next day (common practice).
 */
const LOOK_AGAIN: Record<Watched, number> = { beetles: 7, moths: 14, robbing: 1 }

/** Nobody has looked for this long: said so. The welfare look's own window closes on day 10. */
const LOOKED_LATELY_DAYS = 10

export interface Watch {
  what: Watched
  /** seen: at the last look. gone: seen before, not at the last look. clear: looked for, never seen. */
  stands: 'seen' | 'gone' | 'clear' | 'not-looked'
  lastLooked: Day | null
  lastSeen: Day | null
  timesSeen: number
  lookAgainBy: Day | null
  late: boolean
}

export function watchOf(what: Watched, entries: readonly StandingEntry[], today: Day): Watch {
  const looks = entries.filter(
    (e): e is Inspection =>
      e.kind === 'inspection' &&
      e.on <= today &&
      e.signs !== undefined &&
      // What is seen on combs is not gone because a look from outside did not see it.
      (what === 'robbing' || e.opened || e.signs.includes(what)),
  )
  const seen = looks.filter((e) => e.signs?.includes(what))
  const last = looks.at(-1)
  const lastSeen = seen.at(-1)?.on ?? null
  const stands =
    last === undefined
      ? 'not-looked'
      : last.signs?.includes(what)
        ? 'seen'
        : lastSeen === null
          ? 'clear'
          : 'gone'
  const lookAgainBy = stands === 'seen' && lastSeen !== null ? addDays(lastSeen, LOOK_AGAIN[what]) : null
  return {
    what,
    stands,
    lastLooked: last?.on ?? null,
    lastSeen,
    timesSeen: seen.length,
    lookAgainBy,
    late: lookAgainBy !== null && today > lookAgainBy,
  }
}

/** Nobody has looked for signs of trouble lately. */
export const unwatched = (w: Watch, today: Day): boolean =>
  w.lastLooked === null || daysBetween(w.lastLooked, today) > LOOKED_LATELY_DAYS
