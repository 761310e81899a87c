/** Times of day as 'HH:MM' in the yard's time zone. */
import { clockIn } from './days.ts'

/** The time of day in a zone (IANA name) at an instant. */
export const timeIn = (zone: string, instant: Date): string => clockIn(zone, instant).time

/** 'HH:MM', from 00:00 to 23:59. */
export const TIME = /^([01]\d|2[0-3]):[0-5]\d$/
export const isTime = (text: string): boolean => TIME.test(text)

const DAY = 24 * 60
const minuteOf = (time: string): number => Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5))

/** The time so many minutes later, past midnight where it comes to that. Example: plusMinutes('23:50', 20) = '00:10'. */
export function plusMinutes(time: string, n: number): string {
  const minute = (minuteOf(time) + n) % DAY
  return `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`
}

/** Minutes from one time to another of the same day; negative where the other comes before. Example: minutesFrom('06:00', '19:30') = 810. */
export const minutesFrom = (from: string, to: string): number => minuteOf(to) - minuteOf(from)

/** Minutes for which what somebody saw, or tapped, at a place is good (judgement). */
const GOOD_MINUTES = 180

/** Whether what was seen at `at` is asked again at `now` of the same day. */
export const isTooOld = (at: string, now: string): boolean => minutesFrom(at, now) > GOOD_MINUTES

/** Minutes from `now` until `time`, within half a day either way; negative when it has passed. */
export function minutesTo(time: string, now: string): number {
  const n = minutesFrom(now, time)
  if (n < -DAY / 2) return n + DAY
  return n > DAY / 2 ? n - DAY : n
}
