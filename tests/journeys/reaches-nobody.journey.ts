/** Gas that was found without signal, on a phone whose session has ended: said on the phone’s pages, the server’s and the sign-in page. */
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { DAY, READY } from '../features/removal/ready.ts'
import { launch } from '../support/browser.ts'
import { phoneIn } from '../support/field.ts'
import { sidewaysScroll, violations } from '../support/page-checks.ts'
import { tap, words } from '../support/person.ts'
import { startYard } from '../support/yard.ts'

const ID = '019e0000-0000-7000-8000-000000000072'
const KILLS = 'Something that can kill waits here and reaches nobody: gas pipe. Bram signs in on this phone'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

it('gas that waits for a sign-in cannot be overlooked on that phone', async () => {
  const yard = await startYard({ day: DAY })
  expect(
    yard.store.removals.save(ID, 0, READY, { savedAt: `${DAY}T05:00:00.000Z`, savedBy: 'Ines' }).ok,
  ).toBe(true)
  const phone = await phoneIn(yard, browser, { role: 'beekeeper', name: 'Bram' }, DAY)
  const { page, wire } = phone
  try {
    wire.fate(() => 'cut')
    await page.goto(`/removals/${ID}/site#now`)
    await tap(page, 'What runs behind it', 'Gas pipe')
    await page.getByRole('button', { name: 'Save', exact: true }).click()
    await page.waitForLoadState()
    await page.goto('/outbox')
    expect(await words(page)).toContain('Removal sheet: gas pipe.')
    expect(await words(page)).not.toContain(KILLS)

    await page.context().clearCookies()
    wire.fate(() => 'pass')
    await page.goto('/')
    await page.locator('.phone-alarm', { hasText: KILLS }).waitFor()
    await page.goto('/outbox')
    await page.locator('.phone-kills', { hasText: KILLS }).waitFor()
    expect(await page.locator('.phone-alarm').count(), 'it is said once').toBe(0)
    expect(await violations(page)).toEqual([])

    await page.goto('/sign-in')
    await page.locator('.phone-alarm', { hasText: KILLS }).waitFor()
    expect(await violations(page)).toEqual([])
    expect(await sidewaysScroll(page)).toBe(0)
    await page.getByRole('link', { name: 'Show them' }).click()
    await page.locator('.phone-kills', { hasText: KILLS }).waitFor()
  } finally {
    await phone.stop()
    await yard.stop()
  }
})
