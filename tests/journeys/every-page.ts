/** Every page of the invented yard, light and dark: what must hold on all of them. One journey file a device runs it. */
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { ACCOUNT_TABS, SUPPLY_TABS, WAYS } from '../../src/parts/nav.ts'
import { PHASES } from '../../src/recovery/plan-types.ts'
import type { Store } from '../../src/store/index.ts'
import { english } from '../../src/words/en/index.ts'
import { type Device, LAPTOP, launch, type Watched, watchedPage } from '../support/browser.ts'
import { LONG } from '../support/long.ts'
import {
  bytesFor,
  leastShift,
  sidewaysScroll,
  smallTargets,
  violations,
  wordsOutside,
} from '../support/page-checks.ts'
import { press } from '../support/person.ts'
import { looksOf } from '../support/proven-pages.ts'
import { startYard } from '../support/yard.ts'

const DAY = '2026-06-10'
/** A page with all it loads, over the wire. */
const MOST_BYTES = 60 * 1024
/** The review brings Chart.js with it; a visit the whole of what a plan is made by, for the panel that answers as one taps. */
const MOST_BYTES_OF: Record<string, number> = {
  '/review': 200 * 1024,
  '/colony/M-10/visit': 190 * 1024,
  '/colony/M-10/visit?lid=on': 190 * 1024,
}
/** At a visit Save makes room for the panel once that has something to say (web.dev calls less than 0.1 good); elsewhere nothing moves. */
const MOST_SHIFT_OF: Record<string, number> = { '/colony/M-10/visit': 0.01 }
/** CSS pixels: a finger in a glove. */
const LEAST_TARGET = 48

/** What a page is called here, and where it is. */
type Address = [name: string, path: string]

/** One colony in each phase. */
const inEachPhase = (store: Store): Address[] =>
  PHASES.map((phase) => {
    const found = store.colonies().find((c) => c.phase === phase)
    if (found === undefined) throw new Error(`no colony is ${phase}`)
    return [`a colony that is ${phase}`, `/colony/${found.closedOn === null ? found.tag : found.id}`]
  })

/** The forms of a colony. */
const forms = [
  ...['visit', 'visit?lid=on', 'outcome', 'move', 'note', 'letter', 'move-record', 'keeper-sheet'],
  ...['health', 'cleared'],
].map((form): Address => [form, `/colony/M-10/${form}`])

/** A removal sheet in each part, of the job furthest from done. */
function removals(store: Store): Address[] {
  const sheet = store.removals.list().find((r) => r.sheet.decision === undefined && r.sheet.check.hours)
  if (sheet === undefined) throw new Error('no removal is under way')
  const parts = [
    '',
    '/job',
    '/site',
    '/agreement',
    '/check',
    '/sign',
    '/work',
    '/call-back',
    '/erase',
    '/print?what=job',
  ]
  return parts
    .map((part) => `${sheet.id}${part}`)
    .map((path): Address => [`a removal: ${path.split('/')[1] ?? path}`, `/removals/${path}`])
}

/** Correcting an entry of each kind, and taking one back. */
function corrections(store: Store): Address[] {
  const entries = [...store.journal()].map((r) => r.entry)
  const kinds = new Map(entries.filter((e) => e.kind !== 'withdrawal').map((e) => [e.kind, e.id]))
  return [
    ...[...kinds].map(([kind, id]): Address => [`a correction of ${kind}`, `/entry/${id}/correct`]),
    ['a withdrawal', `/entry/${kinds.get('note')}/withdraw`],
    ['a visit that was at another box', `/entry/${kinds.get('inspection')}/other-box`],
  ]
}

const pagesOf = (store: Store): Address[] => [
  ...WAYS.map((way): Address => [english.ways[way.href], way.href]),
  ...[...SUPPLY_TABS, ...ACCOUNT_TABS].map((tab): Address => [`a tab: ${english.tabs[tab]}`, tab]),
  ['the yard, all of it', '/yard?show=all&sort=next'],
  ['supplies, another order', '/supplies?chanceShort=0.01&inHand=2'],
  ['a colony, a frame of brood given later', '/colony/M-09?frame=2026-06-17'],
  ['the yard, nothing found', '/yard?find=nothing-like-this'],
  ['an act', '/how/first-brood-check'],
  ['the words', '/how/words'],
  ['a first round', '/how/first-round'],
  ['find', '/find'],
  ['find, by a word', '/find?q=swarm'],
  ['find, nothing like it', '/find?q=nothing-like-this'],
  ['what is not in the book', '/refused'],
  ...inEachPhase(store),
  ...forms,
  ...removals(store),
  ...corrections(store),
]

/**
 * The server sends a wide screen what it sends a narrow one, in the same colours (tests/house/styles.test.ts): every day each page is
 * opened on the phone and, once read, drawn as wide as a laptop too; a laptop of its own opens these, which are laid out differently
 * there. The long run opens all of them on both.
 */
const READ_WIDE = ['/', '/yard', '/review', '/supplies', '/colony/M-10/visit']

/** What does not fit. */
async function spills(page: Page): Promise<string[]> {
  const wide = await sidewaysScroll(page)
  return [
    ...(wide > 0 ? [`${wide} px wider than the screen`] : []),
    ...(await wordsOutside(page)).map((t) => `words outside their picture: ${t}`),
  ]
}

/** What does not fit when the open page is as wide as a laptop. */
async function spillsWide(page: Page, device: Device): Promise<string[]> {
  if (!device.touch) return []
  await page.setViewportSize(LAPTOP.viewport)
  const wrong = await spills(page)
  await page.setViewportSize(device.viewport)
  return wrong.map((w) => `on a laptop: ${w}`)
}

/** What is wrong with the page that is open. */
async function wrongWith(page: Page, device: Device): Promise<string[]> {
  const { pathname } = new URL(page.url())
  const wrong = await violations(page)
  const most = MOST_SHIFT_OF[pathname] ?? 0
  const shift = await leastShift(page, undefined, most)
  if (shift > most) wrong.push(`shifted by ${shift}`)
  wrong.push(...(await spills(page)))
  if (device.touch) wrong.push(...(await smallTargets(page, LEAST_TARGET)).map((t) => `small target: ${t}`))
  return wrong
}

/** With a yard and a browser of its own: files that share a worker share what stands at the top of a module. */
export async function everyPage(device: Device): Promise<void> {
  const yard = await startYard({ day: DAY, demo: true })
  const browser = await launch()
  const looks = looksOf(`every-page-${device.name}`, import.meta.filename)
  let light: Watched
  let dark: Watched
  beforeAll(async () => {
    light = await watchedPage(browser, yard.url, device)
    dark = await watchedPage(browser, yard.url, device, { dark: true })
  })
  afterAll(async () => {
    await light.context.close()
    await dark.context.close()
    await browser.close()
    await yard.stop()
    expect(yard.errors).toEqual([])
  })

  const pages = pagesOf(yard.store)
  it.each(device.touch || LONG ? pages : pages.filter(([, path]) => READ_WIDE.includes(path)))(
    '%s is readable by all, fits, keeps still, is light, and asks nobody else',
    async (_name, address) => {
      const { page, noticed } = light
      noticed.length = 0
      const faults = await looks.found(light, address, device.name, async () => {
        const bytes = await bytesFor(page, address)
        const heavy = bytes > (MOST_BYTES_OF[address] ?? MOST_BYTES) ? [`${bytes} bytes`] : []
        return [...heavy, ...(await wrongWith(page, device)), ...(await spillsWide(page, device)), ...noticed]
      })
      expect(faults).toEqual([])
    },
  )

  it.each([
    '/',
    '/yard',
    '/intake',
    '/colony/M-22',
    '/colony/M-10/visit',
    '/colony/M-16',
    '/supplies',
    '/rates',
  ])('%s keeps its contrast in the dark', async (address) => {
    const faults = await looks.found(dark, address, `${device.name}, dark`, async () => {
      await dark.page.goto(address)
      return violations(dark.page)
    })
    expect(faults).toEqual([])
  })

  it('what cannot be read by all is found on a page that has it', async () => {
    const { page } = dark
    await page.goto('/how/words')
    await page.locator('main').evaluate((main) => {
      main.innerHTML = '<p>Faint.</p><button></button><ul><p>Loose</p></ul>'
      const [faint] = main.getElementsByTagName('p')
      faint?.style.setProperty('color', '#777')
      faint?.style.setProperty('background', '#888')
    })
    const found = (await violations(page)).map((v) => v.split(':')[0])
    expect(found).toEqual(expect.arrayContaining(['color-contrast', 'button-name', 'list']))
  })

  it('a refused form says what is wrong so that everybody hears it', async () => {
    const { page } = light
    await page.goto('/intake')
    await press(page, 'Save and make the plan')
    await page.getByRole('alert').waitFor()
    expect(await wrongWith(page, device)).toEqual([])
  })

  it('an unknown colony leads to those with tags like it', async () => {
    const { page } = light
    const answer = await page.goto('/colony/M-011')
    expect(answer?.status()).toBe(404)
    expect(await page.getByRole('link', { name: 'M-01', exact: true }).count()).toBeGreaterThan(0)
    expect(await wrongWith(page, device)).toEqual([])
  })
}
