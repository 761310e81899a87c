/**
 * The calendar feed as a calendar meets it: parsed with ical.js (an independent reader), fetched again as days pass and
 * visits are recorded. Updates and cancellations after RFC 5545 (3.8.7.4 SEQUENCE, 3.8.1.11 STATUS).
 */
import ICAL from 'ical.js'
import { v7 } from 'uuid'
import { beforeEach, describe, expect, it } from 'vitest'
import { filledFile } from '../../support/filled.ts'
import { given, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'

const DAY = '2026-06-08'

const intake = (colony: string, on: string, more: Record<string, unknown> = {}) => ({
  id: v7(),
  colony,
  kind: 'intake',
  on,
  by: 'Maren',
  removal: { type: 'wall', site: 'Quillpen Row 9' },
  yard: 'North field',
  stand: colony.replace(/\D+/, ''),
  queen: 'unseen',
  ...more,
})

let yard: Yard
beforeEach(async () => {
  yard = await yardOn(DAY)
  given(yard, [intake('W-2', '2026-06-05')])
})

/** Makes an address and gives its path. */
async function addressOf(y: Yard, fields: Record<string, string> = {}): Promise<string> {
  const made = await y.post('/account/calendar', { yard: '', shows: 'best-day', ...fields })
  expect(made.status).toBe(200)
  const address = /value="(http[^"]+\.ics)"/.exec(made.text)?.[1] ?? ''
  expect(address).toMatch(/^http:\/\/yard\.test\/feed\/[\w-]{43}\.ics$/)
  return new URL(address).pathname
}

interface Seen {
  uid: string
  title: string
  from: string
  /** The day after the last. */
  end: string
  sequence: number
  status: string
  changed: string
  text: string
}

async function fetched(y: Yard, path: string): Promise<Seen[]> {
  const answer = await y.get(path)
  expect(answer.status).toBe(200)
  expect(answer.headers.get('content-type')).toBe('text/calendar; charset=utf-8')
  return new ICAL.Component(ICAL.parse(answer.text)).getAllSubcomponents('vevent').map((c) => {
    const e = new ICAL.Event(c)
    return {
      uid: e.uid,
      title: e.summary,
      from: e.startDate.toString(),
      end: e.endDate.toString(),
      sequence: e.sequence ?? -1,
      status: String(c.getFirstPropertyValue('status')),
      changed: String(c.getFirstPropertyValue('last-modified')),
      text: e.description,
    }
  })
}
const ofRule = (list: Seen[], rule: string): Seen[] => list.filter((e) => e.uid.startsWith(rule))
const visit = (fields: Record<string, string>, tag = 'W-2') =>
  yard.post(`/colony/${tag}/visit`, { id: v7(), ...fields })

describe('the feed', () => {
  it('has the coming checks on their days, and the bees’ own windows', async () => {
    const list = await fetched(yard, await addressOf(yard))
    expect(ofRule(list, 'telling-visit')).toMatchObject([
      {
        title: 'W-2: the first brood check',
        from: '2026-06-10',
        end: '2026-06-13',
        sequence: 0,
        status: 'CONFIRMED',
      },
    ])
    expect(ofRule(list, 'cells')).toMatchObject([
      { title: 'W-2: last day its young brood can become a queen', from: '2026-06-11', end: '2026-06-12' },
    ])
    expect(ofRule(list, 'telling-visit')[0]?.text).toContain('Eggs? Queen cells? Neither?')
  })

  it('or over the whole window, as its owner chose', async () => {
    const list = await fetched(yard, await addressOf(yard, { shows: 'window' }))
    expect(ofRule(list, 'telling-visit')).toMatchObject([{ from: '2026-06-09', end: '2026-06-13' }])
  })

  it('has quiet time while a queen is being raised', async () => {
    given(yard, [
      {
        id: v7(),
        colony: 'W-2',
        kind: 'inspection',
        on: DAY,
        by: 'Isolde',
        opened: true,
        cells: 'capped',
        eggs: 'none',
      },
    ])
    const plan = yard.store.colony('W-2')?.summary.plan
    const [quiet] = ofRule(await fetched(yard, await addressOf(yard)), 'quiet')
    expect(quiet).toMatchObject({ title: 'W-2: leave the lid on', from: plan?.quiet?.from })
  })

  it('keeps each event’s name, and its bytes while nothing changes, whoever reads it when', async () => {
    const path = await addressOf(yard)
    const first = await yard.get(path)
    const again = await yard.get(path)
    expect(again.text).toBe(first.text)
    yard.setDay('2026-06-09')
    const [before, after] = [await fetched(yard, path), await fetched(yard, path)]
    expect(after).toEqual(before)
    const other = await fetched(yard, await addressOf(yard))
    expect(other.map((e) => e.uid)).toEqual(after.map((e) => e.uid))
    expect(new Set(after.map((e) => e.uid)).size).toBe(after.length)
  })

  it('says that nothing has changed to a calendar that remembers', async () => {
    const path = await addressOf(yard)
    const tag = (await yard.get(path)).headers.get('etag') ?? ''
    expect(tag).not.toBe('')
    const { testYard } = await import('../../support/yard-app.ts')
    const other = testYard({ day: DAY })
    const made = other.services.calendars.open(
      (
        other.services.people.accounts.make({ name: 'Ada', role: 'helper', by: null }) as {
          value: { id: string }
        }
      ).value.id,
      { shows: 'best-day', yard: null },
    )
    const first = await other.ask(null, `/feed/${made}.ics`)
    const second = await other.ask(null, `/feed/${made}.ics`, {
      headers: { 'if-none-match': first.headers.get('etag') ?? '' },
    })
    expect([first.status, second.status]).toEqual([200, 304])
  })
})

describe('what changes', () => {
  it('moves: a correction of the intake’s day moves the first brood check, under the same name, one revision on', async () => {
    const path = await addressOf(yard)
    const [before] = ofRule(await fetched(yard, path), 'telling-visit')
    const id = yard.store.colony('W-2')?.summary.id ?? ''
    yard.setDay('2026-06-09')
    const corrected = await yard.post(`/entry/${id}/correct`, {
      id: v7(),
      colony: 'W-2',
      yard: 'North field',
      stand: '2',
      on: '2026-06-07',
      'removal.type': 'wall',
      queen: 'unseen',
    })
    expect(corrected.status).toBe(303)
    const [after] = ofRule(await fetched(yard, path), 'telling-visit')
    expect(after).toMatchObject({ uid: before?.uid, from: '2026-06-12', sequence: 1, status: 'CONFIRMED' })
    expect((after?.changed ?? '') > (before?.changed ?? '')).toBe(true)
  })

  it('is late: it stands on today until it is answered, a revision each day', async () => {
    const path = await addressOf(yard)
    await fetched(yard, path)
    yard.setDay('2026-06-13')
    const [late] = ofRule(await fetched(yard, path), 'telling-visit')
    expect(late).toMatchObject({
      title: 'W-2: late: the first brood check',
      from: '2026-06-13',
      end: '2026-06-14',
      sequence: 1,
    })
    yard.setDay('2026-06-14')
    expect(ofRule(await fetched(yard, path), 'telling-visit')).toMatchObject([
      { from: '2026-06-14', sequence: 2 },
    ])
  })

  it('is called off once answered, said so for a month, and then forgotten', async () => {
    const path = await addressOf(yard)
    const [before] = ofRule(await fetched(yard, path), 'telling-visit')
    yard.setDay('2026-06-10')
    await visit({ on: '2026-06-10', opened: 'yes', eggs: 'single', onFreshComb: 'yes' })
    const [after] = ofRule(await fetched(yard, path), 'telling-visit')
    expect(after).toMatchObject({ uid: before?.uid, sequence: 1, status: 'CANCELLED', from: before?.from })
    yard.setDay('2026-07-09')
    expect(ofRule(await fetched(yard, path), 'telling-visit')).toMatchObject([
      { sequence: 1, status: 'CANCELLED' },
    ])
    yard.setDay('2026-07-12')
    expect(ofRule(await fetched(yard, path), 'telling-visit')).toEqual([])
  })

  it('comes back, another revision on, when the answer is taken back', async () => {
    const path = await addressOf(yard)
    await fetched(yard, path)
    yard.setDay('2026-06-10')
    const id = v7()
    await visit({ 'id.': id, on: '2026-06-10', opened: 'yes', eggs: 'single', onFreshComb: 'yes' })
    expect(ofRule(await fetched(yard, path), 'telling-visit')).toMatchObject([
      { sequence: 1, status: 'CANCELLED' },
    ])
    const entry = yard.store.changes({ limit: 1 })[0]?.entry.id ?? ''
    await yard.post(`/entry/${entry}/withdraw`, { id: v7(), reason: 'Wrong box.' })
    expect(ofRule(await fetched(yard, path), 'telling-visit')).toMatchObject([
      { sequence: 2, status: 'CONFIRMED' },
    ])
  })

  it('all of it is called off when the colony leaves', async () => {
    const path = await addressOf(yard)
    const before = await fetched(yard, path)
    await yard.post('/colony/W-2/outcome', { on: DAY, what: 'absconded' })
    const after = await fetched(yard, path)
    expect(after.map((e) => e.uid)).toEqual(before.map((e) => e.uid))
    expect(new Set(after.map((e) => e.status))).toEqual(new Set(['CANCELLED']))
  })

  it('windows that simply pass are not called off', async () => {
    const path = await addressOf(yard)
    const [before] = ofRule(await fetched(yard, path), 'cells')
    yard.setDay('2026-06-13')
    expect(ofRule(await fetched(yard, path), 'cells')).toEqual([before])
    yard.setDay('2026-07-20')
    expect(ofRule(await fetched(yard, path), 'cells')).toEqual([])
  })

  it('a second question of the same kind is another event', async () => {
    const path = await addressOf(yard)
    yard.setDay('2026-06-25')
    await yard.post('/colony/W-2/visit', {
      id: v7(),
      on: '2026-06-25',
      opened: 'yes',
      eggs: 'none',
      open: 'none',
      cells: 'none',
      'given1.what': 'egg-frame',
    })
    const [first, ...none] = ofRule(await fetched(yard, path), 'cells-on-egg-frame')
    expect(none).toEqual([])
    yard.setDay('2026-06-29')
    await visit({ on: '2026-06-29', opened: 'yes', cells: 'none', eggs: 'none', 'given1.what': 'egg-frame' })
    const both = ofRule(await fetched(yard, path), 'cells-on-egg-frame')
    expect(both.map((e) => [e.uid === first?.uid, e.status])).toEqual([
      [true, 'CANCELLED'],
      [false, 'CONFIRMED'],
    ])
  })

  it('a box that moves to another yard is called off in that yard’s calendar, and told in the other’s', async () => {
    given(yard, [intake('S-1', '2026-06-05', { yard: 'South bank' })])
    const north = await addressOf(yard, { yard: 'North field' })
    const south = await addressOf(yard, { yard: 'South bank' })
    expect((await fetched(yard, north)).every((e) => e.title.startsWith('W-2'))).toBe(true)
    await yard.post('/colony/W-2/move', { on: DAY, yard: 'South bank', stand: '9' })
    const there = ofRule(await fetched(yard, south), 'telling-visit').filter((e) => e.title.startsWith('W-2'))
    expect(there).toMatchObject([{ status: 'CONFIRMED' }])
    expect(ofRule(await fetched(yard, north), 'telling-visit')).toMatchObject([
      { uid: there[0]?.uid, status: 'CANCELLED' },
    ])
  })
})

describe('the address', () => {
  it('is shown once; afterwards the page knows only that there is one, and when a calendar asked', async () => {
    const path = await addressOf(yard)
    const token = path.slice('/feed/'.length, -'.ics'.length)
    const page = await yard.get('/account/calendar')
    expect(page.text).not.toContain(token)
    expect(wordsOf(page.text)).toContain('no calendar has asked for it yet')
    await fetched(yard, path)
    expect(wordsOf((await yard.get('/account/calendar')).text)).toContain(
      'a calendar last asked Mon 8 Jun, 12:00',
    )
  })

  it('opens without a session, and nothing else does', async () => {
    const { testYard } = await import('../../support/yard-app.ts')
    const other = testYard({ day: DAY })
    const person = other.services.people.accounts.make({ name: 'Ada', role: 'helper', by: null })
    if (!person.ok) throw new Error(person.problems[0]?.message)
    const token = other.services.calendars.open(person.value.id, { shows: 'best-day', yard: null })
    expect((await other.ask(null, `/feed/${token}.ics`)).status).toBe(200)
    const stranger = await other.ask(null, '/yard')
    for (const wrong of [
      `/feed/${token}x.ics`,
      `/feed/${token}`,
      '/feed/.ics',
      '/feed/x',
      '/feed/%00.ics',
      '/feed/a/b.ics',
    ]) {
      const answer = await other.ask(null, wrong)
      // The same as for any other page: nobody learns which addresses there are.
      expect(answer.status, wrong).toBe(stranger.status)
      expect(await answer.text()).not.toContain('VCALENDAR')
    }
  })

  it('taken back, opens nothing any more; others stay', async () => {
    const [one, two] = [await addressOf(yard), await addressOf(yard, { shows: 'window' })]
    const keys = [...(await yard.get('/account/calendar')).text.matchAll(/name="key" value="([^"]+)"/g)].map(
      (m) => m[1] ?? '',
    )
    expect(keys).toHaveLength(2)
    expect((await yard.post('/account/calendar/take-back', { key: keys[0] ?? '' })).to).toBe(
      '/account/calendar?revoked=1',
    )
    const answers = [await yard.get(one), await yard.get(two)].map((a) =>
      a.text.startsWith('BEGIN:VCALENDAR'),
    )
    expect(answers.filter(Boolean)).toHaveLength(1)
    expect((await yard.post('/account/calendar/take-back', { key: keys[0] ?? '' })).to).toBe(
      '/account/calendar',
    )
  })

  it('of a person whose account is closed opens nothing', async () => {
    const { testYard } = await import('../../support/yard-app.ts')
    const other = testYard({ day: DAY })
    const person = other.services.people.accounts.make({ name: 'Ada', role: 'helper', by: null })
    if (!person.ok) throw new Error(person.problems[0]?.message)
    const token = other.services.calendars.open(person.value.id, { shows: 'best-day', yard: null })
    other.services.people.close(person.value.id)
    expect((await other.ask(null, `/feed/${token}.ics`)).status).not.toBe(200)
  })

  it('cannot be taken back by somebody else', async () => {
    const { testYard } = await import('../../support/yard-app.ts')
    const other = testYard({ day: DAY })
    const [a, b] = ['Ada', 'Bo'].map((name) => {
      const made = other.services.people.accounts.make({ name, role: 'helper', by: null })
      if (!made.ok) throw new Error(made.problems[0]?.message)
      return made.value.id
    })
    const { calendars } = other.services
    calendars.open(a ?? '', { shows: 'best-day', yard: null })
    const key = calendars.of(a ?? '')[0]?.key ?? ''
    expect(calendars.revoke(b ?? '', key)).toBe(false)
    expect(calendars.of(a ?? '')).toHaveLength(1)
  })

  it('is kept as its fingerprint only: the database does not hold it', async () => {
    const { testYard } = await import('../../support/yard-app.ts')
    const other = testYard({ day: DAY })
    const person = other.services.people.accounts.make({ name: 'Ada', role: 'helper', by: null })
    if (!person.ok) throw new Error(person.problems[0]?.message)
    const token = other.services.calendars.open(person.value.id, { shows: 'best-day', yard: null }) ?? ''
    const rows = other.services.connection.raw.prepare('SELECT * FROM calendar_feed').all()
    expect(rows).toHaveLength(1)
    expect(JSON.stringify(rows)).not.toContain(token)
  })

  it('there are so many of a person at most', async () => {
    for (let i = 0; i < 12; i++) await addressOf(yard)
    const refused = await yard.post('/account/calendar', { yard: '', shows: 'best-day' })
    expect(refused.status).toBe(422)
    expect(wordsOf(refused.text)).toContain('You have 12 addresses already')
  })

  it.each([
    [{ shows: 'sometimes' }, 'Say what stands in the calendar'],
    [{ yard: 'Nowhere' }, 'There is no such yard'],
  ])('is refused with %j', async (fields, sentence) => {
    const refused = await yard.post('/account/calendar', { yard: '', shows: 'best-day', ...fields })
    expect(refused.status).toBe(422)
    expect(wordsOf(refused.text)).toContain(sentence)
  })
})

it('holds nothing private: no site, no costs, no names of people', async () => {
  given(yard, [
    {
      id: v7(),
      colony: 'W-2',
      kind: 'given',
      on: DAY,
      by: 'Isolde',
      what: 'mated-queen',
      cost: 4711,
      caged: true,
    },
  ])
  const { text } = await yard.get(await addressOf(yard))
  const unfolded = text.replaceAll('\r\n ', '')
  for (const word of ['Quillpen', '4711', 'Isolde', 'Maren']) expect(unfolded).not.toContain(word)
})

it('the whole demo yard comes through the reader, every name once, every day a day', async () => {
  const demo = await yardOn('2026-06-10', 'operator', filledFile('2026-06-10', 'boxes'))
  for (const shows of ['best-day', 'window']) {
    const list = await fetched(demo, await addressOf(demo, { shows }))
    expect(list.length).toBeGreaterThan(50)
    expect(new Set(list.map((e) => e.uid)).size).toBe(list.length)
    for (const e of list) expect(e.from < e.end, JSON.stringify(e)).toBe(true)
  }
})

describe('one entry a yard and day', () => {
  const days = async (): Promise<Seen[]> => fetched(yard, await addressOf(yard, { shows: '' }))

  it('is what an address shows when nothing else is asked for, with the boxes in its text', async () => {
    given(yard, [intake('W-3', '2026-06-05'), intake('M-1', '2026-06-05', { yard: 'Mill' })])
    const list = await days()
    expect(list.every((e) => e.uid.startsWith('round-'))).toBe(true)
    const telling = list.filter((e) => e.from === '2026-06-10')
    expect(telling.map((e) => e.title)).toEqual(['Mill: 1 box', 'North field: 2 boxes'])
    expect(telling[1]?.text).toContain('W-2 (stand 2): The first brood check, until Fri 12 Jun')
    expect(telling[1]?.text).toContain('W-3 (stand 3): The first brood check')
    // All-day events end on the day after (RFC 5545, 3.6.1): one day each.
    expect(telling[1]?.end).toBe('2026-06-11')
    expect(new Set(list.map((e) => e.uid)).size).toBe(list.length)
  })

  it('counts what is late on the day it is read', async () => {
    yard.setDay('2026-06-20')
    const [now] = (await days()).filter((e) => e.from === '2026-06-20')
    expect(now?.title).toBe('North field: 1 box, 1 late')
    expect(now?.text).toContain('(late)')
  })

  it('stands by the day until which a box can wait, which is the plan’s', async () => {
    await visit({ opened: 'yes', on: DAY, eggs: 'single', 'brood.fresh': '', stores: 'enough' })
    const plan = yard.store.colony('W-2')?.summary.plan
    expect(plan?.until).toBeTruthy()
    expect((await days()).map((e) => e.from)).toContain(plan?.until)
    const single = await fetched(yard, await addressOf(yard))
    expect(single.some((e) => e.text.includes('The box can wait until'))).toBe(true)
  })

  it('revises the entry of a day when a box leaves it, and calls off a day without boxes', async () => {
    const path = await addressOf(yard, { shows: 'yard-day' })
    const before = await fetched(yard, path)
    await yard.post('/colony/W-2/outcome', { id: v7(), on: DAY, what: 'died', cause: 'starved' })
    const after = await fetched(yard, path)
    expect(after).toHaveLength(before.length)
    expect(after.every((e) => e.status === 'CANCELLED' && e.sequence === 1)).toBe(true)
  })
})
