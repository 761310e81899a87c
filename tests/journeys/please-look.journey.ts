/** A helper asks for another pair of eyes at a box without signal; the operator finds it on Today and answers. */
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { LAPTOP, launch, watchedPage } from '../support/browser.ts'
import { intakes, startField } from '../support/field.ts'
import { sidewaysScroll, violations } from '../support/page-checks.ts'
import { follow, press, tap, tapAll, type, words } from '../support/person.ts'
import { shot } from '../support/shot.ts'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

it('is asked at the box, read on Today, and gone once somebody else has been there', async () => {
  const field = await startField(browser, {
    day: '2026-06-10',
    entries: intakes(['W-01', 'W-02'], '2026-06-04'),
  })
  const { page, wire, yard, sent, stop } = field
  const office = await watchedPage(browser, yard.url, LAPTOP)
  try {
    wire.fate(() => 'cut')
    await page.goto('/colony/W-02/note')
    await type(page, { Note: 'White crumbs on the floor. Chalkbrood?' })
    await tap(page, 'Who should see it?', 'Please look at this')
    expect(await violations(page)).toEqual([])
    expect(await sidewaysScroll(page)).toBe(0)
    await page.screenshot({ path: shot('please-look-phone') })
    await press(page, 'Save the note')
    wire.fate(() => 'pass')
    await page.goto('/')
    await sent()
    expect(await words(page)).not.toContain('Chalkbrood?')

    await office.page.goto('/')
    expect(await words(office.page)).toMatch(/Please look at this W-02 “White crumbs.*signed Teuila/)
    expect(await violations(office.page)).toEqual([])
    await office.page.screenshot({ path: shot('please-look-laptop'), fullPage: true })
    await office.page
      .getByRole('region')
      .or(office.page.locator('section'))
      .filter({ hasText: 'White crumbs' })
      .getByRole('link', { name: /Record the visit/ })
      .click()
    await office.page.waitForLoadState()
    await tapAll(office.page, { 'The lid': 'Opened', Eggs: 'Single' })
    await press(office.page, 'Save the visit')
    await follow(office.page, /Today/)
    expect(await words(office.page)).not.toContain('White crumbs')
    expect(office.noticed).toEqual([])
  } finally {
    await office.context.close()
    await stop()
  }
})
