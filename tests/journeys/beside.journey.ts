/** A list and one of its boxes side by side on a laptop; on a phone, and without scripts, the page alone. */
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { LAPTOP, launch, PHONE, watchedPage } from '../support/browser.ts'
import { leastShift, sidewaysScroll, violations } from '../support/page-checks.ts'
import { read } from '../support/person.ts'
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

/** Waits until the box of that tag stands beside the list. */
const beside = (page: Page, tag: string): Promise<void> =>
  page.locator('#beside-box').getByRole('heading', { level: 1 }).filter({ hasText: tag }).waitFor()

/** `again`: comes there anew. */
async function holds(page: Page, again: () => Promise<void>): Promise<void> {
  expect(await violations(page)).toEqual([])
  expect(await leastShift(page, again)).toBe(0)
  expect(await sidewaysScroll(page)).toBe(0)
}

it('on a laptop Today opens with its first box beside it, and another one on a click', async () => {
  const { page, context, noticed } = await watchedPage(browser, yard.url, LAPTOP)
  try {
    const first = async () => {
      await page.goto('/')
      await page.locator('summary', { hasText: 'M-12' }).click()
      await beside(page, 'M-12')
    }
    await page.goto('/')
    await beside(page, 'M-16')
    await first()
    await page.screenshot({ path: shot('beside-today') })
    expect(await read(page.locator('.todo.chosen'))).toContain('M-12')
    await holds(page, first)

    // What is written down there is written as on its own page; one comes back to that page.
    await page.locator('#beside-box').getByRole('link', { name: 'Record a visit' }).click()
    await page.waitForURL('**/colony/M-12/visit')
    await page.goto('/')
    await beside(page, 'M-12')
    expect(noticed).toEqual([])
  } finally {
    await context.close()
  }
})

it('in the yard a tag shows its box, and a box that is opened has the list of today beside it', async () => {
  const { page, context, noticed } = await watchedPage(browser, yard.url, LAPTOP)
  try {
    const inTheYard = async () => {
      await page.goto('/yard')
      await page.locator('.beside-list').getByRole('link', { name: 'T-08', exact: true }).click()
      await beside(page, 'T-08')
    }
    await page.goto('/yard')
    await beside(page, 'M-01')
    await inTheYard()
    expect(new URL(page.url()).pathname).toBe('/yard')
    await holds(page, inTheYard)

    const here = page.locator('#beside-today a[aria-current="page"]')
    const opened = async () => {
      await page.goto('/colony/T-08')
      await here.waitFor()
    }
    await opened()
    expect(await read(here)).toContain('T-08')
    expect(await here.isVisible()).toBe(true)
    await holds(page, opened)
    await page.locator('#beside-today').getByRole('link', { name: /^M-13/ }).click()
    await page.waitForURL('**/colony/M-13')
    expect(noticed).toEqual([])
  } finally {
    await context.close()
  }
})

it('on a phone nothing is fetched beside a page, and a line opens its reasons', async () => {
  const { page, context } = await watchedPage(browser, yard.url, PHONE)
  try {
    const asked: string[] = []
    page.on('request', (r) => {
      if (r.resourceType() === 'fetch') asked.push(new URL(r.url()).pathname)
    })
    for (const path of ['/', '/yard', '/colony/T-08']) await page.goto(path, { waitUntil: 'networkidle' })
    expect(asked.filter((p) => p === '/' || p.startsWith('/colony'))).toEqual([])
    await page.goto('/')
    await page.locator('summary', { hasText: 'M-12' }).click()
    expect(await page.locator('.todo-why:visible').count()).toBe(1)
  } finally {
    await context.close()
  }
})

it('without scripts a laptop has the page alone, with its reasons', async () => {
  const { page, context } = await watchedPage(browser, yard.url, LAPTOP, { scripts: false })
  try {
    await page.goto('/')
    await page.locator('summary', { hasText: 'M-12' }).click()
    expect(await page.locator('.todo-why:visible').count()).toBe(1)
    expect(await page.locator('#beside-box').isVisible()).toBe(false)
    await page.goto('/colony/T-08')
    const left = await page.getByRole('heading', { level: 1 }).boundingBox()
    expect(left?.x).toBeLessThan(100)
  } finally {
    await context.close()
  }
})
