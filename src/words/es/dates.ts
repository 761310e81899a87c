/** Days in Spanish, by Intl: 'dom 10 may'. */
import { clockIn, type Day, daysBetween } from '../../days.ts'
import type { Words } from '../catalogue.ts'

/** Latin America: a decimal point, as on the yards' own scales and thermometers. */
const REGION = 'es-419'
const NOON = 'T12:00:00Z'

const short = new Intl.DateTimeFormat(REGION, {
  weekday: 'short',
  day: 'numeric',
  month: 'short',
  year: 'numeric',
  timeZone: 'UTC',
})
const relative = new Intl.RelativeTimeFormat(REGION, { numeric: 'always' })

function partsOf(day: Day): { weekday: string; day: string; month: string; year: string } {
  const found = { weekday: '', day: '', month: '', year: '' }
  for (const { type, value } of short.formatToParts(new Date(`${day}${NOON}`)))
    if (type in found) found[type as keyof typeof found] = value
  return found
}

function dayAlone(d: Day): string {
  const { weekday, day, month } = partsOf(d)
  return `${weekday} ${day} ${month}`
}

const dayWithYear = (d: Day): string => `${dayAlone(d)} ${partsOf(d).year}`

const day = (d: Day, today: Day): string =>
  d.slice(0, 4) === today.slice(0, 4) ? dayAlone(d) : dayWithYear(d)

const NEAR: Record<number, string> = { 0: 'hoy', 1: 'mañana', [-1]: 'ayer' }

function fromToday(d: Day, today: Day): string {
  const n = daysBetween(today, d)
  return NEAR[n] ?? relative.format(n, 'day')
}

function fromTo(from: Day, to: Day, today: Day): string {
  if (from === to) return day(from, today)
  const { weekday, day: n } = partsOf(from)
  const start = from.slice(0, 7) === to.slice(0, 7) ? `${weekday} ${n}` : day(from, today)
  return `${start} a ${day(to, today)}`
}

const daysLate = (d: Day, today: Day): string => {
  const n = daysBetween(d, today)
  return n === 1 ? '1 día' : `${n} días`
}

export const dates: Words['dates'] = {
  day,
  dayAlone,
  dayWithYear,
  weekday: (d) => partsOf(d).weekday,
  axis: (d) => `${partsOf(d).day} ${partsOf(d).month}`,
  fromToday,
  dayAndDistance: (d, today) =>
    Math.abs(daysBetween(d, today)) <= 1
      ? `${fromToday(d, today)}, ${day(d, today)}`
      : `${day(d, today)}, ${fromToday(d, today)}`,
  fromTo,
  span: (s, today) =>
    s.earliest === s.latest
      ? day(s.likely, today)
      : `probable ${day(s.likely, today)} (${fromTo(s.earliest, s.latest, today)})`,
  window: (check, today) => {
    const { opens, due, closes, answeredOn } = check
    switch (check.status) {
      case 'answered':
        return answeredOn === undefined ? 'respondido' : `respondido el ${day(answeredOn, today)}`
      case 'void':
        return `era ${fromTo(opens, closes, today)}`
      case 'overdue':
        return `${daysLate(closes, today)}, desde el ${day(closes, today)}`
      case 'due':
        return closes === today
          ? 'hoy es el último día'
          : `hasta el ${day(closes, today)}, ${fromToday(closes, today)}`
      case 'open':
        return due === closes
          ? `mejor hasta el ${day(due, today)}`
          : `mejor ${fromToday(due, today)}, ${day(due, today)}; último día, el ${day(closes, today)}`
      case 'waiting':
        return `${fromTo(opens, closes, today)}, empieza ${fromToday(opens, today)}`
    }
  },
  instant: (iso, zone, today) => {
    const at = new Date(iso)
    if (Number.isNaN(at.getTime())) return iso
    const there = clockIn(zone, at)
    return `${day(there.day, today)}, ${there.time}`
  },
}
