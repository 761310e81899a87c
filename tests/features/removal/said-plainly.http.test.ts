/** Sentences that were read twice, or said too much. Invented. */
import { beforeEach, expect, test } from 'vitest'
import { placeOf } from '../../../src/features/removal/place.ts'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { oneSheet } from './one-sheet.ts'
import { DAY, here, READY, TAPPED } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000081'
const OTHER = ID.replace(/81$/, '82')
let yard: Yard
const { saved, save, words } = oneSheet(() => yard, ID, '08:00')
const GO = { is: 'go' as const, by: 'Ines', on: DAY, at: '08:00', unmet: [], ...placeOf(READY) }
const SURE = { ...READY, check: { ...READY.check, tickedAt: '08:00' } }

beforeEach(async () => {
  yard = await yardOn(DAY)
  yard.setDay(DAY, '08:00')
})

test.each(['wait', 'refuse'] as const)('a “%s” says who and why, and nothing of the list', async (is) => {
  saved({ ...READY, decision: { ...GO, is, reason: 'It hisses' } })
  const said = await words()
  expect(said).toContain(`, decided by Ines, Fri 12 Jun 08:00. Reason: It hisses`)
  expect(said).not.toContain('nothing on the list unmet')
})

test('whoever is at another job reads in the head that they do not say “go” here', async () => {
  const job = { ...READY.job, name: 'Quin Sayle', address: '1 Ginger Lane' }
  const there = here({ ...READY, job, work: { on: DAY, openedAt: '08:00' } })
  saved({ ...there, decision: { ...GO, ...placeOf(there) } }, 'Ines', { of: OTHER })
  saved(READY)
  const path = `/removals/${ID}/check`
  const said = await words(path)
  expect(said).toContain('No “go” by you: you are at Quin Sayle')
  expect(said.indexOf('No “go” by you')).toBeLessThan(said.indexOf('Nothing else on this list is unmet'))
  const barred = await save('check', TAPPED)
  expect(barred.status).toBe(422)
  expect(wordsOf(barred.text)).not.toContain('Nothing on this list is unmet')
})

test('too hot to open: the button says what to do, and what was refused comes first', async () => {
  saved({ ...SURE, decision: GO })
  const page = (await save('work', { outdoorC: '97', water: 'yes', now: 'openedAt' })).text
  expect(page).toContain('>Wait for a cooler hour, then open it</button>')
  expect(page).not.toContain('>Open it, now<')
  const form = page.slice(page.indexOf('id="now"'))
  expect(form.indexOf('waits. ')).toBeLessThan(form.indexOf('first-check'))
  expect((await save('work', { outdoorC: '76', water: 'yes', now: 'openedAt' })).status).toBe(303)
})
