/** From a history to a plan. Pure: the day is an argument, and the same history and day always give the same plan. */

import { type Day, daysBetween } from '../days.ts'
import type { History } from '../journal/index.ts'
import { adviceOn } from './advice.ts'
import { askMoveOut, keepOutOfQuiet } from './derived-asks.ts'
import { fold } from './fold/fold.ts'
import { phaseOn, quietOf } from './phase.ts'
import { type Check, type Plan, RULES } from './plan-types.ts'
import { DEFAULT_PROTOCOL, type Protocol } from './protocol.ts'
import { readinessOf } from './readiness.ts'
import { horizonOf } from './sources.ts'
import { spansOf } from './spans.ts'
import { checkOf, type State } from './state.ts'

/**
 * The plan of a colony on a day.
 *
 * @param history what stands in its journal (see `historyOf`); entries after `today` must not be in it
 * @param today the day in the yard's time zone
 * @param protocol the yard's windows and thresholds
 */
export function planOf(history: History, today: Day, protocol: Protocol = DEFAULT_PROTOCOL): Plan {
  const s = fold(history, protocol)
  const quiet = quietOf(s)
  const readiness = readinessOf(s, today, quiet)
  keepOutOfQuiet(s, quiet, today)
  const move = askMoveOut(s, readiness)
  const closed = history.outcome !== null
  return {
    tag: history.tag,
    asOf: today,
    day: daysBetween(history.intake.on, closed && history.outcome !== null ? history.outcome.on : today),
    phase: phaseOn(s, today),
    checks: checksOn(s, today).map((c) =>
      // Until all is met the window is only expected, whatever the calendar says.
      c.rule === 'move-out' && move !== null && !closed && !readiness.ready ? { ...c, status: 'waiting' } : c,
    ),
    advice: adviceOn(s, today, quiet, readiness),
    quiet,
    spans: closed ? {} : spansOf(s),
    horizon: horizonOf(s.sources),
    surprises: s.surprises,
    readiness,
  }
}

/** Every question, by its opening day; of the answered welfare looks only the last, or they would bury the rest. */
function checksOn(s: State, today: Day): Check[] {
  const lastWelfare = s.asks.findLast((a) => a.rule === 'welfare' && a.answeredOn !== null)
  return s.asks
    .filter((a) => a.rule !== 'welfare' || a.answeredOn === null || a === lastWelfare)
    .map((a) => checkOf(a, today))
    .sort((a, b) =>
      a.opens === b.opens ? RULES.indexOf(a.rule) - RULES.indexOf(b.rule) : a.opens < b.opens ? -1 : 1,
    )
}
