/**
 * A colony's month, from the truck to its new owner, as three people would live it: on a phone and on a laptop, with
 * scripts and without. The dates expected are counted by hand from the trade's own reckoning, beside each step.
 */
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import type { Day } from '../../src/days.ts'
import type { ColonySummary } from '../../src/store/index.ts'
import { type Device, LAPTOP, launch, PHONE, watchedPage } from '../support/browser.ts'
import { LONG } from '../support/long.ts'
import { leastShift } from '../support/page-checks.ts'
import { follow, headline, press, read, tap, tapAll, type, unfold, words } from '../support/person.ts'
import { type RunningYard, startYard } from '../support/yard.ts'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

interface Scene {
  yard: RunningYard
  page: Page
  scripts: boolean
}

const WAYS: { how: string; device: Device; scripts: boolean }[] = [
  { how: 'on a phone', device: PHONE, scripts: true },
  { how: 'on a laptop', device: LAPTOP, scripts: true },
  { how: 'on a phone without scripts', device: PHONE, scripts: false },
  { how: 'on a laptop without scripts', device: LAPTOP, scripts: false },
]

/** Each device and each way of reading once, and all together in the long run. */
const DAILY = WAYS.filter(({ device, scripts }) => scripts === device.touch)

it.each(LONG ? WAYS : DAILY)('a colony’s month $how', async ({ device, scripts }) => {
  const yard = await startYard({ day: '2026-05-01' })
  const { page, context, noticed } = await watchedPage(browser, yard.url, device, { scripts })
  const scene = { yard, page, scripts }
  try {
    await beginOnAnEmptyPage(scene)
    await forgetSomething(scene)
    await logTheIntake(scene)
    await beToldWhichBoxAndWhy(scene)
    if (scripts) await seeWhatItProvesWhileTapping(scene)
    else expect(await page.locator('#live').isVisible()).toBe(false)
    await recordTheVisit(scene)
    await correctAMistake(scene)
    await takeBackANote(scene)
    await proveHerMated(scene)
    await haveTheLastLook(scene)
    await moveItOut(scene)
    if (scripts) expect(await leastShift(page)).toBe(0)
    expect(noticed).toEqual([])
    expect(yard.errors).toEqual([])
    expect(yard.store.verify()).toMatchObject({ ok: true, problems: [] })
  } finally {
    await context.close()
    await yard.stop()
  }
})

const b7 = (yard: RunningYard): ColonySummary => {
  const colony = yard.store.colony('B-7')
  if (colony === null) throw new Error('B-7 is not in the yard')
  return colony.summary
}

async function today({ yard, page }: Scene, day: Day): Promise<void> {
  yard.setDay(day)
  await page.goto('/')
}

async function beginOnAnEmptyPage({ page }: Scene): Promise<void> {
  await page.goto('/')
  expect(await words(page)).toContain('Log the first intake')
  await page.locator('main').getByRole('link', { name: 'Log an intake' }).click()
  await page.getByRole('heading', { name: 'Log an intake' }).waitFor()
}

async function forgetSomething({ yard, page }: Scene): Promise<void> {
  await type(page, { 'Tag on the box': 'B-7', Stand: '3' })
  await tap(page, 'Kind of removal', 'Floor')
  await press(page, 'Save and make the plan')
  expect(await words(page)).toContain('Nothing was saved yet')
  expect(await page.getByLabel('Tag on the box', { exact: true }).inputValue()).toBe('B-7')
  expect(await page.getByRole('radio', { name: 'Floor' }).isChecked()).toBe(true)
  expect(yard.store.colonies()).toEqual([])
}

async function logTheIntake({ yard, page }: Scene): Promise<void> {
  await type(page, { Yard: 'Long Meadow' })
  await tapAll(page, {
    'The queen': 'Not seen',
    'With eggs': '1',
    'With open brood': '1',
    'With capped brood': '2',
    'How the brood travelled': 'Closed chest',
    'Frames covered with bees': '6',
    'Comb tied in with bands': 'Yes',
  })
  await press(page, 'Save and make the plan')
  const said = await words(page)
  expect(said).toContain('In the book')
  expect(said).toContain('signed Wren')
  // Removed on Fri 1 May: outside look +1 to +3 days, first brood check +4 to +7.
  expect(said).toMatch(/First look from outside: Sat 2 to Mon 4 May/)
  expect(said).toMatch(/The first brood check: Tue 5 to Fri 8 May/)
  expect(b7(yard).nextRule).toBe('outside-look')
}

async function beToldWhichBoxAndWhy(scene: Scene): Promise<void> {
  const { page } = scene
  await today(scene, '2026-05-06')
  const said = await words(page)
  expect(said).toContain('The first brood check')
  expect(said).toContain('stand 3')
  await unfold(page, 'B-7')
  // On a laptop the box stands beside its line, with the same way to record it.
  await follow(page, /^Record (the visit|a visit|.*B-7$)/)
  await page.getByRole('heading', { name: 'Visit to B-7' }).waitFor()
}

async function seeWhatItProvesWhileTapping({ yard, page }: Scene): Promise<void> {
  const panel = page.getByRole('complementary', { name: 'What this proves' })
  await panel.waitFor()
  await unfold(page, 'Do this now')
  expect(await read(panel)).not.toContain('first brood check')
  await tapAll(page, { 'The lid': 'Opened', Eggs: 'None', 'Queen cells': 'Capped' })
  await panel.getByText('Raising a queen').first().waitFor()
  const said = await read(panel)
  // Capped cells on 6 May are 8-16 days from the egg, and their eggs were laid by 1 May: she emerges 11 to 14 May.
  expect(said).toMatch(/The queen leaves her cell: .*Mon 11 to Thu 14 May/)
  expect(said).toMatch(/Answers: .*the first brood check/)
  expect(said).toContain('Close it up, and leave it alone')
  expect(b7(yard).phase).toBe('queen-unknown')
}

async function recordTheVisit({ yard, page }: Scene): Promise<void> {
  await tapAll(page, { 'The lid': 'Opened', Eggs: 'None', 'Queen cells': 'Capped', 'The queen': 'Not seen' })
  await type(page, { 'How many cells': '4' })
  await press(page, 'Save the visit')
  expect(await headline(page)).toContain('Raising a queen')
  expect(b7(yard).phase).toBe('rearing')
  expect(b7(yard).plan.spans.emergence).toMatchObject({ earliest: '2026-05-11', latest: '2026-05-14' })
}

async function correctAMistake({ yard, page }: Scene): Promise<void> {
  await follow(page, /^Correct\s?Opened of/)
  await tapAll(page, { Eggs: 'Single', 'Queen cells': 'None' })
  await type(page, { 'How many cells': '', Note: 'Read the wrong line of the sheet.' })
  await press(page, 'Save the correction')
  // Her last egg on this comb was laid by 1 May, and eggs hatch in three days: eggs on 6 May are new.
  expect(await headline(page)).toContain('Eggs of its own')
  expect(b7(yard).phase).toBe('laying')
  expect(await read(page.locator('del').first())).toMatch(/queen cells/)
}

async function takeBackANote({ page }: Scene): Promise<void> {
  await page.goto('/colony/B-7')
  await follow(page, 'Note')
  await type(page, { Note: 'Moth in the corner.' })
  await press(page, 'Save')
  await follow(page, /^Take back\s?Note/)
  await page.getByRole('textbox').last().fill('That was B-9.')
  await press(page, 'Take it back')
  const struck = await Promise.all((await page.locator('del').all()).map(read))
  expect(struck).toContainEqual(expect.stringContaining('Moth in the corner.'))
}

async function proveHerMated(scene: Scene): Promise<void> {
  const { yard, page } = scene
  // The old brood's capped cells can last until 22 May (+21): capped worker brood after it is the new layer's. She lays, so
  // she is left in peace until one look can settle all that is missing: the last day of the hold.
  await today(scene, '2026-05-31')
  await unfold(page, 'B-7')
  // On a laptop the box stands beside its line, with the same way to record it.
  await follow(page, /^Record (the visit|a visit|.*B-7$)/)
  await tapAll(page, {
    'The lid': 'Opened',
    Eggs: 'Single',
    'Open brood': 'Plenty',
    'Capped brood': 'Worker',
    'Queen cells': 'None',
    'The queen': 'Seen',
    'Frames covered with bees': '6',
    Stores: 'Enough',
    'Signs of trouble': 'Looked: none',
    'The bands': 'All taken off',
  })
  await type(page, { 'Bees in the sample': '300', 'Mites counted': '3' })
  await press(page, 'Save the visit')
  expect(await headline(page)).toContain('Queenright')
  expect(b7(yard).phase).toBe('queenright')
}

async function haveTheLastLook(scene: Scene): Promise<void> {
  const { yard, page } = scene
  await today(scene, '2026-06-01')
  await page.goto('/colony/B-7/visit')
  await tapAll(page, {
    'The lid': 'Opened',
    Eggs: 'Single',
    'Frames covered with bees': '6',
    Stores: 'Heavy',
    'Signs of trouble': 'Looked: none',
  })
  await press(page, 'Save the visit')
  expect(b7(yard).plan.readiness.unmet).toEqual([])
  expect(await words(page)).toMatch(/move it out/i)
}

async function moveItOut({ yard, page }: Scene): Promise<void> {
  await follow(page, 'It left the yard')
  await tap(page, 'What became of it', 'Moved out')
  await type(page, { 'Where to': 'Orchard at the ford' })
  await press(page, 'Save how it left')
  expect(await words(page)).toContain('B-7 is off the round.')
  expect(b7(yard).outcome).toBe('moved-out')
  await page.goto('/')
  expect(await words(page)).toContain('Nothing to do today')
}
