/** What was typed once is not typed again, and is in the book once: reload, a dead tab, Back, the wrong box, a copy. */
import { mkdtempSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { launch } from '../support/browser.ts'
import { type Field, intakes, recorded, startField } from '../support/field.ts'
import { sidewaysScroll, violations } from '../support/page-checks.ts'
import { follow, press, read, tapAll, type, words } from '../support/person.ts'
import { shot } from '../support/shot.ts'

const DAY = '2026-06-10'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

const field = (): Promise<Field> =>
  startField(browser, { day: DAY, entries: intakes(['W-01', 'W-02'], '2026-06-04') })

const NOTE = 'textarea[name="note"]'

async function typeVisit(page: Page, note: string): Promise<void> {
  await tapAll(page, { 'The lid': 'Opened', Eggs: 'Single' })
  await page.locator(NOTE).fill(note)
}

it('what was typed is back after a reload and in another tab, until it is saved', async () => {
  const { page, yard, noticed, stop } = await field()
  try {
    await page.goto('/colony/W-01/visit')
    await typeVisit(page, 'cells on two frames')
    await page.reload()
    expect(await page.locator(NOTE).inputValue()).toBe('cells on two frames')
    expect(await words(page)).toContain('is back')
    expect(await violations(page)).toEqual([])
    expect(await sidewaysScroll(page)).toBe(0)
    await page.screenshot({ path: shot('draft-back-phone') })

    const other = await page.context().newPage()
    await page.close()
    await other.goto('/colony/W-02/visit')
    expect(await other.locator(NOTE).inputValue()).toBe('')
    await other.goto('/colony/W-01/visit')
    expect(await other.locator(NOTE).inputValue()).toBe('cells on two frames')
    expect(await other.locator('input[name="eggs"]:checked').getAttribute('value')).toBe('single')
    await press(other, 'Save the visit')
    await other.goto('/colony/W-01/visit')
    expect(await other.locator(NOTE).inputValue()).toBe('')
    await other.goto('/outbox')
    expect(await words(other)).toContain('Nothing waits')
    expect(recorded(yard).map((r) => r.note)).toEqual(['cells on two frames'])
    expect(noticed).toEqual([])
  } finally {
    await stop()
  }
})

it('an empty form is one tap away', async () => {
  const { page, stop } = await field()
  try {
    await page.goto('/colony/W-01/visit')
    await typeVisit(page, 'not that')
    await page.reload()
    await page.getByRole('button', { name: 'Start with an empty form' }).click()
    await page.waitForLoadState()
    await expect.poll(() => page.locator(NOTE).inputValue()).toBe('')
  } finally {
    await stop()
  }
})

it('Back and Save without signal is one visit', async () => {
  const { page, wire, yard, waiting, sent, stop } = await field()
  try {
    wire.fate(() => 'cut')
    await page.goto('/colony/W-01/visit')
    await typeVisit(page, 'once')
    await press(page, 'Save the visit')
    await page.goBack()
    expect(await words(page)).toContain('This is saved already')
    expect(await page.locator(NOTE).inputValue()).toBe('once')
    await press(page, 'Save the visit')
    expect(await waiting()).toMatchObject({ waiting: 1, refused: 0 })

    // Changed after going back: it says where the saved one is changed, and makes no second one.
    await page.goBack()
    await page.locator(NOTE).fill('twice')
    await press(page, 'Save the visit')
    expect(await words(page)).toContain('Correct the saved entry')
    expect(await waiting()).toMatchObject({ waiting: 1, refused: 0 })
    wire.fate(() => 'pass')
    await page.goto('/')
    await sent()
    expect(recorded(yard)).toHaveLength(1)
  } finally {
    await stop()
  }
})

it('a visit at the wrong box is moved to the right one, with what was done there, without signal', async () => {
  const { page, wire, yard, sent, stop } = await field()
  try {
    await page.goto('/colony/W-01/visit')
    await typeVisit(page, 'a red dot')
    await press(page, 'Save the visit')
    await sent()
    wire.fate(() => 'cut')
    await page.goto('/colony/W-01')
    await page
      .locator('.entry')
      .filter({ hasText: 'a red dot' })
      .getByRole('link', { name: /Correct/ })
      .click()
    await page.waitForLoadState()
    await follow(page, 'It was another box than W-01')
    await page.screenshot({ path: shot('other-box-phone') })
    expect(await violations(page)).toEqual([])
    await press(page, 'Move it there')
    expect(await words(page)).toContain('type the tag of the right box')
    await type(page, { 'The right box': 'w-02' })
    await press(page, 'Move it there')
    expect(await words(page)).toContain('a red dot')
    expect(await page.locator('h1').textContent()).toContain('W-02')
    wire.fate(() => 'pass')
    await page.goto('/')
    await sent()
    expect(recorded(yard).map(({ tag, kind }) => `${kind} ${tag}`)).toEqual([
      'inspection W-01',
      'withdrawal W-01',
      'inspection W-02',
    ])
    const standing = (tag: string): number => yard.store.colony(tag)?.history.entries.length ?? -1
    expect([standing('W-01'), standing('W-02')]).toEqual([1, 2])
  } finally {
    await stop()
  }
})

it('taking back is two taps', async () => {
  const { page, yard, sent, stop } = await field()
  try {
    await page.goto('/colony/W-01/visit')
    await typeVisit(page, 'slip')
    await press(page, 'Save the visit')
    await sent()
    await page.goto('/colony/W-01')
    await page
      .locator('.entry')
      .filter({ hasText: 'slip' })
      .getByRole('link', { name: /Take back/ })
      .click()
    await page.waitForLoadState()
    await tapAll(page, { Reason: 'Tapped by mistake' })
    await page.screenshot({ path: shot('take-back-phone') })
    await press(page, 'Take it back')
    await sent()
    const last = [...yard.store.journal()].at(-1)?.entry
    expect(last).toMatchObject({ kind: 'withdrawal', reason: 'Tapped by mistake' })
  } finally {
    await stop()
  }
})

it('a copy of what waits can be saved as a file', async () => {
  const { page, wire, stop } = await field()
  try {
    wire.fate(() => 'cut')
    await page.goto('/colony/W-01/visit')
    await typeVisit(page, 'worth keeping')
    await press(page, 'Save the visit')
    await page.goto('/outbox')
    const coming = page.waitForEvent('download')
    await page.getByRole('link', { name: 'Save a copy as a file' }).click()
    const download = await coming
    expect(await download.failure()).toBeNull()
    expect(download.suggestedFilename()).toBe('waiting-entries.json')
    const file = join(mkdtempSync(join(tmpdir(), 'resettle-copy-')), 'copy.json')
    await download.saveAs(file)
    expect(JSON.parse(readFileSync(file, 'utf8'))).toMatchObject([{ tag: 'W-01', note: 'worth keeping' }])
    expect(await read(page.locator('h1'))).toContain('1 waiting')
  } finally {
    await stop()
  }
})
