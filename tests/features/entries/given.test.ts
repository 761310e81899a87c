/** What is asked of a thing given: the table, the styles that show it, and the entries read from it say the same. */
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { GIVEN_PARTS, notAsked } from '../../../src/features/entries/given.ts'
import { visitDrafts } from '../../../src/features/entries/visit.ts'
import { FIELDS } from '../../../src/forms/index.ts'
import { GIFTS } from '../../../src/journal/index.ts'
import type { Units } from '../../../src/words/index.ts'

const US: Units = { temperature: 'F', weight: 'lb' }

const CSS = readFileSync(
  new URL('../../../src/features/entries/given.css', import.meta.url),
  'utf8',
).replaceAll(/\s+/g, ' ')

test.each(Object.entries(GIVEN_PARTS))(
  'the styles show %s with the same things as the table',
  (part, { of }) => {
    const rule = CSS.split(/, (?=\.given:not)|[{}]/).find((r) => r.includes(`.given-${part}`)) ?? ''
    const shown = [...rule.matchAll(/\[value="([a-z-]+)"\]/g)].map((m) => m[1])
    expect([...shown].sort()).toEqual([...of].sort())
  },
)

test('every thing is one that can be given, and every field one of its own', () => {
  const fields = Object.values(GIVEN_PARTS).flatMap((p) => [...p.fields])
  expect(new Set(fields).size).toBe(fields.length)
  for (const { of } of Object.values(GIVEN_PARTS)) for (const gift of of) expect(GIFTS).toContain(gift)
  for (const field of fields) expect(Object.keys(FIELDS.given)).toContain(field)
})

test('frames typed before the queen was tapped are not hers', () => {
  const typed = { on: ['2026-06-10'], opened: ['yes'], 'given1.frames': ['2'], 'given1.caged': ['yes'] }
  const given = (what: string) =>
    visitDrafts({ ...typed, 'given1.what': [what] }, US).find((d) => d.kind === 'given')?.raw
  expect(given('mated-queen')).toMatchObject({ what: 'mated-queen', caged: true })
  expect(given('mated-queen')).not.toHaveProperty('frames')
  expect(given('egg-frame')).toMatchObject({ what: 'egg-frame', frames: 2 })
  expect(given('egg-frame')).not.toHaveProperty('caged')
})

test('what was given is asked for before anything is left out', () => {
  const [, given] = visitDrafts({ on: ['2026-06-10'], opened: ['yes'], 'given1.frames': ['2'] }, US)
  expect(given?.raw).toMatchObject({ frames: 2 })
  expect(given?.raw).not.toHaveProperty('what')
})

test('syrup has no frames, no cage and no withdrawal', () => {
  expect(notAsked('syrup').sort()).toEqual(['batch', 'caged', 'donor', 'frames', 'product', 'withdrawalDays'])
})
