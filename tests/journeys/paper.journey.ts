/** From the printer to the desk: the sheet fits its paper, the labels read, and a sheet is typed in without a mouse. */
import jsQR from 'jsqr'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { LAPTOP, launch, PHONE, watchedPage } from '../support/browser.ts'
import { someOf } from '../support/long.ts'
import { sidewaysScroll, smallTargets, violations } from '../support/page-checks.ts'
import { follow, words } from '../support/person.ts'
import { looksOf } from '../support/proven-pages.ts'
import { type RunningYard, startYard } from '../support/yard.ts'

const DAY = '2026-06-10'
const looks = looksOf('paper', import.meta.filename)

let yard: RunningYard
let browser: Awaited<ReturnType<typeof launch>>
beforeAll(async () => {
  yard = await startYard({ day: DAY, demo: true })
  browser = await launch()
})
afterAll(async () => {
  await browser.close()
  expect(yard.errors).toEqual([])
  await yard.stop()
})

/** How many sheets of paper a printer would take, and the size of the first in points. */
async function printed(page: Page): Promise<{ pages: number; width: number; height: number }> {
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1')
  const box = /\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)\s*\]/.exec(pdf)
  return {
    pages: pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0,
    width: Math.round(Number(box?.[1])),
    height: Math.round(Number(box?.[2])),
  }
}

/** Parts of the page whose content does not fit into them on paper. */
const cutOff = (page: Page, parts: string): Promise<string[]> =>
  page
    .locator(parts)
    .evaluateAll((all) =>
      all.flatMap((e) =>
        e.scrollHeight > e.clientHeight + 1 || e.scrollWidth > e.clientWidth + 1
          ? [
              `${e.textContent?.slice(0, 30)}: ${e.scrollWidth} x ${e.scrollHeight} in ${e.clientWidth} x ${e.clientHeight}`,
            ]
          : [],
      ),
    )

/** What a page is on paper; `note` is the height in millimetres of the least room to write in. */
async function onPaper(page: Page, path: string, parts: string) {
  await page.goto(path)
  const notes = await page
    .locator('[data-field="note"] .write-on')
    .evaluateAll((all) => all.map((e) => e.getBoundingClientRect().height / (96 / 25.4)))
  return {
    leaves: await page.locator('.leaf').count(),
    lang: await page.locator('html').getAttribute('lang'),
    cut: await cutOff(page, parts),
    note: notes.length === 0 ? null : Math.min(...notes),
    paper: await printed(page),
  }
}

it.each([
  ['a4', 595, 842, 'en'],
  ['letter', 612, 792, 'en'],
  ['a4', 595, 842, 'es'],
  ['letter', 612, 792, 'es'],
] as const)(
  'the sheet and the labels fit %s paper, nothing cut off (%i x %i, %s)',
  async (size, width, height, language) => {
    yard.people.accounts.setLanguage(yard.people.accounts.byName('Wren')?.id ?? '', language)
    const { page, context, noticed } = await watchedPage(browser, yard.url, LAPTOP)
    await page.emulateMedia({ media: 'print' })
    const sheet = `/paper?size=${size}&all=1`
    const { leaves, lang, cut, note, paper } = await looks.found({ page, noticed }, sheet, 'print', () =>
      onPaper(page, sheet, '.block, .leaf'),
    )
    expect(leaves).toBeGreaterThan(5)
    expect(lang).toBe(language)
    expect(cut).toEqual([])
    // Room to write: two lines at least, whatever the plan had to say.
    expect(note).toBeGreaterThan(6.5)
    expect(paper).toEqual({ pages: leaves, width, height })

    const labels = `/labels?size=${size}&address=https://yard.example`
    const printedLabels = await looks.found({ page, noticed }, labels, 'print', () =>
      onPaper(page, labels, '.label, .leaf'),
    )
    expect(printedLabels.cut).toEqual([])
    expect(printedLabels.paper).toEqual({ pages: printedLabels.leaves, width, height })
    expect(noticed).toEqual([])
    await context.close()
    yard.people.accounts.setLanguage(yard.people.accounts.byName('Wren')?.id ?? '', null)
  },
)

it('the codes on the labels, as drawn by the browser, open their boxes', async () => {
  const { page, context } = await watchedPage(browser, yard.url, LAPTOP)
  await page.goto('/labels?address=https://yard.example')
  const first = page.locator('.label').first()
  const tag = (await first.locator('.label-tag').textContent()) ?? ''
  const drawn = await first.locator('.label-code svg').evaluate(async (svg) => {
    const picture = new Image()
    const size = 300
    const copy = svg.cloneNode(true) as SVGElement
    copy.setAttribute('width', String(size))
    copy.setAttribute('height', String(size))
    picture.src = `data:image/svg+xml;base64,${btoa(new XMLSerializer().serializeToString(copy))}`
    await picture.decode()
    const canvas = document.createElement('canvas')
    canvas.width = canvas.height = size
    const pen = canvas.getContext('2d')
    pen?.drawImage(picture, 0, 0, size, size)
    const { data } = pen?.getImageData(0, 0, size, size) ?? { data: [] }
    // Grey is enough: one channel of four.
    return { size, grey: [...data].filter((_, i) => i % 4 === 0) }
  })
  const pixels = Uint8ClampedArray.from(drawn.grey.flatMap((g) => [g, g, g, 255]))
  expect(jsQR(pixels, drawn.size, drawn.size)?.data).toBe(`https://yard.example/colony/${tag}`)
  await context.close()
})

it.each(someOf([PHONE, LAPTOP], 1))(
  'all of it is found under More on a $name, and readable by all',
  async (device) => {
    const { page, context, noticed } = await watchedPage(browser, yard.url, device)
    await page.goto('/')
    await page.locator('.ways-more summary').click()
    // The menu stays on the screen however many ways there are.
    const menu = await page.locator('.ways-menu').boundingBox()
    expect(menu?.y).toBeGreaterThanOrEqual(0)
    expect((menu?.y ?? 0) + (menu?.height ?? 0)).toBeLessThanOrEqual(device.viewport.height)
    await follow(page, 'On paper')
    for (const way of ['Stand labels', 'Type in a sheet', 'Print a round sheet']) {
      await follow(page, way)
      // One yard's boxes stand for all: reading forty of them takes the checker half a minute.
      const path = `${new URL(page.url()).pathname}?yard=Tannery+Field`
      await page.goto(path)
      const faults = await looks.found({ page, noticed }, path, device.name, async () => [
        ...((await sidewaysScroll(page)) > 0 ? ['wider than the screen'] : []),
        ...(device.touch ? [...(await violations(page)), ...(await smallTargets(page, 48))] : []),
      ])
      expect(faults, way).toEqual([])
    }
    expect(noticed).toEqual([])
    await context.close()
  },
)

it('a sheet is typed in with the keyboard alone', async () => {
  const { page, context, noticed } = await watchedPage(browser, yard.url, LAPTOP)
  await page.goto('/paper?yard=Tannery+Field')
  await follow(page, 'type in this sheet')
  const { keyboard } = page
  await page.locator('[name="r0.opened"]').focus()
  // Lid: Opened. Eggs: Single. First letters choose, Tab goes on; Enter in a field sends nothing.
  await keyboard.press('o')
  await keyboard.press('Tab')
  await keyboard.press('s')
  await page.locator('[name="r0.framesOfBees"]').focus()
  await keyboard.type('4.5')
  await keyboard.press('Enter')
  expect(page.url()).toContain('/sheet-entry?')
  await keyboard.press('Tab')
  await keyboard.type('many')
  await page.locator('[name="r1.missed.reason"]').focus()
  await keyboard.press('r')
  await page.getByRole('button', { name: 'Save the sheet' }).focus()
  await keyboard.press('Enter')
  await page.waitForSelector('#saved')
  expect(await words(page)).toContain('1 box is in the book; 1 box is not yet')
  expect(await page.locator('[name="r0.framesOfBrood"]').inputValue()).toBe('many')
  expect(await page.locator('[name="r0.eggs"]').inputValue()).toBe('single')

  await page.getByRole('link', { name: /Frames of brood must be a number/ }).click()
  await page.locator('[name="r0.framesOfBrood"]').fill('2')
  await page.getByRole('button', { name: 'Save the sheet' }).click()
  await page.waitForSelector('#saved')
  expect(await words(page)).toContain('1 box is in the book.')
  const last = yard.store.changes({ limit: 2 }).map((r) => r.entry)
  expect(last).toMatchObject([
    { kind: 'inspection', opened: true, eggs: 'single', framesOfBees: 4.5, framesOfBrood: 2 },
    { kind: 'missed-visit', reason: 'rain' },
  ])
  // The answer 422 of the refused sheet is told to the console by the browser itself.
  expect(noticed.filter((n) => !n.includes('422'))).toEqual([])
  await context.close()
})
