/** What is noted on the form of the box is said in the house too: nobody at the wall tells one form from the other. Invented. */
import { beforeEach, expect, test } from 'vitest'
import { type Yard, yardOn } from '../../support/yard-on.ts'
import { oneSheet } from './one-sheet.ts'
import { DAY, goAt, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000081'
const OTHER = ID.replace(/1$/, '2')
const NOTE = 'Hums behind the second comb, and a tingle off it'
let yard: Yard
const { saved, words } = oneSheet(() => yard, ID, '07:00')

beforeEach(async () => {
  yard = await yardOn(DAY)
  yard.setDay(DAY, '12:00')
  const on = { by: 'Ines', on: DAY, at: '08:00' }
  const work = { on: DAY, openedAt: '08:10', boxedAt: '11:30', underGo: on }
  saved({ ...READY, work, decision: goAt('08:00') })
  const made = await yard.post('/intake', {
    id: ID,
    on: DAY,
    colony: 'W-1',
    yard: 'Quarry yard',
    'removal.type': 'wall',
    queen: 'unseen',
    note: NOTE,
  })
  expect(made.status).toBe(303)
})

test('it stands in the head for whoever closes up', async () => {
  expect(await words(`/removals/${ID}`)).toContain(`Written with the box: “${NOTE}”`)
})

test('it is read on the next sheet of that house before “go”', async () => {
  saved(READY, 'Bram', { of: OTHER })
  expect(await words(`/removals/${OTHER}/check`)).toContain(`“${NOTE}”`)
})
