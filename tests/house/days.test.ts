import { TZDate } from '@date-fns/tz'
import { addDays as dateFnsAddDays, differenceInCalendarDays, format, parseISO } from 'date-fns'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  addDays,
  clamp,
  clockIn,
  dayIn,
  dayNumber,
  dayOf,
  daysBetween,
  fromToday,
  inWords,
  inWordsWithYear,
  isDay,
  shift,
} from '../../src/days.ts'

const aDay = fc.integer({ min: dayNumber('1900-01-01'), max: dayNumber('2199-11-01') }).map(dayOf)

describe('days', () => {
  test('agree with date-fns, clock changes and leap years included', () => {
    fc.assert(
      fc.property(aDay, fc.integer({ min: -400, max: 400 }), (day, n) => {
        fc.pre(isDay(addDays(day, n)))
        expect(addDays(day, n)).toBe(format(dateFnsAddDays(parseISO(day), n), 'yyyy-MM-dd'))
        expect(daysBetween(day, addDays(day, n))).toBe(n)
        expect(differenceInCalendarDays(parseISO(addDays(day, n)), parseISO(day))).toBe(n)
      }),
    )
  })

  test('cross leap days, year ends and the days of clock changes', () => {
    expect(addDays('2024-02-28', 2)).toBe('2024-03-01')
    expect(addDays('2026-12-31', 1)).toBe('2027-01-01')
    // Clocks change on 29 March and 25 October 2026 in Europe, 8 March and 1 November in North America.
    for (const d of ['2026-03-28', '2026-10-24', '2026-03-07', '2026-10-31'])
      expect(daysBetween(d, addDays(d, 2))).toBe(2)
  })

  test('know which texts are days', () => {
    for (const good of ['2026-05-01', '2024-02-29']) expect(isDay(good)).toBe(true)
    for (const bad of ['2026-02-30', '2025-02-29', '2026-5-1', '2026-05-01T00:00', '1800-01-01', '', 'today'])
      expect(isDay(bad)).toBe(false)
    expect(() => dayNumber('soon')).toThrow(RangeError)
  })

  test('"today" is the yard’s: the same instant is two days in two zones, and DST does not move it', () => {
    const instant = new Date('2026-05-01T03:30:00Z')
    expect(dayIn('America/New_York', instant)).toBe('2026-04-30')
    expect(dayIn('Australia/Sydney', instant)).toBe('2026-05-01')
    expect(dayIn('Europe/Berlin', new Date('2026-03-29T00:59:59Z'))).toBe('2026-03-29')
    expect(dayIn('Europe/Berlin', new Date('2026-10-24T22:30:00Z'))).toBe('2026-10-25')
    expect(() => dayIn('Nowhere/Atall', instant)).toThrow(RangeError)
  })

  test('are said as people say them', () => {
    expect(inWords('2026-05-10')).toBe('Sun 10 May')
    expect(
      ['2026-05-10', '2026-05-11', '2026-05-09', '2026-05-13', '2026-05-01'].map((d) =>
        fromToday(d, '2026-05-10'),
      ),
    ).toEqual(['today', 'tomorrow', 'yesterday', 'in 3 days', '9 days ago'])
  })

  test('days and clocks of zones agree with date-fns, and so do the words of days', () => {
    // Kolkata is half an hour off, Lord Howe moves its clocks by half an hour, Apia left out a whole day (30 Dec 2011).
    const zones = [
      'UTC',
      'America/Phoenix',
      'Europe/Berlin',
      'Asia/Kolkata',
      'Australia/Lord_Howe',
      'Pacific/Apia',
    ]
    const anInstant = fc.date({
      min: new Date('2000-01-01'),
      max: new Date('2040-01-01'),
      noInvalidDate: true,
    })
    fc.assert(
      fc.property(fc.constantFrom(...zones), anInstant, aDay, (zone, instant, day) => {
        const there = new TZDate(instant, zone)
        expect(clockIn(zone, instant)).toEqual({
          day: format(there, 'yyyy-MM-dd'),
          time: format(there, 'HH:mm'),
        })
        expect(inWordsWithYear(day)).toBe(format(new Date(`${day}T12:00:00`), 'EEE d MMM yyyy'))
      }),
    )
  })

  test('spans shift and clamp without touching what was given', () => {
    const span = Object.freeze({ earliest: '2026-05-11', likely: '2026-05-13', latest: '2026-05-14' })
    expect(shift(span, 8, 12, 21)).toEqual({
      earliest: '2026-05-19',
      likely: '2026-05-25',
      latest: '2026-06-04',
    })
    expect(clamp('2026-05-20', span.earliest, span.latest)).toBe('2026-05-14')
  })
})
