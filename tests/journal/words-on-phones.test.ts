/**
 * A phone's worker is built on the small zod, which has no words of its own: what is refused there must be said by us, in the
 * words the server says. So zod's words are marked here, and no problem may show the mark.
 */
import fc from 'fast-check'
import { afterAll, beforeAll, expect, test } from 'vitest'
import * as z from 'zod/mini'
import { entry, problemsOf } from '../../src/journal/index.ts'
import { moveRecord, sheet, signature } from '../../src/records/index.ts'
import { SETTINGS } from '../../src/store/settings.ts'
import { entryBodies } from '../abuse/entries.ts'
import { often } from '../support/long.ts'

const MARK = 'said by zod'
const before = z.config().localeError
beforeAll(() => void z.config({ localeError: () => MARK }))
afterAll(() => void z.config({ localeError: before }))

function said(schema: z.ZodMiniType, input: unknown): string[] {
  const { error } = schema.safeParse(input)
  return error === undefined ? [] : problemsOf(error, input).map((p) => p.message)
}

const NAMES = { ids: ['019707a0-0000-7000-8000-000000000001'], tags: ['W-1'], people: ['ada'], sheets: [] }
const SIGNED = { how: 'paper', name: 'Ada', on: '2026-05-01', terms: 'as said' }
const FULL = { job: {}, site: {}, agreement: {}, check: {}, work: {} }
const FAULTS = [
  null,
  undefined,
  '',
  ' ',
  'x',
  'x'.repeat(70_000),
  -1,
  1.3,
  1e9,
  Number.NaN,
  true,
  [],
  {},
  [1],
  ['x'],
  { x: 1 },
]

const RUNS = often(10_000, 700)

test('entries of every kind, wrong in any way', () => {
  let wrong = 0
  fc.assert(
    fc.property(entryBodies(NAMES), (body) => {
      const messages = said(entry, body)
      wrong += messages.length
      expect(messages.filter((m) => m.includes(MARK))).toEqual([])
    }),
    { numRuns: RUNS },
  )
  expect(wrong).toBeGreaterThan(RUNS / 2)
})

/** Every field of it by its path, with each fault in its place. */
function spoilt(schema: z.ZodMiniType, whole: object): string[] {
  const { shape } = schema as unknown as { shape?: Record<string, z.ZodMiniType> }
  return Object.keys(shape ?? {}).flatMap((field) =>
    FAULTS.flatMap((fault) => said(schema, { ...whole, [field]: fault })),
  )
}

test('sheets, records of moving out and signatures, wrong in any field', () => {
  const messages = [
    ...spoilt(signature, SIGNED),
    ...spoilt(moveRecord, {}),
    ...Object.entries(sheet.shape).flatMap(([part, schema]) => [
      ...spoilt(schema as z.ZodMiniType, {}),
      ...FAULTS.flatMap((f) => said(sheet, { ...FULL, [part]: f })),
    ]),
  ]
  expect(messages.length).toBeGreaterThan(500)
  expect(messages.filter((m) => m.includes(MARK))).toEqual([])
})

test('choices of the yard, wrong in any way, names in them too', () => {
  const inside = FAULTS.flatMap((f) => [
    f,
    { a: f },
    { '': f },
    { ['x'.repeat(90)]: f },
    [f],
    { on: f, values: { x: f }, colonies: f },
  ])
  const messages = Object.values(SETTINGS).flatMap(({ schema }) =>
    inside.flatMap((value) => said(schema as z.ZodMiniType, value)),
  )
  expect(messages).toContain('has a name that is empty or too long')
  expect(messages.filter((m) => m.includes(MARK))).toEqual([])
})
