/** Two phones without signal correct the same entry, and one of the corrections is corrected again. */
import { expect, test } from 'vitest'
import type { Entry } from '../../src/journal/entry.ts'
import { standing } from '../../src/journal/history.ts'

const id = (n: number): string => `0000000${n}-0000-7000-8000-000000000000`

const note = (n: number, replaces?: number): Entry => ({
  id: id(n),
  colony: 'A-1',
  on: '2026-05-10',
  by: 'Odalys',
  kind: 'note',
  text: `version ${n}`,
  ...(replaces === undefined ? {} : { replaces: id(replaces) }),
})

const withdrawal = (n: number, replaces: number): Entry => ({
  id: id(n),
  colony: 'A-1',
  on: '2026-05-10',
  by: 'Odalys',
  kind: 'withdrawal',
  replaces: id(replaces),
  reason: 'Wrong box.',
})

const standingIds = (...entries: Entry[]): string[] => standing(entries).map((e) => e.id)

test('of two rival corrections the later one stands, and no correction of the other', () => {
  expect(standingIds(note(1), note(2, 1), note(3, 1))).toEqual([id(3)])
  expect(standingIds(note(1), note(2, 1), note(3, 1), note(4, 2))).toEqual([id(3)])
  expect(standingIds(note(1), note(2, 1), note(3, 1), note(4, 3))).toEqual([id(4)])
})

test('what hangs on a withdrawn line does not come back', () => {
  expect(standingIds(note(1), note(2, 1), withdrawal(4, 1), note(5, 2))).toEqual([])
})

test('rings of replacements end', () => {
  expect(standingIds(note(1, 2), note(2, 1))).toEqual([])
  expect(standingIds(note(1, 2), note(2, 3), note(3, 2), note(4, 1))).toEqual([])
  expect(standingIds(note(1, 1))).toEqual([])
})
