/** They called again: whether anything was opened is tapped, and what was opened has a sheet of its own. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { oneSheet } from './one-sheet.ts'
import { DAY, goAt, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000051'
const LATER = '2026-06-30'
let yard: Yard
const { sheet, saved, post, words } = oneSheet(() => yard, ID)
const DONE: Sheet = {
  ...READY,
  job: { ...READY.job, phone: '555 0142 77' },
  site: { ...READY.site, surface: 'siding' },
  decision: goAt('08:00'),
  work: { on: DAY, openedAt: '08:30', boxedAt: '10:00', underGo: { by: 'Ines', on: DAY, at: '08:30' } },
}
const called = (fields: Record<string, string>) =>
  post('call-back', { what: 'bees-back', on: LATER, note: 'Opened it again and took the rest.', ...fields })
const others = () => yard.store.removals.list().filter((v) => v.id !== ID)

beforeEach(async () => {
  yard = await yardOn(DAY)
  saved(DONE)
  yard.setDay(LATER)
})

test('whether anything was opened is asked', async () => {
  const answer = await called({})
  expect(answer.status).toBe(422)
  expect(wordsOf(answer.text)).toContain('Was anything opened?')
  expect(sheet().callBacks).toBeUndefined()
})

test('“No” is an entry, and no job', async () => {
  expect((await called({ opened: 'no' })).to).toBe(`/removals/${ID}?saved=1`)
  expect(sheet().callBacks).toMatchObject([{ opened: false }])
  expect(others()).toEqual([])
})

test('what they say stands in the head for whoever goes to close up', async () => {
  yard.store.removals.link(ID, '019e0000-0000-7000-8000-000000000059' as never, {
    savedAt: `${DAY}T10:00:00.000Z`,
    savedBy: 'Ines',
  })
  await called({ opened: 'no', what: 'smell', note: 'Gas smell where you closed it.' })
  const said = await words()
  const at = said.indexOf('They called again:')
  expect(at).toBeGreaterThan(0)
  expect(said.slice(at, at + 120)).toContain('Gas smell where you closed it')
  expect(at).toBeLessThan(said.indexOf('Finding and opening'))
})

describe('“Yes”', () => {
  test('is kept, and leads to a sheet of the same wall, filled, and begun without a “go”', async () => {
    const answer = await called({ opened: 'yes' })
    expect(sheet().callBacks).toMatchObject([{ opened: true, what: 'bees-back' }])
    expect(await words()).toContain('Bees are back, and it was opened.')
    const [made] = others()
    expect(answer.to).toBe(`/removals/${made?.id}/work?saved=1#now`)
    const { name, address, phone } = DONE.job
    expect(made?.sheet.job).toMatchObject({ name, address, phone, calledOn: LATER })
    expect(made?.sheet.site).toMatchObject({ type: 'wall', where: 'left of the porch', surface: 'siding' })
    expect(made?.sheet.site.behind, 'nobody has looked again').toBeUndefined()
    const page = await words(answer.to ?? '')
    expect(page).toContain('Begun without a “go” . No “go” stood for it, and nobody has said why it was done')
    expect(page).toContain('Opened it again and took the rest.')
    expect(page).toContain('What was unmet then')
    expect(await words('/removals')).toContain('Begun without a “go”')
  })

  test('with a reason has the reason', async () => {
    await called({ opened: 'yes', why: 'open-already' })
    expect(others()[0]?.sheet.work.withoutGo).toMatchObject({ why: 'open-already', by: 'Ines', on: LATER })
  })

  test('sent twice leads to the same sheet', async () => {
    const first = await called({ opened: 'yes' })
    expect((await called({ opened: 'yes' })).to).toBe(first.to)
    expect(others()).toHaveLength(1)
  })

  const of = ID.replace(/1$/, '2')

  test.each([
    ['and is begun', { openedAt: '09:00', underGo: { by: 'Bram', on: LATER, at: '09:00' } }],
    ['and tells of nothing yet', {}],
  ])('leads to the sheet that has the “go” %s, and marks nothing', async (_, work) => {
    const decision = { ...DONE.decision, is: 'go' as const, by: 'Bram', on: LATER, unmet: [] }
    saved({ ...DONE, decision, work: { on: LATER, ...work } }, 'Bram', { of })
    expect((await called({ opened: 'yes' })).to).toBe(`/removals/${of}/work?saved=1#now`)
    expect(others()).toHaveLength(1)
    expect(others()[0]?.sheet.work.withoutGo).toBeUndefined()
  })

  test.each([
    ['on which somebody only came and looked', { ...DONE, work: { on: LATER, arrivedAt: '09:00' } }],
    [
      'of another wall',
      { ...DONE, site: { ...DONE.site, where: 'attic' }, work: { ...DONE.work, on: LATER } },
    ],
    ['of an earlier day', { ...DONE, work: { ...DONE.work, on: '2026-06-20' } }],
  ])('a sheet %s is none for it', async (_, other) => {
    const { decision: __, ...undecided } = other
    saved(undecided, 'Bram', { of })
    await called({ opened: 'yes' })
    expect(others().filter((v) => v.sheet.work.withoutGo !== undefined)).toHaveLength(1)
  })
})
