/** What a tap does on a phone: calls, shows a place, shares, copies, puts in the time; and how things are done, without signal. */
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { launch, PHONE, watchedPage } from '../support/browser.ts'
import { intakes, startField } from '../support/field.ts'
import { sidewaysScroll, smallTargets, violations } from '../support/page-checks.ts'
import { follow, headline, words } from '../support/person.ts'
import { shot } from '../support/shot.ts'
import { type RunningYard, startYard } from '../support/yard.ts'

const DAY = '2026-06-10'

let browser: Browser
let yard: RunningYard
beforeAll(async () => {
  browser = await launch()
  yard = await startYard({ day: DAY, demo: true })
})
afterAll(async () => {
  await browser.close()
  await yard.stop()
  expect(yard.errors).toEqual([])
})

it('a customer is called, written to and found on the map; the address is copied, the time of opening put in', async () => {
  const id = '019eb100-0000-7000-8000-000000000001'
  const job = {
    name: 'Osla Brand',
    phone: '01632 960 123',
    email: 'osla@example.org',
    address: '4 Invented Row',
  }
  const saved = yard.store.removals.save(
    id,
    0,
    { job: { ...job, plannedOn: DAY }, site: {}, agreement: {}, check: {}, work: {} },
    { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Wren' },
  )
  expect(saved).toMatchObject({ ok: true })
  const { page, context, noticed } = await watchedPage(browser, yard.url, PHONE)
  await context.grantPermissions(['clipboard-read', 'clipboard-write'])
  try {
    await page.goto(`/removals/${id}`)
    const hrefs = await page.locator('.reach a').evaluateAll((all) => all.map((a) => a.getAttribute('href')))
    expect(hrefs).toEqual([
      'tel:01632960123',
      'sms:01632960123',
      'mailto:osla@example.org',
      'geo:0,0?q=4%20Invented%20Row',
    ])
    await page.locator('[data-copy]').first().click()
    await page.getByRole('button', { name: 'Copied' }).waitFor()
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe('4 Invented Row')

    await page.goto(`/removals/${id}/work`)
    const opened = page.locator('input[name="openedAt"]')
    await opened.evaluate((field) => {
      for (
        let fold = field.closest('details');
        fold !== null;
        fold = fold.parentElement?.closest('details') ?? null
      )
        fold.open = true
    })
    await page.locator('[data-now="f-openedAt"]').click()
    // The yard's own time, in which the server writes the page too.
    const zone = await page.locator('body').getAttribute('data-zone')
    const now = new Intl.DateTimeFormat('en-GB', { timeStyle: 'short', timeZone: zone ?? 'UTC' })
    const minutes = (time: string): number => Number(time.slice(0, 2)) * 60 + Number(time.slice(3))
    const off = minutes(await opened.inputValue()) - minutes(now.format(new Date()))
    expect(Math.abs(off)).toBeLessThanOrEqual(1)
    // The other times are as they were.
    expect(await page.locator('input[name="boxedAt"]').inputValue()).toBe('')
    expect(await violations(page)).toEqual([])
    expect(noticed).toEqual([])
  } finally {
    await context.close()
  }
})

it('the keys of a telephone and of mail come up where one types them', async () => {
  const { page, context } = await watchedPage(browser, yard.url, PHONE)
  await page.goto('/removals/new')
  expect(await page.locator('input[name="phone"]').getAttribute('type')).toBe('tel')
  expect(await page.locator('input[name="email"]').getAttribute('type')).toBe('email')
  await context.close()
})

it('an address that was made is shared where the browser shares, copied where it does not, and can be mailed', async () => {
  const left = yard.store.colonies({ open: false })[0]
  const { page, context } = await watchedPage(browser, yard.url, PHONE)
  try {
    await page.addInitScript(() => {
      const shared: unknown[] = []
      Object.assign(window, { shared })
      Object.defineProperty(navigator, 'share', {
        value: (what: unknown) => {
          shared.push(what)
          return Promise.resolve()
        },
      })
    })
    await page.goto(`/colony/${left?.id}/letter`)
    await page.getByRole('button', { name: 'Make an address for it' }).click()
    await page.waitForLoadState()
    const link = (await page.locator('.copyable').textContent()) ?? ''
    expect(link).toContain('/letter/')
    await page.locator('[data-share]').click()
    expect(await page.evaluate(() => (window as unknown as { shared: unknown }).shared)).toEqual([
      { title: 'Your bees', text: link },
    ])
    const mail = await page.locator('a[href^="mailto:"]').getAttribute('href')
    expect(decodeURIComponent(mail ?? '')).toContain(link)
    expect(await smallTargets(page, 48)).toEqual([])
  } finally {
    await context.close()
  }
})

it('without signal an act has its steps, a word its drawing, and a new helper a first round', async () => {
  const field = await startField(browser, { day: DAY, entries: intakes(['W-01'], '2026-06-05') })
  try {
    field.wire.fate(() => 'cut')
    await field.page.goto('/')
    await field.page.locator('.todo summary').first().click()
    await follow(field.page, 'How it is done')
    expect(await headline(field.page)).toBe('Open a box for the first brood check')
    expect(await field.page.locator('.how-steps li').count()).toBe(5)
    expect(await field.page.locator('.drawing svg').count()).toBe(6)
    await field.page.screenshot({ path: shot('how-phone') })
    await follow(field.page, '‹ How it is done')
    await follow(field.page, 'Words and drawings')
    expect(await words(field.page)).toContain('Laying workers')
    expect(await sidewaysScroll(field.page)).toBe(0)
    await field.page.goto('/how/first-round')
    expect(await words(field.page)).toContain('At each box')
    expect(await violations(field.page)).toEqual([])
  } finally {
    await field.stop()
  }
})
