/** A wide screen has the colours of a narrow one: contrast read on a phone holds on a laptop. */
import { readdirSync, readFileSync } from 'node:fs'
import { expect, it } from 'vitest'

const ROOT = new URL('../..', import.meta.url).pathname
/** The bar of ways at the foot of a phone is of the page's own paper. */
const OWN_PAPER = ['background: var(--sheet)', 'background: none', 'background: transparent']

/** What stands inside each block whose condition is the size of the screen. */
function sized(css: string): string[] {
  return [...css.matchAll(/@media[^{]*(?:width|height|orientation)[^{]*\{/g)].map((found) => {
    const from = found.index + found[0].length
    let depth = 1
    let to = from
    for (; depth > 0 && to < css.length; to++) depth += css[to] === '{' ? 1 : css[to] === '}' ? -1 : 0
    return css.slice(from, to)
  })
}

it('no colour depends on the size of the screen', () => {
  const files = ['web/styles', 'src'].flatMap((folder) =>
    readdirSync(`${ROOT}${folder}`, { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.css'))
      .map((file) => `${folder}/${file}`),
  )
  const blocks = files.flatMap((file) =>
    sized(readFileSync(`${ROOT}${file}`, 'utf8')).map((css) => ({ file, css })),
  )
  expect(blocks.length).toBeGreaterThan(5)
  const colours = blocks.flatMap(({ file, css }) =>
    [...css.matchAll(/(?<![-\w])(?:color|background(?:-color|-image)?|opacity|filter):[^;]+/g)]
      .map(([declared]) => declared)
      .filter((declared) => !OWN_PAPER.includes(declared))
      .map((declared) => `${file}: ${declared}`),
  )
  expect(colours).toEqual([])
})
