/** Days in English. */
import { type Day, dayWords, fromToday, inWords, inWordsWithYear } from '../../days.ts'
import { dayAndDistance, fromTo, spanWords, windowWords } from '../dates.ts'
import { instantWords } from '../instants.ts'

export const dates = {
  /** 'Sun 10 May', with the year where it is not that of today. */
  day: dayWords,
  /** 'Sun 10 May' */
  dayAlone: inWords,
  /** 'Sun 10 May 2026' */
  dayWithYear: inWordsWithYear,
  /** 'Sun' */
  weekday: (day: Day) => inWords(day).slice(0, 3),
  /** '10 May', as on an axis. */
  axis: (day: Day) => inWords(day).slice(4),
  /** 'in 3 days' */
  fromToday,
  /** 'Sun 10 May, in 2 days' */
  dayAndDistance,
  /** 'Sun 10 to Tue 12 May' */
  fromTo,
  /** 'likely Sun 10 May (Fri 8 to Tue 19 May)' */
  span: spanWords,
  /** A check's window: when, and how long it is still good or how late it is. */
  window: windowWords,
  /** An instant in the yard's time zone: 'Sun 10 May, 14:05'. */
  instant: instantWords,
}
