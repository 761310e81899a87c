/** The day is right: a phone whose clock is behind says so before anything is saved, and asks before it is sent. */
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { launch, PHONE, watchedPage } from '../support/browser.ts'
import { type Field, intakes, recorded, startField } from '../support/field.ts'
import { sidewaysScroll, violations } from '../support/page-checks.ts'
import { PASSPHRASE } from '../support/people.ts'
import { press, read, tapAll, type, words } from '../support/person.ts'
import { shot } from '../support/shot.ts'
import { startYard } from '../support/yard.ts'

const DAY = '2026-06-10'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

const field = (): Promise<Field> =>
  startField(browser, { day: DAY, entries: intakes(['W-01', 'W-02'], '2026-06-04') })

async function visit(page: Page, tag: string, on?: string): Promise<void> {
  await page.goto(`/colony/${tag}/visit`)
  await tapAll(page, { 'The lid': 'Opened', Eggs: 'Single' })
  if (on !== undefined) {
    const day = page.locator('input[name="on"]')
    // Where it is today, the day is folded.
    if (!(await day.isVisible())) await page.locator('details', { has: day }).locator('summary').click()
    await day.fill(on)
  }
  await press(page, 'Save the visit')
}

it('Today says that the boxes are on the phone, ready without signal', async () => {
  const { page, wire, stop } = await field()
  try {
    await page.goto('/')
    await page.getByText('2 boxes on this phone, ready without signal.').waitFor()
    await page.screenshot({ path: shot('ready-phone') })
    wire.fate(() => 'cut')
    await page.goto('/')
    await page.getByText('2 boxes on this phone, ready without signal.').waitFor()
  } finally {
    await stop()
  }
})

it('three days behind: said before saving, the yard’s day proposed, and another day asked about before it goes', async () => {
  const { page, wire, yard, later, sent, stop } = await field()
  try {
    // Three days pass in the yard, and none on the phone.
    yard.setDay('2026-06-13')
    await later(60)
    await page.goto('/')
    await page.getByText('This phone says Wed 10 Jun; in the yard it is Sat 13 Jun').first().waitFor()
    wire.fate(() => 'cut')
    await page.goto('/colony/W-01/visit')
    expect(await read(page.locator('.phone-clock'))).toContain('in the yard it is Sat 13 Jun')
    expect(await page.locator('input[name="on"]').inputValue()).toBe('2026-06-13')
    expect(await violations(page)).toEqual([])
    await page.screenshot({ path: shot('clock-behind-phone') })
    await visit(page, 'W-01')
    // Somebody believes the phone all the same.
    await visit(page, 'W-02', '2026-06-10')

    wire.fate(() => 'pass')
    await page.goto('/outbox')
    await expect.poll(() => recorded(yard).map((r) => `${r.tag} ${r.on}`)).toEqual(['W-01 2026-06-13'])
    await page.goto('/outbox')
    expect(await words(page)).toContain('Was it Wed 10 Jun?')
    expect(await violations(page)).toEqual([])
    expect(await sidewaysScroll(page)).toBe(0)
    await page.screenshot({ path: shot('day-in-doubt-phone') })
    await page.getByRole('button', { name: /^Yes, Wed 10 Jun/ }).click()
    await page.waitForLoadState()
    await sent()
    expect(recorded(yard).map((r) => `${r.tag} ${r.on}`)).toEqual(['W-01 2026-06-13', 'W-02 2026-06-10'])
  } finally {
    await stop()
  }
})

it('set-up takes the time zone from the phone', async () => {
  const yard = await startYard({ day: DAY, untouched: true })
  const { page, context, noticed } = await watchedPage(browser, yard.url, PHONE, { stranger: true })
  try {
    await page.goto(yard.setUpUrl ?? '')
    const own = await page.evaluate(() => Intl.DateTimeFormat().resolvedOptions().timeZone)
    await expect.poll(() => page.getByLabel('Time zone of the yard').inputValue()).toBe(own)
    await type(page, {
      'Your name': 'Odalys',
      Passphrase: PASSPHRASE,
      'Passphrase again': PASSPHRASE,
      'Time zone of the yard': 'Nowhere/Here',
    })
    await press(page, 'Make the account')
    expect(await words(page)).toContain('America/Denver')
    await type(page, {
      Passphrase: PASSPHRASE,
      'Passphrase again': PASSPHRASE,
      'Time zone of the yard': 'Pacific/Auckland',
    })
    await press(page, 'Make the account')
    await page.waitForURL((url) => url.pathname === '/')
    expect(yard.store.settings.get('timeZone')).toBe('Pacific/Auckland')
    // Noon UTC is midnight in Auckland in June (UTC+12, IANA tz): already the next day there.
    expect(await read(page.locator('.masthead-day'))).toContain('Thu 11 Jun')
    expect(noticed).toEqual([])
  } finally {
    await context.close()
    await yard.stop()
  }
})
