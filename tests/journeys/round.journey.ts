/** A yard helper walks the round on a phone: box by box, one that rain keeps away, too little time, and the end. */
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { LAPTOP, launch, PHONE, type Watched, watchedPage } from '../support/browser.ts'
import { leastShift, sidewaysScroll, smallTargets, violations } from '../support/page-checks.ts'
import { follow, headline, press, tap, tapAll, unfold, words } from '../support/person.ts'
import { type RunningYard, startYard } from '../support/yard.ts'

const DAY = '2026-06-10'
const YARD = '/round?yard=Tannery+Field'

let yard: RunningYard
let browser: Awaited<ReturnType<typeof launch>>
beforeAll(async () => {
  yard = await startYard({ day: DAY, demo: true, as: { name: 'Juno', role: 'helper' } })
  browser = await launch()
})
afterAll(async () => {
  await browser.close()
  expect(yard.errors).toEqual([])
  await yard.stop()
})

async function holds({ page, noticed }: Watched): Promise<void> {
  expect(await violations(page)).toEqual([])
  expect(await smallTargets(page, 48)).toEqual([])
  expect(await sidewaysScroll(page)).toBe(0)
  expect(await leastShift(page)).toBe(0)
  expect(noticed).toEqual([])
}

/** The buttons of the card are where a thumb is: in the lower third of the screen, in full. */
async function atTheThumb(page: Page): Promise<void> {
  const places = await page.locator('.lid-bar .button').evaluateAll((all) =>
    all.map((e) => {
      const { top, bottom } = e.getBoundingClientRect()
      return { top: top / innerHeight, bottom: bottom / innerHeight }
    }),
  )
  expect(places.length).toBeGreaterThanOrEqual(3)
  for (const { top, bottom } of places) {
    expect(top).toBeGreaterThan(0.66)
    expect(bottom).toBeLessThanOrEqual(1)
  }
}

it('a round on a phone', async () => {
  const watched = await watchedPage(browser, yard.url, PHONE)
  const { page, context } = watched
  await page.goto('/')
  await follow(page, 'Walk the round')
  await follow(page, /^Tannery Field/)
  expect(await words(page)).toContain('0 of 10, 3 late')
  await holds(watched)

  // T-02: her cage was due yesterday. Still caged.
  await follow(page, /^Start with T-02/)
  expect(await headline(page)).toBe('T-02 stand 2')
  await holds(watched)
  await atTheThumb(page)
  await follow(page, 'Record the visit')
  await tapAll(page, { 'The lid': 'Opened', 'The queen’s cage': 'Still in the cage' })
  await press(page, 'Save the visit')
  expect(await headline(page)).toBe('T-02 stand 2')
  expect(await words(page)).toContain('In the book today')
  expect(await words(page)).toContain('1 of 10')
  await holds(watched)

  // T-05 has had its month: what is missing before it may go. It is passed by for now.
  await follow(page, /^T-05/)
  expect(await words(page)).toContain('Wash bees for mites')

  // T-06: rain. The next box is there at once, and says what was written down.
  await follow(page, /^T-06/)
  await follow(page, 'Couldn’t get to it')
  await tap(page, 'Why not', 'Rain')
  await holds(watched)
  await press(page, 'Save, and walk on')
  expect(await headline(page)).toBe('T-07 stand 7')
  expect(await words(page)).toContain('In the book for T-06: not reached, rain')
  await atTheThumb(page)

  // Back, and on to the outside look: one tap, and the next box.
  await follow(page, /^‹ T-06/)
  expect(await words(page)).toContain('Not reached today: rain; again tomorrow.')
  await page.goto('/round/box/T-11?yard=Tannery+Field')
  await press(page, 'Looked, all well')
  expect(await words(page)).toContain('In the book for T-11: looked from outside')

  // The clouds come up: forty minutes.
  await page.goto(YARD)
  await unfold(page, 'Short of time')
  await press(page, '40 min')
  expect(await words(page)).toMatch(/In 40 minutes, until 12:40, in this order|Nothing fits into 40 minutes/)
  expect(await words(page)).toContain('Left out, and what that costs')
  await holds(watched)

  await page.goto(YARD)
  await follow(page, 'End of the round')
  const end = await words(page)
  expect(end).toMatch(/2 of 10, \d late/)
  expect(end).toContain('Next round: Thu 11 Jun, tomorrow')
  expect(end).toMatch(/Done .*T-02/)
  expect(end).toContain('Not reached today: rain; again tomorrow.')
  await holds(watched)

  // The operator sees the same, in order, each once.
  const today = [...yard.store.journal()].filter((r) => r.entry.on === DAY && r.recordedBy === 'Juno')
  const mine = today.filter((r) => r.recordedAt.startsWith(`${DAY}T12:00`)).map((r) => r.entry.kind)
  expect(mine.slice(-4)).toEqual(['inspection', 'queen-cage', 'missed-visit', 'inspection'])
  await context.close()
})

it('the same pages on a laptop', async () => {
  const watched = await watchedPage(browser, yard.url, LAPTOP)
  for (const path of ['/round?yard=', '/round/box/M-01?yard=', '/colony/M-01/missed', '/round/end?yard=']) {
    await watched.page.goto(path)
    expect(await violations(watched.page), path).toEqual([])
    expect(await sidewaysScroll(watched.page), path).toBe(0)
  }
  expect(watched.noticed).toEqual([])
  await watched.context.close()
})
