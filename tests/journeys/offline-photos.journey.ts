/** Photos on a phone without signal: made smaller there, without their place, kept with their entry, and sent with it. */
import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import ExifReader from 'exifreader'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { FIRST_PIECE } from '../../src/phone/photo-sender.ts'
import { metadataIn, stripped } from '../../src/photos/jpeg.ts'
import { exifWithPlace, withSegments } from '../photos/picture.ts'
import { launch } from '../support/browser.ts'
import { type Field, intakes, startField } from '../support/field.ts'
import { sidewaysScroll, violations } from '../support/page-checks.ts'
import { press, read, tapAll } from '../support/person.ts'
import { shot } from '../support/shot.ts'
import { missableControls } from '../support/targets.ts'

const DAY = '2026-06-10'
let browser: Browser
let field: Field
beforeAll(async () => {
  browser = await launch()
  field = await startField(browser, { day: DAY, entries: intakes(['W-01', 'W-02'], '2026-06-04') })
})
afterAll(async () => {
  await field.stop()
  await browser.close()
})

/** A picture as large as a phone's camera makes it, lying on its side, with the place where it was taken. */
async function fromTheCamera(page: Page): Promise<Buffer> {
  const drawn = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(3000, 2000)
    const pen = canvas.getContext('2d')
    if (pen === null) throw new Error('no canvas')
    for (let y = 0; y < 2000; y += 20)
      for (let x = 0; x < 3000; x += 20) {
        pen.fillStyle = `hsl(${(x * 7 + y * 13) % 360} 45% ${30 + ((x + y) % 40)}%)`
        pen.fillRect(x, y, 20, 20)
      }
    const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.95 })
    return [...new Uint8Array(await blob.arrayBuffer())]
  })
  return Buffer.from(withSegments(Uint8Array.from(drawn), exifWithPlace(6)))
}

it('a photo taken without signal is made smaller, loses its place, waits, and arrives', async () => {
  const { page, wire, yard, noticed, sent } = field
  const camera = await fromTheCamera(page)
  expect((await ExifReader.load(camera, { expanded: true })).gps?.Latitude).toBeCloseTo(32.5)

  wire.fate(() => 'cut')
  await page.goto('/colony/W-01/visit')
  await tapAll(page, { 'The lid': 'Opened' })
  await page.locator('#photo-files').setInputFiles([
    { name: 'IMG_0001.jpg', mimeType: 'image/jpeg', buffer: camera },
    { name: 'notes.txt', mimeType: 'image/jpeg', buffer: Buffer.from('no picture') },
  ])
  await page.locator('#photo-says', { hasText: 'Not a picture this browser can read: notes.txt' }).waitFor()
  await page
    .locator('#photo-files')
    .setInputFiles([{ name: 'IMG_0001.jpg', mimeType: 'image/jpeg', buffer: camera }])
  await page.locator('#photo-says', { hasText: '2 photos' }).waitFor()
  await page.getByRole('button', { name: 'Leave out' }).first().click()
  await page.locator('#photo-says', { hasText: '1 photo,' }).waitFor()
  // From the top: further down something always lies under the bar at the foot.
  await page.evaluate(() => scrollTo(0, 0))
  expect(await violations(page)).toEqual([])
  expect(await missableControls(page, 48)).toEqual([])
  expect(await sidewaysScroll(page)).toBe(0)
  await page.locator('.photos').scrollIntoViewIfNeeded()
  await page.screenshot({ path: shot('photo-form') })
  await press(page, 'Save the visit')
  expect(await read(page.locator('#phone-line'))).toContain('1 waiting to be sent')

  // Shown from the phone itself while it waits.
  const width = await page.locator('.photo-strip img').evaluate(async (img: HTMLImageElement) => {
    img.loading = 'eager'
    await img.decode()
    return img.naturalWidth
  })
  expect(width).toBe(1067)
  await page.locator('.photo-strip').scrollIntoViewIfNeeded()
  await page.screenshot({ path: shot('photo-waits') })
  expect(readdirSync(yard.folder)).not.toContain('photos')

  // The line breaks behind the first piece: that one stays at the server, and the next try goes on behind it.
  let pieces = 0
  wire.fate(({ method }) => (method === 'PATCH' && ++pieces > 1 ? 'cut' : 'pass'))
  await page.goto('/outbox')
  await press(page, 'Send now')
  const arriving = join(yard.folder, 'photos', 'arriving')
  const [part = ''] = readdirSync(arriving)
  expect(statSync(join(arriving, part)).size).toBe(FIRST_PIECE)
  wire.fate(() => 'pass')
  await page.goto('/outbox')
  await press(page, 'Send now')
  await sent()
  const [entry] = [...yard.store.journal()].map((r) => r.entry).filter((e) => e.kind === 'inspection')
  const ids = entry !== undefined && 'photos' in entry ? (entry.photos ?? []) : []
  expect(ids).toHaveLength(1)
  expect(readdirSync(join(yard.folder, 'photos'))).toEqual([`${ids[0]}.jpg`])

  // What the server has: upright, smaller, and nothing but the picture, by our own reading and another's.
  const bytes = new Uint8Array(readFileSync(join(yard.folder, 'photos', `${ids[0]}.jpg`)))
  expect(stripped(bytes)).toMatchObject({ ok: true, width: 1067, height: 1600 })
  expect(bytes.length).toBeLessThan(camera.length / 2)
  expect(bytes.length).toBeLessThan(1_000_000)
  for (const name of metadataIn(bytes)) expect(name).toMatch(/^APP(0 JFIF|2 ICC_PROFILE)$/)
  const tags = await ExifReader.load(Buffer.from(bytes), { expanded: true })
  expect([tags.exif, tags.gps, tags.xmp, tags.iptc]).toEqual([undefined, undefined, undefined, undefined])

  await page.goto('/colony/W-01')
  expect(await page.locator('.photo-strip img').count()).toBe(1)
  expect(noticed.filter((n) => !n.includes('Failed to load resource'))).toEqual([])
  expect(yard.errors).toEqual([])
})
