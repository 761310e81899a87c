/** On which days a box is to be gone to: the one reckoning behind calendars and the weeks ahead. */
import { addDays, type Day } from '../days.ts'
import { type Action, type Check, type Plan, rulesWhere } from '../recovery/index.ts'
import { type Words, wordsIn } from './catalogue.ts'
import { toDoOf, waitsUntil } from './lines.ts'

export interface WorkDay {
  day: Day
  /** Checks whose best day it is; of today, all that may be done there. Empty where only the waiting ends. */
  checks: Check[]
  late: boolean
  /** Nothing there asks for the lid to come off. */
  lidOn: boolean
  /** What the plan advises on its own day; null of days to come. */
  action: Action | null
  /** In words, each a piece of work. */
  words: string[]
}

/**
 * The days of work that a plan foresees, from its own day on: what it asks today; what it will ask, each on its best day or
 * the first after quiet time; and the day until which a box with nothing to do can wait. The expected leaving is no work.
 */
export function workDays(plan: Plan, w: Words = wordsIn('en')): WorkDay[] {
  const toDo = toDoOf(plan, w)
  const days = new Map<Day, Check[]>()
  for (const c of plan.checks.filter(isComing)) {
    const day = dayOf(c, plan)
    if (day > plan.asOf && !toDo?.also.includes(c) && toDo?.check !== c)
      days.set(day, [...(days.get(day) ?? []), c])
  }
  const until = toDo === null ? waitsUntil(plan) : null
  if (until !== null && until > plan.asOf && !days.has(until)) days.set(until, [])
  const coming = [...days].map(([day, checks]) => ({
    day,
    checks,
    late: false,
    action: null,
    lidOn: checks.every((c) => OUTSIDE.has(c.rule)),
    words: checks.map((c) => w.trade.rules[c.rule].name),
  }))
  const now =
    toDo === null
      ? []
      : [
          {
            day: plan.asOf,
            checks: [toDo.check, ...toDo.also].filter((c) => c !== null),
            late: toDo.late,
            action: toDo.action,
            lidOn: toDo.lidOn,
            words: [toDo.title],
          },
        ]
  return [...now, ...coming].sort((a, b) => a.day.localeCompare(b.day))
}

const OUTSIDE: ReadonlySet<Check['rule']> = new Set(rulesWhere((f) => f.lid !== 'off'))

const isComing = (c: Check): boolean =>
  c.rule !== 'move-out' && c.status !== 'answered' && c.status !== 'void' && c.status !== 'overdue'

/** The best day; of what needs an open box, in quiet time, the day after it, as the plan's `until` has it. */
function dayOf(c: Check, { quiet }: Plan): Day {
  const needsOpen = !OUTSIDE.has(c.rule) && c.rule !== 'cells-beside'
  return needsOpen && quiet !== null && quiet.from <= c.due && c.due <= quiet.to
    ? addDays(quiet.to, 1)
    : c.due
}
