/** What a helper saw is never on one phone alone: refused, or left behind by a closed account, a beekeeper reads it and asks. */
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { LAPTOP, launch, watchedPage } from '../support/browser.ts'
import { type Field, intakes, put, recorded, startField } from '../support/field.ts'
import { sidewaysScroll, violations } from '../support/page-checks.ts'
import { PASSPHRASE, signInAs } from '../support/people.ts'
import { follow, press, tapAll, type, words } from '../support/person.ts'
import { shot } from '../support/shot.ts'

const DAY = '2026-06-10'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

const field = (): Promise<Field> =>
  startField(browser, { day: DAY, entries: intakes(['W-01', 'W-02'], '2026-06-04') })

async function visit(page: Page, tag: string, note: string): Promise<void> {
  await page.goto(`/colony/${tag}/visit`)
  await tapAll(page, { 'The lid': 'Opened', Eggs: 'Single' })
  await page.locator('textarea[name="note"]').fill(note)
  await press(page, 'Save the visit')
}

it('a box was closed meanwhile: the operator reads what was seen, whom to ask, and takes it in', async () => {
  const { page, wire, yard, waiting, stop } = await field()
  const office = await watchedPage(browser, yard.url, LAPTOP)
  try {
    wire.fate(() => 'cut')
    await visit(page, 'W-01', 'eggs in the corner')
    const outcome = {
      id: '0197a000-0000-7000-8000-000000000001',
      colony: 'W-01',
      kind: 'outcome',
      on: '2026-06-09',
      by: 'Wren',
      what: 'died',
    }
    put(yard, [outcome], DAY)
    wire.fate(() => 'pass')
    await page.goto('/')
    await expect.poll(waiting).toMatchObject({ waiting: 0, refused: 1 })

    await office.page.goto('/')
    await follow(office.page, 'not in the book')
    expect(await words(office.page)).toContain('eggs in the corner')
    expect(await words(office.page)).toContain('Ask Teuila')
    expect(await violations(office.page)).toEqual([])
    expect(await sidewaysScroll(office.page)).toBe(0)
    await office.page.screenshot({ path: shot('not-in-book-laptop') })
    await office.page.goto(`/entry/${outcome.id}/withdraw`)
    await tapAll(office.page, { Reason: 'It was another box' })
    await press(office.page, 'Take it back')
    await office.page.goto('/refused')
    await press(office.page, 'Take it in as it is')
    expect(await words(office.page)).toContain('It is in the book')
    expect(recorded(yard).at(-1)).toMatchObject({ by: 'Teuila', note: 'eggs in the corner' })

    // The phone's own copy is known there by its id, and goes.
    await page.goto('/outbox')
    await press(page, 'Send as it is')
    await expect.poll(waiting).toMatchObject({ waiting: 0, refused: 0 })
    expect(recorded(yard).filter((r) => r.note === 'eggs in the corner')).toHaveLength(1)
    expect(office.noticed).toEqual([])
  } finally {
    await office.context.close()
    await stop()
  }
})

it('an account was closed: whoever signs in on that phone hands over what waits, and is shown none of it', async () => {
  const { page, wire, yard, waiting, stop } = await field()
  try {
    await signInAs(yard.people, { name: 'Isolde', role: 'helper' })
    wire.fate(() => 'cut')
    await visit(page, 'W-02', 'no queen seen')
    const id = yard.people.accounts.byName('Teuila')?.id ?? ''
    yard.people.accounts.close(id)
    yard.people.sessions.closeAll(id)
    wire.fate(() => 'pass')
    await page.goto('/sign-in')
    await type(page, { Name: 'Isolde', Passphrase: PASSPHRASE })
    await press(page, 'Sign in')
    await expect
      .poll(() => yard.store.refused.open().map((r) => [r.person, r.sentBy]))
      .toEqual([['Teuila', 'Isolde']])
    await page.goto('/outbox')
    expect(await words(page)).not.toContain('no queen seen')
    expect(await waiting()).toMatchObject({ waiting: 1 })
    expect(recorded(yard)).toEqual([])
  } finally {
    await stop()
  }
})
