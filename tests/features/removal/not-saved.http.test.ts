/**
 * A form that is not saved, for a slip of the thumb or because somebody else saved it meanwhile, loses nothing that can kill, and no
 * “go” stands over what was typed into it. Invented.
 */
import { beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { hasBegun } from '../../../src/records/visit.ts'
import { formIn, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { emptied, type Fields, oneSheet } from './one-sheet.ts'
import { DAY, goAt, READY, TAPPED } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000039'
const PATH = `/removals/${ID}`
let yard: Yard
const { last, sheet, saved, formOf: open } = oneSheet(() => yard, ID, '11:50')
const gone = (by = 'Ines'): Sheet => ({
  ...sheet(),
  decision: { is: 'go', by, on: DAY, at: '11:50', unmet: [], ...placeOf(READY) },
})
type Part = 'job' | 'site' | 'check' | 'work'
const post = (part: Part, fields: Fields) => yard.post(`${PATH}/${part}`, fields)
const begun = async (): Promise<boolean> => {
  await post('work', {
    version: String(last()?.version),
    on: DAY,
    outdoorC: '75',
    water: 'yes',
    now: 'openedAt',
  })
  return hasBegun(sheet())
}

beforeAll(async () => {
  yard = await yardOn(DAY)
  await yard.account('Bram')
})
beforeEach(() => {
  emptied(yard)
  saved({ ...READY, check: { ...READY.check, tickedAt: '11:50' } })
})

test('forms that are saved as they stand change nothing, and the go opens it', async () => {
  saved(gone())
  expect(await begun()).toBe(true)
})

describe('refused for a slip beside it', () => {
  beforeEach(async () => {
    expect((await post('check', { ...(await open('check')), ...TAPPED })).status).toBe(303)
    expect(sheet().decision).toMatchObject({ is: 'go' })
  })

  test.each<[string, Part, Fields]>([
    ['gas in a note', 'site', { behindNote: 'GAS pipe hissing', sheathingMm: 'abc' }],
    ['who is allergic, as told', 'job', { told: 'son allergic, gas pipe', plannedAt: 'abc' }],
    ['fierce bees', 'job', { 'site.temper': '5', told: 'they chase the dog', plannedAt: 'abc' }],
    ['wires not known', 'check', { wires: 'unknown', cutMm: 'abc' }],
    ['gas in the note of the work', 'work', { note: 'gas pipe hissing behind it', boxHours: 'abc' }],
  ])('%s lets the go fall', async (_, part, typed) => {
    const answer = await post(part, { ...(await open(part)), ...typed })
    expect(answer.status).toBe(422)
    expect(sheet().decision?.fell).toBeDefined()
    expect(await begun()).toBe(false)
  })

  test('words that name a hazard are asked about, whoever decides anew', async () => {
    await post('site', { ...(await open('site')), behindNote: 'GAS pipe hissing', sheathingMm: 'abc' })
    const again = await post('check', { ...(await open('check')), ...TAPPED, reason: 'It is all as it was.' })
    expect(again.status).toBe(422)
    expect(wordsOf(again.text)).toContain('GAS pipe hissing')
  })

  test.each(['refuse', 'wait'])('“%s” lets it fall, with or without a reason', async (is) => {
    const answer = await post('check', { ...(await open('check')), is, reason: 'smells odd', cutMm: 'abc' })
    expect(answer.status).toBe(422)
    expect(sheet().decision).toMatchObject({ is: 'go', fell: { by: 'Ines' }, over: { reason: 'smells odd' } })
    expect(await begun()).toBe(false)
  })

  test('“Refuse” with no reason', async () => {
    const answer = await post('check', { ...(await open('check')), is: 'refuse' })
    expect(answer.status).toBe(422)
    expect(sheet().decision).toMatchObject({ is: 'go', fell: { by: 'Ines' } })
    expect(await begun()).toBe(false)
  })

  test('nothing else typed, the go stands', async () => {
    const answer = await post('work', { ...(await open('work')), boxHours: 'abc' })
    expect(answer.status).toBe(422)
    expect(sheet().decision?.fell).toBeUndefined()
  })
})

describe('refused because it was saved by somebody else meanwhile', () => {
  test('gas and its note are on the sheet, no go stands, and saving again is one tap', async () => {
    const mine = await open('site')
    saved({ ...sheet(), site: { ...sheet().site, entrance: 'under the sill' } }, 'Bram')
    saved(gone('Bram'), 'Bram')
    const typed = { ...mine, entrance: 'knot', behind: ['insulation', 'gas'], behindNote: 'gas pipe' }
    const answer = await post('site', typed)
    expect(answer.status).toBe(409)
    expect(wordsOf(answer.text)).toContain('Bram saved this page meanwhile')
    expect(wordsOf(answer.text)).toContain('No go any more')
    expect(sheet().site.behind).toEqual(['insulation', 'gas'])
    expect(sheet().decision).toMatchObject({ by: 'Bram', fell: { by: 'Ines' } })
    expect(await begun()).toBe(false)
    expect((await post('site', formIn(answer.text))).status).toBe(303)
    expect(sheet().site).toMatchObject({ entrance: 'knot', behindNote: 'gas pipe' })
    expect(sheet().site.behind?.toSorted()).toEqual(['gas', 'insulation'])
  })

  test('who is about, and what was told', async () => {
    const mine = await open('job')
    saved({ ...sheet(), job: { ...sheet().job, wayIn: 'Gate' } }, 'Bram')
    saved(gone('Bram'), 'Bram')
    const bystanders = ['children', 'allergic']
    const answer = await post('job', { ...mine, wayIn: 'Back door', bystanders, told: 'gas at the back' })
    expect(answer.status).toBe(409)
    expect(sheet().site.bystanders).toEqual(bystanders)
    expect(sheet().decision?.fell).toBeDefined()
    expect(JSON.stringify(sheet().site.noted)).toContain('gas at the back')
    expect(await begun()).toBe(false)
  })

  test.each([
    ['wires', { wires: 'near', hottestC: '99' }],
    ['a refusal', { is: 'refuse', reason: 'smells of gas' }],
    ['a wait', { is: 'wait' }],
  ])('%s before the cut', async (_, typed) => {
    const mine = await open('check')
    saved({ ...sheet(), check: { ...sheet().check, hottestC: 26, cutMm: 20 } }, 'Bram')
    saved(gone('Bram'), 'Bram')
    const answer = await post('check', { ...mine, ...typed })
    expect(answer.status).toBe(409)
    expect(sheet().decision?.fell).toBeDefined()
    expect(sheet().site.nearWires).toBe('wires' in typed ? true : undefined)
    expect(await begun()).toBe(false)
  })

  test('whoever taps “Go” on a list that a colleague has gone on, as it stands, takes nothing from theirs', async () => {
    const { done: _d, doneOn: _o, doneAt: _a, tickedAt: _t, ...asked } = READY.check
    saved({ ...READY, check: asked })
    const mine = await open('check')
    expect((await post('check', { ...mine, ...TAPPED, is: '' })).status).toBe(303)
    saved(gone('Bram'), 'Bram')
    const answer = await post('check', { ...mine, ...TAPPED })
    expect(wordsOf(answer.text)).toContain('Bram tapped “Go”')
    expect(sheet().decision).toMatchObject({ by: 'Bram' })
    expect(sheet().decision?.fell).toBeUndefined()
  })

  test('a form of a version that is not here', async () => {
    saved(gone())
    const answer = await post('site', { ...(await open('site')), version: '77', behind: ['gas'] })
    expect(answer.status).toBe(422)
    expect(sheet().site.behind).toContain('gas')
    expect(sheet().decision?.fell).toBeDefined()
  })
})

const BRAM: Sheet['decision'] = goAt('11:50', 'Bram')
const status = async (part: Part, form: Fields): Promise<number> => (await post(part, form)).status
const opened = async (): Promise<number> =>
  status('work', { ...(await open('work')), outdoorC: '75', water: 'yes', now: 'openedAt' })

describe('a page that lay open while somebody said “go”', () => {
  test.each([
    ['refuse', 'Smells of gas in the hall'],
    ['refuse', ''],
    ['wait', ''],
  ])('%s, “%s”: the “go” falls, though the page clashes', async (is, reason) => {
    const lay = await open('check')
    saved({ ...READY, check: { ...READY.check, cutMm: 20 }, decision: BRAM }, 'Bram')
    expect(await status('check', { ...lay, cutMm: '0.7', is, reason })).not.toBe(303)
    expect(sheet().decision?.fell).toBeDefined()
    expect(await opened()).toBe(422)
  })

  test('what it found is on the sheet, and what it says of gas leaves a line', async () => {
    const lay = await open('site')
    saved({ ...READY, site: { ...READY.site, sheathingMm: 20 }, decision: BRAM }, 'Bram')
    expect(
      await status('site', {
        ...lay,
        sheathingMm: '1',
        behind: ['electric'],
        behindNote: 'GAS pipe, hissing',
      }),
    ).not.toBe(303)
    expect(sheet().site.behind).toContain('electric')
    expect(sheet().site.noted).toContainEqual(expect.objectContaining({ what: 'gas', is: 'written' }))
    expect(sheet().decision?.fell).toBeDefined()
  })

  test('a clash that found nothing lets it stand', async () => {
    const lay = await open('site')
    saved({ ...READY, site: { ...READY.site, entrance: 'Porch' }, decision: BRAM }, 'Bram')
    expect(await status('site', { ...lay })).not.toBe(303)
    expect(sheet().decision?.fell).toBeUndefined()
  })
})

describe('over a “go”, with a slip of the pen beside it', () => {
  beforeEach(() => {
    saved({ ...READY, decision: BRAM })
  })

  test.each<[string, Part, Fields]>([
    ['words for gas', 'site', { behindNote: 'GAS pipe, hissing', sheathingMm: 'an inch' }],
    ['fierce bees', 'site', { temper: '5', sheathingMm: 'an inch' }],
    ['a roof', 'job', { access: 'roof', heightM: 'thirty' }],
    ['wires that nobody knows of', 'check', { wires: 'unknown', cutMm: 'deep' }],
    ['nobody within call', 'check', { done: [], cutMm: 'deep' }],
    ['a refusal without a reason', 'check', { is: 'refuse', reason: '' }],
  ])('%s', async (_, part, more) => {
    expect(await status(part, { ...(await open(part)), ...more })).toBe(422)
    expect(sheet().decision?.fell).toBeDefined()
    expect(await opened()).toBe(422)
  })

  test('a slip by itself lets it stand', async () => {
    expect(await status('work', { ...(await open('work')), boxC: 'warm' })).toBe(422)
    expect(sheet().decision?.fell).toBeUndefined()
  })
})
