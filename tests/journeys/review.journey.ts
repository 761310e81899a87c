/** The operator looks back on the season, on a phone and on a laptop, and takes in an old spreadsheet without scripts. */
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { DEVICES, LAPTOP, launch, PHONE, watchedPage } from '../support/browser.ts'
import { bytesFor, leastShift, sidewaysScroll, smallTargets, violations } from '../support/page-checks.ts'
import { follow, headline, press, words } from '../support/person.ts'
import { looksOf } from '../support/proven-pages.ts'
import { type RunningYard, startYard } from '../support/yard.ts'

const DAY = '2026-06-10'
/** The review with its charts, over the wire. */
const MOST_BYTES = 200 * 1024
const LEAST_TARGET = 48
const DATA_PAGES = ['/data/colonies', '/data/names', '/data/long-gone?days=1']
const looks = looksOf('review', import.meta.filename)

let browser: Browser
let yard: RunningYard
beforeAll(async () => {
  browser = await launch()
  yard = await startYard({ day: DAY, demo: true })
})
afterAll(async () => {
  await browser.close()
  await yard.stop()
})

/** Opens every chapter, as a tap on its title does. */
async function unfold(page: Page): Promise<void> {
  for (const title of await page.locator('details.chapter > summary').all()) await title.click()
}

const readout = (page: Page, chart: string) => page.locator(`[data-readout="${chart}"]`)

describe.each(DEVICES)('on a $name', (device) => {
  // The review itself, in the light, is among the pages of every-page.journey.ts.
  it('the report, few colonies and the way in for spreadsheets keep still, fit, and can be read by all', async () => {
    const { page, context, noticed } = await watchedPage(browser, yard.url, device)
    for (const path of ['/review/report', '/review?removalType=container', ...DATA_PAGES]) {
      const faults = await looks.found({ page, noticed }, path, device.name, async () => {
        await page.goto(path)
        return [
          ...(await violations(page)),
          ...((await leastShift(page)) === 0 ? [] : ['shifts']),
          ...((await sidewaysScroll(page)) === 0 ? [] : ['wider than the screen']),
          ...(device.touch ? await smallTargets(page, LEAST_TARGET) : []),
        ]
      })
      expect(faults, path).toEqual([])
    }
    expect(noticed).toEqual([])
    await context.close()
  })

  it('a chart tells the day under the finger, and its own words again afterwards', async () => {
    const { page, context } = await watchedPage(browser, yard.url, device)
    await page.goto('/review')
    await unfold(page)
    const standing = await readout(page, 'survival').textContent()
    const canvas = page.locator('[data-chart="survival"] canvas')
    // In the middle of the screen, clear of the bar at its foot.
    await canvas.evaluate((c) => c.scrollIntoView({ block: 'center' }))
    const box = await canvas.boundingBox()
    if (box === null) throw new Error('no canvas')
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
    // The middle of an axis of 60 days. A chart in a chapter just opened takes a moment to have its size.
    await expect
      .poll(async () => {
        if (device.touch) await page.touchscreen.tap(x, y)
        else await page.mouse.move(x, y)
        return readout(page, 'survival').textContent()
      })
      .toMatch(/^Day 30: all \d+ % \(\d+ to \d+ %\), wall/)
    if (!device.touch) {
      await page.mouse.move(2, 2)
      await expect.poll(() => readout(page, 'survival').textContent()).toBe(standing)
    }
    await context.close()
  })
})

it('the review is light, and can be read in the dark', async () => {
  const { page, context } = await watchedPage(browser, yard.url, PHONE, { dark: true })
  expect(await bytesFor(page, '/review')).toBeLessThan(MOST_BYTES)
  expect(await page.locator('.plot-box canvas').count()).toBe(3)
  expect(await violations(page)).toEqual([])
  await context.close()
})

it('the canvas draws what the server drew: the same lines in the same places', async () => {
  const { page, context } = await watchedPage(browser, yard.url, LAPTOP)
  await page.goto('/review')
  await unfold(page)
  await page.locator('.plot-box canvas').first().waitFor()
  const inked = await page.evaluate(() => {
    const box = document.querySelector('[data-chart="survival"] .plot-box')
    const canvas = box?.querySelector('canvas')
    const path = box?.querySelector<SVGPathElement>('.series-0 .step')
    const ctx = canvas?.getContext('2d')
    if (!canvas || !path || !ctx) return []
    // Along the line of all colonies, wherever it runs level.
    const length = path.getTotalLength()
    return Array.from({ length: 40 }, (_, i) => {
      const p = path.getPointAtLength((length * (i + 0.5)) / 40)
      const [x, y] = [(p.x / 1000) * canvas.width, (p.y / 1000) * canvas.height]
      const { data } = ctx.getImageData(Math.round(x) - 2, Math.round(y) - 2, 5, 5)
      let least = 255
      for (let k = 0; k < data.length; k += 4)
        if ((data[k + 3] ?? 0) > 200) least = Math.min(least, data[k] ?? 255)
      return least
    })
  })
  expect(inked).toHaveLength(40)
  // Ink is #1c1a15: dark wherever the line should be.
  expect(inked.filter((red) => red > 80)).toEqual([])
  await context.close()
})

it('choices are made with a form, and the address can be sent to somebody', async () => {
  const { page, context } = await watchedPage(browser, yard.url, LAPTOP, { scripts: false })
  await page.goto('/review')
  await page.getByLabel('Compare by').selectOption('queen at intake')
  await page.getByLabel('Count united as').selectOption('a loss')
  await page.getByRole('button', { name: 'Show' }).first().click()
  await page.waitForLoadState()
  expect(page.url()).toContain('by=queen')
  expect(await words(page)).toContain('Lost means died, absconded or united')
  await page.getByText('Alive in the yard, had none').click()
  await page.getByText('Choose the lines').click()
  await page.locator('label.tap', { hasText: 'queen dead or lost' }).click()
  await press(page, 'Draw these')
  expect(await page.locator('.plot-names text').allTextContents()).toContain('queen dead or lost')
  await context.close()
})

it('the season report is two pages, A4 and Letter', async () => {
  const { page, context } = await watchedPage(browser, yard.url, LAPTOP)
  await page.goto('/review')
  await follow(page, 'Season report')
  for (const format of ['A4', 'Letter']) {
    const pdf = await page.pdf({
      format,
      margin: { top: '12mm', bottom: '12mm', left: '14mm', right: '14mm' },
    })
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g), format).toHaveLength(2)
  }
  await context.close()
})

const SHEET = [
  'Box;Date;Job;Temp;Queen;Result;Date out;Remarks',
  'S-1;03/04/2025;house wall;28;caught;sold;05/05/2025;strong',
  'S-2;04/04/2025;Belfry;29;no;fizzled;01/05/2025;',
  'S-3;05/04/2025;tree;hot;?;dead;04/06/2025;',
].join('\n')

/** Up to the preview; `look` is called on every step. */
async function toPreview(page: Page, look: (page: Page) => Promise<void>): Promise<void> {
  await page.goto('/data')
  await follow(page, 'Colonies in and out')
  await page.getByLabel('A file of text').setInputFiles({
    name: 'season-2025.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(SHEET),
  })
  await press(page, 'Read it')
  expect(await headline(page)).toBe('What is in each column?')
  await look(page)
  await press(page, 'Next: words and units')
  await look(page)
  await page.locator('label.tap', { hasText: 'The day' }).click()
  await page.locator('label.tap', { hasText: '°C' }).click()
  await page.getByLabel('fizzled').selectOption('Absconded')
  await press(page, 'Next: preview')
  expect(await headline(page)).toBe('2 colonies can be taken in, 1 line cannot')
  await look(page)
}

it('an old spreadsheet is in within a few taps, on a phone and without scripts, and out again', async () => {
  const { page, context, noticed } = await watchedPage(browser, yard.url, PHONE, { scripts: false })
  await toPreview(page, async () => {})
  expect(await words(page)).toContain('“hot” is not a temperature')
  await press(page, 'Take in 2 colonies, leave out 1 line')
  expect(await words(page)).toContain('2 colonies taken in from season-2025.csv')
  expect(yard.store.colony('S-2')?.summary.outcome).toBe('absconded')
  await follow(page, 'Take it all back')
  await press(page, 'Take it back')
  expect(await words(page)).toContain('Taken back: season-2025.csv')
  expect(yard.store.colony('S-1')).toBeNull()
  expect(noticed).toEqual([])
  expect(yard.errors).toEqual([])
  await context.close()
})

it('every step of it can be read by all and fits a phone', async () => {
  const { page, context } = await watchedPage(browser, yard.url, PHONE)
  await toPreview(page, async () => {
    expect(await violations(page)).toEqual([])
    expect(await sidewaysScroll(page)).toBe(0)
    expect(await smallTargets(page, LEAST_TARGET)).toEqual([])
  })
  await context.close()
})
