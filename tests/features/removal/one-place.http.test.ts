/** What was seen is of one place: after another wall or another address it is looked for, asked and ticked again. Invented. */
import { beforeAll, beforeEach, expect, test } from 'vitest'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { emptied, oneSheet } from './one-sheet.ts'
import { DAY, goAt, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000009'
let yard: Yard
const { sheet, saved, formOf, save, post, go } = oneSheet(() => yard, ID, '08:00')
beforeAll(async () => {
  yard = await yardOn(DAY)
})
beforeEach(() => {
  emptied(yard)
  saved({ ...READY, decision: goAt() })
})

test('“Looked: none” does not go along to another wall: it is asked again, on the form of that wall', async () => {
  const site = await formOf('site')
  expect(site.behind).toEqual(['insulation'])
  // The wall is changed with all that stood in the form; then the answers that were given of the old one are tapped again.
  expect((await post('site', { ...site, where: 'the north wall' })).status).toBe(303)
  const shown = await formOf('site')
  expect([shown.behind, shown.hazards]).toEqual([undefined, undefined])
  const answer = await go()
  expect(answer.status).toBe(422)
  expect(wordsOf(answer.text)).toContain('nobody has looked since')
  expect((await yard.get(`/removals/${ID}/work`)).text).not.toContain('value="openedAt"')
  await post('site', { ...shown, behind: ['insulation'], hazards: 'none-new' })
  // What was ticked at the other wall is not ticked at this one.
  expect((await formOf('check')).done).toBeUndefined()
  expect((await go()).status).toBe(422)
  expect((await go({ done: READY.check.done ?? [], wires: 'none' })).status).toBe(303)
  expect(sheet().decision).toMatchObject({ by: 'Ines', where: 'the north wall' })
})

test('another address: who is about is asked there too', async () => {
  expect((await formOf('job')).bystanders).toEqual(['none'])
  expect((await save('job', { address: '9 Other Lane' })).status).toBe(303)
  expect((await formOf('job')).bystanders).toBeUndefined()
  const answer = await go()
  expect(answer.status).toBe(422)
  expect(wordsOf(answer.text)).toContain('asked of another address')
})
