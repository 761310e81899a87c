/** A thumb that counts: taps, fields typed, pages, words on them, and how far the page is moved before the next thing can be reached. */
import type { Locator, Page } from 'playwright-core'
import { question } from './person.ts'

export interface Counted {
  pages: number
  words: number
  taps: number
  typed: number
  /** Pixels scrolled, up or down, to reach what is tapped or typed into next. */
  scrolled: number
}

export class Thumb {
  readonly counted: Counted = { pages: 0, words: 0, taps: 0, typed: 0, scrolled: 0 }
  readonly #page: Page

  constructor(page: Page) {
    this.#page = page
  }

  /** A page has opened. */
  async arrive(): Promise<void> {
    this.counted.pages++
    this.counted.words += await wordsOn(this.#page)
  }

  async answer(legend: string, answer: string): Promise<void> {
    const labels = question(this.#page, legend).locator('label')
    await this.tap(labels.filter({ hasText: new RegExp(`^\\s*${answer}(?![\\d½¼])`) }).first())
  }

  open = (summary: string): Promise<void> =>
    this.tap(this.#page.locator('summary', { hasText: summary }).first())

  /** A button that leads to another page. */
  press = (button: string): Promise<void> =>
    this.#onward(this.#page.getByRole('button', { name: button, exact: true }).first())

  /** A link to another page. */
  follow = (link: string | RegExp): Promise<void> =>
    this.#onward(this.#page.getByRole('link', { name: link }).first())

  async type(label: string, text: string): Promise<void> {
    this.counted.typed++
    const field = this.#page.getByLabel(label, { exact: true })
    await this.#reach(field)
    await field.fill(text)
  }

  /** Types, and sends it with the keyboard's own key. */
  async send(label: string, text: string): Promise<void> {
    await this.type(label, text)
    const [answer] = await Promise.all([this.#page.waitForNavigation(), this.#page.keyboard.press('Enter')])
    await answer?.finished()
    await this.arrive()
  }

  async tap(what: Locator): Promise<void> {
    this.counted.taps++
    await this.#reach(what)
    await what.click()
  }

  async #onward(what: Locator): Promise<void> {
    this.counted.taps++
    await this.#reach(what)
    await Promise.all([this.#page.waitForNavigation(), what.click()])
    await this.arrive()
  }

  /** Moves the page as far as it takes until nothing lies over what is to be touched. */
  async #reach(what: Locator): Promise<void> {
    this.counted.scrolled += await what.evaluate((element) => {
      const free = (): boolean => {
        const { left, top, width, height } = element.getBoundingClientRect()
        // A thumb needs the middle of it.
        const [x, y] = [left + width / 2, top + height / 2]
        const there = document.elementFromPoint(x, y)
        return there !== null && (element.contains(there) || there.contains(element))
      }
      const before = window.scrollY
      if (!free()) element.scrollIntoView({ block: 'nearest' })
      if (!free()) element.scrollIntoView({ block: 'center' })
      return Math.abs(window.scrollY - before)
    })
  }
}

/** Words that can be read on the page, without its head and its bars. */
export const wordsOn = (page: Page): Promise<number> =>
  // biome-ignore lint/performance/useDomNodeTextContent: what can be read, not what is folded away
  page.evaluate(() => document.querySelector('main')?.innerText.trim().split(/\s+/).length ?? 0)
