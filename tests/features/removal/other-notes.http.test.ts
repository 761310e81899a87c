/** Notes of another sheet of the same house: whoever goes here has read them, each sheet by one tap. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import { otherSheetsOf, readThere } from '../../../src/features/removal/other-sheets.ts'
import { sheet as schema } from '../../../src/records/index.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { formIn, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { oneSheet } from './one-sheet.ts'
import { DAY, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000061'
const OTHER = '019e0000-0000-7000-8000-000000000062'
const PATH = `/removals/${ID}`
const TOLD = 'deep well under the planks'
const theirs = (more: Partial<Sheet> = {}): Sheet => ({
  ...READY,
  ...more,
  job: { name: 'Edgar Fairweather', address: '4 Invented Row, Springfield', ...more.job },
})

describe('at a page', () => {
  let yard: Yard
  const { sheet, saved, save } = oneSheet(() => yard, ID, '08:00')
  const go = async (...more: string[]) => {
    const typed = formIn((await yard.get(`${PATH}/check`)).text)
    return save('check', { done: [...(typed.done ?? []), ...more], is: 'go' })
  }
  const tick = (...notes: string[]) => readThere({ id: OTHER, notes })
  beforeEach(async () => {
    yard = await yardOn(DAY)
    saved(READY)
  })

  test('one tap reads them: of exactly these words, shown with whose sheet they are on', async () => {
    saved(theirs({ job: { wayIn: TOLD } }), 'Bram', { of: OTHER })
    const barred = await go()
    expect(barred.status).toBe(422)
    expect(wordsOf(barred.text)).toContain(`Read: the sheet of Edgar Fairweather, same house “${TOLD}”`)
    expect((await go(tick(TOLD))).status).toBe(303)
    // More is written there: the “go” here is of what was read.
    saved(theirs({ job: { wayIn: `${TOLD}, and a second one` } }), 'Bram', { of: OTHER })
    const version = String(yard.store.removals.get(ID)?.last.version)
    const opened = { version, outdoorC: '75', now: 'openedAt', water: 'yes' }
    expect((await yard.post(`${PATH}/work`, opened)).status).toBe(422)
    expect((await go(tick(TOLD))).status).toBe(422)
    expect((await go(tick(`${TOLD}, and a second one`))).status).toBe(303)
  })

  const GO = { is: 'go' as const, by: 'Bram', on: DAY, at: '07:00', unmet: [] }
  const over = { by: 'Edda', on: DAY, reason: 'It hisses behind the boards' }
  const begunWithout = { why: 'could-not-wait' as const, by: 'Bram', on: DAY, at: '07:20', unmet: [] }
  test.each<[string, Partial<Sheet>, string]>([
    ['why it was begun without a “go”', { work: { withoutGo: { ...begunWithout, words: TOLD } } }, TOLD],
    ['why it was a “go”', { decision: { ...GO, reason: TOLD } }, TOLD],
    ['why somebody had it wait before a “go”', { decision: { ...GO, over } }, over.reason],
    ['where it is', { site: { ...READY.site, where: 'above the open shaft' } }, 'above the open shaft'],
    ['what is cut', { site: { ...READY.site, surface: 'planks that hum' } }, 'planks that hum'],
  ])('%s there is read here', async (_, more, words) => {
    saved(theirs(more), 'Bram', { of: OTHER })
    const barred = await go()
    expect(barred.status).toBe(422)
    expect(wordsOf(barred.text)).toContain(`Read: the sheet of Edgar Fairweather, same house “${words}”`)
    expect((await go(tick(words))).status).toBe(303)
  })

  test('what stands on this sheet too is read once, and a sheet without notes asks nothing', async () => {
    saved({ ...READY, job: { ...READY.job, wayIn: TOLD } })
    saved(theirs({ job: { wayIn: TOLD } }), 'Bram', { of: OTHER })
    expect((await yard.get(`${PATH}/check`)).text).not.toContain('Read: the sheet of')
  })

  test('what was called in of a job that is done is read too, and who lives there is asked for, not looked for', async () => {
    const note = 'The bees sting my wife'
    const callBacks = [{ on: DAY, what: 'bees-back' as const, note, by: 'Bram', opened: false }]
    const site = { ...READY.site, bystanders: ['allergic' as const] }
    saved(theirs({ site, callBacks, work: { on: DAY, boxedAt: '08:00' } }), 'Bram', { of: OTHER })
    yard.store.removals.link(OTHER, '019e0000-0000-7000-8000-000000000069' as never, {
      savedAt: `${DAY}T08:00:00.000Z`,
      savedBy: 'Bram',
    })
    const barred = await go()
    expect(barred.status).toBe(422)
    const said = wordsOf(barred.text)
    expect(said).toContain(`“${note}”`)
    expect(said).toContain('Somebody allergic: today too?')
    expect(said).toContain('Asked: nobody')
  })

  test('once it is open here, what else is noted there stops nobody by itself', async () => {
    expect((await go()).status).toBe(303)
    expect((await save('work', { outdoorC: '75', water: 'yes', now: 'openedAt' })).status).toBe(303)
    saved(theirs({ site: { ...READY.site, foundNote: 'Bigger than we thought' } }), 'Bram', { of: OTHER })
    await save('work', { now: 'boxedAt' })
    expect(sheet().work).toMatchObject({ boxedAt: '12:00' })
    expect(sheet().work.withoutGo).toBeUndefined()
  })

  test('old there and new here, sprayed there and not here, are asked like what kills', async () => {
    saved(theirs({ site: { ...READY.site, old: 'yes', sprayed: 'yes' } }), 'Bram', { of: OTHER })
    const barred = wordsOf((await go()).text)
    expect(barred).toContain('not on this one: a building of before 1980, sprayed bees')
    const not = { [`again.not-there:old:${OTHER}`]: 'not', [`again.not-there:sprayed:${OTHER}`]: 'not' }
    expect((await save('check', { ...not, is: 'go' })).status).toBe(303)
    expect(sheet().site).toMatchObject({ old: 'no', sprayed: 'no' })
    const here = { [`again.not-there:old:${OTHER}`]: 'here', [`again.not-there:sprayed:${OTHER}`]: 'here' }
    expect(
      (await save('check', { ...here, is: 'go' })).status,
      'how is it known that it has no asbestos?',
    ).toBe(422)
    expect(sheet().site).toMatchObject({ old: 'yes', sprayed: 'yes' })
  })
})

describe('of a job', () => {
  const asked = (other: Partial<Sheet>, own: Sheet, today = DAY) =>
    otherSheetsOf(ID, own, [{ id: OTHER, sheet: schema.parse(theirs(other)), colonies: ['c'] }], today)
  const done = {
    work: { on: DAY, note: 'The cellar stairs give' },
    site: { ...READY.site, old: 'yes' as const, sprayed: 'yes' as const },
  }

  test('that is done, notes and age of the house count for 90 days, and not what was sprayed', () => {
    expect(asked(done, READY)).toMatchObject([{ what: ['old'], notes: ['The cellar stairs give'] }])
    expect(asked(done, READY, '2026-09-11')).toEqual([])
  })

  test('where nobody here says that the house is new, it is asked as an old one already', () => {
    const { old: _, ...site } = READY.site
    expect(asked(done, { ...READY, site })).toMatchObject([{ what: [] }])
    // “Tested” is said of an old one.
    expect(asked({ site: { ...site, oldHow: 'tested' }, work: { on: DAY } }, READY)).toMatchObject([
      { what: ['old'] },
    ])
  })
})
