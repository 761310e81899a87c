/**
 * A whole job on the phone without signal, from the call to the intake: every tap is counted, every page measured, and
 * afterwards the server has all of it. Invented.
 */
import type { Browser, Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { launch } from '../support/browser.ts'
import { type Field, intakes, startField } from '../support/field.ts'
import { sidewaysScroll, smallTargets, violations } from '../support/page-checks.ts'
import { question, words } from '../support/person.ts'
import { shot } from '../support/shot.ts'

const DAY = '2026-06-10'
const SCREEN = 844

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

/**
 * A thumb that counts its taps, and how far it scrolls: of each page, from where it opens down to the lowest thing touched.
 * Typing goes on from field to field with the keyboard, and is counted apart.
 */
class Thumb {
  taps = 0
  typed = 0
  /** Pixels passed of each page, at least one screen. */
  readonly passed: Record<string, number> = {}
  #name = ''
  #from = 0
  readonly #page: Page

  constructor(page: Page) {
    this.#page = page
  }

  /** A new page has opened. */
  async at(name: string): Promise<void> {
    this.#name = name
    this.#from = await this.#page.evaluate(() => window.scrollY)
    this.passed[name] = SCREEN
  }
  async answer(legend: string, answer: string): Promise<void> {
    // From its first letter on; “No” is not “Not known”.
    const label = new RegExp(`^\\s*${answer}(?!t )`)
    await this.#tap(question(this.#page, legend).locator('label').filter({ hasText: label }).first())
  }
  tick = (words: string): Promise<void> =>
    this.#tap(this.#page.locator('.checklist label').filter({ hasText: words }))
  async press(button: string): Promise<void> {
    await this.#tap(this.#page.getByRole('button', { name: button, exact: true }))
    await this.#page.waitForLoadState()
  }
  async type(label: string, text: string): Promise<void> {
    this.typed++
    const field = this.#page.getByRole('textbox', { name: label, exact: true })
    await this.#reach(field)
    await field.fill(text)
  }
  async draw(): Promise<void> {
    this.taps++
    const pad = this.#page.locator('[data-pad-field]')
    await pad.scrollIntoViewIfNeeded()
    await this.#reach(pad)
    const box = await pad.boundingBox()
    if (box === null) throw new Error('no field to draw on')
    await this.#page.mouse.move(box.x + 30, box.y + 60)
    await this.#page.mouse.down()
    for (const [x, y] of [
      [60, 20],
      [140, 70],
      [240, 30],
    ] as const)
      await this.#page.mouse.move(box.x + x, box.y + y, { steps: 5 })
    await this.#page.mouse.up()
  }

  async #tap(what: Locator): Promise<void> {
    this.taps++
    await this.#reach(what)
    await what.click()
  }
  /** What stands in the bar at the thumb is never scrolled to; what is above the bar is seen when the bar is under it. */
  async #reach(what: Locator): Promise<void> {
    const bottom = await what.evaluate((e) => {
      if (e.closest('.act-bar') !== null) return 0
      const bar = document.querySelector('.act-bar')?.getBoundingClientRect().height ?? 0
      return e.getBoundingClientRect().bottom + window.scrollY + bar
    })
    this.passed[this.#name] = Math.max(this.passed[this.#name] ?? 0, bottom - this.#from)
  }
}

/** A picture of the wall, taken at the call. Apart from what is counted: most calls have none. */
async function photographed(page: Page): Promise<void> {
  const drawn = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(640, 480)
    canvas.getContext('2d')?.fillRect(40, 40, 300, 200)
    const blob = await canvas.convertToBlob({ type: 'image/jpeg' })
    return [...new Uint8Array(await blob.arrayBuffer())]
  })
  const file = { name: 'wall.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(drawn) }
  await page.locator('summary', { hasText: 'Photos, e-mail' }).click()
  await page.locator('#photo-files').setInputFiles([file])
  await page.locator('#photo-says', { hasText: '1 photo' }).waitFor()
  await page.locator('summary', { hasText: 'Photos, e-mail' }).click()
}

const heightOf = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollHeight)

async function holds(page: Page, name: string): Promise<void> {
  await page.screenshot({ path: shot(`removal-${name}`), fullPage: true })
  expect(await violations(page), name).toEqual([])
  expect(await smallTargets(page, 48), name).toEqual([])
  expect(await sidewaysScroll(page), name).toBe(0)
}

/** From the call to the intake; the height of each page that is scrolled through, in pixels. */
async function job(page: Page): Promise<{ thumb: Thumb; heights: Record<string, number> }> {
  const heights: Record<string, number> = {}
  const thumb = new Thumb(page)
  const seen = async (name: string): Promise<void> => {
    await thumb.at(name)
    heights[name] = await heightOf(page)
    await holds(page, name)
  }
  await page.goto('/removals/new')
  await photographed(page)
  await page.evaluate(() => window.scrollTo(0, 0))
  await seen('1-call')
  await thumb.answer('What do they see?', 'Wall')
  await thumb.answer('Since when', 'Weeks')
  await thumb.answer('How high, and how one gets there', 'From the ground')
  await thumb.type('Height of bees', '5')
  await thumb.answer('Sprayed or foamed already?', 'No')
  await thumb.answer('Who is about? Anybody allergic?', 'Asked: nobody')
  await thumb.answer('Who calls: owner or tenant?', 'Owner')
  await thumb.type('Name', 'Ottoline Fairweather')
  await thumb.type('Telephone', '555 0100')
  await thumb.type('Address of bees', '4 Invented Row')
  await thumb.press('Save')

  await seen('2-site')
  await thumb.answer('What runs behind it', 'None')
  await thumb.answer('On it and around it', 'None')
  await thumb.answer('How they behave', '2')
  await thumb.answer('Africanized bees established here?', 'No')
  await thumb.type('What is cut', 'cedar siding')
  await thumb.type('How thick it is', '3/4')
  await thumb.type('Where, in words', 'left of the porch')
  await thumb.type('By the hour', '95')
  await thumb.type('Hours expected', '4')
  await thumb.press('Save, read and sign')

  await seen('3-sign')
  await thumb.draw()
  await thumb.press('Sign')
  await seen('4-signed-and-before')
  await thumb.type('Hottest hour', '78')
  await thumb.type('Blade set to', '7/8')
  await thumb.answer('How the bees come off', 'Bee vacuum')
  await thumb.answer('Wires, meter, pole within 3 m (10 ft)?', 'No')
  for (const tick of ['Somebody within call', 'Plan for stings', 'Area kept clear']) await thumb.tick(tick)
  await thumb.press('Go')

  await seen('6-open')
  await thumb.type('Outdoor temperature', '76')
  await thumb.answer('Ready: clothing, smoker, water and shade', 'Here')
  await thumb.press('Open it, now')
  await seen('7-box')
  await thumb.answer('The queen', 'Caged')
  await thumb.press('Boxed, now: log the intake')
  await seen('8-intake')
  await thumb.type('Tag on the box', 'W-9')
  await thumb.press('Save and make the plan')
  return { thumb, heights }
}

it('a whole job without signal, from the call to the intake, and the server has it afterwards', async () => {
  const field: Field = await startField(browser, {
    day: DAY,
    as: { name: 'Ines', role: 'beekeeper' },
    entries: intakes(['W-1'], '2026-06-04'),
  })
  const { page, wire, yard, noticed, sent, stop } = field
  try {
    wire.fate(() => 'cut')
    const { thumb, heights } = await job(page)
    expect(await words(page)).toContain('W-9')
    expect(yard.store.removals.list()).toEqual([])
    const sum = (of: Record<string, number>): number => Object.values(of).reduce((a, b) => a + b, 0) / SCREEN
    const told = `${thumb.taps} taps, ${thumb.typed} fields typed, ${sum(thumb.passed).toFixed(1)} screens passed: ${JSON.stringify(thumb.passed)}; whole pages ${sum(heights).toFixed(1)}: ${JSON.stringify(heights)}`
    process.stdout.write(`${told}\n`)
    expect(thumb.taps, told).toBeLessThanOrEqual(25)
    expect(Object.keys(heights).length).toBeLessThanOrEqual(10)
    expect(sum(thumb.passed), told).toBeLessThanOrEqual(10)

    wire.fate(() => 'pass')
    await page.goto('/outbox')
    const send = page.getByRole('button', { name: 'Send now' })
    if (await send.isVisible()) await send.click()
    await sent()
    const [sheet] = yard.store.removals.list()
    expect(sheet?.sheet).toMatchObject({
      job: { name: 'Ottoline Fairweather', bees: 'nest', caller: 'owner' },
      site: { type: 'wall', behind: [], hazards: [], bystanders: [] },
      agreement: { signature: { how: 'drawn', name: 'Ottoline Fairweather' } },
      decision: { is: 'go', by: 'Ines', unmet: [] },
      work: { queen: 'caged', water: true },
    })
    expect(sheet?.savedBy).toBe('Ines')
    const [photo = ''] = sheet?.sheet.job.photos ?? []
    expect(photo).toMatch(/^[0-9a-f]{64}$/)
    const shown = await page.request.get(`${wire.url}/photos/${photo}`)
    expect(shown.headers()['content-type']).toContain('image/jpeg')
    const colony = yard.store.colony('W-9')
    expect(colony?.summary.id).toBe(sheet?.id)
    expect(colony?.history.intake.removal.site).toBe('Ottoline Fairweather, 4 Invented Row')
    expect(noticed.filter((n) => !/ERR_|Failed to fetch|console/.test(n))).toEqual([])
    expect(yard.errors).toEqual([])
  } finally {
    await stop()
  }
})
