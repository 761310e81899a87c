/** A forecast is of hours that are still to come, and of the day it was looked at for. Invented. */
import { beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { emptied, oneSheet } from './one-sheet.ts'
import { DAY, READY, TAPPED } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000011'
const NEXT = '2026-06-13'
let yard: Yard
const { last, sheet, post, formOf, words } = oneSheet(() => yard, ID)
const HOURS = Object.fromEntries(
  [
    ['06:00', '64'],
    ['09:00', '75'],
    ['12:00', '85'],
    ['15:00', '91'],
  ].flatMap(([at = '', c = ''], i) => [
    [`hours.${i}.at`, at],
    [`hours.${i}.c`, c],
  ]),
)
const { hottestC: _, ...ANSWERS } = TAPPED
const decide = (day: string, fields: Record<string, string | string[]>) =>
  post('check', { shownOn: day, on: day, ...ANSWERS, ...fields })

beforeAll(async () => {
  yard = await yardOn(DAY)
})
beforeEach(() => {
  emptied(yard)
  const { on: _o, hours: _h, from: _f, until: _u, ...check } = READY.check
  const stamp = { savedAt: `${DAY}T06:00:00.000Z`, savedBy: 'Ines' }
  expect(yard.store.removals.save(ID, 0, { ...READY, check }, stamp).ok).toBe(true)
})

describe('hours that are over', () => {
  const morning = { ...HOURS, from: '06:00', until: '12:00' }

  test('are none of the afternoon: until when do you work now?', async () => {
    yard.setDay(DAY, '14:30')
    const answer = await decide(DAY, morning)
    expect(answer.status).toBe(422)
    expect(wordsOf(answer.text)).toContain('Work until 12:00 is over: until when do you work now?')
    expect(sheet().decision).toBeUndefined()
    // The sheet says itself what comes.
    expect((await decide(DAY, { ...morning, until: '16:00' })).status).toBe(422)
    expect(await words()).toContain('over the limit')
  })

  test('count until they are over', async () => {
    yard.setDay(DAY, '12:00')
    expect((await decide(DAY, morning)).status).toBe(303)
  })

  test('without an end they end with the last that was typed', async () => {
    yard.setDay(DAY, '17:00')
    expect((await decide(DAY, { ...HOURS, 'hours.3.c': '80', hottestC: '85' })).status).toBe(422)
    expect((await decide(DAY, { hottestC: '85' })).status).toBe(303)
  })

  test('the hour that stands when they begin counts, though it was typed of a little before', async () => {
    yard.setDay(DAY, '16:00')
    const late = { ...HOURS, 'hours.4.at': '18:00', 'hours.4.c': '80', from: '15:30', until: '18:00' }
    const answer = await decide(DAY, late)
    expect(answer.status).toBe(422)
    expect(wordsOf(answer.text)).toContain('at 15:00, over the limit')
  })

  test('nothing is opened after them on the go of before', async () => {
    yard.setDay(DAY, '11:50')
    expect((await decide(DAY, morning)).status).toBe(303)
    yard.setDay(DAY, '13:30')
    const opened = await post('work', { on: DAY, outdoorC: '84', water: 'yes', now: 'openedAt' })
    expect(opened.status).toBe(422)
    expect(wordsOf(opened.text)).toContain('Work until 12:00 is over')
    expect(sheet().work.openedAt).toBeUndefined()
  })

  test('what was opened in time is not stopped by them', async () => {
    yard.setDay(DAY, '11:50')
    expect((await decide(DAY, morning)).status).toBe(303)
    expect((await post('work', { on: DAY, outdoorC: '84', water: 'yes', now: 'openedAt' })).status).toBe(303)
    yard.setDay(DAY, '14:30')
    const boxed = { on: DAY, outdoorC: '84', water: 'yes', openedAt: '11:50', now: 'boxedAt' }
    expect((await post('work', boxed)).status).toBe(303)
    expect(sheet().work.withoutGo).toBeUndefined()
  })
})

describe('the hours of yesterday', () => {
  const morning = { ...HOURS, from: '06:00', until: '12:00' }
  beforeEach(async () => {
    yard.setDay(DAY, '08:00')
    expect((await decide(DAY, morning)).status).toBe(303)
    yard.setDay(NEXT, '08:00')
    const { decision: _d, ...put } = sheet()
    const again = { ...put, job: { ...put.job, plannedOn: NEXT } }
    const stamp = { savedAt: `${NEXT}T08:00:00.000Z`, savedBy: 'Ines' }
    expect(yard.store.removals.save(ID, last()?.version ?? 0, again, stamp).ok).toBe(true)
  })

  test('come blank with their day', async () => {
    const shown = await formOf('check')
    for (const name of ['on', 'from', 'until', 'hottestC', 'hours.0.c', 'hours.3.c'])
      expect(shown[name], name).toEqual([''])
  })

  test('do not become those of today by a blank day', async () => {
    const answer = await decide(NEXT, { ...morning, on: '' })
    expect(answer.status).toBe(422)
    expect(sheet().check.on).toBe(DAY)
    expect(sheet().decision).toBeUndefined()
    expect((await decide(NEXT, { ...morning, on: '', 'hours.1.c': '76' })).status).toBe(303)
    expect(sheet().check.on).toBe(NEXT)
  })
})
