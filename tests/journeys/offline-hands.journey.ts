/** One phone in several hands: whoever signs in on it is shown nothing of, and signs nothing as, the one before. */
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { launch } from '../support/browser.ts'
import { type Field, intakes, recorded, startField } from '../support/field.ts'
import { someOf } from '../support/long.ts'
import { PASSPHRASE, signInAs } from '../support/people.ts'
import { press, read, tapAll, type, words } from '../support/person.ts'

const DAY = '2026-06-10'
const SITE = '4 Acacia Lane'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

/** Maren, a beekeeper, has the round on the phone and one visit waiting; her session has ended. Isolde is a helper. */
async function left(): Promise<Field> {
  const field = await startField(browser, {
    day: DAY,
    as: { name: 'Maren', role: 'beekeeper' },
    entries: intakes(['W-01', 'W-02'], '2026-06-04'),
  })
  const { page, wire, yard } = field
  await signInAs(yard.people, { name: 'Isolde', role: 'helper' })
  wire.fate(() => 'cut')
  await page.goto('/colony/W-01')
  expect(await words(page)).toContain(SITE)
  await visit(page, 'W-01', 'by Maren')
  yard.people.sessions.closeAll(yard.people.accounts.byName('Maren')?.id ?? '')
  return field
}

async function visit(page: Page, tag: string, note: string): Promise<void> {
  await page.goto(`/colony/${tag}/visit`)
  await tapAll(page, { 'The lid': 'Opened' })
  await page.locator('textarea[name="note"]').fill(note)
  await press(page, 'Save the visit')
}

const signIn = async (page: Page, name: string): Promise<void> => {
  await page.goto('/sign-in')
  await type(page, { Name: name, Passphrase: PASSPHRASE })
  await press(page, 'Sign in')
}

const SLOW: [string, (path: string) => boolean][] = [
  ['pages', (path) => !path.startsWith('/phone/')],
  ['pages and the round', () => true],
]

it.each(someOf(SLOW, 1))('with slow %s, the one who signs in is shown their own', async (_, isSlow) => {
  const { page, wire, yard, waiting, sent, stop } = await left()
  try {
    wire.fate(({ method, path }) => (method === 'GET' && isSlow(path) ? { after: 3000 } : 'pass'))
    await signIn(page, 'Isolde')
    expect(await page.locator('nav a[href="/intake"]').count()).toBe(0)
    await page.goto('/colony/W-01')
    expect(await words(page)).not.toContain(SITE)
    await visit(page, 'W-02', 'by Isolde')
    expect(await words(page)).not.toContain('by Maren')
    await page.goto('/outbox')
    expect(await read(page.locator('body'))).toContain('1 waiting to be sent')
    expect(await words(page)).not.toContain('by Maren')
    expect(recorded(yard).map(({ by, note }) => [by, note])).toEqual([['Isolde', 'by Isolde']])

    wire.fate(() => 'pass')
    expect(await waiting()).toMatchObject({ waiting: 1 })
    await signIn(page, 'Maren')
    await sent()
    expect(recorded(yard).map(({ by, note }) => [by, note])).toEqual([
      ['Isolde', 'by Isolde'],
      ['Maren', 'by Maren'],
    ])
  } finally {
    await stop()
  }
})

it('a wrong passphrase takes no round off the phone', async () => {
  const { page, wire, stop } = await left()
  try {
    wire.fate(() => 'pass')
    await page.goto('/sign-in')
    await type(page, { Name: 'Maren', Passphrase: 'not this one at all' })
    await press(page, 'Sign in')
    expect(await words(page)).toContain('not right')
    wire.fate(() => 'cut')
    await page.goto('/colony/W-02')
    expect(await words(page)).toContain('W-02')
  } finally {
    await stop()
  }
})

it('a round kept in another format leaves the outbox to be read without signal', async () => {
  const { page, wire, stop } = await left()
  try {
    await page.evaluate(
      () =>
        new Promise<void>((done) => {
          const opening = indexedDB.open('resettle')
          opening.onsuccess = () => {
            const db = opening.result
            const kept = db.transaction('kept', 'readwrite').objectStore('kept')
            const reading = kept.get('round')
            reading.onsuccess = () => {
              const { viewer, zone } = reading.result.head
              kept.put({ key: 'round', head: { format: 1000, viewer, zone } }).onsuccess = () => {
                db.close()
                done()
              }
            }
          }
        }),
    )
    const browserSide = await page.context().newCDPSession(page)
    await browserSide.send('ServiceWorker.enable')
    await browserSide.send('ServiceWorker.stopAllWorkers')
    wire.fate(() => 'cut')
    await page.goto('/outbox')
    expect(await words(page)).toContain('by Maren')
  } finally {
    await stop()
  }
})
