/** What this server cannot have seen: hours of a wrong clock, ticks of no hour, one person at two jobs, an account that decides no more. Invented. */
import { beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { down, good, phoneIn } from '../../support/phone.ts'
import { NAMES, type TestYard, testYard } from '../../support/yard-app.ts'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { emptied, oneSheet } from './one-sheet.ts'
import { DAY, goAt, READY, TAPPED, unticked } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000013'
const OTHER = ID.replace(/3$/, '4')
const PATH = `/removals/${ID}`
let yard: Yard
const { last, sheet: own, saved: put, words, post: part } = oneSheet(() => yard, ID, '08:00')
const sheet = (id = ID): Sheet => last(id)?.sheet ?? own()
const saved = (s: Sheet, by = 'Ines', of = ID, at = '08:00'): void => put(s, by, { of, at })
const ticked = (at: string): Sheet => ({ ...READY, check: { ...READY.check, tickedAt: at } })
const without = (tick: string, at: string) => ({ ...unticked(tick), tickedAt: at })
const send = (
  s: Sheet,
  { base = last()?.version ?? 0, now = undefined as string | undefined, id = ID } = {},
) => yard.send('/removals/sync', { id, base, over: false, sheet: s, ...(now === undefined ? {} : { now }) })
const OPENED: Sheet['work'] = { on: DAY, openedAt: '10:20', outdoorC: 24, water: true }

beforeAll(async () => {
  yard = await yardOn(DAY)
})
beforeEach(() => {
  emptied(yard)
  yard.setDay(DAY, '10:30')
})

describe('a phone whose clock has jumped', () => {
  const AHEAD = `${DAY}T12:30:00.000Z`
  const mine: Sheet = { ...ticked('10:05'), decision: goAt('10:06') }
  beforeEach(() => {
    saved(READY)
    // Taken off at half past nine; the phone ticked at five past eight, and says five past ten.
    saved({ ...READY, check: without('not-alone', '09:30') }, 'Bram', ID, '09:30')
  })

  test('ticks nothing over what stands here, its go falls, and the page says why', async () => {
    expect((await send(mine, { base: 1, now: AHEAD })).status).toBe(200)
    expect(sheet().check.done).not.toContain('not-alone')
    expect(sheet().check.tickedAt).toBe('09:30')
    expect(sheet().decision?.fell).toMatchObject({ because: 'clock' })
    const page = await words()
    expect(page).toContain('a phone whose clock was wrong')
    expect(page).not.toContain('Nothing on this list is unmet')
  })

  test('one that is right ticks what it ticked', async () => {
    expect((await send(mine, { base: 1, now: `${DAY}T10:36:00.000Z` })).status).toBe(200)
    expect(sheet().check.done).toContain('not-alone')
    expect(sheet().decision?.fell).toBeUndefined()
  })

  test('a sheet that is new here has nothing ticked, and wires that were seen', async () => {
    const near: Sheet = { ...mine, check: { ...mine.check, wires: 'near' } }
    const { decision: _, ...found } = near
    expect((await send(found, { base: 0, now: AHEAD, id: OTHER })).status).toBe(200)
    expect(sheet(OTHER).check.done).toBeUndefined()
    expect(sheet(OTHER).check.wires).toBe('near')
    expect(sheet(OTHER).site.nearWires).toBe(true)
  })

  test('what was opened by it is kept, and marked', async () => {
    const opened: Sheet = { ...mine, work: { ...OPENED, underGo: { by: 'Ines', on: DAY, at: '10:20' } } }
    expect((await send(opened, { base: 1, now: AHEAD })).status).toBe(200)
    expect(sheet().work.withoutGo?.why).toBe('sent-later')
  })
})

test('a phone says by which clock it wrote, though it has heard the right one since', async () => {
  const one = testYard({ day: DAY })
  await one.session('operator')
  await one.session('beekeeper')
  one.at(`${DAY}T08:00:00Z`)
  const { removals } = one.services.store
  const keep = (s: Sheet, by: string): void => {
    const stamp = { savedAt: `${DAY}T07:00:00.000Z`, savedBy: by }
    expect(removals.save(ID, removals.get(ID)?.last.version ?? 0, s, stamp).ok).toBe(true)
  }
  const { done: _d, doneOn: _o, doneAt: _a, ...unticked } = READY.check
  keep({ ...READY, check: unticked }, NAMES.operator)
  const phone = phoneIn(one, 'beekeeper')
  phone.at(`${DAY}T08:00:00Z`)
  await phone.syncService.send()
  phone.network(down)
  // Really five past eight.
  phone.at(`${DAY}T10:05:00Z`)
  const { done: ticks, ...fields } = TAPPED
  const shown = await phone.open(`${PATH}/check`)
  const version = /name="version" value="([^"]*)"/.exec(shown)?.[1] ?? ''
  const first = { version, shownOn: DAY, shownAt: '10:05', on: DAY, ...fields, done: ticks[1] ?? '' }
  await phone.post(`${PATH}/check`, first)
  expect((await (await phone.database()).get('sheets', ID))?.mine?.sheet.check.tickedAt).toBe('10:05')
  one.at(`${DAY}T10:30:00Z`)
  phone.at(`${DAY}T12:30:00Z`)
  phone.network(good)
  await phone.syncService.send()
  expect(phone.errors).toEqual([])
  expect((await (await phone.database()).get('sheets', ID))?.mine).toBeNull()
  expect(removals.get(ID)?.last.savedBy).toBe(NAMES.beekeeper)
  expect(removals.get(ID)?.last.sheet.check.done).toBeUndefined()
})

describe('a temperature of the moment', () => {
  const arrived = { on: DAY, arrivedAt: '10:30', outdoorC: '75', water: 'yes', shownOn: DAY }
  const post = (fields: Record<string, string>) => part('work', fields)
  beforeEach(() => saved({ ...ticked('10:20'), decision: goAt('10:25') }))

  test('is none in a form that lay open for over an hour: it is asked, and opened with the next', async () => {
    yard.setDay(DAY, '11:40')
    const old = await post({ ...arrived, shownAt: '10:35', now: 'openedAt' })
    expect(old.status).toBe(422)
    expect(wordsOf(old.text)).toContain('How hot is it now?')
    const shownAt = /name="shownAt" value="([^"]*)"/.exec(old.text)?.[1] ?? ''
    expect(shownAt).toBe('11:40')
    expect((await post({ ...arrived, shownAt, now: 'openedAt' })).status).toBe(303)
  })

  test('is one in a form that lay open for less', async () => {
    yard.setDay(DAY, '11:30')
    expect((await post({ ...arrived, shownAt: '10:35', now: 'openedAt' })).status).toBe(303)
  })

  test('that was saved before comes back in no post that no form was shown for', async () => {
    expect((await post({ ...arrived, shownAt: '10:30' })).status).toBe(303)
    yard.setDay(DAY, '11:40')
    expect((await post({ ...arrived, now: 'openedAt' })).status).toBe(422)
    expect((await post({ ...arrived, now: 'openedAt' })).status).toBe(303)
  })

  test('nor is one by hand that was opened long after the form was shown', async () => {
    yard.setDay(DAY, '11:45')
    const old = await post({ ...arrived, shownAt: '10:35', openedAt: '11:40' })
    expect(old.status).toBe(422)
    expect(wordsOf(old.text)).toContain('how hot was it when it was opened?')
    expect(old.text).not.toContain('name="withoutGo.why"')
    expect((await post({ ...arrived, shownAt: '11:45', openedAt: '11:40' })).status).toBe(303)
    expect(sheet().work.withoutGo).toBeUndefined()
  })

  test('nor in what a program sends', async () => {
    expect((await post({ ...arrived, shownAt: '10:30' })).status).toBe(303)
    yard.setDay(DAY, '11:40')
    const opened = (more: Sheet['work']): Sheet => ({
      ...sheet(),
      work: { ...sheet().work, openedAt: '11:35', ...more },
    })
    expect((await send(opened({}))).text).toContain('begun without a “go”')
    // As the form on a phone says it, where the same was read again.
    expect((await send(opened({ underGo: { by: 'Ines', on: DAY, at: '11:35' } }))).status).toBe(200)
  })

  test('over the limit that somebody signed for is read again after an hour too', async () => {
    expect((await post({ ...arrived, outdoorC: '101', shownAt: '10:30', now: 'openedAt' })).status).toBe(422)
    expect((await yard.get(`${PATH}/work`)).text).toMatch(
      /name="outdoorC"[^>]*value="101"|value="101"[^>]*name="outdoorC"/,
    )
    yard.setDay(DAY, '11:40')
    expect((await yard.get(`${PATH}/work`)).text).not.toContain('value="101"')
  })
})

describe('an account that decides no more', () => {
  const people = async (): Promise<{ id: string; yard: TestYard }> => {
    const one = testYard({ day: DAY })
    await one.session('operator')
    await one.session('beekeeper')
    const stamp = { savedAt: `${DAY}T08:00:00.000Z`, savedBy: NAMES.operator }
    one.services.store.removals.save(ID, 0, { ...READY, decision: goAt('11:00', NAMES.beekeeper) }, stamp)
    const id = one.services.people.accounts.byName(NAMES.beekeeper)?.id ?? ''
    return { id, yard: one }
  }
  const opens = async (one: TestYard): Promise<number> => {
    const version = String(one.services.store.removals.get(ID)?.last.version)
    const work = { version, on: DAY, outdoorC: '75', water: 'yes', now: 'openedAt' }
    return (await one.post('operator', `${PATH}/work`, work)).status
  }

  test.each([
    ['closed and opened again', [['close'], ['reopen']]],
    ['a helper now', [['role', 'helper']]],
    [
      'a helper for an hour',
      [
        ['role', 'helper'],
        ['role', 'beekeeper'],
      ],
    ],
  ])('%s: the go of today fell, and does not come back', async (_, acts) => {
    const { id, yard: one } = await people()
    for (const [act = '', role = ''] of acts)
      expect((await one.post('operator', `/people/${id}/${act}`, { role })).status).toBe(303)
    const { decision } = one.services.store.removals.get(ID)?.last.sheet ?? READY
    expect(decision?.fell).toMatchObject({ because: 'account', by: NAMES.operator })
    expect(await opens(one)).toBe(422)
    const page = wordsOf(await (await one.ask('operator', PATH)).text())
    expect(page).toContain('the account of whoever decided was closed, or decides no more')
  })

  test('an operator now: it stands', async () => {
    const { id, yard: one } = await people()
    expect((await one.post('operator', `/people/${id}/role`, { role: 'operator' })).status).toBe(303)
    expect(await opens(one)).toBe(303)
  })
})

describe('ticks of no hour', () => {
  test('are not fresh: nothing is opened on a go over them', async () => {
    expect((await send({ ...READY, decision: goAt('10:29') }, { base: 0 })).status).toBe(200)
    const work = { version: String(last()?.version), on: DAY, outdoorC: '75', water: 'yes', now: 'openedAt' }
    const opened = await yard.post(`${PATH}/work`, work)
    expect(opened.status).toBe(422)
    expect(wordsOf(opened.text)).toContain('look again before you begin')
  })

  test('nor begun with them', async () => {
    const begun: Sheet = { ...READY, decision: goAt('10:15'), work: OPENED }
    expect((await send(begun, { base: 0 })).text).toContain('begun without a “go”')
    const hours: Sheet = { ...ticked('10:10'), decision: goAt('10:15'), work: OPENED }
    expect((await send(hours, { base: 0 })).status).toBe(200)
  })

  test('keep the hour that they had here', async () => {
    saved(ticked('10:00'))
    expect((await send({ ...READY, decision: goAt('10:20') })).status).toBe(200)
    expect(sheet().check.tickedAt).toBe('10:00')
  })
})

describe('one person at two jobs', () => {
  const there: Sheet = { ...READY, job: { ...READY.job, name: 'Edgar Quill', address: '9 Other Lane' } }
  const begun: Sheet = { ...ticked('10:10'), decision: goAt('10:15'), work: OPENED }

  test('who has opened one opens none elsewhere by a phone: it is kept, and marked', async () => {
    saved({ ...there, decision: goAt('09:00'), work: { ...OPENED, openedAt: '09:10' } }, 'Ines', OTHER)
    expect((await send(begun, { base: 0 })).status).toBe(200)
    expect(sheet().work.withoutGo?.why).toBe('sent-later')
  })

  test('nor with the button, nor by a phone, on a “go” of before', async () => {
    saved({ ...there, decision: goAt('09:00'), work: { ...OPENED, openedAt: '09:10' } }, 'Ines', OTHER)
    saved({ ...ticked('10:10'), decision: goAt('10:15') })
    const work = { version: String(last()?.version), on: DAY, outdoorC: '75', water: 'yes', now: 'openedAt' }
    const barred = await yard.post(`${PATH}/work`, work)
    expect(barred.status).toBe(422)
    expect(wordsOf(barred.text)).toContain('you are at Edgar Quill until the bees there are boxed')
    expect((await send({ ...begun, work: { ...OPENED, note: 'On the left' } })).status).toBe(200)
    expect(sheet().work.withoutGo?.why).toBe('sent-later')
  })

  test('who stays and watches opens nothing there by a phone', async () => {
    const stays = {
      item: 'not-alone',
      by: 'Ines',
      account: true as const,
      why: 'stays' as const,
      on: DAY,
      at: '10:00',
      of: 'Somebody within call all the time, with a telephone that works here.',
      ...placeOf(READY),
    }
    const check = { ...without('not-alone', '10:10'), seconds: [stays] }
    saved({ ...READY, check, decision: goAt('10:12', 'Bram') }, 'Bram')
    const opened: Sheet = { ...sheet(), work: { ...OPENED, underGo: { by: 'Ines', on: DAY, at: '10:20' } } }
    expect((await send(opened)).status).toBe(200)
    expect(sheet().work.withoutGo?.why).toBe('sent-later')
  })

  test('who is at this one only opens it', async () => {
    expect((await send(begun, { base: 0 })).status).toBe(200)
    expect(sheet().work.withoutGo).toBeUndefined()
  })
})
