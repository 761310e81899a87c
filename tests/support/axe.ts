/** What axe finds on a page: the checker is put into it once, in its small form, and asked only what is read. */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { AxeResults, RunOptions } from 'axe-core'
import type { Page } from 'playwright-core'

const SOURCE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

/** Rules of WCAG 2.0-2.2 at level A and AA, and axe's own good practice. */
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']
/** How grave, in axe's words, is what fails here. */
const GRAVE = ['serious', 'critical']

/** In the page. Whatever a rule finds is as grave as this table says of the rule (axe 4.10, `_finalizeRuleResult`). */
interface WithAxe {
  axe: {
    run: (where: Document, options: RunOptions) => Promise<AxeResults>
    _audit: { rules: { id: string; impact: string }[] }
  }
}

/** Serious and critical violations, one line each with the elements. A rule that finds only lesser things is not asked: a third are such. */
export async function violationsOf(page: Page): Promise<string[]> {
  await page.evaluate(SOURCE)
  return page.evaluate(
    async ({ tags, grave }) => {
      const { axe } = globalThis as unknown as WithAxe
      const lesser = axe._audit.rules.filter((r) => !grave.includes(r.impact)).map((r) => r.id)
      const { violations } = await axe.run(document, {
        runOnly: { type: 'tag', values: tags },
        rules: Object.fromEntries(lesser.map((id) => [id, { enabled: false }])),
        // Describing everything that passed takes most of the time.
        resultTypes: ['violations'],
        preload: false,
      })
      return violations.map((v) => `${v.id}: ${v.help}: ${v.nodes.map((n) => n.target.join(' ')).join(', ')}`)
    },
    { tags: TAGS, grave: GRAVE },
  )
}
