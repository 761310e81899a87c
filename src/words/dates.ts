/** Days as people say them, beside the ISO text that machines read. */

import { type Day, daysBetween, dayWords, fromToday, inWords, type Span } from '../days.ts'
import type { Check } from '../recovery/index.ts'

export { dayWords }

/** 'Sun 10 May, in 2 days'; 'today, Sun 10 May'. */
export function dayAndDistance(day: Day, today: Day): string {
  const n = Math.abs(daysBetween(day, today))
  return n <= 1
    ? `${fromToday(day, today)}, ${dayWords(day, today)}`
    : `${dayWords(day, today)}, ${fromToday(day, today)}`
}

/** 'Sun 10 to Tue 12 May'; one day when both are the same. */
export function fromTo(from: Day, to: Day, today: Day): string {
  if (from === to) return dayWords(from, today)
  const sameMonth = from.slice(0, 7) === to.slice(0, 7)
  return sameMonth
    ? `${inWords(from).split(' ').slice(0, 2).join(' ')} to ${dayWords(to, today)}`
    : `${dayWords(from, today)} to ${dayWords(to, today)}`
}

/** 'likely Sun 10 May (Fri 8 to Tue 19 May)' */
export const spanWords = (s: Span, today: Day): string =>
  s.earliest === s.latest
    ? dayWords(s.likely, today)
    : `likely ${dayWords(s.likely, today)} (${fromTo(s.earliest, s.latest, today)})`

const pastDays = (day: Day, today: Day): string => {
  const n = daysBetween(day, today)
  return n === 1 ? '1 day' : `${n} days`
}

/** A check's window in words as of `today`: when, and how long it is still good or how late it is. */
export function windowWords(
  check: Pick<Check, 'opens' | 'due' | 'closes' | 'status' | 'answeredOn'>,
  today: Day,
): string {
  switch (check.status) {
    case 'answered':
      return check.answeredOn === undefined ? 'answered' : `answered ${dayWords(check.answeredOn, today)}`
    case 'void':
      return `was ${fromTo(check.opens, check.closes, today)}`
    case 'overdue':
      return `${pastDays(check.closes, today)}, since ${dayWords(check.closes, today)}`
    case 'due':
      return check.closes === today
        ? 'today is the last day'
        : `by ${dayWords(check.closes, today)}, ${fromToday(check.closes, today)}`
    case 'open':
      return check.due === check.closes
        ? `best by ${dayWords(check.due, today)}`
        : `best ${fromToday(check.due, today)}, ${dayWords(check.due, today)}; last day ${dayWords(check.closes, today)}`
    case 'waiting':
      return `${fromTo(check.opens, check.closes, today)}, opens ${fromToday(check.opens, today)}`
  }
}
