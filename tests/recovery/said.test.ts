/** What is said beside the advice, on the first day on which it is right and not before. A mutation run found these unheld. */
import { describe, expect, test } from 'vitest'
import { addDays } from '../../src/days.ts'
import type { Entry } from '../../src/journal/entry.ts'
import { historyOf } from '../../src/journal/history.ts'
import { planOf } from '../../src/recovery/plan.ts'
import { build, START } from './arbitrary.ts'

type Fields = Record<string, unknown>
/** All reasons of the advice on a day, by their codes. */
function said(day: number, intake: Fields, ...rest: Entry[]): string[] {
  const arrival = { kind: 'intake', removal: { type: 'wall' }, yard: 'North', queen: 'unseen', ...intake }
  const history = historyOf('X-1', [build(0, 0, arrival), ...rest])
  if (history === null) throw new Error('no intake')
  return planOf(history, addDays(START, day)).advice.reasons.map((r) => r.code)
}

describe('a virgin', () => {
  test('may be in the box from nine days after the removal: the day before the earliest can emerge (16 - 6; Winston 1987, from memory)', () => {
    const brood = { eggs: 1, open: 1, capped: 1 }
    expect(said(8, { brood })).not.toContain('virgin-by-now')
    expect(said(9, { brood })).toContain('virgin-by-now')
  })
})

describe('a move', () => {
  const moved = (fields: Fields): Entry => build(5, 2, { kind: 'move', yard: 'South', ...fields })
  test.each([
    [{}, 'moved-maybe-near'],
    [{ distanceKm: 2.9 }, 'moved-near'],
    [{ yard: 'North', stand: '4' }, 'moved-near'],
  ])('%j loses foragers, and that is said (under 3 km; common practice)', (fields, code) => {
    const codes = said(3, {}, moved(fields))
    expect(codes.filter((c) => c.startsWith('moved'))).toEqual([code])
    // For three days after it.
    expect(said(5, {}, moved(fields))).toContain(code)
    expect(said(6, {}, moved(fields))).not.toContain(code)
  })

  test('of three kilometres loses none', () => {
    expect(said(3, {}, moved({ distanceKm: 3 })).filter((c) => c.startsWith('moved'))).toEqual([])
  })
})
