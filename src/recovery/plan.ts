/** From a history to a plan. Pure: the day is an argument, and the same history and day always give the same plan. */

import { addDays, type Day, daysBetween } from '../days.ts'
import type { History } from '../journal/index.ts'
import { adviceOn } from './advice/advice.ts'
import type { Adviser, Context, Supplies } from './advice/context.ts'
import { askMoveOut, endInsurance, isFarInsurance, keepFromHeld, keepOutOfQuiet } from './derived-asks.ts'
import { fold } from './fold/fold.ts'
import { phaseOn, quietOf } from './phase.ts'
import {
  type Action,
  type Advice,
  type Advised,
  type Check,
  type Missing,
  type Plan,
  RULES,
  type Rule,
} from './plan-types.ts'
import { DEFAULT_PROTOCOL, type Protocol } from './protocol.ts'
import { readinessOf } from './readiness.ts'
import { inEnglish } from './says/said.ts'
import { horizonOf } from './sources.ts'
import { spansOf } from './spans.ts'
import { type Ask, checkOf, type State } from './state.ts'
import type { Exposure } from './tracing.ts'
import { untilDay } from './until.ts'

/**
 * The plan of a colony on a day.
 *
 * @param history what stands in its journal (see `historyOf`); entries after `today` must not be in it
 * @param today the day in the yard's time zone
 * @param protocol the yard's windows and thresholds
 * @param weigh chooses among the ways that the facts leave open; null: by dates alone
 * @param around what the yard has at hand, and whether the colony is bound to one with suspected brood disease
 */
export function planOf(
  history: History,
  today: Day,
  protocol: Protocol = DEFAULT_PROTOCOL,
  around: { supplies?: Supplies | undefined; exposure?: Exposure | null | undefined } = {},
  weigh: Adviser | null = null,
): Plan {
  const exposure = around.exposure ?? null
  const s = fold(history, protocol)
  const quiet = quietOf(s)
  const readiness = readinessOf(s, today, quiet, exposure)
  keepOutOfQuiet(s, quiet, today)
  keepFromHeld(s, today, exposure)
  endInsurance(s, today)
  const move = askMoveOut(s, readiness)
  const closed = history.outcome !== null
  const asked = (rule: Rule): Ask | undefined => {
    const ask = s.pending(rule)
    return ask !== undefined && today >= ask.opens ? ask : undefined
  }
  const context: Context = { s, today, quiet, readiness, supplies: around.supplies ?? {}, exposure, asked }
  const advice = inWordsToo(adviceOn(context, weigh))
  return {
    tag: history.tag,
    asOf: today,
    day: daysBetween(history.intake.on, closed && history.outcome !== null ? history.outcome.on : today),
    phase: phaseOn(s, today),
    checks: checksOn(s, today).map((c) =>
      // Until all is met the window is only expected, whatever the calendar says.
      c.rule === 'move-out' && move !== null && !closed && !readiness.ready ? { ...c, status: 'waiting' } : c,
    ),
    advice,
    quiet,
    spans: closed ? {} : spansOf(s),
    horizon: horizonOf(s.sources),
    surprises: s.surprises.map((r) => inEnglish([r])),
    surprised: s.surprises,
    missing: closed ? [] : missingIn(s),
    exposed: closed ? null : exposure,
    lost: closed ? null : s.lost,
    until: closed || s.lost !== null ? null : untilDay(s, today, quiet, weigh && decidedFor(advice)),
    readiness,
  }
}

/** Advice with its sentences in English. */
export const inWordsToo = (advice: Advised): Advice => ({ ...advice, why: inEnglish(advice.reasons) })

/** The day for which advice that waits was weighed. */
const decidedFor = ({ action, until }: Advised): Day | null =>
  until !== undefined && WAITS.includes(action) ? addDays(until, 1) : null
const WAITS: readonly Action[] = ['leave-alone', 'outside-look', 'order-queen']

const missingIn = (s: State): Missing[] =>
  s.asks.flatMap((a) =>
    a.answeredOn !== null || a.voidSince !== null || a.lookedOn === null
      ? []
      : a.missing.map((what) => ({ check: a.rule, what, since: a.lookedOn ?? s.lastVisit })),
  )

/** Every question, by its opening day; of the answered welfare looks only the last, or they would bury the rest. */
function checksOn(s: State, today: Day): Check[] {
  const lastWelfare = s.asks.findLast((a) => a.rule === 'welfare' && a.answeredOn !== null)
  return s.asks
    .filter((a) => a.rule !== 'welfare' || a.answeredOn === null || a === lastWelfare)
    .filter((a) => !isFarInsurance(a, today))
    .map((a) => checkOf(a, today))
    .sort((a, b) =>
      a.opens === b.opens ? RULES.indexOf(a.rule) - RULES.indexOf(b.rule) : a.opens < b.opens ? -1 : 1,
    )
}
