/**
 * A visit by keyboard alone, and at every stop of the Tab key what has the focus can be seen: WCAG 2.2, 2.4.11 "Focus Not Obscured
 * (Minimum)". At 400 % zoom a screen of 1280 x 1024 is 320 x 256 CSS pixels (WCAG 2.2, 1.4.10 "Reflow").
 */
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { type Device, LAPTOP, launch, PHONE, watchedPage } from '../support/browser.ts'
import { sidewaysScroll } from '../support/page-checks.ts'
import { type RunningYard, startYard } from '../support/yard.ts'
import { LONGER } from '../words/made-up.ts'

const DAY = '2026-06-10'
/** More stops than any page has. */
const MOST_STOPS = 200

const of = (width: number, height: number, base = PHONE): Device => ({ ...base, viewport: { width, height } })
const SCREENS: [string, Device][] = [
  ['a phone', PHONE],
  ['a small phone', of(320, 568)],
  ['a phone on its side', of(844, 390)],
  ['400 % zoom', of(320, 256)],
  ['a laptop', LAPTOP],
]

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

interface Stop {
  name: string
  value: string
  /** Its middle, and its upper or lower edge, can be seen. */
  seen: boolean
}

/** Where the Tab key stands; null when it has left the page. */
const stop = (page: Page): Promise<Stop | null> =>
  page.evaluate(() => {
    const e = document.activeElement
    if (e === null || e === document.body) return null
    const { left, top, bottom, width, height } = e.getBoundingClientRect()
    const at = (y: number): boolean => {
      const there = document.elementFromPoint(left + width / 2, y)
      return (
        there !== null &&
        (e.contains(there) || there.contains(e) || e.closest('label')?.contains(there) === true)
      )
    }
    const name = e.getAttribute('name') ?? e.textContent?.trim().slice(0, 40) ?? ''
    return {
      name,
      value: e instanceof HTMLInputElement ? e.value : '',
      seen: at(top + height / 2) && (at(top + 3) || at(bottom - 3)),
    }
  })

/** Walks on with Tab, to the end of the page. */
async function* stops(page: Page): AsyncGenerator<Stop> {
  for (let n = 0; n < MOST_STOPS; n++) {
    await page.keyboard.press('Tab')
    const at = await stop(page)
    if (at === null) return
    yield at
  }
  throw new Error(`more than ${MOST_STOPS} stops`)
}

const shown = ({ name, value }: Stop): string => `${name} ${value}`

/** Walks on until `there`; the stops on the way that could not be seen. */
async function tabTo(page: Page, there: (s: Stop) => boolean): Promise<string[]> {
  const hidden: string[] = []
  for await (const at of stops(page)) {
    if (!at.seen) hidden.push(shown(at))
    if (there(at)) return hidden
  }
  throw new Error('left the page')
}

it.each(SCREENS)('a visit from its first stop to Save on %s', async (_, device) => {
  const yard = await startYard({ day: DAY, demo: true })
  const { page, context } = await watchedPage(browser, yard.url, device)
  try {
    await page.goto('/colony/M-13/visit')
    expect(await sidewaysScroll(page)).toBe(0)
    for (const name of ['eggs', 'open', 'cells']) {
      expect(await tabTo(page, (s) => s.name === name)).toEqual([])
      // From "not looked" to "none".
      await page.keyboard.press('ArrowRight')
      const at = await stop(page)
      expect(at).toMatchObject({ name, value: 'none', seen: true })
    }
    expect(await tabTo(page, (s) => s.name === 'note')).toEqual([])
    await page.keyboard.type('Calm, no roar.')
    expect(await tabTo(page, (s) => s.name === 'Save the visit')).toEqual([])
    await Promise.all([page.waitForNavigation(), page.keyboard.press('Enter')])
    const seen = yard.store.colony('M-13')?.journal.find((r) => r.entry.on === DAY)?.entry
    expect(seen).toMatchObject({
      kind: 'inspection',
      eggs: 'none',
      open: 'none',
      cells: 'none',
      note: 'Calm, no roar.',
    })
  } finally {
    await context.close()
    await yard.stop()
  }
})

/** Pages on which `device` hides what has the focus, at any stop. */
async function hiding(yard: RunningYard, device: Device, paths: readonly string[]): Promise<string[]> {
  const { page, context } = await watchedPage(browser, yard.url, device)
  const hidden: string[] = []
  for (const path of paths) {
    await page.goto(path)
    for await (const at of stops(page)) if (!at.seen) hidden.push(`${path}: ${shown(at)}`)
  }
  await context.close()
  return hidden
}

const PATHS = ['/', '/round', '/round/box/M-12', '/colony/M-10/visit', '/colony/T-07/visit?lid=on']

it('nothing that has the focus is hidden on Today, the round, a box, its visits, an intake, a colony and the yard', async () => {
  const yard = await startYard({ day: DAY, demo: true })
  try {
    for (const [name, device] of SCREENS)
      expect(await hiding(yard, device, [...PATHS, '/intake', '/colony/M-12', '/yard']), name).toEqual([])
  } finally {
    await yard.stop()
  }
})

it('nor with words a third longer, on a phone and a small one', async () => {
  const yard = await startYard({ day: DAY, demo: true, words: LONGER })
  try {
    for (const device of [PHONE, of(320, 568)])
      expect(await hiding(yard, device, [...PATHS, '/colony/M-10/note', '/colony/M-10/missed'])).toEqual([])
  } finally {
    await yard.stop()
  }
})
