/** Clocks that go backwards, and days of 23 and 25 hours. */
import { describe, expect, test } from 'vitest'
import { addDays } from '../../src/days.ts'
import { inspection, intake, newId } from '../store/helpers.ts'
import { someOf } from '../support/long.ts'
import { testYard } from '../support/yard-app.ts'

describe('a clock set back', () => {
  test('keeps what was written, goes on writing, and makes plans for the day it says', async () => {
    const yard = testYard({ day: '2026-06-10' })
    await yard.send('operator', [intake('A-1')])
    const later = inspection('A-1', '2026-06-10', { eggs: 'single' })
    await yard.send('helper', later)
    yard.at('2026-06-08T12:00:00Z')
    const earlier = inspection('A-1', '2026-06-08')
    expect((await yard.send('helper', earlier)).status).toBe(200)
    expect((await yard.send('helper', inspection('A-1', '2026-06-09'))).status).toBe(422)
    for (const path of ['/', '/yard', '/colony/A-1', '/colony/A-1/visit', '/changes', '/data'])
      expect((await yard.ask('operator', path)).status, path).toBe(200)
    // In the order in which they came to be known, whatever the clock said.
    expect(yard.services.store.changes({ limit: 2 }).map((r) => r.entry.id)).toEqual([earlier.id, later.id])
    expect(yard.services.store.verify()).toMatchObject({ ok: true, problems: [] })
    yard.at('2026-06-11T12:00:00Z')
    expect((await yard.send('helper', inspection('A-1', '2026-06-11'))).status).toBe(200)
    expect(yard.errors).toEqual([])
  })

  test('signs nobody out and lets no link live longer than its week', async () => {
    const yard = testYard({ day: '2026-06-10' })
    await yard.session('operator')
    const made = yard.services.people.invite({ name: 'Juniper', role: 'helper', by: null })
    const token = made.ok ? made.value.link.token : ''
    yard.at('2020-01-01T00:00:00Z')
    expect((await yard.ask('operator', '/')).status).toBe(200)
    yard.at('2026-06-17T12:00:01Z')
    expect(yard.services.people.invites.holder(token)).toBeNull()
  })
})

/** Zones whose clocks change on these days (IANA time zone database): at 2 o'clock, at midnight, by half an hour. */
const CHANGES = [
  ['America/New_York', '2026-03-08'],
  ['America/New_York', '2026-11-01'],
  ['Europe/Berlin', '2026-03-29'],
  ['Europe/Berlin', '2026-10-25'],
  ['America/Santiago', '2026-09-06'],
  ['America/Santiago', '2026-04-05'],
  ['Australia/Lord_Howe', '2026-10-04'],
] as const

describe.each(someOf(CHANGES, 3))('%s, %s', (zone, day) => {
  test('every quarter hour of the days around: the day never goes back, and today’s entries are taken', async () => {
    const yard = testYard({ day: addDays(day, -2) })
    yard.services.store.settings.set('timeZone', zone)
    await yard.send('operator', [intake('A-1', { on: addDays(day, -4) })])
    const start = Date.parse(`${addDays(day, -1)}T00:00:00Z`)
    const seen: string[] = []
    for (let quarter = 0; quarter < 3 * 96; quarter++) {
      yard.at(new Date(start + quarter * 900_000).toISOString())
      const today = yard.services.store.settings.get('timeZone') === zone ? await dayShown() : ''
      const last = seen.at(-1)
      if (last !== undefined && today < last) throw new Error(`${last} was followed by ${today}`)
      if (today !== last) {
        seen.push(today)
        const look = await yard.post('helper', '/colony/A-1/outside-look', { id: newId() })
        expect(look.headers.get('location')).toContain('saved=')
        expect((await yard.send('helper', inspection('A-1', addDays(today, 1)))).status).toBe(422)
      }
    }
    expect(seen).toEqual(expect.arrayContaining([addDays(day, -1), day, addDays(day, 1)]))
    const looks = yard.services.store
      .colony('A-1')
      ?.journal.map((r) => r.entry.on)
      .slice(1)
    expect(looks).toEqual(seen)
    expect(yard.errors).toEqual([])

    async function dayShown(): Promise<string> {
      const text = await (await yard.ask('helper', '/colony/A-1/note')).text()
      return (
        /name="on"[^>]*value="([\d-]{10})"|value="([\d-]{10})"[^>]*name="on"/
          .exec(text)
          ?.slice(1)
          .find(Boolean) ?? ''
      )
    }
  })
})
