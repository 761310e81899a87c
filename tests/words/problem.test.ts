/** Problems as pages word them: days and quotes, and nothing of what somebody typed. */
import { expect, it } from 'vitest'
import { visitLabel } from '../../src/features/entries/visit.ts'
import { labelOf } from '../../src/forms/read.ts'
import { problemQuotes, problemWords } from '../../src/words/problem.ts'

it.each([
  ['2026-12-24 is in the future (today is 2026-11-25)', 'Thu 24 Dec is in the future (today is Wed 25 Nov)'],
  ['2025-05-01 is before the intake', 'Thu 1 May 2025 is before the intake'],
  ['"T-05" is already in the yard', '“T-05” is already in the yard'],
  [
    'must be a real date written YYYY-MM-DD, not "2026-02-30"',
    'must be a real date written YYYY-MM-DD, not “2026-02-30”',
  ],
  ['"2026-05-01" is already in the yard', '“2026-05-01” is already in the yard'],
  ['must be text, not "a \\"b\\""', 'must be text, not “a "b"”'],
])('%s', (message, words) => expect(problemWords(message, '2026-11-25')).toBe(words))

it('quotes alone leave days as they are', () => {
  expect(problemQuotes('2026-05-01: "x"')).toBe('2026-05-01: “x”')
})

it('a day is called in a problem what it is called beside its field', () => {
  expect([
    labelOf('intake', 'on'),
    labelOf('outcome', 'on'),
    visitLabel('on'),
    labelOf('note', 'on'),
  ]).toEqual(['Day it came', 'Day it left', 'Day of the visit', 'Day'])
})
