/** How large the things are that a gloved finger has to hit. */
import type { Page } from 'playwright-core'

const EVERY = 'a[href], button, summary, select, textarea, input:not([type=hidden])'

/**
 * Every control of the page that can be hit now and is smaller than `least` CSS pixels in one direction, with its size. A
 * tick or a choice is hit by its label. Nothing is left out: folds are opened first.
 */
export async function missableControls(page: Page, least: number): Promise<string[]> {
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true
  })
  return page.evaluate(
    ([least, EVERY]) => {
      const controls = [...document.querySelectorAll<HTMLElement>(EVERY)].map((e) =>
        e instanceof HTMLInputElement && (e.type === 'radio' || e.type === 'checkbox')
          ? (e.closest('label') ?? e)
          : e,
      )
      return [...new Set(controls)].flatMap((e) => {
        const { width, height, bottom } = e.getBoundingClientRect()
        // What is off the screen on purpose, as the way past the masthead, is for keyboards.
        if (width === 0 || height === 0 || bottom + scrollY < 0) return []
        if (Math.min(width, height) >= least - 0.5) return []
        const name = e.textContent?.trim() || e.getAttribute('name') || e.tagName
        return [`${name.slice(0, 40)}: ${Math.round(width)} x ${Math.round(height)}`]
      })
    },
    [least, EVERY] as const,
  )
}

/** How many controls there are: a page without any would pass everything. */
export const controlsOn = (page: Page): Promise<number> => page.locator(EVERY).count()
