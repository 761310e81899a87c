/** A page that is kept is not opened; one that was spoilt since is opened, and what is wrong with it is found. */
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest'
import { launch, PHONE, watchedPage } from '../support/browser.ts'
import { setLetters, sidewaysScroll, smallTargets, violations } from '../support/page-checks.ts'
import { signInAs } from '../support/people.ts'
import { type Lines, looksWith } from '../support/proven-pages.ts'
import { keepSignedIn, sessionAt } from '../support/signed-in.ts'
import { type Wire, wireTo } from '../support/wire.ts'
import { type RunningYard, startYard } from '../support/yard.ts'

const PATH = '/find'
const SCREEN = PHONE.viewport.height

let browser: Awaited<ReturnType<typeof launch>>
let yard: RunningYard
let wire: Wire
/** What is kept, for looks that begin anew each time, as they do from one run to the next. */
let kept: Lines
/** What was kept of the page as it is: another yard at another address sends the same. */
let asItIs: Lines = new Map()
beforeAll(async () => {
  browser = await launch()
  yard = await startYard({ day: '2026-06-10' })
})
afterAll(async () => {
  await browser.close()
  await yard.stop()
})
beforeEach(async () => {
  kept = new Map(asItIs)
  wire = await wireTo(yard.url)
  keepSignedIn(wire.url, await signInAs(yard.people, { name: 'Wren', role: 'operator' }))
  return () => wire.stop()
})

/** All that the journeys look for on a phone, in few words. */
async function faults(page: Page): Promise<string[]> {
  await page.goto(PATH)
  const wrong = (await violations(page)).map((v) => v.split(':')[0] ?? '')
  if ((await smallTargets(page, 48)).length > 0) wrong.push('small target')
  if ((await page.evaluate(() => document.documentElement.scrollHeight)) > 3 * SCREEN) wrong.push('too tall')
  await setLetters(page, 2)
  if ((await sidewaysScroll(page)) > 0) wrong.push('wider than the screen')
  return wrong
}

/** What is found by a browser and looks that know only what is kept, and how many pages they opened for it. */
async function look(code = import.meta.filename): Promise<{ found: string[]; opened: number }> {
  const phone = await watchedPage(browser, wire.url, PHONE)
  const looks = looksWith(kept, kept, code)
  const found = await looks.found(phone, PATH, 'phone', () => faults(phone.page))
  await phone.context.close()
  return { found, opened: looks.opened.length }
}

const KEPT = { found: [], opened: 0 }
const AT_FIRST = { found: [], opened: 1 }

/** The first file with that ending that is named at that address. */
async function fileIn(path: string, ending: 'css' | 'js'): Promise<string> {
  const headers = { cookie: `resettle=${sessionAt(wire.url)}` }
  const text = await (await fetch(`${wire.url}${path}`, { headers })).text()
  const name = new RegExp(`["'\`](?:/assets|\\.)(/[\\w-]+\\.${ending})["'\`]`).exec(text)?.[1]
  if (name === undefined) throw new Error(`${path} names no ${ending}`)
  return `/assets${name}`
}

const inMain = (html: string) => async (): Promise<void> =>
  wire.change(PATH, (page) => page.replace('</main>', `${html}</main>`))
const inStyles = (css: string) => async (): Promise<void> =>
  wire.change(await fileIn(PATH, 'css'), (styles) => `${styles}\n${css}`)

it('a page without a fault is opened once', async () => {
  expect(await look()).toEqual(AT_FIRST)
  expect(await look()).toEqual(KEPT)
  asItIs = kept
})

it.each([
  ['small target', inMain('<nav aria-label="Tiny"><a href="/">x</a></nav>')],
  ['too tall', inMain('<p>More and more.</p>'.repeat(150))],
  ['color-contrast', inStyles('main * { color: #ccc !important }')],
  ['wider than the screen', inStyles('main h1 { min-width: 16rem !important }')],
])('%s, planted on a page that is kept, is found', async (fault, plant) => {
  expect(await look()).toEqual(KEPT)
  await plant()
  expect(await look()).toEqual({ found: expect.arrayContaining([fault]), opened: 1 })
  // What is found faulty is never kept.
  expect(kept.size).toBe(asItIs.size)
})

it('a page is opened again when a script of it, one that this names, or what reads it has changed', async () => {
  expect(await look()).toEqual(KEPT)
  const script = await fileIn(PATH, 'js')
  for (const file of [script, await fileIn(script, 'js')]) {
    wire.change(file, (text) => `${text}\n// changed`)
    expect(await look(), file).toEqual(AT_FIRST)
    expect(await look(), file).toEqual(KEPT)
  }
  expect(await look(new URL('find.journey.ts', import.meta.url).pathname)).toEqual(AT_FIRST)
})
