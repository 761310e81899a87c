/** How soon a phone shows Today: timed, so nothing else runs beside it. */
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { launch, PHONE, watchedPage } from '../support/browser.ts'
import { type Field, startField, stateOf } from '../support/field.ts'

const DAY = '2026-06-10'

let browser: Browser
/** The invented yard, and the phone of one who may log intakes. */
let field: Field
beforeAll(async () => {
  browser = await launch()
  field = await startField(browser, { day: DAY, demo: true, as: { name: 'Bram', role: 'beekeeper' } })
})
afterAll(async () => {
  await field.stop()
  await browser.close()
})

/** Slow 4G as web performance tools define it: 150 ms there and back, 1.6 Mbit/s down, 0.75 up. */
const SLOW_4G = {
  offline: false,
  latency: 150,
  downloadThroughput: 1_600_000 / 8,
  uploadThroughput: 750_000 / 8,
}

async function slowed(page: Page): Promise<void> {
  const wire = await page.context().newCDPSession(page)
  await wire.send('Network.enable')
  await wire.send('Network.emulateNetworkConditions', SLOW_4G)
  await wire.send('Emulation.setCPUThrottlingRate', { rate: 4 })
}

/** Milliseconds until the largest thing on the page stood there, as the browser reckons it. */
const largestPaint = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((done) => {
        new PerformanceObserver((list) => {
          const last = list.getEntries().at(-1)
          setTimeout(() => done(last?.startTime ?? Number.NaN), 200)
        }).observe({ type: 'largest-contentful-paint', buffered: true })
      }),
  )

/** Times it until it is quick enough, at most six times: the others may have shared the machine with something else. */
async function quickest(enough: number, timed: () => Promise<number>): Promise<number[]> {
  const times: number[] = []
  while (times.length < 6 && !(Math.min(...times) < enough)) times.push(await timed())
  return times
}

it('Today stands there within 1.5 s on a slow phone and network, within 0.5 s once the phone keeps it', async () => {
  const cold = await quickest(1500, async () => {
    const { page, context } = await watchedPage(browser, field.yard.url, PHONE)
    await slowed(page)
    await page.goto('/')
    const time = await largestPaint(page)
    await context.close()
    return time
  })

  // The server is there, but slow: the phone does not wait for it.
  const { page, context } = await watchedPage(browser, field.wire.url, PHONE, { worker: true })
  await page.goto('/')
  while ((await stateOf(page)).fetchedAt === null) await page.waitForTimeout(50)
  field.wire.fate(() => ({ after: 3000 }))
  await slowed(page)
  const kept = await quickest(500, async () => {
    await page.goto('/')
    expect(await page.locator('#phone-line').count()).toBe(1)
    return largestPaint(page)
  })
  await context.close()
  field.wire.fate(() => 'pass')
  const shown = (times: number[]): string => times.map(Math.round).join(', ')
  console.log(`largest paint of Today: cold ${shown(cold)} ms; from the phone ${shown(kept)} ms`)
  expect(Math.min(...cold)).toBeLessThan(1500)
  expect(Math.min(...kept)).toBeLessThan(500)
})
