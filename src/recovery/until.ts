/** What a box can wait until: the one function behind the advice, the headline, the card and the calendar. */
import { addDays, type Day, earlier, later } from '../days.ts'
import { askedAgain } from './derived-asks.ts'
import { isQuiet } from './phase.ts'
import type { DayRange } from './plan-types.ts'
import { CHORES, factsOf, LOOKS } from './rules.ts'
import type { State } from './state.ts'

/**
 * The next day on which something is asked of a box that nothing is asked of today; null when nothing is planned. Chores
 * count from their due day, for nobody opens a box early for them; in quiet time what needs an open box waits until it is
 * over; what was looked at lately, until looking again tells more.
 *
 * @param decided the day of the next deed, where it was weighed; looks then count from their due day, as chores do
 */
export function untilDay(
  s: State,
  today: Day,
  quiet: DayRange | null,
  decided: Day | null = null,
): Day | null {
  const onDue = decided === null ? CHORES : [...CHORES, ...LOOKS]
  const days = s.asks.flatMap((a) => {
    if (a.answeredOn !== null || a.voidSince !== null || a.rule === 'move-out') return []
    const from = onDue.includes(a.rule) ? a.due : a.opens
    const again = from > today ? from : askedAgain(a)
    if (again === null || again <= today) {
      // Asked already, and kept from today by quiet time or by a chore's due day.
      return factsOf(a.rule).lid === 'off' && isQuiet(today, quiet) ? [addDays(quiet.to, 1)] : []
    }
    const lidOff = factsOf(a.rule).lid === 'off' && a.rule !== 'cells-beside'
    return [lidOff && isQuiet(again, quiet) ? later(again, addDays(quiet.to, 1)) : again]
  })
  const [first, ...rest] = decided === null ? days : [decided, ...days]
  return first === undefined ? null : earlier(first, ...rest)
}
