/** What was left open is gone on with at a visit of its own: asked like an opening, with its day, its hours and its heat. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import { placeOf } from '../../../src/features/removal/place.ts'
import { intakeFrom } from '../../../src/features/removal/to-intake.ts'
import { mergeSheets } from '../../../src/records/merge-sheets.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { type Yard, yardOn } from '../../support/yard-on.ts'
import { oneSheet } from './one-sheet.ts'
import { DAY, READY, TAPPED } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000061'
const PATH = `/removals/${ID}`
const [NEXT, THIRD] = ['2026-06-13', '2026-06-14']
let yard: Yard
const { sheet, saved, post, save, formOf, words } = oneSheet(() => yard, ID)
const go = (on: string) => post('check', { shownOn: on, on, ...TAPPED })
const pageOf = async (part = 'work'): Promise<string> => (await yard.get(`${PATH}/${part}`)).text

beforeEach(async () => {
  yard = await yardOn(DAY)
  yard.setDay(DAY, '08:00')
  saved({
    ...READY,
    check: { ...READY.check, tickedAt: '08:00' },
    decision: { is: 'go', by: 'Ines', on: DAY, at: '08:00', unmet: [], ...placeOf(READY) },
  })
  yard.setDay(DAY, '09:00')
  expect((await save('work', { outdoorC: '76', water: 'yes', now: 'openedAt' })).status).toBe(303)
})

test('left open, the head says why its “go” is none any more', async () => {
  expect((await save('work', { leftAt: '09:30' })).status).toBe(303)
  yard.setDay(DAY, '09:40')
  expect(await words()).toContain(
    'It was go, decided by Ines, Fri 12 Jun 08:00, before it was left open at 09:30.',
  )
})

describe('on a later day', () => {
  beforeEach(async () => {
    yard.setDay(NEXT, '08:00')
    expect((await go(NEXT)).status).toBe(303)
    yard.setDay(NEXT, '08:10')
  })

  test('the next step is to go on, and a box without it asks why', async () => {
    const page = await pageOf()
    expect(page).toMatch(/button-do"[^>]*value="openedAt"[^>]*>Go on, now/)
    expect(page).not.toContain('value="boxedAt')
    const form = await formOf('work')
    expect([form.on, form.openedAt, form.outdoorC, form.water].flat().filter(Boolean)).toEqual([NEXT])
    expect((await save('work', { now: 'boxedAt' })).status).toBe(422)
    expect((await save('work', { now: 'boxedAt', 'withoutGo.why': 'could-not-wait' })).status).toBe(303)
    expect(sheet().work).toMatchObject({ on: NEXT, boxedAt: '08:10', withoutGo: { on: NEXT } })
  })

  test('a form that was left open since the first day is none of today either', async () => {
    const old = { visit: '1', on: DAY, openedAt: '09:00', outdoorC: '76', water: 'yes', shownOn: DAY }
    expect((await post('work', { ...old, now: 'boxedAt intake' })).status).toBe(422)
    expect((await post('work', { ...old, now: 'openedAt' })).status).toBe(422)
    expect(sheet().work).toMatchObject({ on: DAY, openedAt: '09:00' })
    expect(sheet().work.earlier).toBeUndefined()
  })

  test('it asks for heat and what is ready as the opening does', async () => {
    expect((await save('work', { now: 'openedAt' })).status).toBe(422)
    expect((await save('work', { outdoorC: '77', now: 'openedAt' })).status).toBe(422)
    expect((await save('work', { outdoorC: '99', water: 'yes', now: 'openedAt' })).status).toBe(422)
    // What a second person is to sign for is of this day.
    expect(sheet().work).toMatchObject({ on: NEXT, earlier: [{ on: DAY, openedAt: '09:00' }] })
    expect(sheet().decision?.fell).toBeUndefined()
    expect((await yard.get(`${PATH}/intake`)).to).toBe(`${PATH}/work#now`)
    expect((await save('work', { outdoorC: '77', water: 'yes', now: 'openedAt' })).status).toBe(303)
    expect(sheet().work).toMatchObject({ on: NEXT, openedAt: '08:10', outdoorC: 25, underGo: { on: NEXT } })
    expect(sheet().work.earlier).toHaveLength(1)
    expect(await pageOf()).toContain('value="boxedAt intake"')
  })

  test('the day of the box is that of the intake, and the hours count over all days', async () => {
    expect((await save('work', { outdoorC: '77', water: 'yes', now: 'openedAt' })).status).toBe(303)
    yard.setDay(THIRD, '13:00')
    expect((await go(THIRD)).status).toBe(303)
    expect((await save('work', { outdoorC: '70', water: 'yes', now: 'openedAt' })).status).toBe(303)
    yard.setDay(THIRD, '14:00')
    expect((await save('work', { now: 'boxedAt intake' })).to).toBe(`${PATH}/intake`)
    expect(sheet().work.withoutGo).toBeUndefined()
    const form = await formOf('intake')
    expect(form).toMatchObject({
      on: [THIRD],
      'removal.removedOn': [THIRD],
      'removal.hoursOpenToBoxed': ['53'],
    })
    expect(await words(`${PATH}/site`)).toContain('Fri 12 Jun, 09:00 to …')
    // A trap-out of weeks has more hours than an intake takes.
    const long = { ...sheet(), work: { ...sheet().work, on: '2026-07-14' } }
    expect(intakeFrom(long).removal.hoursOpenToBoxed).toBeUndefined()
  })

  test('times by hand are of the day beside them', async () => {
    yard.setDay(NEXT, '15:00')
    const day = { openedAt: '08:20', boxedAt: '12:00', leftAt: '13:00' }
    expect((await save('work', day)).status).toBe(422)
    expect((await save('work', { ...day, outdoorC: '77', water: 'yes' })).status).toBe(303)
    expect(sheet().work).toMatchObject({ on: NEXT, ...day, earlier: [{ on: DAY, openedAt: '09:00' }] })
    expect(sheet().work.withoutGo).toBeUndefined()
  })

  test('what was boxed on the first day is written down as of that day', async () => {
    const then = { boxedAt: '12:00' }
    expect((await save('work', then)).status).toBe(422)
    expect((await save('work', { ...then, 'withoutGo.why': 'that-day' })).status).toBe(303)
    expect(sheet().work).toMatchObject({ on: DAY, openedAt: '09:00', boxedAt: '12:00' })
    expect(sheet().work.earlier).toBeUndefined()
  })

  test('a note takes nothing off the visit that stands', async () => {
    const { on, openedAt, outdoorC, water, underGo } = sheet().work
    expect((await save('work', { note: 'Boards are loose' })).status).toBe(303)
    expect(sheet().work).toMatchObject({ on, openedAt, outdoorC, water, underGo, note: 'Boards are loose' })
  })

  test('what is changed between the “go” of that day and going on lets it fall', async () => {
    expect((await save('site', { behindNote: 'He says mind the planks' })).status).toBe(303)
    expect(sheet().decision?.fell).toBeDefined()
  })
})

describe('after “Left” on the same day', () => {
  beforeEach(async () => {
    yard.setDay(DAY, '09:20')
    expect((await save('work', { now: 'leftAt' })).status).toBe(303)
    yard.setDay(DAY, '11:00')
    expect((await yard.get(`${PATH}/intake`)).to).toBe(`${PATH}/work#now`)
    expect((await go(DAY)).status).toBe(303)
  })

  test('a new “go” is gone on with like an opening', async () => {
    expect(await pageOf()).toContain('>Go on, now')
    expect((await save('work', { now: 'boxedAt' })).status).toBe(422)
    expect((await save('work', { outdoorC: '77', water: 'yes', now: 'openedAt' })).status).toBe(303)
    expect(sheet().work).toMatchObject({ on: DAY, openedAt: '11:00', earlier: [{ leftAt: '09:20' }] })
    yard.setDay(DAY, '15:00')
    expect((await save('work', { now: 'boxedAt intake' })).status).toBe(303)
    expect(intakeFrom(sheet()).removal.hoursOpenToBoxed).toBe(6)
  })

  test('what was boxed before is written down afterwards', async () => {
    expect((await save('work', { boxedAt: '09:15' })).status).toBe(303)
    expect(sheet().work).toMatchObject({ openedAt: '09:00', boxedAt: '09:15', leftAt: '09:20' })
    expect(sheet().work.earlier).toBeUndefined()
  })
})

describe('two phones', () => {
  const first: Sheet = { ...READY, work: { on: DAY, openedAt: '09:00', outdoorC: 24, water: true } }
  const second = (openedAt: string, earlier = [first.work]): Sheet => ({
    ...READY,
    work: { on: NEXT, openedAt, outdoorC: 25, water: true, earlier, knew: ['a', openedAt] },
  })

  test('on the second day have one first visit, and ask for the hour at which it was gone on with', () => {
    const { sheet: both, clashes } = mergeSheets(first, second('08:10'), second('08:15'))
    expect(both.work).toMatchObject({ on: NEXT, earlier: [first.work], knew: ['a'] })
    expect(clashes).toEqual(['work.openedAt'])
  })

  test('“Left” of the first day that comes late is none of the second', () => {
    const left = { ...first, work: { ...first.work, leftAt: '18:00' } }
    for (const both of [
      mergeSheets(first, left, second('08:10')),
      mergeSheets(first, second('08:10'), left),
    ]) {
      expect(both.sheet.work).toMatchObject({ on: NEXT, openedAt: '08:10', earlier: [first.work] })
      expect(both.sheet.work.leftAt).toBeUndefined()
      expect(both.clashes).toEqual([])
    }
  })
})

test('hours that are known on one side alone stay, whatever day the other typed', () => {
  const work = { on: DAY, openedAt: '09:00', boxedAt: '12:00' }
  const heat = { on: NEXT, outdoorC: 20 }
  const { sheet: both } = mergeSheets(READY, { ...READY, work }, { ...READY, work: heat })
  expect(both.work).toMatchObject({ openedAt: '09:00', boxedAt: '12:00' })
})

test('the form before and after is one of which visit it is', async () => {
  expect((await formOf('work')).visit).toEqual(['1'])
  yard.setDay(NEXT, '08:00')
  expect((await formOf('work')).visit).toEqual(['2'])
})
