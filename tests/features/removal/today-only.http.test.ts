/** What is so today is asked today, and each opening asks anew: yesterday’s “go”, ticks and form open nothing. Invented. */
import { beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { type Yard, yardOn } from '../../support/yard-on.ts'
import { emptied, oneSheet } from './one-sheet.ts'
import { DAY, goAt, READY } from './ready.ts'

const PATH = '/removals/019e0000-0000-7000-8000-000000000009'
const NEXT = '2026-06-13'
let yard: Yard
const { sheet, saved, formOf, save, post, words, go, open, typed } = oneSheet(
  () => yard,
  PATH.slice(10),
  '08:00',
)
beforeAll(async () => {
  yard = await yardOn(DAY)
})
beforeEach(() => {
  emptied(yard)
  saved({ ...READY, decision: goAt() })
})
const why = { 'withoutGo.why': 'could-not-wait' }

test('today “Go” stands, and it is opened', async () => {
  expect((await yard.get(`${PATH}/work`)).text).toContain('value="openedAt"')
  expect((await open()).status).toBe(303)
  expect(sheet().work.openedAt).toBe('12:00')
})

describe('the day after', () => {
  test('nothing is opened on yesterday’s “Go”, and “Go” is not tapped again over yesterday’s ticks', async () => {
    yard.setDay(NEXT)
    expect((await open()).status).toBe(422)
    expect(sheet().work.openedAt).toBeUndefined()
    const again = await go()
    expect(again.status).toBe(422)
    expect(sheet().decision?.on).toBe(DAY)
    expect(again.text).toContain('cannot be “go”')
  })

  test('a form that was open since yesterday does not bring its ticks into today', async () => {
    const stale = await formOf('check')
    expect(stale.done).toContain('sting-plan')
    yard.setDay(NEXT)
    expect((await post('check', { ...stale, on: '', hottestC: '75', is: 'go' })).status).toBe(422)
    expect(sheet().check.done ?? []).toEqual([])
    expect(sheet().decision?.on).toBe(DAY)
  })

  test('work that goes on waits for a “go” of that day, or a reason', async () => {
    await open()
    yard.setDay(NEXT)
    const work = await formOf('work')
    const box = (more: object) => post('work', { ...work, now: 'boxedAt', ...more })
    expect((await box({})).status).toBe(422)
    expect((await box({ 'withoutGo.why': 'open-already' })).status).toBe(303)
    expect(sheet().work).toMatchObject({ boxedAt: '12:00', withoutGo: { on: NEXT } })
  })

  test('boxed by hand on a job that was opened yesterday: on which day is asked', async () => {
    await open()
    yard.setDay(NEXT)
    // What is asked of a day is asked again.
    expect((await yard.get(PATH)).text).toContain('id="unmet"')
    const work = { ...(await formOf('work')), on: DAY, boxedAt: '15:00' }
    const answer = await post('work', work)
    expect(answer.status).toBe(422)
    expect(answer.text).toContain('value="that-day"')
    expect((await post('work', { ...work, 'withoutGo.why': 'that-day' })).status).toBe(303)
    expect(sheet().work.withoutGo).toBeUndefined()
  })
})

describe('each opening asks anew', () => {
  test('a second one under the same sheet, days later', async () => {
    await open()
    await save('work', { now: 'boxedAt' })
    expect(sheet().work).toMatchObject({ on: DAY, boxedAt: '12:00' })
    expect(sheet().work.withoutGo).toBeUndefined()
    yard.setDay('2026-06-18')
    const again = { ...(await formOf('work')), on: '2026-06-18', openedAt: '09:00', boxedAt: '11:00' }
    const answer = await post('work', again)
    expect(answer.status).toBe(422)
    expect(answer.text).toContain('name="withoutGo.why"')
    expect((await post('work', { ...again, ...why })).status).toBe(303)
    expect(await words()).toContain('Begun without a “go”')
  })

  test('a second nest on the same day, on the same sheet', async () => {
    await open()
    await save('work', { now: 'boxedAt' })
    expect((await save('site', { where: 'the gable' })).status).toBe(303)
    const answer = await save('work', { openedAt: '12:30', boxedAt: '14:00' })
    expect(answer.status).toBe(422)
    expect(answer.text).toContain('name="withoutGo.why"')
  })

  test('what was opened before it was decided was not opened on that', async () => {
    await go()
    const times = { openedAt: '06:00', boxedAt: '08:00', outdoorC: '75', water: 'yes' }
    expect((await typed(times)).status).toBe(422)
  })
})
