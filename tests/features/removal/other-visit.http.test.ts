/** Left and come back, a second day, an hour put right, bees logged beside their sheet: none of it is under the “go” of before. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import { readNotes } from '../../../src/features/removal/notes-read.ts'
import { formIn, INTAKE, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { oneSheet } from './one-sheet.ts'
import { DAY, goAt, READY, TAPPED } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000022'
const PATH = `/removals/${ID}`
const NEXT = '2026-06-13'
let yard: Yard
const { sheet, saved, post, words, formOf } = oneSheet(() => yard, ID)
const work = (fields: Record<string, string | string[]>) =>
  post('work', { on: DAY, outdoorC: '75', water: 'yes', ...fields })
const decide = () => post('check', { shownOn: DAY, on: DAY, ...TAPPED })

beforeEach(async () => {
  yard = await yardOn(DAY)
  yard.setDay(DAY, '08:00')
  saved({
    ...READY,
    check: { ...READY.check, tickedAt: '08:00' },
    decision: goAt('08:00'),
  })
})

describe('left with nothing begun, and come back', () => {
  beforeEach(async () => {
    expect((await work({ arrivedAt: '08:05', leftAt: '08:10' })).status).toBe(303)
    yard.setDay(DAY, '10:50')
  })
  const there = { arrivedAt: '08:05', leftAt: '08:10' }

  test('the go is of the visit before', async () => {
    expect(await words()).toContain('Left at 08:10, and the go of 08:00 is of before')
    expect((await work({ ...there, now: 'openedAt' })).status).toBe(422)
    expect((await work({ ...there, openedAt: '10:45' })).status).toBe(422)
    expect(sheet().work.openedAt).toBeUndefined()
  })

  test('looked at again it is a go of now', async () => {
    const shown = (await yard.get(`${PATH}/check`)).text
    expect(formIn(shown).done ?? []).toEqual([])
    expect((await decide()).status).toBe(303)
    expect((await work({ ...there, outdoorC: '76', now: 'openedAt' })).status).toBe(303)
  })

  test('what was opened before is written down as it was', async () => {
    expect((await work({ ...there, openedAt: '08:06' })).status).toBe(303)
    expect(sheet().work.underGo).toBeDefined()
  })
})

test('“Left” in the form in which all of it is written down holds nothing', async () => {
  yard.setDay(DAY, '10:30')
  expect((await work({ queen: 'caged', leftAt: '10:20' })).status).toBe(303)
  expect(sheet().work.withoutGo).toBeUndefined()
})

test('to have looked for wires at six is a look of six, whatever is ticked at nine', async () => {
  const { done: _, is: __, ...seen } = TAPPED
  yard.setDay(DAY, '06:10')
  saved({ ...sheet(), check: { ...READY.check, done: [], doneOn: '2026-06-11' } })
  const first = await formOf('check')
  expect((await yard.post(`${PATH}/check`, { ...first, ...seen })).status).toBe(303)
  yard.setDay(DAY, '09:05')
  const again = await formOf('check')
  expect(again.wires).toEqual(['none'])
  expect((await yard.post(`${PATH}/check`, { ...again, ...TAPPED })).status).toBe(303)
  yard.setDay(DAY, '12:00')
  expect(await words()).toContain('has run out')
  expect((await work({ now: 'openedAt' })).status).toBe(422)
})

test('an hour that is put right to before anybody had decided asks why', async () => {
  expect((await work({ now: 'openedAt' })).status).toBe(303)
  yard.setDay(DAY, '09:00')
  expect((await work({ openedAt: '06:00' })).status).toBe(422)
  expect((await work({ openedAt: '06:00', 'withoutGo.why': 'could-not-wait' })).status).toBe(303)
  expect(sheet().work.withoutGo).toMatchObject({ why: 'could-not-wait' })
  // Once; and a minute later is none.
  expect((await work({ openedAt: '06:05' })).status).toBe(303)
})

describe('the second day of a job that bears a mark', () => {
  beforeEach(async () => {
    const { decision: _, ...rest } = sheet()
    saved(rest)
    expect((await work({ openedAt: '08:00', 'withoutGo.why': 'open-already' })).status).toBe(303)
    yard.setDay(NEXT, '15:00')
  })
  const more = { openedAt: '08:00', queen: 'caged', cleaned: 'all' }

  test('is answered for by itself, once', async () => {
    expect((await work(more)).status).toBe(422)
    expect((await work({ ...more, 'withoutGo.why': 'could-not-wait' })).status).toBe(303)
    const mark = sheet().work.withoutGo
    expect(mark).toMatchObject({ why: 'open-already', on: DAY })
    expect(mark?.unmet.at(-1)).toMatch(/^Gone on with on 2026-06-13.*It could not wait; Ines, 2026-06-13/)
    expect((await work({ ...more, 'bees.frames': '8' })).status).toBe(303)
    expect((await work({ ...more, now: 'boxedAt' })).status).toBe(303)
  })
})

describe('bees logged beside their sheet', () => {
  const box = { ...INTAKE, on: DAY, 'removal.removedOn': DAY, 'removal.type': 'wall' }
  const asked = async (fields = {}): Promise<boolean> => {
    const answer = await yard.post('/intake', { ...box, ...fields })
    return answer.status === 422 && wordsOf(answer.text).includes('From which job')
  }

  test.each([
    ['refused', { decision: { is: 'refuse' as const, by: 'Bram', on: DAY, reason: 'gas', unmet: [] } }],
    ['ended', { ended: { on: DAY, why: 'gas' } }],
  ])('of a job that was %s are asked about by its name and on its day', async (_, over) => {
    const { decision: __, ...rest } = READY
    saved({ ...rest, ...over })
    expect(await asked()).toBe(true)
    expect(await asked({ 'removal.type': 'swarm' })).toBe(false)
    expect(
      await asked({
        colony: 'W-14',
        stand: '6',
        'removal.type': 'swarm',
        'removal.site': 'Ottoline Fairweather, 4 Invented Row',
      }),
    ).toBe(true)
  })
})

describe('opened, left, and come back on the same day', () => {
  const TOLD = 'Grandma cannot breathe after a sting'
  const there = { openedAt: '08:05', leftAt: '08:10' }
  beforeEach(async () => {
    expect((await work({ now: 'openedAt' })).status).toBe(303)
    yard.setDay(DAY, '08:10')
    expect((await work({ ...there })).status).toBe(303)
    const { job, ...s } = sheet()
    saved({ ...s, job: { ...job, told: TOLD } })
    yard.setDay(DAY, '10:50')
  })

  test('ticks, notes and the hour are asked again, and a “go” of now goes for the rest of the day', async () => {
    expect(await words()).toContain('Left at 08:10, and the go of 08:00 is of before')
    const shown = (await yard.get(`${PATH}/check`)).text
    expect(formIn(shown).done ?? []).toEqual([])
    expect(wordsOf(shown)).toContain(`Read: all it says of danger is tapped “${TOLD}”`)
    const barred = await work({ ...there, now: 'boxedAt' })
    expect(barred.status).toBe(422)
    expect(wordsOf(barred.text)).toContain('left at 08:10, and no “go” since')
    expect((await decide()).status).toBe(422)
    const read = { ...TAPPED, done: [...TAPPED.done, readNotes(sheet())] }
    expect((await post('check', { shownOn: DAY, on: DAY, ...read })).status).toBe(303)
    expect((await work({ visit: '2', outdoorC: '76', now: 'openedAt' })).status).toBe(303)
    yard.setDay(DAY, '15:00')
    expect((await work({ visit: '2', openedAt: '10:50', outdoorC: '76', now: 'boxedAt' })).status).toBe(303)
    expect(sheet().work.withoutGo).toBeUndefined()
  })

  test('boxed with no look, it is kept with a reason', async () => {
    const now = { ...there, now: 'boxedAt', 'withoutGo.why': 'could-not-wait' }
    expect((await work(now)).status).toBe(303)
    expect(sheet().work).toMatchObject({ boxedAt: '10:50', withoutGo: { why: 'could-not-wait' } })
  })

  test.each(['08:08', '08:10'])('what was boxed at %s is written down afterwards', async (boxedAt) => {
    expect((await work({ ...there, boxedAt })).status).toBe(303)
    expect(sheet().work).toMatchObject({ boxedAt })
    expect(sheet().work.withoutGo).toBeUndefined()
  })

  test('what is noted as somebody leaves takes no “go” from what was done', async () => {
    const { decision } = sheet()
    yard.setDay(DAY, '09:00')
    saved({ ...sheet(), work: { on: DAY, outdoorC: 24, water: true } })
    const noted = { openedAt: '08:05', leftAt: '08:50', note: 'Boards are loose' }
    saved({ ...sheet(), job: READY.job })
    expect((await work(noted)).status).toBe(303)
    expect(sheet().work.withoutGo).toBeUndefined()
    expect((await work({ ...noted, note: 'Boards are very loose' })).status).toBe(303)
    expect(sheet().decision).toEqual(decision)
    expect((await work({ ...noted, boxedAt: '08:45' })).status).toBe(303)
    expect(sheet().work.withoutGo).toBeUndefined()
  })

  test('left after the box, it is over', async () => {
    expect((await work({ ...there, boxedAt: '08:10', leftAt: '08:30' })).status).toBe(303)
    expect((await work({ ...there, boxedAt: '08:10', leftAt: '08:30', queen: 'caged' })).status).toBe(303)
  })
})

describe('opened, left, and gone on with on the next day', () => {
  const TOLD = 'Grandma cannot breathe after a sting'
  const goNext = async (...more: string[]) => {
    const at = { shownOn: NEXT, on: NEXT, ...TAPPED }
    return post('check', { ...at, done: [...TAPPED.done, ...more] })
  }
  beforeEach(async () => {
    expect((await work({ now: 'openedAt' })).status).toBe(303)
    yard.setDay(DAY, '18:00')
    const { job, ...s } = sheet()
    saved({ ...s, job: { ...job, told: TOLD } })
  })

  test('what was told in the evening stops nobody who is at it then', async () => {
    expect((await post('work', { now: 'boxedAt' })).status).toBe(303)
  })

  test('what was told in the evening is read before the “go” of the next day', async () => {
    yard.setDay(NEXT, '08:00')
    expect(await words(`${PATH}/check`)).toContain(`Read: all it says of danger is tapped “${TOLD}”`)
    expect((await goNext()).status).toBe(422)
    expect((await goNext(readNotes(sheet()))).status).toBe(303)
  })
})
