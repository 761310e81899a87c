/**
 * Small screens, large letters, colours of one's own: WCAG 2.2, 1.4.4 (letters to 200 %), 1.4.10 (320 px without scrolling
 * sideways), 1.4.11 (states can be told), every page of a helper and the main ones of an operator, folds shut and open.
 */
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { ACTS } from '../../src/words/acts.ts'
import { type Device, launch, PHONE, type Watched, watchedPage } from '../support/browser.ts'
import { PATIENCE } from '../support/long.ts'
import {
  brokenWords,
  openFolds,
  setLetters,
  sidewaysScroll,
  spillingWords,
  violations,
} from '../support/page-checks.ts'
import { signInAs } from '../support/people.ts'
import { looksOf } from '../support/proven-pages.ts'
import { shot } from '../support/shot.ts'
import { keepSignedIn } from '../support/signed-in.ts'
import { type RunningYard, startYard } from '../support/yard.ts'
import { LONGER } from '../words/made-up.ts'

const DAY = '2026-06-10'
const NARROW: Device = { ...PHONE, viewport: { width: 320, height: 568 } }
const looks = looksOf('large-letters', import.meta.filename)

let yard: RunningYard
let browser: Browser
beforeAll(async () => {
  yard = await startYard({ day: DAY, demo: true })
  browser = await launch()
})
afterAll(async () => {
  await browser.close()
  await yard.stop()
  expect(yard.errors).toEqual([])
})

/** One colony in each phase, on its page and on the round. */
function boxes(): string[] {
  const phases = new Map(yard.store.colonies({ open: true }).map((c) => [c.phase, c.tag]))
  const onRound = yard.store.today(DAY)[0]?.tag
  return [...[...phases.values()].map((tag) => `/colony/${tag}`), `/round/box/${onRound}`]
}

function corrections(): string[] {
  const kinds = new Map([...yard.store.journal()].map((r) => [r.entry.kind, r.entry.id]))
  return ['inspection', 'given', 'mite-wash', 'note'].map(
    (kind) => `/entry/${kinds.get(kind as 'note')}/correct`,
  )
}

const helpersPages = (): string[] => [
  ...[
    '/',
    '/round',
    '/yard',
    '/find',
    '/find?q=swarm',
    '/paper',
    '/labels',
    '/calendar',
    '/health',
    '/outbox',
  ],
  ...['/account', '/rates', '/sheet-entry', '/weeks', '/how', '/how/words', '/how/first-round'],
  ...ACTS.map((act) => `/how/${act}`),
  ...boxes(),
  ...['visit', 'visit?lid=on', 'move', 'note', 'health', 'wash', 'feed', 'missed'].map(
    (f) => `/colony/M-10/${f}`,
  ),
  ...corrections(),
]

function operatorsPages(): string[] {
  const sheet = yard.store.removals
    .list()
    .find((r) => r.sheet.decision === undefined && r.sheet.check.hours)?.id
  const left = yard.store.colonies({ open: false })[0]?.id
  return [
    ...['/intake', '/removals', '/removals/new', `/removals/${sheet}`, `/removals/${sheet}/check`, '/review'],
    ...[
      '/supplies',
      '/stands',
      '/protocol',
      '/settings',
      '/people',
      '/data',
      '/handing-on',
      '/letters',
      '/yard-book',
    ],
    ...['outcome', 'treat'].map((f) => `/colony/M-10/${f}`),
    ...['', '/letter', '/move-record', '/keeper-sheet'].map((f) => `/colony/${left}${f}`),
  ]
}

/** A screen, and whether its letters are twice as large. */
interface Look {
  viewport: Device['viewport']
  large: boolean
}
const SMALL: Look = { viewport: NARROW.viewport, large: false }
const USUAL: Look = { viewport: PHONE.viewport, large: false }
const LARGE: Look = { viewport: PHONE.viewport, large: true }

const called = ({ viewport, large }: Look): string => `${viewport.width} px${large ? ', large' : ''}`

/** Shows the open page so: it need not be fetched again for that. */
async function show(page: Page, look: Look): Promise<void> {
  await page.setViewportSize(look.viewport)
  await setLetters(page, look.large ? 2 : 1)
}

/** What does not fit on the page in each look. */
const misfits = (by: Watched, path: string, shown: readonly Look[]): Promise<string[]> =>
  looks.found(by, path, shown.map(called).join('; '), () => misfitsOpened(by.page, path, shown))

/** With its folds shut, then open. */
async function misfitsOpened(page: Page, path: string, shown: readonly Look[]): Promise<string[]> {
  const answer = await page.goto(path)
  if (answer?.status() !== 200) return [`${path}: ${answer?.status()}`]
  const wrong: string[] = []
  for (const folds of ['shut', 'open']) {
    if (folds === 'open') await openFolds(page)
    for (const look of shown) {
      await show(page, look)
      const wide = await sidewaysScroll(page)
      if (wide > 0) wrong.push(`${wide} px wider than the screen (${called(look)}, folds ${folds})`)
      wrong.push(...(await spillingWords(page)).map((w) => `${w} (${called(look)}, folds ${folds})`))
    }
  }
  return wrong.map((w) => `${path}: ${w}`)
}

/** Words broken in two, in each look; null where the page is not said in Spanish. */
async function brokenInSpanish(page: Page, path: string): Promise<string[] | null> {
  await page.goto(path)
  if ((await page.locator('html').getAttribute('lang')) !== 'es') return null
  await openFolds(page)
  const broken: string[] = []
  for (const look of [SMALL, USUAL]) {
    await show(page, look)
    broken.push(...(await brokenWords(page)).map((w) => `${path}: ${w} (${called(look)})`))
  }
  return broken
}

async function as(role: 'helper' | 'operator'): Promise<Watched> {
  keepSignedIn(yard.url, await signInAs(yard.people, { name: role === 'helper' ? 'Teuila' : 'Ines', role }))
  return watchedPage(browser, yard.url, NARROW)
}

describe('on 320 px, and with letters twice as large', () => {
  it.each(['helper', 'operator'] as const)(
    'nothing scrolls sideways or lies over another, for the %s',
    async (role) => {
      const by = await as(role)
      const { page, context } = by
      const wrong: string[] = []
      for (const path of role === 'helper' ? helpersPages() : operatorsPages())
        wrong.push(...(await misfits(by, path, [SMALL, LARGE])))
      await page.goto('/')
      for (const look of [SMALL, LARGE]) {
        await show(page, look)
        await page.screenshot({ path: shot(`today-${look.large ? 'large' : 'narrow'}-${role}`) })
      }
      await context.close()
      expect(wrong).toEqual([])
    },
    PATIENCE * 300_000,
  )
})

it(
  'with words a third longer nothing scrolls sideways or lies over another, for the helper',
  async () => {
    const other = await startYard({
      day: DAY,
      demo: true,
      as: { name: 'Teuila', role: 'helper' },
      words: LONGER,
    })
    const by = await watchedPage(browser, other.url, NARROW)
    const { page, context } = by
    const wrong: string[] = []
    for (const path of [...helpersPages(), '/account/messages', '/account/calendar', '/round/end'])
      wrong.push(...(await misfits(by, path, [SMALL, USUAL])))
    await page.goto('/')
    expect(await page.locator('.ways').first().textContent()).toContain(LONGER.ways['/round'])
    for (const look of [SMALL, USUAL]) {
      await show(page, look)
      await page.screenshot({ path: shot(`today-longer-${look.viewport.width}`) })
    }
    await context.close()
    await other.stop()
    expect(wrong).toEqual([])
    expect(other.errors).toEqual([])
  },
  PATIENCE * 300_000,
)

it(
  'in Spanish no word is broken in two',
  async () => {
    const by = await as('helper')
    const { page, context } = by
    const teuila = yard.people.accounts.byName('Teuila')?.id ?? ''
    yard.people.accounts.setLanguage(teuila, 'es')
    const wrong: string[] = []
    let read = 0
    for (const path of helpersPages()) {
      const broken = await looks.found(by, path, 'no word broken', () => brokenInSpanish(page, path))
      if (broken === null) continue
      read++
      wrong.push(...broken)
    }
    yard.people.accounts.setLanguage(teuila, null)
    await context.close()
    expect(read).toBeGreaterThan(40)
    expect(wrong).toEqual([])
  },
  PATIENCE * 300_000,
)

describe.each([false, true])('in colours of the system, dark: %s', (dark) => {
  it('what is tapped, late or to be done can be told, and its words be read', async () => {
    keepSignedIn(yard.url, await signInAs(yard.people, { name: 'Teuila', role: 'helper' }))
    const { page, context } = await watchedPage(browser, yard.url, PHONE, { dark })
    await page.emulateMedia({ forcedColors: 'active', colorScheme: dark ? 'dark' : 'light' })
    for (const path of ['/', '/round', '/colony/M-10', '/colony/M-10/visit']) {
      await page.goto(path)
      expect(await unreadable(page), path).toEqual([])
    }
    expect(await violations(page)).toEqual([])
    await page.screenshot({ path: shot(`visit-forced${dark ? '-dark' : ''}`) })
    await context.close()
  })
})

/** Controls and marks whose words have the colour of what is behind them; answers that look the same tapped or not. */
const unreadable = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const wrong: string[] = []
    const clear = 'rgba(0, 0, 0, 0)'
    const paper = getComputedStyle(document.body).backgroundColor
    for (const e of document.querySelectorAll<HTMLElement>('.button, .mark, .way, .tap span, .pick')) {
      if (e.getClientRects().length === 0) continue
      const { color, forcedColorAdjust } = getComputedStyle(e)
      let behind: Element | null = e
      while (behind !== null && getComputedStyle(behind).backgroundColor === clear)
        behind = behind.parentElement
      const under = behind === null ? paper : getComputedStyle(behind).backgroundColor
      // Where colours are forced, words stand on a patch of the system's paper, whatever is behind them.
      const ground = forcedColorAdjust === 'none' ? under : paper
      if (color === ground) wrong.push(`${(e.textContent ?? '').trim().slice(0, 30)}: ${color} on ${ground}`)
    }
    const [tapped] = document.querySelectorAll('.tap input:checked + span')
    const [other] = document.querySelectorAll('.tap input:not(:checked) + span')
    if (tapped !== undefined && other !== undefined) {
      const [a, b] = [getComputedStyle(tapped), getComputedStyle(other)]
      if (a.backgroundColor === b.backgroundColor) wrong.push('an answer looks the same tapped or not')
    }
    return wrong
  })
