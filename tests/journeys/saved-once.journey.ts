/** A wet glove taps twice, a phone goes back and saves again: each entry is in the book once. */
import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { launch, PHONE, type Watched, watchedPage } from '../support/browser.ts'
import { someOf } from '../support/long.ts'
import { press, tapAll, type, words } from '../support/person.ts'
import { type RunningYard, startYard } from '../support/yard.ts'

let browser: Browser
beforeAll(async () => {
  browser = await launch({ keepsPages: true })
})
afterAll(() => browser.close())

const WAYS = [
  { how: 'with scripts', scripts: true },
  { how: 'without scripts', scripts: false },
]

describe.each(someOf(WAYS, 1))('saving twice $how', ({ scripts }) => {
  let yard: RunningYard
  let watched: Watched
  let page: Page
  beforeEach(async () => {
    yard = await startYard({ day: '2026-06-10' })
    watched = await watchedPage(browser, yard.url, PHONE, { scripts })
    page = watched.page
    await page.goto('/intake')
    await type(page, { 'Tag on the box': 'W-4', Yard: 'Long Meadow' })
    await tapAll(page, { 'Kind of removal': 'Swarm', 'The queen': 'Loose' })
  })
  afterEach(async () => {
    expect(watched.noticed).toEqual([])
    expect(yard.errors).toEqual([])
    await watched.context.close()
    await yard.stop()
  })

  const kinds = (): string[] => [...yard.store.journal()].map((r) => r.entry.kind)

  it('a double tap logs one intake', async () => {
    await page.getByRole('button', { name: 'Save and make the plan' }).dblclick()
    await page.getByRole('status').first().waitFor()
    expect(kinds()).toEqual(['intake'])
    expect(await words(page)).toContain('In the book')
  })

  it('going back and saving again changes nothing', async () => {
    await press(page, 'Save and make the plan')
    await page.getByRole('status').first().waitFor()
    await page.goBack({ waitUntil: 'commit' })
    await press(page, 'Save and make the plan')
    await page.getByRole('status').first().waitFor()
    expect(kinds()).toEqual(['intake'])
  })

  it('going back to a saved visit and saving it again leaves one visit', async () => {
    await press(page, 'Save and make the plan')
    await page.goto('/colony/W-4/visit')
    await tapAll(page, { 'The lid': 'Lid stayed on', Stores: 'Enough' })
    await page.getByRole('button', { name: 'Save the visit' }).dblclick()
    await page.getByRole('status').first().waitFor()
    await page.goBack({ waitUntil: 'commit' })
    await press(page, 'Save the visit')
    expect(kinds()).toEqual(['intake', 'inspection'])
  })
})
