/** Bees come of a “go” that stands, or of a reason: whose sheet they are of is asked, and none comes of a place where nothing was begun. Invented. */
import { beforeEach, expect, test } from 'vitest'
import { INTAKE, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { oneSheet } from './one-sheet.ts'
import { DAY, goAt, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000009'
const OTHER = ID.replace(/9$/, '2')
const PATH = `/removals/${ID}`
let yard: Yard
const { saved, save, open, words } = oneSheet(() => yard, ID, '08:00')
const log = (more: object, path = '/intake') => yard.post(path, { ...INTAKE, on: DAY, ...more })
beforeEach(async () => {
  yard = await yardOn(DAY)
  saved({ ...READY, decision: goAt() })
})

test('none of a place where nothing was begun', async () => {
  const answer = await yard.get(`${PATH}/intake`)
  expect([answer.status, answer.to]).toEqual([303, `${PATH}/work#now`])
})

test('nor by whatever form the id of such a sheet is sent', async () => {
  const answer = await log({ id: ID })
  expect([answer.status, answer.to]).toEqual([303, `${PATH}/work#now`])
  expect(yard.store.colony('W-12')).toBeNull()
})

test('those that came of a sheet all the same are marked in the list too', async () => {
  saved(READY, 'Ines', { of: OTHER })
  await log({ otherJob: 'yes' })
  const colony = yard.store.colony('W-12')?.summary.id ?? ''
  yard.store.removals.link(OTHER, colony, { savedAt: `${DAY}T12:00:00.000Z`, savedBy: 'Ines' })
  for (const page of ['/removals', `/removals/${OTHER}`])
    expect(await words(page), page).toContain('Begun without a “go” . Nobody has said why')
})

test('an intake beside its open sheet is not passed by in silence', async () => {
  const shown = await yard.get('/intake')
  expect(wordsOf(shown.text)).toContain('Ottoline Fairweather, 4 Invented Row')
  expect(shown.text).toContain(`href="${PATH}#now"`)
  const today = await log({})
  expect(today.status).toBe(422)
  expect(wordsOf(today.text)).toContain('These bees are of none of the jobs above')
  // Of another kind, or another day: only the place itself gives it away.
  const elsewhere = { on: '2026-06-11', 'removal.removedOn': '2026-06-11', 'removal.type': 'swarm' }
  yard.setDay('2026-06-14')
  expect((await log({ ...elsewhere, 'removal.site': 'at 4, invented row' })).status).toBe(422)
  expect((await log({ ...elsewhere, 'removal.site': 'Miss Ottoline FAIRWEATHER' })).status).toBe(422)
  expect((await log({ ...elsewhere, 'removal.site': '9 Other Lane' })).status).toBe(303)
  expect((await log({ colony: 'W-13', stand: '5', otherJob: 'yes' })).status).toBe(303)
})

test('another box a week later is not of the “go” of this job', async () => {
  await open()
  await save('work', { now: 'boxedAt' })
  const box = (more: object) => log(more, `${PATH}/intake`)
  expect((await box({ 'removal.removedOn': DAY })).status).toBe(303)
  yard.setDay('2026-06-20')
  const later = { on: '2026-06-20', colony: 'W-13', stand: '5' }
  expect((await box({ ...later, 'removal.removedOn': '2026-06-20' })).status).toBe(422)
  const stood = { ...later, 'removal.removedOn': DAY }
  expect((await box(stood)).status, 'of which opening is asked').toBe(422)
  expect((await box({ ...stood, thatOpening: 'yes' })).status, 'left standing for a week').toBe(303)
})
