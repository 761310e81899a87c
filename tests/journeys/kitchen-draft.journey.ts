/**
 * What was tapped and never sent: in the kitchen, it is no look at the wall hours later (three hours, judgement); of one job, or of one
 * caller, it is not of the next. Invented.
 */
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { DAY, READY } from '../features/removal/ready.ts'
import { launch, PHONE, watchedPage } from '../support/browser.ts'
import { startYard } from '../support/yard.ts'

const ID = '019e0000-0000-7000-8000-000000000009'
const CHECK = `/removals/${ID}/check`
const NEXT = '2026-06-13'

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

it('what was typed for the box of one job, or of one caller, is not put back for another', async () => {
  const yard = await startYard({ day: DAY })
  const { page, context, noticed } = await watchedPage(browser, yard.url, PHONE)
  const OTHER = ID.replace(/9$/, '8')
  try {
    const at = { on: DAY, at: '07:10', by: 'Wren' }
    const work = { on: DAY, openedAt: '07:10', boxedAt: '08:00', underGo: at }
    for (const [id, name] of [
      [ID, 'Ottoline Fairweather'],
      [OTHER, 'Edgar Marsh'],
    ] as const) {
      const job = { name, address: id === ID ? '4 Invented Row' : '9 Elm Street' }
      const stamp = { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Wren' }
      expect(yard.store.removals.save(id, 0, { ...READY, job, work }, stamp).ok).toBe(true)
    }
    await page.goto(`/removals/${ID}/intake`)
    await page.locator('input[name="colony"]').fill('Q-77')
    await page.goto(`/removals/${OTHER}/intake`)
    expect(await page.locator('input[name="id"]').inputValue()).toBe(OTHER)
    expect(await page.locator('input[name="colony"]').inputValue()).not.toBe('Q-77')
    await page.goto(`/removals/${ID}/intake`)
    await expect.poll(() => page.locator('input[name="colony"]').inputValue()).toBe('Q-77')

    await page.goto('/removals/new')
    await page.locator('input[name="bystanders"][value="none"]').check({ force: true })
    await page.locator('input[name="name"]').fill('Tilda Marsh')
    yard.setDay(NEXT)
    await page.goto('/removals/new')
    await expect.poll(() => page.locator('.draft-note').count()).toBe(1)
    expect(await page.locator('input[name="bystanders"]:checked').count(), 'nobody was asked').toBe(0)
    expect(noticed).toEqual([])
  } finally {
    await context.close()
    await yard.stop()
  }
})
