/**
 * Calendar days and spans of days.
 *
 * A day is its ISO text ('2026-05-01'): it sorts as text, stores as text and has no time zone. Arithmetic goes
 * through UTC day numbers, so no clock change can add or drop a day. Only `clockIn` knows of zones.
 */
import type { Named } from './ids.ts'

/** A calendar day, 'YYYY-MM-DD', years 1900-2199. */
export type Day = Named<'day'>

/** Three days in order: the first on which a thing can be, the likeliest, the last. */
export interface Span {
  earliest: Day
  likely: Day
  latest: Day
}

const MS_PER_DAY = 86_400_000

/** Remembers answers: a plan asks the same of the same few days thousands of times, and there are only so many days. */
function remembered<K, V>(work: (key: K) => V): (key: K) => V {
  const answers = new Map<K, V>()
  return (key) => {
    const known = answers.get(key)
    if (known !== undefined) return known
    const made = work(key)
    if (answers.size < MOST_DAYS) answers.set(key, made)
    return made
  }
}

/** More days than three hundred years have. */
const MOST_DAYS = 120_000
const SHAPE = /^(19|20|21)\d\d-\d\d-\d\d$/

/** Days since 1970-01-01. Example: dayNumber('1970-01-02') = 1. Throws RangeError on text that is not a day. */
export const dayNumber: (day: Day) => number = remembered((day) => {
  const n =
    Date.UTC(Number(day.slice(0, 4)), Number(day.slice(5, 7)) - 1, Number(day.slice(8, 10))) / MS_PER_DAY
  if (Number.isNaN(n)) throw new RangeError(`dayNumber: not a day: ${day}`)
  return n
})

/** The day with that number. Inverse of {@link dayNumber}. */
export const dayOf: (number: number) => Day = remembered((number) =>
  new Date(number * MS_PER_DAY).toISOString().slice(0, 10),
)

/** The day `n` days later (earlier when negative). Example: addDays('2024-02-28', 2) = '2024-03-01'. */
export const addDays = (day: Day, n: number): Day => dayOf(dayNumber(day) + n)

/** Whole days from `from` to `to`; negative when `to` is earlier. Example: daysBetween('2026-05-01', '2026-05-31') = 30. */
export const daysBetween = (from: Day, to: Day): number => dayNumber(to) - dayNumber(from)

/** True for text that names a real calendar day. Example: isDay('2026-02-30') = false. */
export function isDay(text: string): text is Day {
  return SHAPE.test(text) && addDays(text, 0) === text
}

/** The later of the days given. */
export const later = (...days: [Day, ...Day[]]): Day => days.reduce((a, b) => (a > b ? a : b))

/** The earlier of the days given. */
export const earlier = (...days: [Day, ...Day[]]): Day => days.reduce((a, b) => (a < b ? a : b))

/** `day` moved into [from, to]. */
export const clamp = (day: Day, from: Day, to: Day): Day => later(from, earlier(day, to))

/** The span moved by three offsets. Example: shift(s, 8, 12, 21): emergence becomes first egg. */
export const shift = (s: Span, earliest: number, likely = earliest, latest = likely): Span => ({
  earliest: addDays(s.earliest, earliest),
  likely: addDays(s.likely, likely),
  latest: addDays(s.latest, latest),
})

/** One a zone: making it takes half a millisecond, and every request reads the zone. Only zones that exist are kept. */
const clocks = new Map<string, Intl.DateTimeFormat>()

function clockOf(zone: string): Intl.DateTimeFormat {
  const known = clocks.get(zone)
  if (known !== undefined) return known
  const two = '2-digit'
  const made = new Intl.DateTimeFormat('en', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: two,
    day: two,
    hour: two,
    minute: two,
  })
  clocks.set(zone, made)
  return made
}

/** Whether this machine knows a time zone by that name (IANA). */
export function isZone(name: string): boolean {
  try {
    clockOf(name)
    return true
  } catch {
    return false
  }
}

/**
 * What calendar and clock show in a time zone (IANA name) at an instant: day, and time as 'HH:MM'. Throws RangeError for a
 * zone or an instant that does not exist.
 */
export function clockIn(zone: string, instant: Date): { day: Day; time: string } {
  const part = Object.fromEntries(
    clockOf(zone)
      .formatToParts(instant)
      .map(({ type, value }) => [type, value]),
  )
  return { day: `${part.year}-${part.month}-${part.day}`, time: `${part.hour}:${part.minute}` }
}

/** The calendar day in a time zone (IANA name) at an instant. Throws RangeError for a zone that does not exist. */
export const dayIn = (zone: string, instant: Date): Day => clockIn(zone, instant).day

const WEEKDAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat']
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec']

/** 'Sun 10 May' */
export const inWords: (day: Day) => string = remembered((day) => {
  const at = new Date(dayNumber(day) * MS_PER_DAY)
  return `${WEEKDAYS[at.getUTCDay()]} ${at.getUTCDate()} ${MONTHS[at.getUTCMonth()]}`
})

/** 'Sun 10 May 2026' */
export const inWordsWithYear = (day: Day): string => `${inWords(day)} ${day.slice(0, 4)}`

/** 'Sun 10 May', with the year only where it is not the year of `today`. */
export const dayWords = (day: Day, today: Day): string =>
  day.slice(0, 4) === today.slice(0, 4) ? inWords(day) : inWordsWithYear(day)

/** 'today', 'tomorrow', 'yesterday', 'in 3 days', '3 days ago'. */
export function fromToday(day: Day, today: Day): string {
  const n = daysBetween(today, day)
  if (n === 0) return 'today'
  if (n === 1) return 'tomorrow'
  if (n === -1) return 'yesterday'
  return n > 0 ? `in ${n} days` : `${-n} days ago`
}
