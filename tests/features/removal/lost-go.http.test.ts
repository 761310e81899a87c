/**
 * What is first said of bees rests on a “go” of that day that still stands, or on a reason; and the hours of ticks run from the
 * first tap (three hours, judgement). One person in haste, over the app as it is. Invented.
 */
import { beforeEach, describe, expect, test } from 'vitest'
import { INTAKE, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { type Fields, oneSheet } from './one-sheet.ts'
import { DAY, goAt, READY, TAPPED } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000009'
const OTHER = ID.replace(/9$/, '8')
const PATH = `/removals/${ID}`
const NEXT = '2026-06-13'
let yard: Yard
const { sheet, saved, post, words } = oneSheet(() => yard, ID)
const work = (fields: Fields) => post('work', { on: DAY, outdoorC: '75', water: 'yes', ...fields })
const check = (fields: Fields) =>
  post('check', {
    shownOn: DAY,
    on: DAY,
    ...TAPPED,
    ...fields,
  })
/** Gas comes onto the sheet, as somebody sees it behind the comb. */
const gas = (): void => {
  const { decision, ...s } = sheet()
  if (decision === undefined) throw new Error('no decision')
  const fell = { by: 'Ines', on: DAY, at: '10:00' }
  saved({ ...s, site: { ...s.site, behind: ['insulation', 'gas'] }, decision: { ...decision, fell } })
}
const field = (html: string, name: string): string | undefined =>
  html
    .match(/<input[^>]*>/g)
    ?.find((x) => x.includes(`name="${name}"`))
    ?.match(/value="([^"]*)"/)?.[1]
const box = { ...INTAKE, id: ID, on: DAY, 'removal.removedOn': DAY }
const second = { ...box, id: OTHER, colony: 'W-13', stand: '5' }
const plain = { ...INTAKE, id: OTHER, 'removal.type': 'wall', 'removal.site': '' }

beforeEach(async () => {
  yard = await yardOn(DAY)
  const decision = goAt('06:10')
  saved({ ...READY, check: { ...READY.check, tickedAt: '06:10' }, decision })
})

describe('opened under a go that fell', () => {
  beforeEach(async () => {
    yard.setDay(DAY, '08:00')
    expect((await work({ now: 'openedAt' })).status).toBe(303)
  })

  test('the intake is asked at the work first, and one that came all the same is kept and marked', async () => {
    gas()
    expect((await yard.get(`${PATH}/intake`)).to).toBe(`${PATH}/work#now`)
    expect((await yard.post('/intake', box)).status).toBe(303)
    expect(yard.store.removals.get(ID)?.colonies).toEqual([ID])
    expect(sheet().work.withoutGo).toMatchObject({ why: 'unsaid', by: 'Ines', on: DAY })
    expect(sheet().work.withoutGo?.unmet.join()).toContain('gas pipe cleared')
    expect(await words()).toContain('nobody has said why it was done all the same')
  })

  test('one that nothing fell under is logged with no mark', async () => {
    expect((await yard.post('/intake', box)).status).toBe(303)
    expect(sheet().work.withoutGo).toBeUndefined()
  })

  test('another box of the day asks why; with no answer it is kept and marked', async () => {
    expect((await work({ openedAt: '08:00', now: 'boxedAt' })).status).toBe(303)
    expect((await yard.post('/intake', box)).status).toBe(303)
    gas()
    expect((await yard.get(`${PATH}/intake`)).text).toContain('name="withoutGo.why"')
    expect((await yard.post(`${PATH}/intake`, second)).status).toBe(303)
    expect(yard.store.removals.get(ID)?.colonies).toHaveLength(2)
    const mark = sheet().work.withoutGo
    expect(mark?.why).toBe('unsaid')
    expect(mark?.unmet.join(' ')).toMatch(/gas/i)
  })

  test('another box with a reason keeps the reason', async () => {
    expect((await work({ openedAt: '08:00', now: 'boxedAt' })).status).toBe(303)
    expect((await yard.post('/intake', box)).status).toBe(303)
    gas()
    const said = { ...second, 'withoutGo.why': 'could-not-wait', 'withoutGo.words': 'boards down' }
    expect((await yard.post(`${PATH}/intake`, said)).status).toBe(303)
    expect(sheet().work.withoutGo).toMatchObject({ why: 'could-not-wait', words: 'boards down' })
  })

  test('hotter than the limit while it is open, the go falls and “Boxed” asks', async () => {
    yard.setDay(DAY, '16:00')
    expect((await work({ openedAt: '08:00', outdoorC: '104' })).status).toBe(303)
    expect(sheet().decision?.fell).toBeDefined()
    const page = await words(`${PATH}/work`)
    expect(page).toContain('No go any more')
    expect(page).not.toContain('with nothing on the list unmet')
    expect(page).toContain('over the limit')
    expect((await work({ openedAt: '08:00', outdoorC: '104', now: 'boxedAt' })).status).toBe(422)
  })

  test('both in one form asks too', async () => {
    yard.setDay(DAY, '16:00')
    expect((await work({ openedAt: '08:00', outdoorC: '104', now: 'boxedAt' })).status).toBe(422)
  })

  test.each([
    ['dead bees', { deadBeesKg: '0.2' }],
    ['the way', { onTheWay: ['vent'] }],
    ['hours in the box', { boxHours: '2' }],
    ['comb out', { cleaned: 'all' }],
  ])('on the next day, not boxed, %s asks on which day', async (_, fields) => {
    yard.setDay(NEXT, '18:00')
    const answer = await work({ openedAt: '08:00', ...fields })
    expect(answer.status).toBe(422)
    expect(answer.text).toContain('value="that-day"')
  })

  describe('and boxed', () => {
    beforeEach(async () => {
      expect((await work({ openedAt: '08:00', now: 'boxedAt' })).status).toBe(303)
    })
    const stood = { openedAt: '08:00', boxedAt: '08:00' }

    test.each([
      ['comb', { cleaned: 'all' }],
      ['the queen', { queen: 'caged' }],
      ['bees', { 'bees.frames': '8' }],
      ['another hour of the box', { boxedAt: '08:40' }],
    ])('%s of a later day asks on which day', async (_, fields) => {
      yard.setDay('2026-06-20', '09:00')
      const answer = await work({ ...stood, ...fields })
      expect(answer.status).toBe(422)
      expect(answer.text).toContain('value="that-day"')
      expect((await work({ ...stood, ...fields, 'withoutGo.why': 'that-day' })).status).toBe(303)
      expect(sheet().work.withoutGo).toBeUndefined()
    })

    test('hours after the first box, of a later day, is no word on that day but a reason', async () => {
      yard.setDay('2026-06-20', '09:00')
      const later = { ...stood, boxedAt: '11:30', cleaned: 'all' }
      expect((await work(later)).status).toBe(422)
      expect((await work({ ...later, 'withoutGo.why': 'that-day' })).status).toBe(422)
      expect((await work({ ...later, 'withoutGo.why': 'could-not-wait' })).status).toBe(303)
      expect(sheet().work.withoutGo).toMatchObject({ why: 'could-not-wait', on: '2026-06-20' })
    })

    test('closing up and what was left on a later day is no cutting', async () => {
      yard.setDay(NEXT, '09:00')
      expect((await work({ ...stood, sealed: 'yes', closedUp: ['void'] })).status).toBe(303)
    })

    test('boxed once more hours later is begun anew', async () => {
      yard.setDay(DAY, '16:00')
      expect((await work({ ...stood, now: 'boxedAt' })).status).toBe(422)
      expect((await work({ ...stood, boxedAt: '08:40' })).status, 'put right').toBe(303)
    })

    test('a second opening that is refused leaves the first one as it was', async () => {
      const { underGo } = sheet().work
      yard.setDay(DAY, '16:00')
      expect((await work({ ...stood, now: 'openedAt' })).status).toBe(422)
      expect(sheet().work).toMatchObject({ openedAt: '08:00', boxedAt: '08:00', on: DAY, underGo })
    })

    test('another box on the next day asks of which opening it is', async () => {
      expect((await yard.post('/intake', box)).status).toBe(303)
      yard.setDay(NEXT, '16:00')
      expect((await yard.post(`${PATH}/intake`, { ...second, on: NEXT })).status).toBe(422)
      const said = { ...second, on: NEXT, thatOpening: 'yes' }
      expect((await yard.post(`${PATH}/intake`, said)).status).toBe(303)
    })

    test('a plain intake of that house on a later day: cut out again has a sheet of its own', async () => {
      expect((await yard.post('/intake', box)).status).toBe(303)
      yard.setDay('2026-06-20', '16:00')
      const again = {
        ...plain,
        colony: 'W-13',
        stand: '5',
        on: '2026-06-20',
        'removal.removedOn': '2026-06-20',
        'removal.site': 'Ottoline Fairweather, 4 Invented Row',
      }
      const asked = await yard.post('/intake', again)
      expect(asked.status).toBe(422)
      expect(wordsOf(asked.text)).toContain('cut out again has a call, looks and a sheet of its own')
      const swarm = { ...again, 'removal.type': 'swarm' }
      expect((await yard.post('/intake', swarm)).status, 'a swarm is cut out of nothing').toBe(303)
    })
  })
})

describe('planned and not begun', () => {
  test('on the next day the form says today', async () => {
    yard.setDay(NEXT, '09:00')
    expect(field((await yard.get(`${PATH}/work`)).text, 'on')).toBe(NEXT)
  })

  test('hours of yesterday, written by hand, ask on which day it was', async () => {
    yard.setDay(NEXT, '09:00')
    const hand = { openedAt: '08:30', boxedAt: '08:50' }
    const asked = await work(hand)
    expect(asked.status).toBe(422)
    expect(asked.text).toContain('value="that-day"')
    expect(sheet().work.underGo).toBeUndefined()
    expect((await work({ ...hand, 'withoutGo.why': 'that-day' })).status).toBe(303)
    expect(sheet().work.withoutGo).toBeUndefined()
  })

  test.each([
    ['put off', false],
    ['opened, and not boxed', true],
  ])('a job that was %s may be where bees of the next day come from', async (_, opened) => {
    yard.setDay(DAY, '08:00')
    if (opened) expect((await work({ now: 'openedAt' })).status).toBe(303)
    yard.setDay(NEXT, '16:00')
    const next = { ...plain, on: NEXT, 'removal.removedOn': NEXT }
    expect((await yard.post('/intake', next)).status).toBe(422)
    expect((await yard.post('/intake', { ...next, otherJob: 'yes' })).status).toBe(303)
  })

  test('a roof of its day may be the wall, tapped wrong', async () => {
    const roof = { ...plain, on: DAY, 'removal.removedOn': DAY, 'removal.type': 'roof' }
    expect((await yard.post('/intake', roof)).status).toBe(422)
  })
})

describe('the hours of ticks', () => {
  test('run from the first tap, however often “Go” is tapped over it', async () => {
    yard.setDay(DAY, '09:05')
    expect((await check({ shownAt: '09:05' })).status).toBe(303)
    expect(sheet().check.tickedAt).toBe('06:10')
    expect((await work({ now: 'openedAt' })).status, 'not three hours yet').toBe(303)
  })

  test('have run out at ten past nine, and come back to be tapped again', async () => {
    yard.setDay(DAY, '09:05')
    expect((await check({ shownAt: '09:05' })).status).toBe(303)
    yard.setDay(DAY, '09:30')
    expect((await work({ now: 'openedAt' })).status).toBe(422)
    const again = await check({ shownAt: '09:05' })
    expect(again.status).toBe(422)
    expect(again.text).not.toMatch(/name="done"[^>]*checked/)
    // Shown blank, tapped anew: that is a look.
    expect((await check({ shownAt: '09:30' })).status).toBe(303)
    expect(sheet().check.tickedAt).toBe('09:30')
    expect((await work({ now: 'openedAt' })).status).toBe(303)
  })

  test('“Arrived” is not taken off, and may be put right', async () => {
    yard.setDay(DAY, '08:40')
    expect((await work({ now: 'arrivedAt' })).status).toBe(303)
    expect((await work({ arrivedAt: '' })).status).toBe(303)
    expect(sheet().work.arrivedAt).toBe('08:40')
    expect((await work({ on: '', arrivedAt: '', now: 'openedAt' })).status).toBe(422)
    expect((await work({ arrivedAt: '08:30' })).status).toBe(303)
    expect(sheet().work.arrivedAt).toBe('08:30')
  })

  test('the temperature of a form that lay open for hours opens nothing', async () => {
    yard.setDay(DAY, '15:00')
    expect((await check({ shownAt: '15:00' })).status).toBe(303)
    const shown = { shownOn: DAY, now: 'openedAt' }
    expect((await work({ ...shown, shownAt: '06:10' })).status).toBe(422)
    expect((await work({ ...shown, shownAt: '14:50' })).status).toBe(303)
  })
})
