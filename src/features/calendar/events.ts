/** What the plans ask for, as events of a calendar, in words. */

import { colonyPath } from '../../app/index.ts'
import { type Day, later } from '../../days.ts'
import type { Shows } from '../../people/index.ts'
import type { Check, Plan } from '../../recovery/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import { dayWords, fromTo, PHASE_WORDS, RULE_WORDS, toDoOf, waitWords } from '../../words/index.ts'
import type { CalendarEvent } from './calendar.ts'
import { yardDays } from './yard-days.ts'

type Said = Pick<CalendarEvent, 'uid' | 'from' | 'to' | 'title' | 'text'>

/** The events of these colonies (in the yard, with plans as of `today`). */
export const eventsOf = (colonies: readonly ColonySummary[], today: Day, shows: Shows): CalendarEvent[] =>
  shows === 'yard-day' ? yardDays(colonies, today) : singleBoxes(colonies, today, shows)

const singleBoxes = (colonies: readonly ColonySummary[], today: Day, shows: Shows): CalendarEvent[] =>
  colonies.flatMap((s) =>
    [
      ...checkEvents(s, today, shows).map((e) => ({ ...e, lapses: false })),
      ...windowEvents(s, today).map((e) => ({ ...e, lapses: true })),
    ].map((e) => ({
      ...e,
      uid: `${e.uid}-${shows === 'window' ? 'w' : 'd'}-${s.id}`,
      colony: s.id,
      yard: s.yard,
      place: s.stand === null ? s.yard : `${s.yard}, stand ${s.stand}`,
      path: colonyPath(s),
      title: `${s.tag}: ${e.title}`,
    })),
  )

const isAsked = (c: Check): boolean => c.status !== 'answered' && c.status !== 'void'

/**
 * A check is the same event as long as it is the same question: the first of the first brood checks, the second mite wash. Welfare
 * looks follow each other without end, so they are one event that moves.
 */
function checkEvents(s: ColonySummary, today: Day, shows: Shows): Said[] {
  const { plan } = s
  const nth = new Map<string, number>()
  return plan.checks.flatMap((c) => {
    const n = (nth.get(c.rule) ?? 0) + 1
    nth.set(c.rule, n)
    if (!isAsked(c)) return []
    const uid = c.rule === 'welfare' ? 'welfare' : `${c.rule}-${n}`
    return [{ uid, ...daysOf(c, today, shows), title: titleOf(c), text: textOf(c, plan) }]
  })
}

const isExpected = (c: Check): boolean => c.rule === 'move-out' && c.status === 'waiting'

const titleOf = (c: Check): string =>
  `${c.status === 'overdue' ? 'late: ' : isExpected(c) ? 'expected: ' : ''}${lower(RULE_WORDS[c.rule].name)}`

const lower = (s: string): string => s.charAt(0).toLowerCase() + s.slice(1)

/** A late check stands on today until it is answered; a window whose first days have passed keeps them. */
function daysOf(c: Check, today: Day, shows: Shows): { from: Day; to: Day } {
  if (shows === 'window')
    return { from: c.opens, to: c.status === 'overdue' ? later(c.closes, today) : c.closes }
  return c.status === 'overdue' ? { from: today, to: today } : { from: c.due, to: c.closes }
}

const textOf = (c: Check, plan: Plan): string =>
  [
    RULE_WORDS[c.rule].question,
    c.why,
    `${isExpected(c) ? 'Expected' : 'Window'}: ${fromTo(c.opens, c.closes, c.opens)}, best ${dayWords(c.due, c.opens)}.`,
    `${PHASE_WORDS[plan.phase]}.`,
    ...(toDoOf(plan) === null && plan.until !== null ? [`The box ${waitWords(plan)}.`] : []),
  ].join('\n')

/** Windows of the bees' own: quiet time, cells, laying workers, and the days for a mite treatment. */
function windowEvents(s: ColonySummary, today: Day): Said[] {
  const { quiet, spans, phase } = s.plan
  const said: Said[] = []
  if (quiet !== null && quiet.to >= today)
    said.push({
      uid: 'quiet',
      ...quiet,
      title: 'leave the lid on',
      text: 'A young queen may be leaving her cell, maturing or flying to mate. Look from outside only.',
    })
  const noQueen = phase === 'queenless' || phase === 'queen-unknown'
  const cells = spans.cellsPossibleUntil
  if (cells !== undefined && noQueen && cells >= today)
    said.push({
      uid: 'cells',
      from: cells,
      to: cells,
      title: 'last day its young brood can become a queen',
      text: 'If it has neither eggs nor queen cells by then, only a frame of eggs or a bought queen is left.',
    })
  const risk = spans.layingWorkerRisk
  if (risk !== undefined && noQueen && risk.latest >= today)
    said.push({
      uid: 'laying-workers-risk',
      from: risk.earliest,
      to: risk.latest,
      title: 'laying workers threaten',
      text: 'No queen is proven, and the last young brood is three to four weeks old.',
    })
  if (spans.broodless !== undefined && spans.broodless.to >= today)
    said.push({
      uid: 'broodless',
      ...spans.broodless,
      title: 'no capped brood (for a mite treatment)',
      text: 'A treatment then reaches mites that cannot hide in cells. Respirator, gloves, and the label registered where you are: the label is the law.',
    })
  return said
}
