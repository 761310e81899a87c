/** One entry a yard and day, for whoever looks after more boxes than a calendar can show: the boxes stand in its text. */

import { addDays, type Day } from '../../days.ts'
import type { ColonySummary } from '../../store/index.ts'
import { dayWords, RULE_WORDS, workDays } from '../../words/index.ts'
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
  const name = s.stand === null ? s.tag : `${s.tag} (stand ${s.stand})`
  return workDays(s.plan).map(({ day, late, checks, words }) => {
    const said =
      day === today
        ? `${words.join('; ')}${late ? ' (late)' : ''}`
        : checks.map((c) => `${RULE_WORDS[c.rule].name}, until ${dayWords(c.closes, c.opens)}`).join('; ')
    return { yard: s.yard, day, late, text: `${name}: ${said || 'can wait until this day'}` }
  })
}
