/** A person at a page: reads labels, taps answers, types, follows links. Nothing is found by what only a program sees. */
import type { Locator, Page } from 'playwright-core'

const escaped = (text: string): string => text.replaceAll(/[.*+?^${}()|[\]\\/]/g, '\\$&')

/** Begins with these words, and the words end there: '1' is not '10'. */
const beginning = (words: string): RegExp => new RegExp(`^\\s*${escaped(words)}(?![\\d½¼])`)

const exactly = (words: string): RegExp => new RegExp(`^\\s*${escaped(words)}\\s*$`)

/** The answers under a question. */
export const question = (page: Page, legend: string): Locator =>
  page.getByRole('group', { name: legend, exact: true })

/** Opens the folds that a question lies in, from the outside in, as one does who looks for it. */
async function bringOut(inside: Locator): Promise<void> {
  const folds = inside.locator('xpath=ancestor::details[not(@open)]/summary')
  // One opened is in the list no more.
  for (let left = await folds.count(); left > 0; left--) await folds.first().click()
}

/** Taps an answer, on its label, where a finger would. */
export async function tap(page: Page, legend: string, answer: string): Promise<void> {
  await bringOut(page.locator('fieldset', { has: page.locator('> legend', { hasText: exactly(legend) }) }))
  await question(page, legend)
    .locator('label')
    .filter({ hasText: beginning(answer) })
    .first()
    .click()
}

/** Taps several: question by question. */
export async function tapAll(page: Page, answers: Record<string, string>): Promise<void> {
  for (const [legend, answer] of Object.entries(answers)) await tap(page, legend, answer)
}

/** Types into fields, by their labels. */
export async function type(page: Page, fields: Record<string, string>): Promise<void> {
  for (const [label, text] of Object.entries(fields)) {
    const field = page.getByLabel(label, { exact: true })
    await bringOut(field)
    await field.fill(text)
  }
}

/** Presses a button and waits for the page that comes. */
export async function press(page: Page, button: string): Promise<void> {
  await page.getByRole('button', { name: button }).click()
  await page.waitForLoadState()
}

/** Follows a link and waits for its page. */
export async function follow(page: Page, link: string | RegExp): Promise<void> {
  await page.getByRole('link', { name: link }).first().click()
  await page.waitForLoadState()
}

/** What can be read there, spaces made single: hidden words are not read. */
export const read = async (where: Locator): Promise<string> =>
  // biome-ignore lint/performance/useDomNodeTextContent: a person reads what is rendered, not what is in the tree
  (await where.innerText()).replaceAll(/\s+/g, ' ')

/** All the words on the page. */
export const words = (page: Page): Promise<string> => read(page.locator('main'))

/** The page's headline. */
export const headline = (page: Page): Promise<string> => read(page.getByRole('heading', { level: 1 }))

/** Opens a fold, unless it stands open. */
export async function unfold(page: Page, summary: string): Promise<void> {
  const fold = page
    .locator('details')
    .filter({ has: page.locator('summary', { hasText: summary }) })
    .first()
  if ((await fold.getAttribute('open')) === null) await fold.locator('summary').first().click()
}
