/** The round without signal: the same pages, made in the phone, walked box by box; then everything arrives in order. */
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { launch } from '../support/browser.ts'
import { intakes, recorded, startField } from '../support/field.ts'
import { smallTargets, violations } from '../support/page-checks.ts'
import { follow, headline, press, tap, tapAll, unfold, words } from '../support/person.ts'

const DAY = '2026-06-10'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

it('is walked to its end in a valley, and known in the office afterwards', async () => {
  const field = await startField(browser, {
    day: DAY,
    entries: intakes(['W-1', 'W-2', 'W-10'], '2026-06-05'),
  })
  const { page, wire, yard, sent, noticed, stop } = field
  try {
    wire.fate(() => 'cut')
    await page.goto('/')
    await follow(page, 'Walk the round')
    expect(await words(page)).toContain('0 of 3')
    await follow(page, /^Start with W-1/)
    await follow(page, 'Record the visit')
    await tapAll(page, { 'The lid': 'Opened', Eggs: 'None', 'Open brood': 'None', 'Queen cells': 'None' })
    await press(page, 'Save the visit')
    expect(await headline(page)).toBe('W-1 stand 1')
    expect(await words(page)).toContain('1 of 3')
    expect(await words(page)).toContain('Now: give a frame of eggs')
    expect(await violations(page)).toEqual([])
    expect(await smallTargets(page, 48)).toEqual([])

    await follow(page, /^W-2/)
    await follow(page, 'Couldn’t get to it')
    await tap(page, 'Why not', 'Rain')
    await press(page, 'Save, and walk on')
    expect(await headline(page)).toBe('W-10 stand 3')
    expect(await words(page)).toContain('In the book for W-2: not reached, rain')

    await page.goto('/round?yard=')
    await unfold(page, 'Short of time')
    await press(page, '40 min')
    expect(await words(page)).toMatch(/In 40 minutes, until \d\d:\d\d, in this order .*W-10/)
    await page.goto('/round/end?yard=')
    expect(await words(page)).toContain('1 frame of eggs, from a healthy donor for W-1')
    expect(await words(page)).toContain('Not reached today: rain; again tomorrow.')
    expect(recorded(yard)).toEqual([])

    wire.fate(() => 'pass')
    await page.goto('/outbox')
    await press(page, 'Send now')
    await sent()
    expect(recorded(yard).map((r) => [r.tag, r.kind, r.by])).toEqual([
      ['W-1', 'inspection', 'Teuila'],
      ['W-2', 'missed-visit', 'Teuila'],
    ])
    expect(yard.store.colony('W-2')?.history.entries.at(-1)).toMatchObject({
      reason: 'rain',
      again: '2026-06-11',
    })
    expect(noticed.filter((n) => !/ERR_|Failed to load resource/.test(n))).toEqual([])
  } finally {
    await stop()
  }
})
