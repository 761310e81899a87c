import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Entry, entry as entrySchema } from '../../src/journal/entry.ts'
import { keepingPrivate, PRIVATE_FIELDS, withoutPrivate } from '../../src/people/privacy.ts'

const base = { id: '00000000-0000-7000-8000-000000000001', colony: 'A-1', on: '2026-05-01', by: 'Bram' }
const SECRET = 'Ms Invented, 12 Nowhere Lane'

const WITH: Entry[] = [
  { ...base, kind: 'intake', removal: { type: 'wall', site: SECRET }, yard: 'Y', queen: 'unseen' },
  { ...base, kind: 'given', what: 'mated-queen', cost: 47.31 },
  { ...base, kind: 'outcome', what: 'moved-out', destination: SECRET },
]

test.each(WITH.map((e) => [e.kind, e] as const))('%s loses what is private and nothing else', (_kind, e) => {
  const before = JSON.stringify(e)
  const bare = withoutPrivate(e)
  expect(JSON.stringify(bare)).not.toMatch(/Invented|47\.31/)
  expect(JSON.stringify(e)).toBe(before)
  expect(entrySchema.safeParse(bare).success).toBe(true)
  expect(withoutPrivate(bare)).toEqual(bare)
  expect(keepingPrivate({ ...bare }, e)).toEqual(e)
})

test('a correction of another kind, or of an entry without anything private, keeps nothing', () => {
  const [intake, given] = WITH
  if (intake === undefined || given === undefined) throw new Error('no samples')
  expect(keepingPrivate({ kind: 'note' }, intake)).toEqual({ kind: 'note' })
  expect(keepingPrivate({ kind: 'given' }, withoutPrivate(given))).toEqual({ kind: 'given' })
})

test('every private field is one the schema may be without', () => {
  for (const [kind, paths] of Object.entries(PRIVATE_FIELDS))
    for (const path of paths ?? []) {
      const sample = WITH.find((e) => e.kind === kind)
      expect(sample, `${kind} ${path}`).toBeDefined()
    }
})

test('whatever else an entry holds stays as it is', () => {
  fc.assert(
    fc.property(
      fc.string({ minLength: 1, maxLength: 100 }),
      fc.double({ min: 0, max: 9, noNaN: true }),
      (note, cost) => {
        const e: Entry = { ...base, kind: 'given', what: 'syrup', cost, note }
        expect(withoutPrivate(e)).toEqual({ ...base, kind: 'given', what: 'syrup', note })
      },
    ),
  )
})
