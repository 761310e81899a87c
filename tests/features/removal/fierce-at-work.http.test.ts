/** How they behave, tapped under the work, counts like what was said at the call, until they are in the box. Invented. */
import { beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { NOT_OPENED } from '../../../src/features/removal/fields.ts'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { emptied, oneSheet } from './one-sheet.ts'
import { DAY, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000065'
let yard: Yard
const { sheet, saved, save, words } = oneSheet(() => yard, ID, '08:00')
const go = (more = {}) => save('check', { ...more, is: 'go' })
const open = () => save('work', { outdoorC: '75', water: 'yes', now: 'openedAt' })
/** What is tapped where nobody knows them as fierce. */
const { check } = READY
const CALM = { ...READY, check: { ...check, done: (check.done ?? []).filter((d) => d !== 'fierce') } }
const found = () =>
  sheet()
    .site.noted?.filter((n) => n.what === 'fierce')
    .map((n) => n.is)

beforeAll(async () => {
  yard = await yardOn(DAY)
})
beforeEach(() => {
  emptied(yard)
  saved(CALM)
})

test('before it is opened: the distance is asked, and they do not go off it with no word', async () => {
  expect((await save('work', { temper: '5', 'withoutGo.why': NOT_OPENED })).status).toBe(303)
  expect(found()).toEqual(['found'])
  const barred = await go()
  expect(barred.status).toBe(422)
  expect(wordsOf(barred.text)).toContain('Not yet: distance and hour for fierce bees')
  const calm = await save('work', { temper: '2' })
  expect(calm.status).toBe(422)
  expect(calm.text).toContain('name="gone.fierce"')
  expect(
    (await save('work', { temper: '2', 'gone.fierce': 'mistake', 'withoutGo.why': NOT_OPENED })).status,
  ).toBe(303)
  expect(found()).toEqual(['found', 'gone'])
})

describe('once it is open', () => {
  beforeEach(async () => {
    expect((await go()).status).toBe(303)
    expect((await open()).status).toBe(303)
  })

  test('its “go” falls, and the head says over what', async () => {
    expect((await save('work', { temper: '4' })).status).toBe(303)
    expect(sheet().decision?.fell).toBeDefined()
    const page = await words()
    expect(page).toContain('before this was found: fierce bees')
    expect(page).toContain('Not yet: distance and hour for fierce bees')
    // Boxed, it is answered for; and being in the box is no reason asked why they are not fierce any more.
    const boxed = await save('work', { now: 'boxedAt' })
    expect(boxed.text).toContain('name="withoutGo.why"')
    expect(boxed.text).not.toContain('name="gone.fierce"')
    expect((await save('work', { now: 'boxedAt', 'withoutGo.why': 'could-not-wait' })).status).toBe(303)
    expect(found()).toEqual(['found'])
  })

  test('3 is what bees are like, and of boxed ones it is of the colony', async () => {
    expect((await save('work', { temper: '3' })).status).toBe(303)
    expect((await save('work', { temper: '5', now: 'boxedAt' })).status).toBe(303)
    expect(sheet().decision?.fell).toBeUndefined()
    expect((await save('work', { temper: '2' })).status).toBe(303)
    expect(found()).toBeUndefined()
  })
})
