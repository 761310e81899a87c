/** “It is here”, “It is so”, “Another one”: what was answered is on the sheet, and does not come back untapped. Invented. */
import { beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { readNotes } from '../../../src/features/removal/notes-read.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { formIn, type Yard, yardOn } from '../../support/yard-on.ts'
import { emptied, oneSheet } from './one-sheet.ts'
import { DAY, GAS_CLEARED, PHOTO, READY, read } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000066'
const OTHER = '019e0000-0000-7000-8000-000000000067'
const PATH = `/removals/${ID}`
const HISS = 'Whole wall hisses'
const STOPPED = `again.not-there:stopped:${OTHER}:09:00`
let yard: Yard
const { sheet, saved, save } = oneSheet(() => yard, ID, '08:00')
const page = async () => (await yard.get(`${PATH}/check`)).text
const theirs = (more: Partial<Sheet>): Sheet => ({
  ...READY,
  ...more,
  job: { name: 'Edgar', address: '4 Invented Row', ...more.job },
})
const waits: Sheet['decision'] = { is: 'wait', by: 'Bram', on: DAY, at: '09:00', reason: HISS, unmet: [] }

beforeAll(async () => {
  yard = await yardOn(DAY)
  await yard.photos.keep(PHOTO)
})
beforeEach(() => {
  emptied(yard)
  saved(READY)
})

test.each<[string, Partial<Sheet['site']>, Partial<Sheet['site']>]>([
  ['gas', { behind: ['gas'] }, { behind: ['insulation', 'gas'] }],
  ['asbestos', { hazards: ['asbestos'] }, { hazards: ['asbestos'] }],
  ['allergic', { bystanders: ['allergic'] }, { bystanders: ['allergic'] }],
  ['near-wires', { nearWires: true }, { nearWires: true }],
  ['fierce', { africanized: 'yes' }, { temper: 4 }],
])(
  '“It is here” of %s, saved, is tapped in its own field and found by whoever tapped it',
  async (what, there, here) => {
    saved(theirs({ site: { ...READY.site, ...there } }), 'Bram', { of: OTHER })
    expect((await save('check', { [`again.not-there:${what}:${OTHER}`]: 'here' })).status).toBe(303)
    expect(sheet().site).toMatchObject(here)
    expect(sheet().site.noted).toMatchObject([{ what, is: 'found', by: 'Ines', on: DAY, at: '12:00' }])
    expect(await page()).not.toContain(`name="again.not-there:${what}`)
  },
)

test('what only stood in words is put onto the sheet too, also by a form that is refused or lay open for hours', async () => {
  saved({ ...READY, job: { ...READY.job, told: 'Gas pipe, grandma is allergic' } })
  const slip = await save('check', { 'again.not-here:gas': 'here', hottestC: 'hot' })
  expect(slip.status).toBe(422)
  expect(sheet().site.behind).toEqual(['insulation', 'gas'])
  const lay = { 'again.not-here:allergic': 'here', shownAt: '06:00' }
  expect((await save('check', lay)).status).toBe(303)
  expect(sheet().site.bystanders).toEqual(['allergic'])
})

describe('“It is so”', () => {
  beforeEach(() => saved(theirs({ decision: waits }), 'Bram', { of: OTHER }))

  test('makes it a note of this sheet, which is read before “go”', async () => {
    expect((await save('check', { is: 'go' })).status, 'not answered').toBe(422)
    expect((await save('check', { [STOPPED]: 'here' })).status).toBe(303)
    expect(sheet().site.foundNote).toBe(HISS)
    expect(await page()).not.toContain(STOPPED)
    expect((await save('check', { is: 'go' })).status).toBe(422)
    const typed = formIn(await page())
    const done = [...(typed.done ?? []), readNotes(sheet())]
    expect((await save('check', { done, is: 'go' })).status).toBe(303)
  })

  test('stays answered where a note has no room for it, and “go” waits for it', async () => {
    const foundNote = 'x'.repeat(495)
    saved(read({ ...READY, site: { ...READY.site, foundNote } }))
    expect((await save('check', { [STOPPED]: 'here' })).status).toBe(303)
    expect(sheet().site.foundNote).toBe(foundNote)
    expect(formIn(await page())[STOPPED]).toEqual(['here'])
    expect((await save('check', { is: 'go' })).status).toBe(422)
  })

  test('takes a “go” away that was said over “Looked: not so”', async () => {
    expect((await save('check', { [STOPPED]: 'not', is: 'go' })).status).toBe(303)
    expect((await save('check', { [STOPPED]: 'here' })).status).toBe(303)
    expect(sheet().decision?.fell?.by).toBe('Ines')
  })
})

test('“Another one” than the trade has cleared stands until that one is cleared', async () => {
  const cleared = GAS_CLEARED.check.clearances?.map((x) => ({ ...x, writtenAt: `${DAY}T07:00:00.000Z` }))
  saved({ ...GAS_CLEARED, check: { ...GAS_CLEARED.check, clearances: cleared } })
  await save('site', { behindNote: 'One more gas pipe, right of it' })
  expect((await save('check', { 'again.same:gas': 'here' })).status).toBe(303)
  expect(formIn(await page())['again.same:gas']).toEqual(['here'])
  const done = [...(formIn(await page()).done ?? []), readNotes(sheet())]
  expect((await save('check', { done, is: 'go' })).status).toBe(422)
  expect((await save('check', { done, is: 'go', 'again.same:gas': 'not' })).status).toBe(303)
})
