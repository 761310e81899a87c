/** A name drawn with a finger on the agreement, and a removal taken to its intake, in a browser. */
import { afterAll, describe, expect, it } from 'vitest'
import { launch, PHONE, watchedPage } from '../support/browser.ts'
import { startYard } from '../support/yard.ts'

const yard = await startYard({ day: '2026-06-10', demo: true })
const browser = await launch()
afterAll(async () => {
  await browser.close()
  await yard.stop()
})

describe('on a phone', () => {
  it('the agreement is signed by drawing, cleared, drawn again, and kept as a drawing', async () => {
    const { page, context, noticed } = await watchedPage(browser, yard.url, PHONE)
    const sheet = yard.store.removals
      .list()
      .find((r) => r.sheet.agreement.hourly !== undefined && !r.sheet.agreement.signature)
    await page.goto(`/removals/${sheet?.id}/sign`)
    const pad = page.locator('[data-pad-field]')
    await pad.scrollIntoViewIfNeeded()
    const box = await pad.boundingBox()
    if (box === null) throw new Error('no field to draw on')
    const draw = async (): Promise<void> => {
      await page.mouse.move(box.x + 30, box.y + 60)
      await page.mouse.down()
      for (const [x, y] of [
        [60, 20],
        [90, 70],
        [140, 25],
        [180, 70],
        [240, 30],
      ] as const)
        await page.mouse.move(box.x + x, box.y + y, { steps: 6 })
      await page.mouse.up()
    }
    const ink = (): Promise<string | null> => page.locator('[data-pad-ink]').getAttribute('d')
    await draw()
    expect(await ink()).toMatch(/^M\d/)
    await page.getByRole('button', { name: 'Clear' }).click()
    expect(await ink()).toBe('')
    await page.getByRole('button', { name: 'Sign', exact: true }).click()
    await page.getByText('Drawn name is missing').first().waitFor()
    await pad.scrollIntoViewIfNeeded()
    await draw()
    await page.getByRole('button', { name: 'Sign', exact: true }).click()
    await page.getByText('Signed by Osric Pellow').waitFor()
    const kept = yard.store.removals.get(sheet?.id ?? '')?.last.sheet.agreement.signature
    expect(kept?.path).toMatch(/^(M\d+ \d+(L\d+ \d+)+)+$/)
    expect(noticed.filter((n) => !n.includes('422'))).toEqual([])
    await context.close()
  })

  it('without scripts the field stays hidden, and paper is offered', async () => {
    const { page, context } = await watchedPage(browser, yard.url, PHONE, { scripts: false })
    const sheet = yard.store.removals.list()[0]
    if (sheet === undefined) throw new Error('the demo has no removal sheet')
    // Nothing is signed blank, so it is filled in; and a signature that is there already is taken off.
    const { signature: _, ...agreement } = sheet.sheet.agreement
    const job = {
      ...sheet.sheet.job,
      name: 'Osric Pellow',
      address: '4 Invented Row',
      plannedOn: '2026-06-11',
    }
    const site = { ...sheet.sheet.site, where: 'left of the porch' }
    const whole = { ...sheet.sheet, job, site, agreement: { ...agreement, pricing: 'fixed', fixed: 400 } }
    const stamp = { savedAt: '2026-06-10T12:00:00.000Z', savedBy: 'Ines' }
    expect(yard.store.removals.save(sheet.id, sheet.version, whole, stamp).ok).toBe(true)
    await page.goto(`/removals/${sheet.id}/sign`)
    expect(await page.locator('[data-pad-field]').isVisible()).toBe(false)
    expect(await page.getByText('Drawing needs JavaScript').isVisible()).toBe(true)
    await context.close()
  })
})

it('Enter in a field saves what was typed, and never decides or opens anything', async () => {
  const { page, context } = await watchedPage(browser, yard.url, PHONE)
  const sheet = yard.store.removals.list()[0]
  if (sheet === undefined) throw new Error('the demo has no removal sheet')
  const { decision: _, ...undecided } = sheet.sheet
  const kept = () => yard.store.removals.get(sheet.id)?.last
  const stamp = { savedAt: '2026-06-10T13:00:00.000Z', savedBy: 'Ines' }
  expect(yard.store.removals.save(sheet.id, kept()?.version ?? 0, { ...undecided, work: {} }, stamp).ok).toBe(
    true,
  )
  for (const [part, field] of [
    ['check', 'hottestC'],
    ['work', 'outdoorC'],
  ] as const) {
    await page.goto(`/removals/${sheet.id}/${part}`)
    const input = page.locator(`#f-${field}`)
    await input.fill('70')
    await Promise.all([page.waitForURL(/saved=1/), input.press('Enter')])
  }
  expect(kept()?.sheet.check.hottestC).toBeCloseTo(21.1, 1)
  expect(kept()?.sheet.work.outdoorC).toBeCloseTo(21.1, 1)
  expect(kept()?.sheet.decision).toBeUndefined()
  expect(kept()?.sheet.work).not.toHaveProperty('openedAt')
  expect(kept()?.sheet.work).not.toHaveProperty('water')
  await context.close()
})

it('a PNG of a clearance is drawn anew as JPEG in the phone, as photos of the site are', async () => {
  const { page, context } = await watchedPage(browser, yard.url, PHONE)
  const sheet = yard.store.removals.list().find((r) => r.colonies.length === 0)
  if (sheet === undefined) throw new Error('the demo has no open removal sheet')
  const kept = () => yard.store.removals.get(sheet.id)?.last
  const { decision: _, ended: __, ...open } = sheet.sheet
  const piped = { ...open, site: { ...open.site, type: 'wall', behind: ['gas' as const] }, work: {} }
  const stamp = { savedAt: '2026-06-10T14:00:00.000Z', savedBy: 'Ines' }
  expect(yard.store.removals.save(sheet.id, kept()?.version ?? 0, piped, stamp).ok).toBe(true)
  await page.goto(`/removals/${sheet.id}`)
  const drawn = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(2400, 40)
    canvas.getContext('2d')?.fillRect(40, 10, 300, 20)
    const blob = await canvas.convertToBlob({ type: 'image/png' })
    return [...new Uint8Array(await blob.arrayBuffer())]
  })
  const photo = page.locator('#trade-gas-cleared input[type="file"]')
  await photo.setInputFiles([{ name: 'tag.png', mimeType: 'image/png', buffer: Buffer.from(drawn) }])
  const taken = (): Promise<string[]> =>
    photo.evaluate((e) => [...((e as HTMLInputElement).files ?? [])].map((f) => f.type))
  await expect.poll(taken).toEqual(['image/jpeg'])
  await context.close()
})
