/** A round without signal, on a phone: nothing tapped is lost, doubled or reordered, whatever the network does. */
import type { Browser, Page } from 'playwright-core'
import { v7 } from 'uuid'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { LAPTOP, launch, watchedPage } from '../support/browser.ts'
import { type Field, intakes, put, recorded, startField } from '../support/field.ts'
import { sidewaysScroll, violations } from '../support/page-checks.ts'
import { PASSPHRASE } from '../support/people.ts'
import { follow, press, read, tapAll, type, words } from '../support/person.ts'
import { shot } from '../support/shot.ts'
import type { Fate } from '../support/wire.ts'

const TAGS = Array.from({ length: 12 }, (_, i) => `W-${String(i + 1).padStart(2, '0')}`)
const DAY = '2026-06-10'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

const field = (): Promise<Field> => startField(browser, { day: DAY, entries: intakes(TAGS, '2026-06-04') })

/** Records that box from its own page, as a finger does, with a note to tell it by. */
async function visit(
  page: Page,
  tag: string,
  note: string,
  answers: Record<string, string> = {},
): Promise<void> {
  await page.goto(`/colony/${tag}/visit`)
  await tapAll(page, { 'The lid': 'Opened', ...answers })
  await page.locator('textarea[name="note"]').fill(note)
  await press(page, 'Save the visit')
}

const line = (page: Page): Promise<string> => read(page.locator('#phone-line'))

it('a round of twelve boxes over a change of date arrives as it was tapped, exactly once', async () => {
  const { page, wire, yard, noticed, setDay, sent, stop } = await field()
  try {
    wire.fate(() => 'cut')
    await page.goto('/')
    expect(await words(page)).toContain('12 colonies to see to')
    for (const tag of TAGS.slice(0, 6))
      await visit(page, tag, `first day ${tag}`, { Eggs: 'Single', 'Queen cells': 'None' })
    expect(await line(page)).toContain('6 waiting to be sent')

    // The plan moves with what was tapped and with the phone's own day.
    await page.goto('/')
    expect(await words(page)).toContain('6 colonies to see to')
    await setDay('2026-06-11')
    await page.goto('/colony/W-07')
    expect(await words(page)).toContain('Day 7')
    expect(await violations(page)).toEqual([])
    expect(await sidewaysScroll(page)).toBe(0)
    await page.goto('/colony/W-07/visit')
    await tapAll(page, {
      'The lid': 'Opened',
      Eggs: 'Single',
      'Where is that brood?': 'Fresh comb',
    })
    await page.locator('#live summary').click()
    expect(await read(page.locator('#live-text'))).toMatch(/What this proves/i)
    for (const tag of TAGS.slice(6)) await visit(page, tag, `second day ${tag}`)
    await page.goto('/outbox')
    expect(await words(page)).toContain('12 waiting to be sent')
    expect(await violations(page)).toEqual([])
    expect(await sidewaysScroll(page)).toBe(0)
    expect(recorded(yard)).toEqual([])

    wire.fate(() => 'pass')
    await press(page, 'Send now')
    await sent()
    expect(recorded(yard)).toEqual([
      ...TAGS.slice(0, 6).map((tag) => ({
        tag,
        on: '2026-06-10',
        kind: 'inspection',
        by: 'Teuila',
        note: `first day ${tag}`,
      })),
      ...TAGS.slice(6).map((tag) => ({
        tag,
        on: '2026-06-11',
        kind: 'inspection',
        by: 'Teuila',
        note: `second day ${tag}`,
      })),
    ])

    // On the operator's screen.
    const office = await watchedPage(browser, yard.url, LAPTOP)
    await office.page.goto('/colony/W-03')
    expect(await words(office.page)).toContain('first day W-03')
    await office.context.close()
    expect(noticed.filter((n) => !n.includes('Failed to load resource'))).toEqual([])
    expect(yard.errors).toEqual([])
  } finally {
    await stop()
  }
})

it('every way in which sending can fail keeps every entry, and says how it stands', async () => {
  const { page, wire, yard, sent, waiting, stop } = await field()
  const notes = (): (string | undefined)[] => recorded(yard).map((r) => r.note)
  /** The next entry that is sent meets this fate; everything else passes. */
  const next = (fate: Fate): void => {
    let met = false
    wire.fate(({ path }) => {
      if (met || path !== '/entries') return 'pass'
      met = true
      return fate
    })
  }
  /** Every entry meets it until the wire is told otherwise, so that no repeat slips through before it is looked at. */
  const every = (fate: Fate): void => wire.fate(({ path }) => (path === '/entries' ? fate : 'pass'))
  try {
    // The answer is lost after the commit: it is in the journal once, and leaves the outbox when it is named again. Every
    // time, because a browser that loses the answer on a connection it had used before asks once more by itself.
    every('lose')
    await visit(page, 'W-01', 'answer lost')
    expect(notes()).toEqual(['answer lost'])
    expect(await line(page)).toContain('1 waiting to be sent')
    // The wire is whole again only once the page is there: it sends by itself what waits when it is opened.
    await page.goto('/outbox')
    await page.getByRole('button', { name: 'Send now' }).waitFor()
    wire.fate(() => 'pass')
    await press(page, 'Send now')
    await sent()
    expect(notes()).toEqual(['answer lost'])

    // A page of some other network, with status 200.
    every({ status: 200, body: '<html>Welcome, guest</html>' })
    await visit(page, 'W-02', 'guest network')
    expect(await waiting()).toMatchObject({ waiting: 1 })
    wire.fate(() => 'pass')
    await page.reload()
    await sent()

    // The server fails for a while.
    every({ status: 500, body: 'broken' })
    await visit(page, 'W-03', 'server failed')
    expect(await waiting()).toMatchObject({ waiting: 1 })
    wire.fate(() => 'pass')
    await page.reload()
    await sent()
    expect(notes()).toEqual(['answer lost', 'guest network', 'server failed'])

    // Without signal: three; meanwhile the box of the middle one left the yard, and the first is called too large.
    wire.fate(() => 'cut')
    for (const tag of ['W-04', 'W-05', 'W-06']) await visit(page, tag, `three ${tag}`)
    put(
      yard,
      [{ id: v7(), colony: 'W-05', kind: 'outcome', what: 'moved-out', on: '2026-06-09', by: 'Bram' }],
      DAY,
    )
    next({ status: 413, body: 'too large' })
    await page.goto('/outbox')
    await sent()
    expect(notes().slice(3)).toEqual([undefined, 'three W-06'])
    expect(await waiting()).toEqual(expect.objectContaining({ waiting: 0, refused: 2 }))
    await page.goto('/outbox')
    const list = await words(page)
    expect(list).toContain('2 not accepted')
    expect(list).toContain('larger than the server takes')
    expect(list).toMatch(/after the colony left the yard/)
    await page.screenshot({ path: shot('refused'), fullPage: true })

    // The one is sent as it is; the other is mended: it was on the day before it left.
    await page.locator('li', { hasText: 'W-04' }).getByRole('button', { name: 'Send as it is' }).click()
    await page.waitForLoadState()
    await sent()
    await page.goto('/outbox')
    await page.locator('li', { hasText: 'W-05' }).getByRole('link', { name: 'Mend it' }).click()
    await type(page, { 'Day of the visit': '2026-06-08' })
    await press(page, 'Save the change')
    await sent()
    expect(await waiting()).toEqual(expect.objectContaining({ waiting: 0, refused: 0 }))
    expect(notes().slice(3)).toEqual([undefined, 'three W-06', 'three W-04', 'three W-05'])
    expect(yard.errors).toEqual([])
  } finally {
    await stop()
  }
})

it('a session that ended keeps everything, asks to sign in, and then sends', async () => {
  const { page, wire, yard, sent, waiting, stop } = await field()
  try {
    wire.fate(() => 'cut')
    await visit(page, 'W-01', 'first')
    const teuila = yard.people.accounts.byName('Teuila')
    yard.people.sessions.closeAll(teuila?.id ?? '')
    wire.fate(() => 'pass')
    await visit(page, 'W-02', 'second')
    expect(await waiting()).toEqual(expect.objectContaining({ waiting: 2, signIn: true }))
    await page.goto('/outbox')
    expect(await words(page)).toContain('Sign in, and they go')
    await page.screenshot({ path: shot('sign-in') })
    await follow(page, 'Sign in')
    expect(await read(page.locator('.phone-note'))).toContain('2 waiting to be sent')
    await type(page, { Name: 'Teuila', Passphrase: PASSPHRASE })
    await press(page, 'Sign in')
    await sent()
    expect(recorded(yard).map((r) => r.note)).toEqual(['first', 'second'])

    // Signing out warns while something waits, and takes the round off the phone but not the outbox.
    wire.fate(({ path }) => (path === '/entries' ? 'cut' : 'pass'))
    await visit(page, 'W-03', 'third')
    await page.goto('/account')
    await page.getByRole('button', { name: 'Sign out', exact: true }).click()
    await page.waitForLoadState()
    expect(await words(page)).toContain('it stays on this phone')
    await page.screenshot({ path: shot('sign-out') })
    await press(page, 'Sign out all the same')
    expect(page.url()).toContain('/sign-in')
    const left = await page.evaluate(
      () =>
        new Promise<{ colonies: number; outbox: number }>((done) => {
          const opening = indexedDB.open('resettle')
          opening.onsuccess = () => {
            const db = opening.result
            const [colonies, outbox] = ['colonies', 'outbox'].map((name) =>
              db.transaction(name).objectStore(name).count(),
            )
            if (outbox !== undefined)
              outbox.onsuccess = () => {
                done({ colonies: colonies?.result ?? -1, outbox: outbox.result })
                db.close()
              }
          }
        }),
    )
    expect(left).toEqual({ colonies: 0, outbox: 1 })
    wire.fate(() => 'pass')
    await type(page, { Name: 'Teuila', Passphrase: PASSPHRASE })
    await press(page, 'Sign in')
    await sent()
    expect(recorded(yard).map((r) => r.note)).toEqual(['first', 'second', 'third'])
  } finally {
    await stop()
  }
})

it('a store that the browser threw away is noticed and said', async () => {
  const { page, wire, setDay, stop } = await field()
  try {
    wire.fate(() => 'cut')
    await visit(page, 'W-01', 'lost with the store')
    await page.goto('/')
    const browserSide = await page.context().newCDPSession(page)
    await browserSide.send('Storage.clearDataForOrigin', {
      origin: wire.url,
      storageTypes: 'indexeddb,cache_storage,service_workers,local_storage',
    })
    wire.fate(() => 'pass')
    await page.goto('/')
    await page.locator('.phone-note').waitFor()
    expect(await read(page.locator('.phone-note'))).toMatch(
      /1 entry that was not sent yet is lost, the last one of Wed,? 10 Jun/,
    )
    await page.screenshot({ path: shot('evicted') })
    // Another worker came in place of the one whose clock was turned, and would rightly say that its day is not the yard’s.
    await setDay(DAY)
    await page.reload()
    await page.locator('.phone-note').waitFor()
    await page.getByRole('button', { name: 'I know' }).click()
    expect(await page.locator('.phone-note').count()).toBe(0)
    await page.reload()
    await page.waitForFunction(() => document.cookie.includes('resettle_phone'))
    expect(await page.locator('.phone-note').count()).toBe(0)
  } finally {
    await stop()
  }
})

it('a newer version waits to be let in, and takes the old outbox over', async () => {
  const { page, wire, yard, sent, stop } = await field()
  try {
    wire.fate(() => 'cut')
    await visit(page, 'W-01', 'from the old version')
    wire.change('/service-worker.js', (text) => `${text}\n// a newer version`)
    wire.fate(({ path }) => (path === '/entries' ? 'cut' : 'pass'))
    await page.goto('/')
    await page.evaluate(() => navigator.serviceWorker.getRegistration().then((r) => r?.update()))
    await page.locator('.phone-note', { hasText: 'A newer version is ready' }).waitFor()
    await page.screenshot({ path: shot('newer') })
    await page.goto('/colony/W-02/visit')
    await page.locator('textarea[name="note"]').fill('half filled')
    expect(await page.locator('textarea[name="note"]').inputValue()).toBe('half filled')
    await page.goto('/')
    await page.getByRole('button', { name: 'Use it' }).click()
    await page.waitForFunction(
      () => document.querySelector('#phone-waiting')?.textContent === '1 waiting to be sent',
    )
    wire.fate(() => 'pass')
    await page.reload()
    await sent()
    expect(recorded(yard).map((r) => r.note)).toEqual(['from the old version'])
  } finally {
    await stop()
  }
})

it('a worker that the browser ended starts again where it was; what others wrote meanwhile is offered, not pushed in', async () => {
  const { page, wire, yard, later, sent, stop } = await field()
  try {
    wire.fate(() => 'cut')
    await visit(page, 'W-01', 'before the worker ended')
    const browserSide = await page.context().newCDPSession(page)
    await browserSide.send('ServiceWorker.enable')
    await browserSide.send('ServiceWorker.stopAllWorkers')
    await page.goto('/outbox')
    expect(await words(page)).toContain('before the worker ended')
    wire.fate(() => 'pass')
    await press(page, 'Send now')
    await sent()
    expect(recorded(yard).map((r) => r.note)).toEqual(['before the worker ended'])

    // A slow network: the page is the phone's own, and somebody else was at the box.
    wire.fate(({ path }) => (path.startsWith('/colony/') ? { after: 2000 } : 'pass'))
    await page.goto('/colony/W-02')
    expect(await line(page)).toContain('From this phone')
    const seen = { kind: 'inspection', opened: false, on: '2026-06-09', by: 'Bram', note: 'seen by another' }
    put(yard, [{ ...seen, id: v7(), colony: 'W-02' }], DAY)
    await page.goto('/colony/W-02')
    expect(await words(page)).not.toContain('seen by another')
    // Within a few seconds the round is not asked for again.
    await later(60)
    await page.evaluate(() => navigator.serviceWorker.controller?.postMessage({ ask: 'send' }))
    const offer = page.getByRole('link', { name: 'Newer entries came in: show them' })
    await offer.click()
    await page.waitForLoadState()
    expect(await words(page)).toContain('seen by another')
  } finally {
    await stop()
  }
})
