/** The next day on which a round is needed, and what to load for it. */

import { addDays, type Day } from '../../days.ts'
import type { Planner } from '../../store/index.ts'
import { asks, type Box } from './box.ts'
import { type Load, loadFor } from './bring.ts'
import { isPutOff, missedSince } from './missed.ts'
import { urgencyOf } from './urgency.ts'

export interface NextRound {
  day: Day
  /** Boxes that will ask something then, if nobody records anything before. */
  boxes: Box[]
  load: Load[]
}

/** Nobody plans further ahead from the yard's gate (judgement). */
const HORIZON = 21

/**
 * The first day after `today` on which the round has any of these boxes on it; null when none has within three weeks.
 *
 * Day by day, and by the round's own rule for what was put off: what is asked changes on more days than the edges of
 * windows, and a summary that says another day than the round does sends people past a window of the bees' own.
 */
export function nextRound(boxes: readonly Box[], today: Day, planner: Planner): NextRound | null {
  const open = boxes.filter((b) => b.history.outcome === null)
  for (let ahead = 1; ahead <= HORIZON; ahead++) {
    const day = addDays(today, ahead)
    const then = open.map((b) => ({
      ...b,
      plan: planner(b.history, day, b.plan.exposed),
    }))
    const asking = then.filter(
      (b) => asks(b.plan) && !isPutOff(missedSince(b.history), urgencyOf(b.plan), day),
    )
    if (asking.length > 0)
      return {
        day,
        boxes: asking,
        load: loadFor(asking.map((b) => ({ tag: b.tag, plan: b.plan, history: b.history }))),
      }
  }
  return null
}
