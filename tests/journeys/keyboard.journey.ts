/**
 * A visit by keyboard alone, and at every stop of the Tab key what has the focus can be seen: WCAG 2.2, 2.4.11 "Focus Not Obscured
 * (Minimum)". At 400 % zoom a screen of 1280 x 1024 is 320 x 256 CSS pixels (WCAG 2.2, 1.4.10 "Reflow").
 */
import type { Browser, CDPSession, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { type Device, LAPTOP, launch, PHONE, type Watched, watchedPage } from '../support/browser.ts'
import { someOf } from '../support/long.ts'
import { sidewaysScroll } from '../support/page-checks.ts'
import { looksOf } from '../support/proven-pages.ts'
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
const looks = looksOf('keyboard', import.meta.filename)

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

interface InPage {
  /** Where the Tab key stands; null when it has left the page. */
  standing: () => Stop | null
  /** Where each press of it left the focus. */
  stops: (Stop | null)[]
}

/** In every page from its beginning: looks where the focus stands whenever it is asked to, and after each press of Tab. */
function watchFocus(): void {
  const standing = (): Stop | null => {
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
  }
  const inPage: InPage = { standing, stops: [] }
  addEventListener('keyup', ({ key }) => key === 'Tab' && inPage.stops.push(standing()))
  Object.assign(globalThis, inPage)
}

const stop = (page: Page): Promise<Stop | null> =>
  page.evaluate(() => (globalThis as unknown as InPage).standing())

/** A page on that device which watches its focus. */
async function watched(yard: RunningYard, device: Device): Promise<Watched> {
  const opened = await watchedPage(browser, yard.url, device)
  await opened.context.addInitScript(watchFocus)
  return opened
}

/** Walks on until `there`; the stops on the way that could not be seen. */
async function tabTo(page: Page, there: (s: Stop) => boolean): Promise<string[]> {
  const hidden: string[] = []
  for (let n = 0; n < MOST_STOPS; n++) {
    await page.keyboard.press('Tab')
    const at = await stop(page)
    if (at === null) throw new Error('left the page')
    if (!at.seen) hidden.push(shown(at))
    if (there(at)) return hidden
  }
  throw new Error(`more than ${MOST_STOPS} stops`)
}

/** So many presses are sent before the page is asked where they led: a question costs more than a press. */
const STRIDE = 10
const TAB = { key: 'Tab', code: 'Tab', windowsVirtualKeyCode: 9 }

/** Every stop of the open page, from its top until Tab leaves it. */
async function allStops(page: Page, keys: CDPSession): Promise<Stop[]> {
  await page.evaluate(() => {
    // Where focus was taken from the page, Tab goes on: at its very beginning.
    const before = document.createElement('div')
    before.tabIndex = -1
    document.body.prepend(before)
    before.focus()
    before.remove()
    scrollTo(0, 0)
    ;(globalThis as unknown as InPage).stops.length = 0
  })
  for (let pressed = STRIDE; pressed <= MOST_STOPS; pressed += STRIDE) {
    const presses = Array.from({ length: STRIDE }, () => ['rawKeyDown', 'keyUp'] as const).flat()
    await Promise.all(presses.map((type) => keys.send('Input.dispatchKeyEvent', { type, ...TAB })))
    const stops = await page.evaluate(() => (globalThis as unknown as InPage).stops)
    if (stops.length !== pressed) throw new Error(`${stops.length} stops after ${pressed} presses`)
    const end = stops.indexOf(null)
    if (end >= 0) return stops.slice(0, end).filter((at) => at !== null)
  }
  throw new Error(`more than ${MOST_STOPS} stops`)
}

const shown = ({ name, value }: Stop): string => `${name} ${value}`

it.each(someOf(SCREENS, 2))('a visit from its first stop to Save on %s', async (_, device) => {
  const yard = await startYard({ day: DAY, demo: true })
  const { page, context } = await watched(yard, device)
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

/** What is hidden when it has the focus, on each of these screens. */
async function hiddenOn(
  page: Page,
  keys: CDPSession,
  screens: readonly Device[],
  path: string,
): Promise<string[]> {
  const hidden: string[] = []
  await page.goto(path)
  for (const { viewport } of screens) {
    await page.setViewportSize(viewport)
    const stops = await allStops(page, keys)
    // The way past the masthead comes first: the walk began at the top.
    expect(stops[0]?.name, path).toMatch(/^Skip/)
    for (const at of stops)
      if (!at.seen) hidden.push(`${path} on ${viewport.width} x ${viewport.height}: ${shown(at)}`)
  }
  return hidden
}

/** Screens and pages on which what has the focus is hidden, at any stop. The screens are of one kind: a page is opened once for all. */
async function hiding(
  yard: RunningYard,
  screens: readonly Device[],
  paths: readonly string[],
): Promise<string[]> {
  const [first = PHONE] = screens
  const by = await watched(yard, first)
  const { page, context } = by
  const keys = await context.newCDPSession(page)
  const hidden: string[] = []
  const sizes = screens.map(({ viewport }) => `${viewport.width} x ${viewport.height}`).join('; ')
  for (const path of paths)
    hidden.push(...(await looks.found(by, path, sizes, () => hiddenOn(page, keys, screens, path))))
  await context.close()
  return hidden
}

const PATHS = ['/', '/round', '/round/box/M-12', '/colony/M-10/visit', '/colony/T-07/visit?lid=on']

it('nothing that has the focus is hidden on Today, the round, a box, its visits, an intake, a colony and the yard', async () => {
  const yard = await startYard({ day: DAY, demo: true })
  try {
    const paths = [...PATHS, '/intake', '/colony/M-12', '/yard']
    const screens = SCREENS.map(([, device]) => device)
    for (const touch of [true, false]) {
      const alike = screens.filter((device) => device.touch === touch)
      expect(await hiding(yard, alike, paths)).toEqual([])
    }
  } finally {
    await yard.stop()
  }
})

it('nor with words a third longer, on a phone and a small one', async () => {
  const yard = await startYard({ day: DAY, demo: true, words: LONGER })
  try {
    const paths = [...PATHS, '/colony/M-10/note', '/colony/M-10/missed']
    expect(await hiding(yard, [PHONE, of(320, 568)], paths)).toEqual([])
  } finally {
    await yard.stop()
  }
})
