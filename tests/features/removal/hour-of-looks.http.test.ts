/** Looks are of the page on which they were tapped, and a decision that was tapped over an open job is no “go” for its bees. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { formIn, INTAKE, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { oneSheet } from './one-sheet.ts'
import { DAY, goAt, READY, swarmAt, TAPPED } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000023'
const PATH = `/removals/${ID}`
let yard: Yard
const { sheet, saved, formOf, words, save, post } = oneSheet(() => yard, ID)
const work = (fields: Record<string, string | string[]>) =>
  post('work', { on: DAY, outdoorC: '75', water: 'yes', ...fields })
const GO = goAt('08:00')
const BLANK: Sheet = { ...READY, check: {} }

beforeEach(async () => {
  yard = await yardOn(DAY)
  yard.setDay(DAY, '08:00')
})

test('what was tapped on a page of six is of six, whenever “Go” is tapped', async () => {
  saved(BLANK)
  yard.setDay(DAY, '06:00')
  const page = await formOf('check')
  yard.setDay(DAY, '08:55')
  expect((await yard.post(`${PATH}/check`, { ...page, ...TAPPED })).status).toBe(303)
  expect(sheet().check.tickedAt).toBe('06:00')
  yard.setDay(DAY, '11:50')
  expect((await work({ now: 'openedAt' })).status).toBe(422)
})

test.each(['2026-06-15', '2026-06-09'])(
  'planned for %s and done today: the heat typed is of today',
  async (day) => {
    saved({ ...BLANK, job: { ...READY.job, plannedOn: day } })
    const page = await formOf('check')
    expect((await yard.post(`${PATH}/check`, { ...page, ...TAPPED })).status).toBe(303)
    expect(sheet().check.on).toBe(DAY)
    expect(sheet().decision?.is).toBe('go')
  },
)

describe('under a go', () => {
  beforeEach(() => saved({ ...READY, check: { ...READY.check, tickedAt: '08:00' }, decision: GO }))

  test('a note of the work, written before anything is opened, is read before it is', async () => {
    expect((await work({ arrivedAt: '08:00', note: 'wall is warm, his wife swells up' })).status).toBe(303)
    expect(sheet().decision?.fell).toBeDefined()
    expect((await work({ note: sheet().work.note ?? '', now: 'openedAt' })).status).toBe(422)
  })

  test('“Open it, now” that was refused leaves no hour behind', async () => {
    const refused = await work({ outdoorC: '', now: 'openedAt' })
    expect(refused.status).toBe(422)
    expect(formIn(refused.text).openedAt).toEqual([''])
  })

  test.each<[string, Record<string, string>]>([
    ['Wait', { is: 'wait' }],
    ['Refuse', { is: 'refuse', reason: 'wall hisses' }],
  ])('“%s” after it was opened: bees said after it are asked about', async (_, decision) => {
    expect((await work({ now: 'openedAt' })).status).toBe(303)
    const check = await formOf('check')
    expect((await yard.post(`${PATH}/check`, { ...check, ...decision })).status).toBe(303)
    yard.setDay(DAY, '09:00')
    expect((await yard.get(`${PATH}/intake`)).to).toBe(`${PATH}/work#now`)
    const bees = { openedAt: '08:00', queen: 'caged', 'bees.frames': '6' }
    expect((await work(bees)).status).toBe(422)
    expect((await work({ ...bees, 'withoutGo.why': 'could-not-wait' })).status).toBe(303)
  })

  test('a box that is logged for it all the same marks it', async () => {
    expect((await work({ now: 'openedAt' })).status).toBe(303)
    expect((await save('check', { is: 'wait' })).status).toBe(303)
    const box = { ...INTAKE, id: ID, on: DAY, 'removal.removedOn': DAY }
    expect((await yard.post(`${PATH}/intake`, box)).status).toBe(303)
    expect(sheet().work.withoutGo).toBeDefined()
  })

  test('another place, and heat, are named where they ended it', async () => {
    expect((await work({ now: 'openedAt' })).status).toBe(303)
    yard.setDay(DAY, '10:00')
    expect((await work({ openedAt: '08:00', outdoorC: '97' })).status).toBe(303)
    expect(await words()).toContain('before it was too hot: 97 °F now')
    saved({ ...sheet(), site: { ...sheet().site, where: 'over the back door' } }, 'Ines', { at: '10:00' })
    expect(await words()).toContain('before the place was changed')
  })
})

test('another one’s “Wait” is gone over with a word, whether they gave one or not', async () => {
  saved({
    ...READY,
    check: { ...READY.check, tickedAt: '08:00' },
    decision: { ...GO, is: 'wait', by: 'Bram' },
  })
  const page = await formOf('check')
  const bare = await yard.post(`${PATH}/check`, { ...page, ...TAPPED })
  expect(bare.status).toBe(422)
  expect(wordsOf(bare.text)).toContain('Bram tapped “Wait”')
  const reason = 'Bram has found his gloves'
  expect((await save('check', { ...TAPPED, reason })).status).toBe(303)
})

test('while it is open, an hour that was forecast over the limit is said when it comes', async () => {
  saved({ ...READY, check: { ...READY.check, tickedAt: '08:00' }, decision: GO })
  expect((await work({ now: 'openedAt' })).status).toBe(303)
  yard.setDay(DAY, '14:30')
  expect(await words()).not.toContain('as it was forecast')
  yard.setDay(DAY, '15:30')
  expect(await words()).toContain('91 °F from 15:00 on, as it was forecast, over the limit of 85 °F')
  expect((await work({ openedAt: '08:00', now: 'boxedAt' })).status).toBe(303)
  expect(await words()).not.toContain('as it was forecast')
})

test('what was looked at as a swarm, and came in as cut out of a wall, bears a mark', async () => {
  saved({ ...swarmAt('On a branch'), decision: { ...GO, ...placeOf(swarmAt('On a branch')) } })
  expect((await work({ now: 'openedAt' })).status).toBe(303)
  expect((await work({ openedAt: '08:00', now: 'boxedAt' })).status).toBe(303)
  const box = { ...INTAKE, id: ID, on: DAY, 'removal.removedOn': DAY, 'removal.type': 'wall' }
  expect((await yard.post('/intake', box)).status).toBe(303)
  expect(sheet().work.withoutGo?.unmet).toEqual(['Came in as “wall”; its “go” was for a swarm'])
  expect(await words()).toContain('Begun without a “go”')
})

test('and a swarm that came in as one bears none', async () => {
  saved({ ...swarmAt('On a branch'), decision: { ...GO, ...placeOf(swarmAt('On a branch')) } })
  expect((await work({ openedAt: '08:00', boxedAt: '08:00' })).status).toBe(303)
  const box = { ...INTAKE, id: ID, on: DAY, 'removal.removedOn': DAY, 'removal.type': 'swarm' }
  expect((await yard.post(`${PATH}/intake`, box)).status).toBe(303)
  expect(sheet().work.withoutGo).toBeUndefined()
})
