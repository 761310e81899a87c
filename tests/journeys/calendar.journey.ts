/** A calendar address, made with one tap: one entry a yard and day, read with an independent reader (ical.js). */
import ICAL from 'ical.js'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { launch, PHONE, watchedPage } from '../support/browser.ts'
import { sidewaysScroll, violations } from '../support/page-checks.ts'
import { press, tap } from '../support/person.ts'
import { shot } from '../support/shot.ts'
import { startYard } from '../support/yard.ts'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

it('shows few entries where single boxes would be many, and single boxes for who taps them', async () => {
  const yard = await startYard({ day: '2026-06-10', demo: true })
  const { page, context, noticed } = await watchedPage(browser, yard.url, PHONE)
  const made = async (): Promise<{ title: string; text: string; day: string }[]> => {
    await press(page, 'Make an address')
    const address = await page.getByLabel('Calendar address').inputValue()
    const text = await (await fetch(address)).text()
    return new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((c) => {
      const e = new ICAL.Event(c)
      return { title: e.summary, text: e.description, day: e.startDate.toString() }
    })
  }
  try {
    await page.goto('/account/calendar')
    expect(await violations(page)).toEqual([])
    expect(await sidewaysScroll(page)).toBe(0)
    const days = await made()
    await page.screenshot({ path: shot('calendar-phone'), fullPage: true })
    await tap(page, 'What stands in it', 'Each box, from the best day')
    const boxes = await made()
    console.info(`${days.length} entries of yards and days; ${boxes.length} of single boxes`)
    const yards = yard.store.yards().filter((y) => y.open > 0).length
    const perDay = new Map<string, number>()
    for (const { day } of days) perDay.set(day, (perDay.get(day) ?? 0) + 1)
    expect(Math.max(...perDay.values())).toBeLessThanOrEqual(yards)
    expect(days.length).toBeLessThan(boxes.length / 2)
    expect(days.find((d) => d.day === '2026-06-10')?.text.split('\n').length).toBeGreaterThan(1)
    expect(noticed).toEqual([])
  } finally {
    await context.close()
    await yard.stop()
  }
})
