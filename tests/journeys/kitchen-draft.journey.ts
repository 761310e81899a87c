/** What was tapped in the kitchen and never sent is no look at the wall hours later (three hours, judgement). Invented. */
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { DAY, READY } from '../features/removal/ready.ts'
import { launch, PHONE, watchedPage } from '../support/browser.ts'
import { startYard } from '../support/yard.ts'

const ID = '019e0000-0000-7000-8000-000000000009'
const CHECK = `/removals/${ID}/check`

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

it('ticks of five o’clock are back at six with their hour, and not at three', async () => {
  const yard = await startYard({ day: DAY })
  const { page, context, noticed } = await watchedPage(browser, yard.url, PHONE)
  try {
    const { done: _d, doneOn: _o, doneAt: _a, wires: _w, ...check } = READY.check
    const stamp = { savedAt: `${DAY}T04:00:00.000Z`, savedBy: 'Wren' }
    expect(yard.store.removals.save(ID, 0, { ...READY, check }, stamp).ok).toBe(true)
    const ticked = page.locator('input[name="done"]:checked, input[name="wires"]:checked')
    const shownAt = page.locator('input[name="shownAt"]').first()

    yard.setDay(DAY, '05:00')
    await page.goto(CHECK)
    const boxes = page.locator('input[name="done"]')
    const all = await boxes.count()
    expect(all).toBeGreaterThan(2)
    for (let i = 0; i < all; i++) await boxes.nth(i).check({ force: true })
    await page.locator('input[name="wires"][value="none"]').check({ force: true })
    await page.locator('input[name="hottestC"]').fill('70')

    yard.setDay(DAY, '06:00')
    await page.goto(CHECK)
    await expect.poll(() => ticked.count()).toBe(all + 1)
    expect(await shownAt.inputValue(), 'seen when it was first shown').toBe('05:00')

    yard.setDay(DAY, '15:00')
    await page.goto(CHECK)
    await expect.poll(() => page.locator('input[name="hottestC"]').inputValue()).toBe('70')
    expect(await ticked.count(), 'the wall is not').toBe(0)
    await page.getByRole('button', { name: 'Go', exact: true }).click()
    await page.waitForLoadState()
    expect(yard.store.removals.get(ID)?.last.sheet.decision).toBeUndefined()
    expect(noticed).toEqual([])
  } finally {
    await context.close()
    await yard.stop()
  }
})
