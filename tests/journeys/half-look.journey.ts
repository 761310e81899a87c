/** Half a look on the phone, on day 11: the panel, Today, the colony and the round all say what is missing; the box stays late. */
import { afterAll, beforeAll, expect, it } from 'vitest'
import { launch, PHONE, type Watched, watchedPage } from '../support/browser.ts'
import { sidewaysScroll, smallTargets, violations } from '../support/page-checks.ts'
import { follow, press, read, tapAll, type, unfold, words } from '../support/person.ts'
import { type RunningYard, startYard } from '../support/yard.ts'

const IN = '2026-05-01'
const DAY_11 = '2026-05-12'
const MISSING = 'You have not said whether there are queen cells: that decides it.'

let yard: RunningYard
let browser: Awaited<ReturnType<typeof launch>>
beforeAll(async () => {
  yard = await startYard({ day: IN })
  browser = await launch()
})
afterAll(async () => {
  await browser.close()
  expect(yard.errors).toEqual([])
  await yard.stop()
})

async function holds({ page, noticed }: Watched): Promise<void> {
  expect(await violations(page)).toEqual([])
  expect(await smallTargets(page, 48)).toEqual([])
  expect(await sidewaysScroll(page)).toBe(0)
  expect(noticed).toEqual([])
}

it('half a look on the phone', async () => {
  const watched = await watchedPage(browser, yard.url, PHONE)
  const { page, context } = watched
  await page.goto('/intake')
  await type(page, { 'Tag on the box': 'W-12', Stand: '4', Yard: 'North field' })
  await tapAll(page, {
    'Kind of removal': 'Wall',
    'The queen': 'Not seen',
    'With eggs': '½',
    'With open brood': '1',
    'With capped brood': '1',
  })
  await press(page, 'Save and make the plan')

  yard.setDay(DAY_11)
  await page.goto('/')
  expect(await words(page)).toContain('1 colony to see to, 1 late.')
  await follow(page, 'Walk the round')
  await follow(page, /^Start with W-12/)
  await follow(page, 'Record the visit')
  // The lid is off: eggs none, no young brood, and nobody has looked for cells.
  await tapAll(page, { Eggs: 'None', 'Open brood': 'None' })
  const panel = page.locator('#live')
  await unfold(page, 'Do this now')
  expect(await read(panel)).toContain(MISSING)
  expect(await read(page.locator('#live-do'))).toBe('Look for queen cells')
  await holds(watched)
  await press(page, 'Save the visit')

  // The box on the round.
  expect(await words(page)).toContain(MISSING)
  expect(await words(page)).toMatch(/late .*days, since Fri 8 May/)
  await holds(watched)
  await page.goto('/round?yard=')
  expect(await words(page)).toContain('late: half a look')
  expect(await words(page)).toContain('1 of 1, 1 late')
  await holds(watched)
  await page.goto('/')
  expect(await words(page)).toContain('1 colony to see to, 1 late.')
  expect(await words(page)).toMatch(/half a look/)
  await unfold(page, 'W-12')
  expect(await words(page)).toContain(MISSING)
  await holds(watched)
  await page.goto('/colony/W-12')
  expect(await words(page)).toContain(MISSING)
  await holds(watched)

  // The next morning it is late still. Then the other half: the cells are there, and nothing is missing.
  yard.setDay('2026-05-13')
  await page.goto('/')
  expect(await words(page)).toContain('1 colony to see to, 1 late.')
  expect(await words(page)).toMatch(/half a look/)
  await unfold(page, 'W-12')
  expect(await words(page)).toContain(MISSING)
  await page.goto('/colony/W-12/visit')
  await tapAll(page, { Eggs: 'None', 'Queen cells': 'Capped' })
  await unfold(page, 'Do this now')
  expect(await read(panel)).not.toContain('You have not said')
  await press(page, 'Save the visit')
  expect(await words(page)).not.toContain('You have not said')
  await page.goto('/')
  expect(await words(page)).toContain('Nothing to do today.')
  await context.close()
})
