/** A “go” has an hour, and a job has days: whatever is begun rests on a look of the last three hours (judgement). Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { INTAKE, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { oneSheet } from './one-sheet.ts'
import { DAY, goAt, READY, TAPPED } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000009'
const PATH = `/removals/${ID}`
const NEXT = '2026-06-13'
let yard: Yard
const { last, sheet, saved, post, words } = oneSheet(() => yard, ID)
const go = (at: string): Sheet['decision'] => goAt(at, 'Ines')
const work = (fields: Record<string, string | string[]>) =>
  post('work', { on: DAY, outdoorC: '75', water: 'yes', ...fields })
const decide = (day: string) =>
  post('check', {
    shownOn: day,
    on: day,
    ...TAPPED,
  })

beforeEach(async () => {
  yard = await yardOn(DAY)
  saved({ ...READY, check: { ...READY.check, tickedAt: '06:00' }, decision: go('06:00') })
})

describe('a go of six', () => {
  test('stands at nine, and the page says so', async () => {
    yard.setDay(DAY, '09:00')
    expect(await words()).not.toContain('has run out')
    expect((await work({ now: 'openedAt' })).status).toBe(303)
    expect(sheet().work.underGo).toMatchObject({ on: DAY, at: '09:00' })
  })

  test('has run out at four: on the page, in the list, on the button', async () => {
    yard.setDay(DAY, '16:00')
    const page = await words()
    expect(page).toContain('The go of 06:00 has run out: look again before you begin')
    expect(page).not.toContain('Nothing on this list is unmet')
    expect(page).not.toContain('with nothing on the list unmet')
    // The form that is open is the one that decides.
    expect((await yard.get(PATH)).text).toContain('name="is" value="go"')
    expect((await yard.get(`${PATH}/work`)).text).toContain(`href="${PATH}/check#now"`)
    const list = await yard.get('/removals')
    expect(wordsOf(list.text)).toContain('The go of 06:00 has run out')
    expect(list.text).toContain(`href="${PATH}/check#now"`)
  })

  test.each([
    ['opened', { now: 'openedAt' }],
    ['boxed', { now: 'boxedAt' }],
    ['opened by hand', { openedAt: '15:30' }],
    ['the queen written down first', { queen: 'caged' }],
    ['the bees written down first', { 'bees.frames': '5' }],
    ['the entrance written down first', { sealed: 'yes' }],
  ])('%s at four is not under it', async (_, fields) => {
    yard.setDay(DAY, '16:00')
    expect((await work(fields)).status).toBe(422)
    expect(sheet().work.underGo).toBeUndefined()
  })

  test('looked at again at four it is a go of four', async () => {
    yard.setDay(DAY, '16:00')
    expect((await decide(DAY)).status).toBe(303)
    expect(await words()).not.toContain('has run out')
    expect((await work({ now: 'openedAt' })).status).toBe(303)
  })

  test('what was ticked again and not decided again rests on the go of six', async () => {
    yard.setDay(DAY, '16:00')
    saved({ ...sheet(), check: { ...sheet().check, tickedAt: '15:50' } })
    expect(await words()).not.toContain('Nothing on this list is unmet')
    expect((await work({ now: 'openedAt' })).status).toBe(422)
  })

  test('what was opened on it at eight goes on all day, and nobody is asked', async () => {
    yard.setDay(DAY, '08:00')
    expect((await work({ now: 'openedAt' })).status).toBe(303)
    yard.setDay(DAY, '16:00')
    expect(await words()).not.toContain('has run out')
    expect((await work({ openedAt: '08:00', queen: 'caged', now: 'boxedAt' })).status).toBe(303)
    expect(sheet().work.withoutGo).toBeUndefined()
    // Opened once more in the evening: that is begun anew.
    yard.setDay(DAY, '19:00')
    expect((await work({ openedAt: '18:50', boxedAt: '16:00', queen: 'caged' })).status).toBe(422)
  })
})

describe('the second day of a job that was opened yesterday', () => {
  beforeEach(async () => {
    yard.setDay(DAY, '08:00')
    expect((await work({ now: 'openedAt' })).status).toBe(303)
    yard.setDay(NEXT, '09:00')
  })
  const stood = { openedAt: '08:00' }
  const next = { visit: '2', on: NEXT }

  test('says that today has no go, and asks it', async () => {
    expect(await words()).toContain('Open since another day, and no go of today')
    expect((await yard.get(PATH)).text).toContain('name="is" value="go"')
  })

  test.each([
    ['bees', { 'bees.frames': '5' }],
    ['the queen', { queen: 'caged' }],
    ['brood', { 'brood.open': '1' }],
    ['the box', { boxedAt: '08:50' }],
    ['the box, now', { now: 'boxedAt' }],
  ])('%s asks why, and the mark stays', async (_, fields) => {
    const answer = await work({ ...stood, ...fields })
    expect(answer.status).toBe(422)
    expect(answer.text).toContain('name="withoutGo.why"')
    expect((await work({ ...stood, ...fields, 'withoutGo.why': 'could-not-wait' })).status).toBe(303)
    expect(sheet().work.withoutGo).toMatchObject({ why: 'could-not-wait', on: NEXT })
    expect(await words()).toContain('Begun without a “go”')
  })

  test('an intake of it waits for what was done today', async () => {
    expect((await yard.get(`${PATH}/intake`)).to).toBe(`${PATH}/work#now`)
    const box = { ...INTAKE, id: ID, on: DAY, 'removal.removedOn': DAY }
    expect((await yard.post(`${PATH}/intake`, box)).to).toBe(`${PATH}/work#now`)
    expect((await yard.post('/intake', box)).to).toBe(`${PATH}/work#now`)
    expect(yard.store.removals.get(ID)?.colonies).toEqual([])
  })

  test('looked at and decided today, it goes on for the day, and is marked so', async () => {
    expect((await decide(NEXT)).status).toBe(303)
    expect((await work({ ...next, water: 'no', queen: 'caged' })).status).toBe(422)
    expect((await work({ ...next, queen: 'caged' })).status).toBe(303)
    expect(sheet().work).toMatchObject({ on: NEXT, underGo: { on: NEXT, at: '09:00' } })
    yard.setDay(NEXT, '15:00')
    expect((await work({ ...next, queen: 'caged', now: 'boxedAt' })).status).toBe(303)
    expect(sheet().work.withoutGo).toBeUndefined()
  })

  test('a trap-out: the go of one visit is none of the next', async () => {
    expect((await decide(NEXT)).status).toBe(303)
    expect((await work({ ...next, 'bees.frames': '2' })).status).toBe(303)
    yard.setDay('2026-06-20', '09:00')
    expect(await words()).toContain('no go of today')
    expect((await work({ ...stood, 'bees.frames': '2', queen: 'unseen' })).status).toBe(422)
  })
})

test('another box that comes a week later asks of which opening it is', async () => {
  yard.setDay(DAY, '08:00')
  expect((await work({ now: 'openedAt' })).status).toBe(303)
  expect((await work({ openedAt: '08:00', now: 'boxedAt' })).status).toBe(303)
  const box = { ...INTAKE, id: ID, on: DAY, 'removal.removedOn': DAY }
  expect((await yard.post(`${PATH}/intake`, box)).status).toBe(303)
  yard.setDay('2026-06-20', '16:00')
  const second = {
    ...box,
    id: ID.replace(/9$/, '8'),
    colony: 'W-13',
    stand: '5',
    on: '2026-06-20',
  }
  expect((await yard.get(`${PATH}/intake`)).text).toContain('name="thatOpening"')
  const asked = await yard.post(`${PATH}/intake`, second)
  expect(asked.status).toBe(422)
  expect(wordsOf(asked.text)).toContain('begin a new sheet')
  expect(yard.store.removals.get(ID)?.colonies).toHaveLength(1)
  expect((await yard.post(`${PATH}/intake`, { ...second, thatOpening: 'yes' })).status).toBe(303)
})

test('a box that comes after they called again on the same day asks of which opening it is', async () => {
  yard.setDay(DAY, '08:00')
  expect((await work({ now: 'openedAt' })).status).toBe(303)
  expect((await work({ openedAt: '08:00', now: 'boxedAt' })).status).toBe(303)
  const box = { ...INTAKE, id: ID, on: DAY, 'removal.removedOn': DAY }
  expect((await yard.post(`${PATH}/intake`, box)).status).toBe(303)
  const second = { ...box, id: ID.replace(/9$/, '8'), colony: 'W-13', stand: '5' }
  const called = { on: DAY, what: 'new-swarm', opened: 'no', note: 'A second nest beside it' }
  expect((await yard.post(`${PATH}/call-back`, called)).status).toBe(303)
  expect((await yard.post(`${PATH}/intake`, second)).status).toBe(422)
  expect((await yard.post(`${PATH}/intake`, { ...second, thatOpening: 'yes' })).status).toBe(303)
})

test('a colleague’s heat over the limit is not put over by a form that was open before', async () => {
  yard.setDay(DAY, '08:30')
  const version = String(last()?.version)
  expect((await work({ outdoorC: '101', now: 'openedAt' })).status).toBe(422)
  const mine = { on: DAY, outdoorC: '75', water: 'yes', now: 'openedAt', version }
  const clash = await yard.post(`${PATH}/work`, mine)
  expect(clash.status).toBe(409)
  const shown = /name="outdoorC"[^>]*value="([^"]*)"|value="([^"]*)"[^>]*name="outdoorC"/.exec(clash.text)
  expect(Number(shown?.[1] ?? shown?.[2])).toBeCloseTo(101, 0)
  const again = { ...mine, outdoorC: shown?.[1] ?? shown?.[2] ?? '', version: String(last()?.version) }
  expect((await yard.post(`${PATH}/work`, again)).status).toBe(422)
  expect(sheet().work.openedAt).toBeUndefined()
})
