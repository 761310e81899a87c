/**
 * The calendar as others read it: parsed with ical.js, an independent reader of iCalendar, and held against RFC 5545
 * itself where a reader would be lenient (folding 3.1, escaping 3.3.11, all-day events 3.6.1, required properties).
 */
import fc from 'fast-check'
import ICAL from 'ical.js'
import { describe, expect, it } from 'vitest'
import { addDays } from '../../../src/days.ts'
import { type CalendarEvent, calendarText, type FeedEvent } from '../../../src/features/calendar/calendar.ts'

const META = { name: 'Resettle: Quarry', origin: 'https://yard.example', language: 'en' } as const

const event = (more: Partial<CalendarEvent> = {}): CalendarEvent => ({
  uid: 'telling-visit-1-d-019707a0',
  colony: '019707a0',
  yard: 'Quarry',
  from: '2026-06-10',
  to: '2026-06-12',
  title: 'W-2: the first brood check',
  place: 'Quarry, stand 2',
  text: 'Eggs? Queen cells? Neither?\nWindow: Tue 9 to Fri 12 Jun, best Wed 10 Jun.',
  path: '/colony/W-2',
  lapses: false,
  ...more,
})
const fed = (more: Partial<FeedEvent> = {}): FeedEvent => ({
  event: event(),
  sequence: 0,
  changedAt: '2026-06-08T06:30:00.000Z',
  cancelled: false,
  ...more,
})
const read = (text: string) => new ICAL.Component(ICAL.parse(text))
const events = (text: string) =>
  read(text)
    .getAllSubcomponents('vevent')
    .map((c) => new ICAL.Event(c))

describe('the calendar', () => {
  it('is a calendar that is published, named, and looked at again', () => {
    const cal = read(calendarText([fed()], META))
    expect(cal.name).toBe('vcalendar')
    expect(cal.getFirstPropertyValue('version')).toBe('2.0')
    expect(cal.getFirstPropertyValue('prodid')).toContain('Resettle')
    expect(cal.getFirstPropertyValue('method')).toBe('PUBLISH')
    expect(cal.getFirstPropertyValue('name')).toBe('Resettle: Quarry')
    expect(String(cal.getFirstPropertyValue('refresh-interval'))).toBe('PT4H')
  })

  it('has all-day events whose end is the day after the last (RFC 5545, 3.6.1)', () => {
    const [e] = events(calendarText([fed()], META))
    expect(e?.startDate.isDate).toBe(true)
    expect(e?.startDate.toString()).toBe('2026-06-10')
    expect(e?.endDate.toString()).toBe('2026-06-13')
    expect(e?.duration.toString()).toBe('P3D')
  })

  it('is the same day whatever zone the server stands in', () => {
    const zone = process.env.TZ
    try {
      const texts = ['Pacific/Kiritimati', 'America/Los_Angeles', 'UTC'].map((tz) => {
        process.env.TZ = tz
        return calendarText([fed()], META)
      })
      expect(new Set(texts).size).toBe(1)
    } finally {
      if (zone === undefined) delete process.env.TZ
      else process.env.TZ = zone
    }
  })

  it('carries what is required of each event, and its revision', () => {
    const [e] = events(calendarText([fed({ sequence: 4 })], META))
    const get = (name: string) => String(e?.component.getFirstPropertyValue(name))
    expect(e?.uid).toBe('telling-visit-1-d-019707a0')
    expect(e?.sequence).toBe(4)
    expect(get('dtstamp')).toBe('2026-06-08T06:30:00Z')
    expect(get('last-modified')).toBe('2026-06-08T06:30:00Z')
    expect(get('status')).toBe('CONFIRMED')
    expect(get('transp')).toBe('TRANSPARENT')
    expect(get('url')).toBe('https://yard.example/colony/W-2')
  })

  it('says that an event was called off', () => {
    const [e] = events(calendarText([fed({ cancelled: true })], META))
    expect(e?.component.getFirstPropertyValue('status')).toBe('CANCELLED')
  })

  it('is the same bytes for the same events: nothing of the moment is in it', () =>
    expect(calendarText([fed()], META)).toBe(calendarText([fed()], META)))

  it('without events is a calendar all the same', () => expect(events(calendarText([], META))).toEqual([]))
})

const AWKWARD = [
  'commas, semicolons; backslashes \\ and "quotes"',
  'a line\nand another\n\nand a third',
  'ends in a backslash\\',
  'BEGIN:VEVENT\nUID:smuggled\nEND:VEVENT',
  'Gräfin 🐝 über die Brücke, 日本語の巣箱 '.repeat(6),
  'x'.repeat(500),
  '🐝'.repeat(60),
  'é'.repeat(74),
]

describe('escaping and folding', () => {
  it.each(AWKWARD)('brings %j back as it was', (text) => {
    const [e, ...more] = events(calendarText([fed({ event: event({ text }) })], META))
    expect(more).toEqual([])
    expect(e?.description).toBe(text)
  })

  it('brings any text back, and never lets one event become two', () => {
    // Lone halves of a pair are no text, and control characters other than line ends have no place in a value. U+FFFD is
    // left out because it is by this that `wellFolded` knows a character cut in two.
    const text = fc
      .string({ unit: 'grapheme', maxLength: 300 })
      .map((s) => s.replaceAll(/[\p{Cc}\u{FFFD}]/gu, '').trim())
    fc.assert(
      fc.property(text, text, text, (title, place, body) => {
        const written = calendarText([fed({ event: event({ title, place, text: body }) })], META)
        const [e, ...more] = events(written)
        expect(more).toEqual([])
        expect(e?.summary ?? '').toBe(title)
        expect(e?.location ?? '').toBe(place)
        expect(e?.description ?? '').toBe(body)
        wellFolded(written)
      }),
      { numRuns: 300 },
    )
  })

  it('folds every line to at most 75 octets, and ends each with CR LF (RFC 5545, 3.1)', () => {
    for (const text of AWKWARD) wellFolded(calendarText([fed({ event: event({ text, title: text }) })], META))
  })

  it('turns control characters into spaces', () => {
    const [e] = events(
      calendarText([fed({ event: event({ title: 'a\u0007b\u0000c', text: 'd\u000be' }) })], META),
    )
    expect(e?.summary).toBe('a b c')
    expect(e?.description).toBe('d e')
  })
})

/** Each line on the wire within its limit, whole characters on each, and no bare line ends. */
function wellFolded(text: string): void {
  expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/)
  for (const line of text.split('\r\n')) {
    const octets = Buffer.from(line)
    expect(octets.length).toBeLessThanOrEqual(75)
    expect(octets.toString()).not.toContain('\uFFFD')
    expect(line).not.toMatch(/[\uD800-\uDBFF]$|^ ?[\uDC00-\uDFFF]/)
  }
}

describe('days', () => {
  it('of any event come back as they were', () =>
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20_000 }), fc.integer({ min: 0, max: 60 }), (n, length) => {
        const from = addDays('2000-01-01', n)
        const [e] = events(calendarText([fed({ event: event({ from, to: addDays(from, length) }) })], META))
        expect(e?.startDate.toString()).toBe(from)
        expect(e?.endDate.toString()).toBe(addDays(from, length + 1))
      }),
      { numRuns: 200 },
    ))
})
