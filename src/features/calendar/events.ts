/** What the plans ask for, as events of a calendar, in words. */

import { colonyPath } from '../../app/index.ts'
import { type Day, later } from '../../days.ts'
import type { Shows } from '../../people/index.ts'
import type { Check, Plan } from '../../recovery/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import { toDoOf, type Words, waitWords } from '../../words/index.ts'
import type { CalendarEvent } from './calendar.ts'
import { yardDays } from './yard-days.ts'

type Said = Pick<CalendarEvent, 'uid' | 'from' | 'to' | 'title' | 'text'>

/** The events of these colonies (in the yard, with plans as of `today`). */
export const eventsOf = (
  colonies: readonly ColonySummary[],
  today: Day,
  shows: Shows,
  w: Words,
): CalendarEvent[] =>
  shows === 'yard-day' ? yardDays(colonies, today, w) : singleBoxes(colonies, today, shows, w)

const singleBoxes = (
  colonies: readonly ColonySummary[],
  today: Day,
  shows: Shows,
  w: Words,
): CalendarEvent[] =>
  colonies.flatMap((s) =>
    [
      ...checkEvents(s, today, shows, w).map((e) => ({ ...e, lapses: false })),
      ...windowEvents(s, today, w).map((e) => ({ ...e, lapses: true })),
    ].map((e) => ({
      ...e,
      uid: `${e.uid}-${shows === 'window' ? 'w' : 'd'}-${s.id}`,
      colony: s.id,
      yard: s.yard,
      place: w.entries.at(s.yard, s.stand ?? undefined),
      path: colonyPath(s),
      title: `${s.tag}: ${e.title}`,
    })),
  )

const isAsked = (c: Check): boolean => c.status !== 'answered' && c.status !== 'void'

/**
 * A check is the same event as long as it is the same question: the first of the first brood checks, the second mite wash. Welfare
 * looks follow each other without end, so they are one event that moves.
 */
function checkEvents(s: ColonySummary, today: Day, shows: Shows, w: Words): Said[] {
  const { plan } = s
  const nth = new Map<string, number>()
  return plan.checks.flatMap((c) => {
    const n = (nth.get(c.rule) ?? 0) + 1
    nth.set(c.rule, n)
    if (!isAsked(c)) return []
    const uid = c.rule === 'welfare' ? 'welfare' : `${c.rule}-${n}`
    return [{ uid, ...daysOf(c, today, shows), title: titleOf(c, w), text: textOf(c, plan, w) }]
  })
}

const isExpected = (c: Check): boolean => c.rule === 'move-out' && c.status === 'waiting'

function titleOf(c: Check, { calendar, trade }: Words): string {
  const name = lower(trade.rules[c.rule].name)
  if (c.status === 'overdue') return calendar.late(name)
  return isExpected(c) ? calendar.expected(name) : name
}

const lower = (s: string): string => s.charAt(0).toLowerCase() + s.slice(1)

/** A late check stands on today until it is answered; a window whose first days have passed keeps them. */
function daysOf(c: Check, today: Day, shows: Shows): { from: Day; to: Day } {
  if (shows === 'window')
    return { from: c.opens, to: c.status === 'overdue' ? later(c.closes, today) : c.closes }
  return c.status === 'overdue' ? { from: today, to: today } : { from: c.due, to: c.closes }
}

function textOf(c: Check, plan: Plan, w: Words): string {
  const { calendar, dates, reasons, trade } = w
  const days = dates.fromTo(c.opens, c.closes, c.opens)
  const best = dates.day(c.due, c.opens)
  return [
    trade.rules[c.rule].question,
    reasons.all([c.reason]),
    isExpected(c) ? calendar.expectedOn(days, best) : calendar.window(days, best),
    `${trade.phases[plan.phase]}.`,
    ...(toDoOf(plan) === null && plan.until !== null ? [calendar.theBox(waitWords(plan, w))] : []),
  ].join('\n')
}

/** Windows of the bees' own: quiet time, cells, laying workers, and the days for a mite treatment. */
function windowEvents(s: ColonySummary, today: Day, { calendar }: Words): Said[] {
  const { quiet, spans, phase } = s.plan
  const said: Said[] = []
  if (quiet !== null && quiet.to >= today)
    said.push({
      uid: 'quiet',
      ...quiet,
      ...calendar.quiet,
    })
  const noQueen = phase === 'queenless' || phase === 'queen-unknown'
  const cells = spans.cellsPossibleUntil
  if (cells !== undefined && noQueen && cells >= today)
    said.push({
      uid: 'cells',
      from: cells,
      to: cells,
      ...calendar.cells,
    })
  const risk = spans.layingWorkerRisk
  if (risk !== undefined && noQueen && risk.latest >= today)
    said.push({
      uid: 'laying-workers-risk',
      from: risk.earliest,
      to: risk.latest,
      ...calendar.layingWorkers,
    })
  if (spans.broodless !== undefined && spans.broodless.to >= today)
    said.push({
      uid: 'broodless',
      ...spans.broodless,
      ...calendar.broodless,
    })
  return said
}
