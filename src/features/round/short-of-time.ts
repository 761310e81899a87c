/** "I have 40 minutes": which boxes to open, in which order, so that the most urgent questions get answered. */

import { addDays, type Day } from '../../days.ts'
import { standOrder } from '../../journal/index.ts'
import type { Stop } from './round.ts'
import { type ClosingWindow, morePressing } from './urgency.ts'

/**
 * How much going to a box today is worth, larger first; decides among boxes of the same rank. Left out, the nearer end
 * of the window decides.
 */
export type Worth = (stop: Stop) => number

export interface Choice {
  minutes: number
  /** What fits, the most urgent first. */
  open: Stop[]
  /** What does not, the most urgent first. */
  left: Stop[]
  /** Minutes that the boxes chosen take. */
  used: number
}

/** The most urgent first: by rank, then worth, then the nearer end, then as one walks. */
export function byUrgency(stops: readonly Stop[], worth: Worth = () => 0): Stop[] {
  return [...stops].sort((a, b) => {
    const sameRank = a.urgency.rank === b.urgency.rank
    return (
      (sameRank ? worth(b) - worth(a) : 0) || morePressing(a.urgency, b.urgency) || standOrder(a.box, b.box)
    )
  })
}

/**
 * Chooses among the stops of a round where nobody has been today. Whatever is most urgent comes first; a box that no
 * longer fits lets shorter ones after it in.
 */
export function inMinutes(stops: readonly Stop[], minutes: number, worth?: Worth): Choice {
  const choice: Choice = { minutes, open: [], left: [], used: 0 }
  const toDo = stops.filter((s) => s.state === 'to-do')
  for (const stop of byUrgency(toDo, worth)) {
    const fits = choice.used + stop.minutes <= minutes
    ;(fits ? choice.open : choice.left).push(stop)
    if (fits) choice.used += stop.minutes
  }
  return choice
}

/** What not going there today costs, if it is seen to on `next` at the earliest. */
export type Cost =
  /** Disease is suspected: the call to the inspector needs no walk to the box, and does not wait for one. */
  | { of: 'call' }
  /** The bees' own window ends before, or has its last day then. */
  | { of: 'window'; window: ClosingWindow; lost: boolean }
  /** Something that is to be done is done later; `until` is its last day, where it has one. */
  | { of: 'delay'; until: Day | null; late: boolean }
  /** Late already, and later then. */
  | { of: 'later-still'; since: Day }
  /** A question that becomes late by then. */
  | { of: 'becomes-late'; closes: Day }
  /** It can wait until that day. */
  | { of: 'nothing'; until: Day | null }

export function costOfWaiting(stop: Stop, today: Day, next: Day = addDays(today, 1)): Cost {
  const { rank, window, check, until } = stop.urgency
  if (stop.asked.advice.action === 'call-inspector') return { of: 'call' }
  if (window !== null) return { of: 'window', window, lost: window.of !== 'cells' || window.day < next }
  if (check?.status === 'overdue') return { of: 'later-still', since: check.closes }
  if (rank === 'action') return { of: 'delay', until, late: until !== null && until < next }
  if (check === null) return { of: 'nothing', until: null }
  return check.closes < next
    ? { of: 'becomes-late', closes: check.closes }
    : { of: 'nothing', until: check.closes }
}
