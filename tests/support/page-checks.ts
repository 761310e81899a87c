/** What must hold on every page, whatever is on it. */
import type { Page } from 'playwright-core'
import { violationsOf } from './axe.ts'

/** Serious and critical violations axe finds, one line each with the elements. */
export async function violations(page: Page): Promise<string[]> {
  // A bar at the bottom of the screen covers what the page is scrolled under; at the end of the page it stands in its own
  // place and covers nothing. That focus is never under it has a journey of its own.
  await page.evaluate(() => {
    if (document.querySelector('.act-bar') !== null) scrollTo(0, document.documentElement.scrollHeight)
  })
  return violationsOf(page)
}

/**
 * How much the page shifted under the reader since it was opened (cumulative layout shift by
 * Chromium's own reckoning; what moves within half a second of a tap is meant to).
 */
const layoutShift = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((done) => {
        let sum = 0
        const observer = new PerformanceObserver((list) => {
          for (const e of list.getEntries() as (PerformanceEntry & {
            value: number
            hadRecentInput: boolean
          })[])
            if (!e.hadRecentInput) sum += e.value
        })
        observer.observe({ type: 'layout-shift', buffered: true })
        // Buffered entries are handed over in a task of their own; two frames later they are all here.
        requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(() => done(sum), 50)))
      }),
  )

/**
 * The same, at its least of up to three visits (`again`: looked at afresh). A busy machine paints a page in pieces while it still reads it, and
 * may take more than half a second from a tap to what it opens; a page that moves by itself moves each time.
 */
export async function leastShift(
  page: Page,
  again: () => Promise<unknown> = () => page.reload(),
  most = 0,
): Promise<number> {
  let least = await layoutShift(page)
  for (let more = 0; more < 2 && least > most; more++) {
    await again()
    least = Math.min(least, await layoutShift(page))
  }
  return least
}

/** How many pixels the page is wider than the screen; 0 when it fits. */
export const sidewaysScroll = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

/** Opens an address and counts the bytes that came over the wire for it, headers included. */
export async function bytesFor(page: Page, address: string): Promise<number> {
  const wire = await page.context().newCDPSession(page)
  let bytes = 0
  wire.on('Network.loadingFinished', ({ encodedDataLength }) => {
    bytes += encodedDataLength
  })
  await wire.send('Network.enable')
  await wire.send('Network.setCacheDisabled', { cacheDisabled: true })
  await page.goto(address, { waitUntil: 'load' })
  // What scripts ask for comes after that.
  await page.waitForTimeout(100)
  await wire.detach()
  return bytes
}

/** Words in pictures that stick out of their picture, with by how many pixels. */
export const wordsOutside = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('svg text')].flatMap((e) => {
      const word = e.getBoundingClientRect()
      let svg = (e as SVGTextElement).ownerSVGElement
      while (svg?.ownerSVGElement) svg = svg.ownerSVGElement
      if (svg === null || word.width === 0) return []
      // Where a picture cuts nothing off, the screen does.
      const picture =
        getComputedStyle(svg).overflow === 'visible'
          ? { left: 0, right: document.documentElement.clientWidth }
          : svg.getBoundingClientRect()
      const out = Math.max(picture.left - word.left, word.right - picture.right)
      return out > 1 ? [`${e.textContent}: ${Math.round(out)} px`] : []
    }),
  )

/** Controls lower or narrower than a gloved finger needs, in CSS pixels; links inside a sentence are left out. */
export const smallTargets = (page: Page, least: number): Promise<string[]> =>
  page.evaluate((least) => {
    const controls =
      'a.button, button, .tap, summary, nav a, select, input:not([type=hidden], [type=radio], [type=checkbox])'
    return [...document.querySelectorAll<HTMLElement>(controls)].flatMap((e) => {
      const { width, height } = e.getBoundingClientRect()
      if (width === 0 || height === 0) return []
      if (height >= least - 0.5 && width >= least - 0.5) return []
      const name = e.textContent?.trim() || e.getAttribute('name') || e.tagName
      return [`${name.slice(0, 40)}: ${Math.round(width)} x ${Math.round(height)}`]
    })
  }, least)

/**
 * Words that stick out of the button, answer, mark or cell they stand in, with by how many pixels: they would lie on what is
 * beside it. What scrolls in a frame of its own is left out.
 */
export const spillingWords = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const holders = '.button, button, .tap span, .mark, td, th, .way, summary, h1, h2'
    const all = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    const wrong: string[] = []
    for (let text = all.nextNode(); text !== null; text = all.nextNode()) {
      const holder = text.parentElement?.closest(holders)
      if (!holder || text.parentElement?.closest('.unseen, svg, select, script') !== null) continue
      if (text.textContent?.trim() === '' || holder.getClientRects().length === 0) continue
      const words = document.createRange()
      words.selectNodeContents(text)
      const out = Math.round(words.getBoundingClientRect().right - holder.getBoundingClientRect().right)
      if (out > 1)
        wrong.push(`${holder.tagName.toLowerCase()} “${text.textContent?.slice(0, 30)}”: ${out} px`)
    }
    return wrong
  })

/** Words that are broken in two where there is no hyphen, with what they stand in. Addresses and secrets may be. */
export const brokenWords = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const all = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    const wrong: string[] = []
    for (let text = all.nextNode(); text !== null; text = all.nextNode()) {
      const { parentElement, textContent } = text
      if (parentElement === null || parentElement.closest('.unseen, svg, select, script, .copyable, .leaf'))
        continue
      for (const { 0: word, index } of (textContent ?? '').matchAll(/[\p{L}’]{2,}/gu)) {
        const letters = document.createRange()
        letters.setStart(text, index)
        letters.setEnd(text, index + word.length)
        const lines = new Set([...letters.getClientRects()].map((r) => Math.round(r.top)))
        if (lines.size > 1) wrong.push(`${parentElement.tagName.toLowerCase()} “${word}”`)
      }
    }
    return wrong
  })

/** Letters so many times as large as they are, as somebody sets them who cannot read small ones. */
export const setLetters = (page: Page, times: number): Promise<void> =>
  page.evaluate((times) => {
    const { style } = document.documentElement
    style.fontSize = ''
    if (times !== 1)
      style.fontSize = `${times * Number.parseFloat(getComputedStyle(document.documentElement).fontSize)}px`
  }, times)

/** Opens every fold of the page itself. */
export const openFolds = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const fold of document.querySelectorAll('main details')) fold.setAttribute('open', '')
  })
