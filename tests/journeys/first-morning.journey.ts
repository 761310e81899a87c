/**
 * The first morning of a new yard: the operator sets it up from the link in the terminal and invites a helper, the helper
 * comes in on a phone, records a visit, and is shown nothing private.
 */
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { LAPTOP, launch, PHONE, watchedPage } from '../support/browser.ts'
import { leastShift, sidewaysScroll, smallTargets, violations } from '../support/page-checks.ts'
import { PASSPHRASE } from '../support/people.ts'
import { follow, press, tap, tapAll, type, unfold, words } from '../support/person.ts'
import { startYard } from '../support/yard.ts'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

it('an operator sets the yard up, and a helper comes in by invitation', async () => {
  const yard = await startYard({ day: '2026-05-01', untouched: true })
  const office = await watchedPage(browser, yard.url, LAPTOP)
  const phone = await watchedPage(browser, yard.url, PHONE)
  try {
    // The set-up page, from the link that the terminal shows.
    const { page } = office
    await page.goto(yard.setUpUrl ?? '')
    expect(await violations(page)).toEqual([])
    await type(page, { 'Your name': 'Wren', Passphrase: PASSPHRASE, 'Passphrase again': PASSPHRASE })
    await press(page, 'Make the account')
    await page.goto('/intake')
    await type(page, { 'Tag on the box': 'S-1', Yard: 'Long Meadow', 'Address or customer': '4 Fuller Row' })
    await tapAll(page, { 'Kind of removal': 'Wall', 'The queen': 'Caged' })
    await press(page, 'Save and make the plan')
    expect(await words(page)).toContain('4 Fuller Row')

    await page.goto('/people')
    await type(page, { Name: 'Jory' })
    await tap(page, 'Role', 'Helper')
    await press(page, 'Make the invitation')
    const link = (await words(page)).match(/http\S+\/invite\/\S+/)?.[0] ?? ''

    // A stranger learns nothing but that there is a door.
    await phone.page.goto('/colony/S-1')
    expect(await words(phone.page)).not.toContain('S-1')
    expect(await violations(phone.page)).toEqual([])

    await phone.page.goto(link)
    expect(await words(phone.page)).toContain('Hello Jory')
    expect(await violations(phone.page)).toEqual([])
    expect(await smallTargets(phone.page, 48)).toEqual([])
    await type(phone.page, { 'Choose a passphrase': PASSPHRASE, 'The same again': PASSPHRASE })
    await press(phone.page, 'Choose it and come in')

    // The helper's round, on the day the cage is to be looked at (+2 to +5).
    yard.setDay('2026-05-04')
    await phone.page.goto('/')
    await unfold(phone.page, 'S-1')
    await follow(phone.page, /^Record .*S-1$/)
    await tap(phone.page, 'The queen’s cage', 'Out, accepted')
    await press(phone.page, 'Save the visit')
    await phone.page.goto('/colony/S-1')
    const seen = await words(phone.page)
    expect(seen).toContain('Jory')
    expect(seen).not.toContain('Fuller Row')
    expect(await sidewaysScroll(phone.page)).toBe(0)
    expect(await leastShift(phone.page)).toBe(0)

    // By the same link nobody else gets in.
    const late = await watchedPage(browser, yard.url, PHONE)
    const answer = await late.page.goto(link)
    expect(answer?.status() === 404 || new URL(late.page.url()).pathname === '/sign-in').toBe(true)
    await late.context.close()

    expect(yard.store.colony('S-1')?.journal.map((r) => r.recordedBy)).toContain('Jory')
    expect([...office.noticed, ...phone.noticed]).toEqual([])
    expect(yard.errors).toEqual([])
  } finally {
    await office.context.close()
    await phone.context.close()
    await yard.stop()
  }
})
