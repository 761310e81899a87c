/** The README's pictures, made from the demo on a fixed day: `npm run pictures`. */
import { mkdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { Page } from 'playwright-core'
import { LAPTOP, launch, PHONE, watchedPage } from '../support/browser.ts'
import { startYard } from '../support/yard.ts'

const FOLDER = fileURLToPath(new URL('../../demo/pictures', import.meta.url))

/** Taps an answer as a thumb would, and brings what it proves into sight. */
async function tapped(page: Page, name: string, value: string): Promise<void> {
  await page
    .locator(`input[name="${name}"][value="${value}"]`)
    .first()
    .evaluate((input: HTMLInputElement) => {
      input.scrollIntoView({ block: 'center' })
      input.click()
    })
}

mkdirSync(FOLDER, { recursive: true })
const yard = await startYard({ day: '2026-06-10', demo: true, as: { name: 'Perpetua', role: 'operator' } })
const browser = await launch()
const open = yard.store.colonies({ open: true })
const tagIn = (phase: string): string => encodeURIComponent(open.find((c) => c.phase === phase)?.tag ?? '')

for (const { name, path, device, before } of [
  { name: 'today', path: '/', device: PHONE },
  { name: 'colony', path: `/colony/${tagIn('rearing')}`, device: PHONE },
  {
    name: 'visit',
    path: `/colony/${tagIn('queen-unknown')}/visit`,
    device: PHONE,
    before: async (page: Page) => {
      await tapped(page, 'eggs', 'none')
      await tapped(page, 'cells', 'capped')
    },
  },
  { name: 'round', path: '/round', device: PHONE },
  {
    name: 'review',
    path: '/review',
    device: LAPTOP,
    before: (page: Page) => page.evaluate(() => window.scrollBy(0, 600)),
  },
] as const) {
  const { page, context } = await watchedPage(browser, yard.url, device)
  await page.goto(path, { waitUntil: 'networkidle' })
  if (before !== undefined) await before(page)
  await page.screenshot({ path: `${FOLDER}/${name}.png` })
  await context.close()
}
await browser.close()
await yard.stop()
