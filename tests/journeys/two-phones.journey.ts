/**
 * Two phones at one job without signal: one finds gas, the other decides, hours after it last heard. What neither had read of the other
 * opens nothing, and words that cross lose no pipe. Invented.
 */
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { DAY, READY } from '../features/removal/ready.ts'
import { launch } from '../support/browser.ts'
import { phoneIn } from '../support/field.ts'
import { tap, type, words } from '../support/person.ts'
import { startYard } from '../support/yard.ts'

const ID = '019e0000-0000-7000-8000-000000000061'
const PATH = `/removals/${ID}`
const BEEKEEPER = { role: 'beekeeper' as const }

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

async function press(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name, exact: true }).click()
  await page.waitForLoadState()
}

/** The list before the cut, tapped as it is at the wall, and “Go”. */
async function decide(page: Page): Promise<void> {
  await page.goto(`${PATH}/check#now`)
  await goOn(page)
}

async function goOn(page: Page, more = ''): Promise<void> {
  await type(page, { 'Hottest hour': '78' })
  await tap(page, 'Wires, meter, pole within 3 m (10 ft)?', 'No')
  const boxes = page.locator('.checklist label:has(input[name=done]:not(:checked))')
  while ((await boxes.count()) > 0) await boxes.first().click()
  if (more !== '') await page.locator('label', { hasText: more }).click()
  await press(page, 'Go')
}

it('gas that one phone finds stops the “go” of the other, at 14:00 without signal, through a clash', async () => {
  const yard = await startYard({ day: DAY })
  const { cutMm, vacuum } = READY.check
  const sheet = { ...READY, check: { cutMm, vacuum } }
  expect(
    yard.store.removals.save(ID, 0, sheet, { savedAt: `${DAY}T05:00:00.000Z`, savedBy: 'Ines' }).ok,
  ).toBe(true)
  const ines = await phoneIn(yard, browser, { ...BEEKEEPER, name: 'Ines' }, DAY, '06:30')
  const bram = await phoneIn(yard, browser, { ...BEEKEEPER, name: 'Bram' }, DAY, '06:30')
  const at = async (hour: string): Promise<void> => {
    for (const phone of [ines, bram]) await phone.setDay(DAY, hour)
  }
  const last = () => yard.store.removals.get(ID)?.last.sheet
  try {
    for (const phone of [ines, bram]) phone.wire.fate(() => 'cut')
    // The yard's clock is one for both: neither has asked anything that it would answer at the other hour.
    await expect.poll(() => ines.wire.open() + bram.wire.open()).toBe(0)
    await at('07:00')
    await ines.page.goto(`${PATH}/site#now`)
    await type(ines.page, { 'Where they fly in': 'the knot hole' })
    await press(ines.page, 'Save')
    await decide(ines.page)
    expect(await words(ines.page)).toContain('Go, as this phone knows it, of 06:30')

    await bram.page.goto(`${PATH}/site#now`)
    await tap(bram.page, 'What runs behind it', 'Gas pipe')
    await type(bram.page, { 'Where they fly in': 'under the sill' })
    await press(bram.page, 'Save')
    bram.wire.fate(() => 'pass')
    await bram.page.goto('/outbox')
    await bram.sent()
    expect(last()?.site.behind).toContain('gas')

    await at('14:00')
    await ines.page.goto(`${PATH}/check#now`)
    expect(await words(ines.page)).toContain('heard nothing since 06:30')
    await decide(ines.page)
    expect(await words(ines.page)).toContain('is not said: this phone has heard nothing since 06:30')
    await goOn(ines.page, 'I have looked myself, now')
    expect(await words(ines.page)).toContain('Ines looked at all of it')
    await ines.page.goto(`${PATH}/work#now`)
    await type(ines.page, { 'Outdoor temperature': '76' })
    await tap(ines.page, 'Ready: clothing, smoker, water and shade', 'Here')
    await press(ines.page, 'Open it, now')
    expect(await words(ines.page)).toContain('Open, as this phone knows it, of 06:30')

    await at('14:20')
    ines.wire.fate(() => 'pass')
    await ines.page.goto('/outbox')
    await ines.sent()
    await ines.page.goto('/outbox')
    expect(await words(ines.page)).toContain('Entrance: theirs “under the sill”, yours “the knot hole”')
    await ines.page.goto('/outbox')
    expect(await words(ines.page)).toContain('Nothing waits to be sent')
    expect(last()?.decision).toMatchObject({ is: 'go', by: 'Ines', fell: { on: DAY } })
    expect(last()?.work.withoutGo).toMatchObject({ why: 'sent-later', by: 'Ines' })
    await ines.page.goto(PATH)
    expect(await words(ines.page)).toContain('Stop. Not yet: gas pipe cleared')
    expect(await words(ines.page)).toContain('not known then: gas pipe (Bram, 07:00)')

    await bram.page.goto(`${PATH}/site#now`)
    await tap(bram.page, 'What runs behind it', 'Flue or duct')
    await press(bram.page, 'Save')
    await bram.sent()
    await ines.page.goto(PATH)
    expect(await words(ines.page)).toContain('Not yet: flue or duct cleared')

    expect(last()?.site.entrance).toBe('under the sill. the knot hole')
    expect([...(last()?.site.behind ?? [])].sort()).toEqual(['flue', 'gas', 'insulation'])
    expect(last()?.work.withoutGo).toMatchObject({ why: 'sent-later', by: 'Ines' })
    for (const phone of [ines, bram]) {
      await phone.page.goto(PATH)
      expect(await words(phone.page)).toContain('Stop. Not yet: gas pipe cleared')
    }
    expect(yard.errors).toEqual([])
  } finally {
    for (const phone of [ines, bram]) await phone.stop()
    await yard.stop()
  }
})
