/** Planning a week: the operator reads the coming days' work, goes further ahead, and to a box; on a laptop and a phone. */
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { DEVICES, launch, watchedPage } from '../support/browser.ts'
import { sidewaysScroll, violations } from '../support/page-checks.ts'
import { follow, headline, words } from '../support/person.ts'
import { shot } from '../support/shot.ts'
import { type RunningYard, startYard } from '../support/yard.ts'

let browser: Browser
let yard: RunningYard
beforeAll(async () => {
  browser = await launch()
  yard = await startYard({ day: '2026-06-10', demo: true })
})
afterAll(async () => {
  await yard.stop()
  await browser.close()
})

it.each(DEVICES)('on a $name', async (device) => {
  const { page, context, noticed } = await watchedPage(browser, yard.url, device)
  try {
    await page.goto('/weeks')
    expect(await words(page)).toMatch(/Wed 10 Jun to Tue 16 Jun: \d+ visits \(\d+ opened\)/)
    expect(await violations(page)).toEqual([])
    expect(await sidewaysScroll(page)).toBe(0)
    await page.screenshot({ path: shot(`weeks-${device.name}`) })
    // Every day that is shown can be read without scrolling its table.
    const table = page.locator('.table-scroll')
    expect(await table.evaluate((e) => e.scrollWidth - e.clientWidth)).toBeLessThanOrEqual(1)
    await page.emulateMedia({ media: 'print' })
    await page.screenshot({ path: shot(`weeks-${device.name}-print`), fullPage: true })
    await page.emulateMedia({ media: 'screen' })
    await follow(page, 'Later')
    expect(await words(page)).toContain('Wed 17 Jun')
    await follow(page, 'Earlier')
    const box = page.locator('.weeks tbody a.tag').first()
    const tag = (await box.textContent()) ?? ''
    await box.click()
    await page.waitForLoadState()
    expect(await headline(page)).toContain(tag)
    expect(noticed).toEqual([])
  } finally {
    await context.close()
  }
})
