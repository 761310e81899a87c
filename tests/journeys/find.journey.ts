/** From any page to what one remembers, with and without signal; and a label that keeps one from the wrong box. */
import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { toFile } from 'qrcode'
import { v7 } from 'uuid'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { LAPTOP, launch, watchedPage } from '../support/browser.ts'
import { type Field, intakes, startField } from '../support/field.ts'
import { sidewaysScroll, violations } from '../support/page-checks.ts'
import { follow, headline, press, read, words } from '../support/person.ts'
import { shot } from '../support/shot.ts'
import { startYard } from '../support/yard.ts'

const DAY = '2026-06-10'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

const field = (): Promise<Field> =>
  startField(browser, {
    day: DAY,
    as: { name: 'Maren', role: 'beekeeper' },
    entries: [
      ...intakes(['W-01', 'W-02'], '2026-06-04'),
      {
        id: v7(),
        colony: 'W-02',
        kind: 'note',
        on: '2026-06-09',
        by: 'Bram',
        text: 'Spare quilt under the lid.',
      },
    ],
  })

async function look(page: Page, typed: string): Promise<void> {
  if (!page.url().includes('/find')) await follow(page, 'Find')
  await page.locator('main input[type="search"]').fill(typed)
  await press(page, 'Find')
}

it('without signal a box is two taps and its tag away, and a word of a note finds it', async () => {
  const { page, wire, stop } = await field()
  try {
    wire.fate(() => 'cut')
    await page.goto('/colony/W-01')
    await look(page, 'w2')
    expect(await headline(page)).toContain('W-02')
    await look(page, 'quilt')
    expect(await words(page)).toContain('Spare quilt under the lid.')
    expect(await words(page)).toContain('what this phone keeps')
    expect(await violations(page)).toEqual([])
    expect(await sidewaysScroll(page)).toBe(0)
    await page.screenshot({ path: shot('find-phone') })
    await look(page, 'acacia')
    expect(await read(page.locator('main'))).toContain('4 Acacia Lane')
  } finally {
    await stop()
  }
})

it('a label opens its box; at a visit it says when it is another one', async () => {
  const { page, wire, stop } = await field()
  try {
    const label = async (tag: string): Promise<string> => {
      const file = join(mkdtempSync(join(tmpdir(), 'resettle-label-')), `${tag}.png`)
      await toFile(file, `https://yard.example/colony/${tag}`, { width: 500 })
      return file
    }
    wire.fate(() => 'cut')
    await page.goto('/find')
    await page.getByLabel('Scan a label').setInputFiles(await label('W-02'))
    await page.waitForURL('**/colony/W-02')

    await page.goto('/colony/W-02/visit')
    const check = page.getByLabel('Scan its label')
    await check.setInputFiles(await label('W-02'))
    await page.getByText('The label says W-02: the right box').waitFor()
    await check.setInputFiles(await label('W-01'))
    await page.getByText('Stop: the label says W-01').waitFor()
    await page.screenshot({ path: shot('scan-wrong-phone') })
    expect(await violations(page)).toEqual([])
    await follow(page, 'Write at W-01 instead')
    expect(await headline(page)).toContain('W-01')
  } finally {
    await stop()
  }
})

it('on a laptop one types into the head of every page', async () => {
  const yard = await startYard({ day: DAY, demo: true })
  const { page, context, noticed } = await watchedPage(browser, yard.url, LAPTOP)
  try {
    await page.goto('/yard')
    await page.getByLabel('Find a tag, stand, customer or word').fill('swarm')
    await page.keyboard.press('Enter')
    await page.waitForURL(/\/find\?/)
    expect(await words(page)).toMatch(/\d+ boxes/)
    expect(await violations(page)).toEqual([])
    await page.screenshot({ path: shot('find-laptop') })
    expect(noticed).toEqual([])
  } finally {
    await context.close()
    await yard.stop()
  }
})
