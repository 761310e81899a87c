/** One entry a yard and day, for whoever looks after more boxes than a calendar can show: the boxes stand in its text. */

import { addDays, type Day } from '../../days.ts'
import type { ColonySummary } from '../../store/index.ts'
import { type Words, workDays } from '../../words/index.ts'
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
export function yardDays(colonies: readonly ColonySummary[], today: Day, w: Words): CalendarEvent[] {
  const last = addDays(today, AHEAD_DAYS)
  const days = new Map<string, Line[]>()
  for (const line of colonies.flatMap((s) => linesOf(s, today, w)))
    if (line.day <= last) {
      const key = `${line.day} ${line.yard}`
      days.set(key, [...(days.get(key) ?? []), line])
    }
  return [...days.values()].flatMap((lines) => {
    const [first] = lines
    return first === undefined ? [] : [eventOf(first, lines, w)]
  })
}

function eventOf({ yard, day }: Line, lines: readonly Line[], w: Words): CalendarEvent {
  const late = lines.filter((l) => l.late).length
  return {
    uid: `round-${day}-${encodeURIComponent(yard)}`,
    colony: '',
    yard,
    from: day,
    to: day,
    title: w.calendar.yardDay(yard, w.parts.box(lines.length), late),
    place: yard,
    text: lines.map((l) => l.text).join('\n'),
    path: `/round?${new URLSearchParams({ yard })}`,
    lapses: true,
  }
}

/** What a box asks for today; what it asks for later, each on its best day; and the day until which it can wait. */
function linesOf(s: ColonySummary, today: Day, w: Words): Line[] {
  const { calendar, dates, parts, trade } = w
  const name = s.stand === null ? s.tag : `${s.tag} (${parts.stand(s.stand)})`
  return workDays(s.plan, w).map(({ day, late, checks, words }) => {
    const said =
      day === today
        ? `${words.join('; ')}${late ? ` ${parts.late}` : ''}`
        : checks.map((c) => calendar.until(trade.rules[c.rule].name, dates.day(c.closes, c.opens))).join('; ')
    return { yard: s.yard, day, late, text: `${name}: ${said || calendar.waits}` }
  })
}
