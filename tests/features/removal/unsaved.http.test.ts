/** A form that was not saved, over a typing slip or a clash, leaves no “go” standing over what it said. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { formIn, type Yard, yardOn } from '../../support/yard-on.ts'
import { DAY, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000053'
const PATH = `/removals/${ID}`
let yard: Yard
const last = () => yard.store.removals.get(ID)?.last
const sheet = (): Sheet => last()?.sheet ?? READY
const saved = (s: Sheet, savedBy = 'Ines') =>
  yard.store.removals.save(ID, last()?.version ?? 0, s, { savedAt: `${DAY}T11:50:00.000Z`, savedBy })
const formOf = async (part: string) => formIn((await yard.get(`${PATH}/${part}`)).text)
const post = async (part: string, form: object) => (await yard.post(`${PATH}/${part}`, { ...form })).status
const go: Sheet['decision'] = { is: 'go', by: 'Bram', on: DAY, at: '11:50', unmet: [], ...placeOf(READY) }
const opens = async () =>
  post('work', { ...(await formOf('work')), outdoorC: '75', water: 'yes', now: 'openedAt' })

beforeEach(async () => {
  yard = await yardOn(DAY)
  saved(READY)
})

describe('a page that lay open while somebody said “go”', () => {
  test.each([
    ['refuse', 'Smells of gas in the hall'],
    ['refuse', ''],
    ['wait', ''],
  ])('%s, “%s”: the “go” falls, though the page clashes', async (is, reason) => {
    const lay = await formOf('check')
    saved({ ...READY, check: { ...READY.check, cutMm: 20 }, decision: go }, 'Bram')
    expect(await post('check', { ...lay, cutMm: '0.7', is, reason })).not.toBe(303)
    expect(sheet().decision?.fell).toBeDefined()
    expect(await opens()).toBe(422)
  })

  test('what it found is on the sheet, and what it says of gas leaves a line', async () => {
    const lay = await formOf('site')
    saved({ ...READY, site: { ...READY.site, sheathingMm: 20 }, decision: go }, 'Bram')
    expect(
      await post('site', { ...lay, sheathingMm: '1', behind: ['electric'], behindNote: 'GAS pipe, hissing' }),
    ).not.toBe(303)
    expect(sheet().site.behind).toContain('electric')
    expect(sheet().site.noted).toContainEqual(expect.objectContaining({ what: 'gas', is: 'written' }))
    expect(sheet().decision?.fell).toBeDefined()
  })

  test('a clash that found nothing lets it stand', async () => {
    const lay = await formOf('site')
    saved({ ...READY, site: { ...READY.site, entrance: 'Porch' }, decision: go }, 'Bram')
    expect(await post('site', { ...lay })).not.toBe(303)
    expect(sheet().decision?.fell).toBeUndefined()
  })
})

describe('over a “go”, with a slip of the pen beside it', () => {
  beforeEach(() => {
    saved({ ...READY, decision: go })
  })

  test.each<[string, string, Record<string, string | string[]>]>([
    ['words for gas', 'site', { behindNote: 'GAS pipe, hissing', sheathingMm: 'an inch' }],
    ['fierce bees', 'site', { temper: '5', sheathingMm: 'an inch' }],
    ['a roof', 'job', { access: 'roof', heightM: 'thirty' }],
    ['wires that nobody knows of', 'check', { wires: 'unknown', cutMm: 'deep' }],
    ['nobody within call', 'check', { done: [], cutMm: 'deep' }],
    ['a refusal without a reason', 'check', { is: 'refuse', reason: '' }],
  ])('%s', async (_, part, more) => {
    expect(await post(part, { ...(await formOf(part)), ...more })).toBe(422)
    expect(sheet().decision?.fell).toBeDefined()
    expect(await opens()).toBe(422)
  })

  test('a slip by itself lets it stand', async () => {
    expect(await post('work', { ...(await formOf('work')), boxC: 'warm' })).toBe(422)
    expect(sheet().decision?.fell).toBeUndefined()
  })
})
