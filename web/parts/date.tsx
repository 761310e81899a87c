/** Days in words, with the ISO text for machines. */
import type { Day } from '../../src/days.ts'
import { dayAndDistance, dayWords } from '../words/dates.ts'

/** 'Sun 10 May' */
export const On = ({ day, today }: { day: Day; today: Day }) => (
  <time datetime={day} class="nowrap">
    {dayWords(day, today)}
  </time>
)

/** 'Sun 10 May, in 2 days' */
export const When = ({ day, today }: { day: Day; today: Day }) => (
  <time datetime={day}>{dayAndDistance(day, today)}</time>
)
