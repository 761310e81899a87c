/** How things are done, for a helper: every page, and the steps folded where an act is advised. */
import { v7 } from 'uuid'
import { expect, it } from 'vitest'
import { ACTS } from '../../../src/words/acts.ts'
import { wordsIn } from '../../../src/words/catalogue.ts'
import { yardOn } from '../../support/yard-on.ts'

const DAY = '2026-06-09'

it.each(['/how', '/how/words', '/how/first-round', ...ACTS.map((act) => `/how/${act}`)])(
  '%s is there for a helper',
  async (path) => {
    const yard = await yardOn(DAY, 'helper')
    const { status, text } = await yard.get(path)
    expect(status).toBe(200)
    expect(text).toContain('<h1>')
    expect(yard.errors).toEqual([])
  },
)

it('there is no act that nobody wrote down', async () => {
  const yard = await yardOn(DAY, 'helper')
  expect((await yard.get('/how/constructor')).status).toBe(404)
})

it('the steps of the first brood check stand at the box, on the round and over the form', async () => {
  const yard = await yardOn(DAY, 'helper')
  // Day 5 without a queen seen: the first brood check is due.
  const intake = {
    id: v7(),
    colony: 'W-07',
    kind: 'intake',
    on: '2026-06-04',
    by: 'Bram',
    yard: 'North field',
  }
  yard.store.append([{ ...intake, removal: { type: 'wall' }, queen: 'unseen' }], {
    today: DAY,
    recordedAt: `${DAY}T08:00:00.000Z`,
  })
  const [, second] = wordsIn('en').steps['first-brood-check'].steps
  for (const path of ['/colony/W-07', '/colony/W-07/visit']) {
    const { text } = await yard.get(path)
    expect(text, path).toContain(second)
  }
  expect((await yard.get('/')).text).toContain('/how/first-brood-check')
})
