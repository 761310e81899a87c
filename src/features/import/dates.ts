/** Dates as people write them in spreadsheets: '2024-05-03', '5/3/24', '3.5.2024', '3 May 2024', 'May 3, 2024', 45415. */
import { type Day, dayNumber, dayOf, isDay } from '../../days.ts'

/** Which comes first where both are numbers. */
export type DateOrder = 'day-first' | 'month-first'

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec']

/** A time of day behind the date says nothing here. */
const TIME = /[T\s]+\d{1,2}[:.]\d{2}([:.]\d{2}(\.\d+)?)?\s*([ap]\.?m\.?)?\s*(z|[+-]\d\d:?\d\d)?$/i
const WEEKDAY = /^(mon|tues?|wed(nes)?|thur?s?|fri|sat(ur)?|sun)(day)?\.?,?\s+/i

const NUMBERS = /^(\d{1,2})\s*([/.\-\s])\s*(\d{1,2})\s*\2\s*(\d{4}|\d{2})\.?$/
const YEAR_FIRST = /^(\d{4})[/.-](\d{1,2})[/.-](\d{1,2})$/
const DAY_NAME = /^(\d{1,2})(?:st|nd|rd|th)?[\s\-./]*([a-z]{3,9})\.?,?[\s\-./]*(\d{4}|\d{2})$/i
const NAME_DAY = /^([a-z]{3,9})\.?[\s\-./]*(\d{1,2})(?:st|nd|rd|th)?,?[\s\-./]+(\d{4}|\d{2})$/i

/** Day 0 of the serial numbers in which spreadsheet programs keep dates: 1899-12-30 (the 1900 date system). */
const SERIAL_ZERO = dayNumber('1970-01-01') - 25_569
const SERIAL = /^\d{5}$/

const trimmed = (text: string): string => text.trim().replace(TIME, '').replace(WEEKDAY, '').trim()

/** '24' is 2024, '87' is 1987. */
function fullYear(text: string): number {
  const n = Number(text)
  return text.length === 4 ? n : n < 70 ? 2000 + n : 1900 + n
}

function dayFrom(year: number, month: number, day: number): Day | null {
  const pad = (n: number): string => String(n).padStart(2, '0')
  const text = `${year}-${pad(month)}-${pad(day)}`
  return isDay(text) ? text : null
}

function monthNamed(name: string): number {
  return MONTHS.indexOf(name.slice(0, 3).toLowerCase()) + 1
}

/** The day written; null when it is none. `order` decides only where both readings are numbers. */
export function dateTyped(text: string, order: DateOrder): Day | null {
  const t = trimmed(text)
  const iso = YEAR_FIRST.exec(t)
  if (iso !== null) return dayFrom(Number(iso[1]), Number(iso[2]), Number(iso[3]))
  const numbers = NUMBERS.exec(t)
  if (numbers !== null) {
    const [a, b, year] = [Number(numbers[1]), Number(numbers[3]), fullYear(numbers[4] ?? '')]
    return order === 'day-first' ? dayFrom(year, b, a) : dayFrom(year, a, b)
  }
  const dayName = DAY_NAME.exec(t)
  if (dayName !== null)
    return dayFrom(fullYear(dayName[3] ?? ''), monthNamed(dayName[2] ?? ''), Number(dayName[1]))
  const nameDay = NAME_DAY.exec(t)
  if (nameDay !== null)
    return dayFrom(fullYear(nameDay[3] ?? ''), monthNamed(nameDay[1] ?? ''), Number(nameDay[2]))
  if (SERIAL.test(t)) {
    const day = dayOf(SERIAL_ZERO + Number(t))
    return isDay(day) ? day : null
  }
  return null
}

/**
 * The days a date of two numbers and a year can mean: two where both orders give a day, and not the same one.
 * Example: readingsOf('5/3/2024') = ['2024-03-05', '2024-05-03']; readingsOf('25/3/2024') = ['2024-03-25'].
 */
export function readingsOf(text: string): Day[] {
  if (!NUMBERS.test(trimmed(text))) return []
  const both = (['day-first', 'month-first'] as const).map((order) => dateTyped(text, order))
  return [...new Set(both.filter((day) => day !== null))]
}

export interface OrderFound {
  /** What the dates themselves prove; null when they don't, or prove both. */
  order: DateOrder | null
  /** A date that proves it, with its line. */
  proof: { line: number; text: string } | null
  /** The first date that can be read both ways. */
  ambiguous: { line: number; text: string } | null
  /** Dates of both orders in one sheet: whichever is chosen, some lines are wrong. */
  mixed: boolean
  /** Dates that can be read both ways. */
  twoWays: number
}

/** Which order a sheet's dates are in, as far as they prove it: a 25 in front is a day. */
export function orderIn(dates: readonly { line: number; text: string }[]): OrderFound {
  const proofs: Partial<Record<DateOrder, OrderFound['proof']>> = {}
  let ambiguous: OrderFound['ambiguous'] = null
  let twoWays = 0
  for (const date of dates) {
    const numbers = NUMBERS.exec(trimmed(date.text))
    if (numbers === null) continue
    const [a, b] = [Number(numbers[1]), Number(numbers[3])]
    if (a > 12 && b <= 12) proofs['day-first'] ??= date
    else if (b > 12 && a <= 12) proofs['month-first'] ??= date
    else if (readingsOf(date.text).length > 1) {
      ambiguous ??= date
      twoWays++
    }
  }
  const [dayFirst, monthFirst] = [proofs['day-first'] ?? null, proofs['month-first'] ?? null]
  const mixed = dayFirst !== null && monthFirst !== null
  const order = mixed ? null : dayFirst !== null ? 'day-first' : monthFirst !== null ? 'month-first' : null
  return { order, proof: order === null ? null : (dayFirst ?? monthFirst), ambiguous, mixed, twoWays }
}

/** Dots go with the day first wherever they are written; slashes and dashes say nothing. */
export const orderByDots = (text: string): DateOrder | null =>
  NUMBERS.exec(trimmed(text))?.[2] === '.' ? 'day-first' : null

/** What is wrong with a date that can be read two ways, and what the other dates prove; null for anything else. */
export function twoWaysSaid(
  text: string,
  { order, proof }: Pick<OrderFound, 'order' | 'proof'>,
): string | null {
  const ways = readingsOf(text)
  if (ways.length !== 2) return null
  const evidence =
    order === null || proof === null
      ? 'write the one that is meant'
      : `"${proof.text}" in line ${proof.line} has the ${order === 'day-first' ? 'day' : 'month'} first, so it is likely ${dateTyped(text, order)}; write it so`
  return `"${text}" can be read two ways, ${ways.join(' or ')}; ${evidence}`
}
