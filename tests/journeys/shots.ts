/**
 * Pictures of every page, phone and laptop, light and dark, into tests/output/shots: to be looked at by a person.
 * Run: npx tsx tests/journeys/shots.ts [part of a name …]
 */
import { mkdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { Browser, Page } from 'playwright-core'
import type { ColonySummary, Store } from '../../src/store/index.ts'
import { type Device, launch, watchedPage } from '../support/browser.ts'
import { startYard } from '../support/yard.ts'

const FOLDER = fileURLToPath(new URL('../output/shots', import.meta.url))
const DAY = '2026-06-10'

const PHONE: Device = { name: 'phone', viewport: { width: 390, height: 844 }, touch: true }
const LAPTOP: Device = { name: 'laptop', viewport: { width: 1280, height: 900 }, touch: false }

interface Shot {
  name: string
  path: string
  /** What is done on the page before the picture. */
  before?: (page: Page) => Promise<void>
  /** Whole page or just the screen. */
  screenOnly?: boolean
}

const open = (store: Store): ColonySummary[] => store.colonies({ open: true })

/** A colony in that phase, else the first one. */
function inPhase(store: Store, phase: ColonySummary['phase']): string {
  const found = open(store).find((s) => s.phase === phase) ?? open(store)[0]
  return `/colony/${encodeURIComponent(found?.tag ?? 'none')}`
}

/** Taps an answer as a thumb would, wherever on the page it is. */
const tap = (name: string, value: string) => (page: Page) =>
  page
    .locator(`input[name="${name}"][value="${value}"]`)
    .first()
    .evaluate((input: HTMLInputElement) => {
      input.scrollIntoView({ block: 'center' })
      input.click()
    })

/** Opens every fold of the form, as one does who fills in all of it. */
const unfolded = (page: Page): Promise<void> =>
  page.locator('#entry-form details').evaluateAll((folds) => {
    for (const fold of folds) fold.setAttribute('open', '')
  })

function shots(store: Store): Shot[] {
  const unknown = inPhase(store, 'queen-unknown')
  const rearing = inPhase(store, 'rearing')
  const entry = store.changes({ limit: 500 }).find((r) => r.entry.kind === 'inspection')?.entry.id ?? ''
  const phases = [
    'awaiting-release',
    'awaiting-eggs',
    'queen-unknown',
    'rearing',
    'awaiting-new-queen',
    'laying',
    'queenright',
    'queenless',
    'laying-workers',
  ] as const
  const corrected = store.changes({ limit: 500 }).find((r) => r.entry.replaces !== undefined)
  const closed = store.colonies({ open: false })[0]
  return [
    { name: 'today', path: '/' },
    { name: 'yard', path: '/yard' },
    { name: 'yard-left', path: '/yard?show=left' },
    { name: 'yard-none', path: '/yard?find=zzz' },
    ...phases.map((phase) => ({ name: `colony-${phase}`, path: inPhase(store, phase) })),
    { name: 'colony-corrected', path: `/colony/${corrected?.entry.colony ?? ''}` },
    { name: 'colony-left', path: `/colony/${closed?.id ?? ''}` },
    {
      name: 'colony-saved',
      path: `${unknown}?saved=${store.colony(unknown.split('/')[2] ?? '')?.journal[0]?.entry.id}`,
    },
    { name: 'visit', path: `${unknown}/visit` },
    {
      name: 'visit-tapped',
      path: `${unknown}/visit`,
      screenOnly: true,
      before: async (page) => {
        await tap('opened', 'yes')(page)
        await tap('eggs', 'none')(page)
        await tap('cells', 'none')(page)
        await tap('open', 'none')(page)
      },
    },
    { name: 'visit-quiet', path: `${rearing}/visit`, screenOnly: true },
    {
      name: 'visit-refused',
      path: `${unknown}/visit`,
      before: async (page) => {
        await unfolded(page)
        await page.fill('input[name="on"]', '2030-01-01')
        await page.fill('input[name="cellCount"]', 'many')
        await page.click('.act-save')
        await page.waitForSelector('#problems')
      },
    },
    { name: 'intake', path: '/intake' },
    {
      name: 'intake-refused',
      path: '/intake',
      before: async (page) => {
        await unfolded(page)
        await page.fill('input[name="colony"]', '<b>W-1</b>')
        await page.fill('input[name="removal.outdoorC"]', '400')
        await page.click('.act-save')
        await page.waitForSelector('#problems')
      },
    },
    { name: 'outcome', path: `${unknown}/outcome` },
    { name: 'move', path: `${unknown}/move` },
    { name: 'note', path: `${unknown}/note` },
    { name: 'correct', path: `/entry/${entry}/correct` },
    { name: 'withdraw', path: `/entry/${entry}/withdraw` },
    { name: 'letter', path: `/colony/${closed?.id ?? ''}/letter` },
    { name: 'letters', path: '/letters' },
    { name: 'move-record', path: `/colony/${closed?.id ?? ''}/move-record` },
    { name: 'yard-book', path: '/yard-book', screenOnly: true },
    { name: 'messages', path: '/account/messages' },
    { name: 'tokens', path: '/account/tokens' },
    { name: 'settings', path: '/settings' },
    { name: 'no-colony', path: '/colony/W-99' },
    { name: 'no-page', path: '/nowhere' },
    { name: 'paper-colony', path: rearing, before: (page) => page.emulateMedia({ media: 'print' }) },
    { name: 'paper-today', path: '/', before: (page) => page.emulateMedia({ media: 'print' }) },
  ]
}

async function take(
  browser: Browser,
  url: string,
  list: Shot[],
  device: Device,
  dark: boolean,
): Promise<void> {
  const { page, context, noticed } = await watchedPage(browser, url, device, { dark })
  for (const shot of list) {
    await page.goto(shot.path, { waitUntil: 'load' })
    await shot.before?.(page)
    await picture(
      page,
      `${FOLDER}/${shot.name}-${device.name}${dark ? '-dark' : ''}`,
      shot.screenOnly === true,
      device,
    )
  }
  for (const line of noticed) process.stderr.write(`${device.name}: ${line}\n`)
  await context.close()
}

const PART = 1300

/** The screen, or the whole page in parts short enough to read. */
async function picture(page: Page, file: string, screenOnly: boolean, device: Device): Promise<void> {
  const whole = await page.evaluate(() => document.documentElement.scrollHeight)
  if (screenOnly || whole <= PART * 1.3) {
    await page.screenshot({ path: `${file}.png`, fullPage: !screenOnly })
    return
  }
  for (let part = 0; part * PART < whole; part++) {
    const clip = {
      x: 0,
      y: part * PART,
      width: device.viewport.width,
      height: Math.min(PART, whole - part * PART),
    }
    await page.screenshot({ path: `${file}.${part + 1}.png`, fullPage: true, clip })
  }
}

mkdirSync(FOLDER, { recursive: true })
const wanted = process.argv.slice(2)
const yard = await startYard({ day: DAY, demo: true })
const empty = await startYard({ day: DAY })
const browser = await launch()
const named = (list: Shot[]): Shot[] =>
  list.filter((s) => wanted.length === 0 || wanted.some((w) => s.name.includes(w)))
try {
  for (const device of [PHONE, LAPTOP])
    for (const dark of [false, true]) {
      await take(browser, yard.url, named(shots(yard.store)), device, dark)
      await take(
        browser,
        empty.url,
        named([
          { name: 'first-today', path: '/' },
          { name: 'first-yard', path: '/yard' },
        ]),
        device,
        dark,
      )
    }
} finally {
  await browser.close()
  await yard.stop()
  await empty.stop()
}
process.stderr.write([...yard.errors, ...empty.errors].map((e) => `${e}\n`).join(''))
