/**
 * Down the whole ladder on a phone: no queen, a donor's eggs that fool nobody, a bought queen in a cage, and worker brood.
 * The windows expected are those of the trade (common practice), counted by hand from the day of the removal, Fri 1 May.
 */
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import type { Day } from '../../src/days.ts'
import type { Phase } from '../../src/recovery/plan-types.ts'
import { launch, PHONE, watchedPage } from '../support/browser.ts'
import { follow, headline, press, question, read, tapAll, type, unfold } from '../support/person.ts'
import { type RunningYard, startYard } from '../support/yard.ts'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

interface Scene {
  yard: RunningYard
  page: Page
}

it('a queenless colony goes down the ladder to a bought queen', async () => {
  const yard = await startYard({ day: '2026-05-01' })
  const { page, context, noticed } = await watchedPage(browser, yard.url, PHONE)
  const scene = { yard, page }
  try {
    await takeIn(scene)
    await findNeither(scene)
    await giveAFrameOfEggs(scene)
    await beWarnedOfTheDonorsEggs(scene)
    await findNoCells(scene)
    await findNoEggsAgain(scene)
    await introduceAQueen(scene)
    await letHerOut(scene)
    await seeHerEggs(scene)
    await seeHerBrood(scene)
    expect(noticed).toEqual([])
    expect(yard.errors).toEqual([])
    expect(yard.store.verify()).toMatchObject({ ok: true, problems: [] })
  } finally {
    await context.close()
    await yard.stop()
  }
})

async function takeIn({ page }: Scene): Promise<void> {
  await page.goto('/intake')
  await type(page, { 'Tag on the box': 'L-2', Yard: 'Long Meadow', Stand: '2' })
  await tapAll(page, {
    'Kind of removal': 'Roof',
    'The queen': 'Not seen',
    'With eggs': '½',
    'With open brood': '½',
    'With capped brood': '1',
    'Frames covered with bees': '5',
  })
  await press(page, 'Save and make the plan')
}

/** Opens Record a visit on that day. */
async function visitOn({ yard, page }: Scene, day: Day): Promise<void> {
  yard.setDay(day)
  await page.goto('/colony/L-2')
  await follow(page, 'Record a visit')
}

/** What the phone says beside the form. */
const panel = async (page: Page): Promise<string> => {
  await unfold(page, 'Do this now')
  return read(page.getByRole('complementary', { name: 'What this proves' }))
}

const NEITHER = { 'The lid': 'Opened', Eggs: 'None', 'Open brood': 'None', 'Queen cells': 'None' }

/** Saves the visit and expects the colony to be so. */
async function saved({ yard, page }: Scene, phase: Phase, action: string): Promise<void> {
  await press(page, 'Save the visit')
  await page.getByRole('status').first().waitFor()
  expect(yard.store.colony('L-2')?.summary).toMatchObject({ phase, action })
}

async function findNeither(scene: Scene): Promise<void> {
  await visitOn(scene, '2026-05-06')
  await tapAll(scene.page, { ...NEITHER, 'The queen': 'Not seen' })
  expect(await panel(scene.page)).toMatch(/Queenless/)
  await saved(scene, 'queenless', 'give-egg-frame')
  expect(await headline(scene.page)).toMatch(/give a frame of eggs/i)
}

async function giveAFrameOfEggs(scene: Scene): Promise<void> {
  const { page } = scene
  await visitOn(scene, '2026-05-07')
  await unfold(page, 'Gave frames, a queen, feed or treatment')
  const given = question(page, 'What was given').first()
  await given.locator('label').filter({ hasText: 'Frame of eggs' }).click()
  await page.getByLabel('How many frames').first().fill('1')
  await page.getByLabel('From colony').first().fill('Hive 3')
  await press(page, 'Save the visit')
  await page.getByRole('status').first().waitFor()
  // Given on 7 May: cells on it +3 / +4 / +6.
  const check = scene.yard.store
    .colony('L-2')
    ?.summary.plan.checks.find((c) => c.rule === 'cells-on-egg-frame')
  expect(check).toMatchObject({ opens: '2026-05-10', due: '2026-05-11', closes: '2026-05-13' })
}

async function beWarnedOfTheDonorsEggs(scene: Scene): Promise<void> {
  await visitOn(scene, '2026-05-09')
  await tapAll(scene.page, { 'The lid': 'Opened', Eggs: 'Single' })
  // A donor's egg laid on 7 May is an egg until 10 May.
  expect(await panel(scene.page)).toMatch(/Eggs prove nothing new until after Sun 10 May/)
  await press(scene.page, 'Save the visit')
  await scene.page.getByRole('status').first().waitFor()
  expect(scene.yard.store.colony('L-2')?.summary.phase).not.toBe('laying')
}

async function findNoCells(scene: Scene): Promise<void> {
  await visitOn(scene, '2026-05-11')
  await tapAll(scene.page, { 'The lid': 'Opened', 'Queen cells': 'None', 'The queen': 'Not seen' })
  // No cells: look for eggs again +8 / +10 / +14 after the frame.
  expect(await panel(scene.page)).toMatch(/look for eggs again, Fri 15 to Thu 21 May/)
  await press(scene.page, 'Save the visit')
  await scene.page.getByRole('status').first().waitFor()
}

async function findNoEggsAgain(scene: Scene): Promise<void> {
  await visitOn(scene, '2026-05-17')
  await tapAll(scene.page, { ...NEITHER, 'The queen': 'Not seen' })
  await saved(scene, 'queenless', 'buy-queen')
}

async function introduceAQueen(scene: Scene): Promise<void> {
  const { page } = scene
  await visitOn(scene, '2026-05-19')
  await unfold(page, 'Gave frames, a queen, feed or treatment')
  const given = question(page, 'What was given').first()
  await given.locator('label').filter({ hasText: 'Mated queen' }).click()
  await question(page, 'If a queen: in a cage?')
    .first()
    .locator('label')
    .filter({ hasText: /^Caged/ })
    .click()
  await page.getByLabel('Cost').first().fill('38')
  await press(page, 'Save the visit')
  await page.getByRole('status').first().waitFor()
  expect(scene.yard.store.colony('L-2')?.summary.phase).toBe('awaiting-release')
}

async function letHerOut(scene: Scene): Promise<void> {
  const { page } = scene
  await visitOn(scene, '2026-05-23')
  await unfold(page, 'Looked to a queen’s cage')
  await question(page, 'The queen’s cage').locator('label').filter({ hasText: 'Out, accepted' }).click()
  await press(page, 'Save the visit')
  await page.getByRole('status').first().waitFor()
  expect(scene.yard.store.colony('L-2')?.summary.phase).toBe('awaiting-eggs')
}

async function seeHerEggs(scene: Scene): Promise<void> {
  await visitOn(scene, '2026-05-30')
  await tapAll(scene.page, { 'The lid': 'Opened', Eggs: 'Single', 'The queen': 'Seen' })
  await press(scene.page, 'Save the visit')
  await scene.page.getByRole('status').first().waitFor()
  expect(scene.yard.store.colony('L-2')?.summary.phase).toBe('laying')
}

async function seeHerBrood(scene: Scene): Promise<void> {
  await visitOn(scene, '2026-06-08')
  await tapAll(scene.page, {
    'The lid': 'Opened',
    Eggs: 'Single',
    'Open brood': 'Plenty',
    'Capped brood': 'Worker',
  })
  expect(await panel(scene.page)).toMatch(/Queenright/)
  await press(scene.page, 'Save the visit')
  await scene.page.getByRole('status').first().waitFor()
  expect(scene.yard.store.colony('L-2')?.summary.phase).toBe('queenright')
}
