/** The next day on which a round is needed, and what to load for it. */
import { addDays, type Day } from '../days.ts'
import { planOf } from '../recovery/plan.ts'
import type { Plan } from '../recovery/plan-types.ts'
import type { Protocol } from '../recovery/protocol.ts'
import { asks, type Box } from './box.ts'
import { type Load, loadFor } from './bring.ts'
import { missedSince } from './missed.ts'

export interface NextRound {
  day: Day
  /** Boxes that will ask something then, if nobody records anything before. */
  boxes: Box[]
  load: Load[]
}

/** Nobody plans further ahead from the yard's gate (judgement). */
const HORIZON = 21

/** The first day after `today` on which any of these boxes asks something; null when none does within three weeks. */
export function nextRound(boxes: readonly Box[], today: Day, protocol: Protocol): NextRound | null {
  const open = boxes.filter((b) => b.history.outcome === null)
  for (const day of candidates(open, today)) {
    const then = open.map((b) => ({ ...b, plan: planOf(b.history, day, protocol) }))
    const asking = then.filter((b) => asks(b.plan) && (missedSince(b.history)?.again ?? day) <= day)
    if (asking.length > 0)
      return {
        day,
        boxes: asking,
        load: loadFor(asking.map((b) => ({ tag: b.tag, plan: b.plan, history: b.history }))),
      }
  }
  return null
}

/** Days on which what is asked can change, in order: edges of windows and of quiet times, days put off to. */
function candidates(boxes: readonly Box[], today: Day): Day[] {
  const days = new Set<Day>()
  const last = addDays(today, HORIZON)
  for (const { plan, history } of boxes) {
    if (asks(plan)) days.add(addDays(today, 1))
    for (const day of [...edges(plan), missedSince(history)?.again]) if (day !== undefined) days.add(day)
  }
  return [...days].filter((d) => d > today && d <= last).sort()
}

const edges = (plan: Plan): Day[] => [
  ...plan.checks
    .filter((c) => c.status !== 'answered' && c.status !== 'void')
    .flatMap((c) => [c.opens, c.due, addDays(c.closes, 1)]),
  ...(plan.quiet === null ? [] : [addDays(plan.quiet.to, 1)]),
]
