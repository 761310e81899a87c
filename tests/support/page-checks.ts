/** What must hold on every page, whatever is on it. */
import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'

/** Rules of WCAG 2.0-2.2 at level A and AA, and axe's own good practice. */
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

/** Serious and critical violations axe finds, one line each with the elements. */
export async function violations(page: Page): Promise<string[]> {
  const { violations: found } = await new AxeBuilder({ page }).withTags(TAGS).analyze()
  return found
    .filter((v) => v.impact === 'serious' || v.impact === 'critical')
    .map((v) => `${v.id}: ${v.help}: ${v.nodes.map((n) => n.target.join(' ')).join(', ')}`)
}

/** How much the page shifted under the reader since it was opened (cumulative layout shift, Chromium's own reckoning). */
export const layoutShift = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((done) => {
        let sum = 0
        const observer = new PerformanceObserver((list) => {
          for (const e of list.getEntries()) sum += (e as PerformanceEntry & { value: number }).value
        })
        observer.observe({ type: 'layout-shift', buffered: true })
        // Buffered entries are handed over in a task of their own; two frames later they are all here.
        requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(() => done(sum), 50)))
      }),
  )

/** How many pixels the page is wider than the screen; 0 when it fits. */
export const sidewaysScroll = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

/** Opens an address and counts the bytes that came over the wire for it, headers included. */
export async function bytesFor(page: Page, address: string): Promise<number> {
  const wire = await page.context().newCDPSession(page)
  let bytes = 0
  wire.on('Network.loadingFinished', ({ encodedDataLength }) => {
    bytes += encodedDataLength
  })
  await wire.send('Network.enable')
  await wire.send('Network.setCacheDisabled', { cacheDisabled: true })
  await page.goto(address, { waitUntil: 'networkidle' })
  await wire.detach()
  return bytes
}
