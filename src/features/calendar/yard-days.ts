/** One entry a yard and day, for whoever looks after more boxes than a calendar can show: the boxes stand in its text. */

import { addDays, type Day, later } from '../../days.ts'
import type { Check, Plan } from '../../recovery/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import { afterQuiet, dayWords, RULE_WORDS, toDoOf, waitsUntil } from '../../words/index.ts'
import type { CalendarEvent } from './calendar.ts'

/** Days ahead that are filled (judgement): plans further out move too much to be worth an entry. */
const AHEAD_DAYS = 42

interface Line {
  yard: string
  day: Day
  late: boolean
  text: string
}

/** The entries of these colonies (in the yard in walking order, with plans as of `today`). */
export function yardDays(colonies: readonly ColonySummary[], today: Day): CalendarEvent[] {
  const last = addDays(today, AHEAD_DAYS)
  const days = new Map<string, Line[]>()
  for (const line of colonies.flatMap((s) => linesOf(s, today)))
    if (line.day <= last) {
      const key = `${line.day} ${line.yard}`
      days.set(key, [...(days.get(key) ?? []), line])
    }
  return [...days.values()].flatMap((lines) => {
    const [first] = lines
    return first === undefined ? [] : [eventOf(first, lines)]
  })
}

function eventOf({ yard, day }: Line, lines: readonly Line[]): CalendarEvent {
  const late = lines.filter((l) => l.late).length
  return {
    uid: `round-${day}-${encodeURIComponent(yard)}`,
    colony: '',
    yard,
    from: day,
    to: day,
    title: `${yard}: ${lines.length} ${lines.length === 1 ? 'box' : 'boxes'}${late === 0 ? '' : `, ${late} late`}`,
    place: yard,
    text: lines.map((l) => l.text).join('\n'),
    path: `/round?${new URLSearchParams({ yard })}`,
    lapses: true,
  }
}

/** What a box asks for today; what it asks for later, each on its best day; and the day until which it can wait. */
function linesOf(s: ColonySummary, today: Day): Line[] {
  const { plan } = s
  const name = s.stand === null ? s.tag : `${s.tag} (stand ${s.stand})`
  const line = (day: Day, words: string, late = false): Line => ({
    yard: s.yard,
    day,
    late,
    text: `${name}: ${words}`,
  })
  const toDo = toDoOf(plan)
  const now = toDo === null ? [] : [line(today, `${toDo.title}${toDo.late ? ' (late)' : ''}`, toDo.late)]
  const byDay = new Map<Day, string[]>()
  for (const c of plan.checks.filter(isComing)) {
    const day = dayOf(c, plan)
    if (day > today) byDay.set(day, [...(byDay.get(day) ?? []), checkWords(c)])
  }
  const until = toDo === null ? waitsUntil(plan) : null
  if (until !== null && until > today && !byDay.has(until))
    byDay.set(until, ['nothing asked before; look again from this day'])
  return [...now, ...[...byDay].map(([day, words]) => line(day, words.join('; ')))]
}

const isComing = (c: Check): boolean =>
  c.status !== 'answered' && c.status !== 'void' && c.status !== 'overdue'

/** The best day, or the first on which the lid may come off again. */
const dayOf = (c: Check, plan: Plan): Day => later(c.due, afterQuiet(c, plan) ?? c.due)

const checkWords = (c: Check): string =>
  `${RULE_WORDS[c.rule].name}${c.rule === 'move-out' ? ' (expected)' : `, until ${dayWords(c.closes, c.opens)}`}`
