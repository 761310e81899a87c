/** At the pages: what a paper says, which price it is, and “is it here?” are tapped, each by itself. Invented. */
import { beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'
import { emptied, oneSheet } from './one-sheet.ts'
import { but, DAY, PAPER, PHOTO, READY, read } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000009'
const PATH = `/removals/${ID}`
let yard: Yard
const { sheet, saved, formOf, save, words } = oneSheet(() => yard, ID, '08:00')
beforeAll(async () => {
  yard = await yardOn(DAY)
  await yard.photos.keep(PHOTO)
})
beforeEach(() => emptied(yard))
describe('a clearance', () => {
  const gas = but({ site: { ...READY.site, behind: ['gas'] } })
  const seen = async (): Promise<string> =>
    (await yard.get(PATH)).text.match(/name="seen" value="([^"]*)"/)?.[1] ?? ''
  const clear = (seen: string, says: string) =>
    yard.post(`${PATH}/clear`, {
      hazard: 'gas',
      seen,
      'trade-gas.as': 'gas-fitter',
      'trade-gas.who': 'Edda Brandt',
      'trade-gas.licence': 'ticket 88123',
      'trade-gas.on': DAY,
      'trade-gas.says': says,
      photos: PAPER,
    })
  test('is that the paper says so, and no appointment', async () => {
    saved(gas)
    const page = await words()
    expect(page).toContain('What their paper says of 4 Invented Row, left of the porch')
    expect(page).toContain('Shut off, and proved, that day')
    expect(page).not.toContain('Found some')
    expect((await clear(await seen(), '')).status).toBe(422)
    const arranged = await clear(await seen(), 'not-yet')
    expect(wordsOf(arranged.text)).toContain('What their paper says is “not yet”')
    expect(sheet().check.clearances).toBeUndefined()
    expect((await clear(await seen(), 'clear')).status).toBe(303)
  })
  test('is not of what was written after its form was opened', async () => {
    saved(gas)
    const open = await seen()
    const site = { ...(await formOf('site')), behindNote: 'SECOND gas pipe left of it, hissing' }
    expect((await yard.post(`${PATH}/site`, site)).status).toBe(303)
    expect((await clear(open, 'clear')).status).toBe(422)
    expect((await clear(await seen(), 'clear')).status).toBe(303)
  })
})

describe('the price', () => {
  const { agreement: _, ...unpriced } = READY
  test('is the fixed one where no hours are typed beside the usual rate', async () => {
    saved({ ...unpriced, agreement: {} })
    const site = await formOf('site')
    expect((await yard.post(`${PATH}/site`, { ...site, hourly: '110', fixed: '400' })).status).toBe(303)
    expect(sheet().agreement).toMatchObject({ pricing: 'fixed', fixed: 400 })
  })
  test('of two is named as what is missing, and tapped where it is seen', async () => {
    saved({ ...unpriced, agreement: { hourly: 110, hours: 3, fixed: 400 } })
    const { text } = await yard.get(`${PATH}/sign`)
    expect(wordsOf(text)).toContain('which price: by the hour or fixed')
    expect(text).toContain('/agreement#f-pricing')
    const page = (await yard.get(`${PATH}/agreement`)).text
    expect(page.indexOf('name="pricing"')).toBeGreaterThan(0)
    expect(page.indexOf('name="pricing"')).toBeLessThan(page.indexOf('Deposit, paid, invoice'))
  })
})

test('“is it here?” is no box among those that one wants ticked', async () => {
  saved(read(but({ job: { ...READY.job, told: 'cable on the wall' } })))
  const { text } = await yard.get(`${PATH}/check`)
  expect(text).not.toContain('name="done" value="not-here:electric"')
  expect(text).toContain('name="again.not-here:electric"')
  const post = async (more: Record<string, string>) => save('check', { is: 'go', ...more })
  expect((await post({})).status, 'not tapped').toBe(422)
  expect((await post({ 'again.not-here:electric': 'not' })).status).toBe(303)
  // It stands as it was tapped, and is taken back by the other tap.
  expect((await post({ is: '' })).status).toBe(303)
  expect(sheet().check.done).toContain('not-here:electric')
  expect((await post({ 'again.not-here:electric': 'here' })).status, 'it is here').toBe(422)
  expect(sheet().decision?.fell).toBeDefined()
  expect(sheet().site.behind).toEqual(['insulation', 'electric'])
})
