/** Whether a later hour of the box is a slip that is put right, or another cut. Invented. */
import { expect, it } from 'vitest'
import { beginsIn } from '../../src/records/job-state.ts'
import { EMPTY_SHEET, type Sheet } from '../../src/records/removal-sheet.ts'

const boxed = (boxedAt: string): Sheet => ({
  ...EMPTY_SHEET,
  work: { on: '2026-06-12', openedAt: '05:30', boxedAt },
})

it.each([
  ['06:00', '06:40', false],
  ['06:00', '05:40', false],
  ['06:00', '07:30', true],
  ['06:00', '19:30', true],
])('boxed at %s, then at %s: begun anew %s', (was, is, anew) =>
  expect(beginsIn(boxed(was), boxed(is))).toBe(anew),
)
