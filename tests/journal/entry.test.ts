import { describe, expect, test } from 'vitest'
import { entry, hoursOpenToBoxed, type Intake } from '../../src/journal/entry.ts'
import { contradictions, historyOf } from '../../src/journal/history.ts'
import { problemLine, problemsOf } from '../../src/journal/problem.ts'

const id = (n: number): string => `019707a0-0000-7000-8000-${String(n).padStart(12, '0')}`
const base = (n: number, on: string) => ({ id: id(n), colony: 'X-1', on, by: 'ada' })
const intake = (n = 1, on = '2026-05-01', more: object = {}) =>
  entry.parse({
    ...base(n, on),
    kind: 'intake',
    removal: { type: 'wall' },
    yard: 'North',
    queen: 'unseen',
    ...more,
  })
const look = (n: number, on: string, more: object = {}) =>
  entry.parse({ ...base(n, on), kind: 'inspection', opened: true, ...more })

function complaint(input: object): string {
  const parsed = entry.safeParse(input)
  return parsed.success ? '' : problemsOf(parsed.error, input, 2).map(problemLine).join('\n')
}

describe('a bad entry names its field, the value and what would do', () => {
  const good = { ...base(2, '2026-05-06'), kind: 'inspection', opened: true }
  test.each([
    [{ ...good, eggs: 'some' }, 'entry 2: eggs: must be one of: none, single, multiple; not "some"'],
    [{ ...good, opened: 'yes' }, 'entry 2: opened: must be a boolean, not "yes"'],
    [{ ...good, egs: 'none' }, 'entry 2: egs: has no field "egs"'],
    [{ ...good, on: '2026-02-30' }, 'entry 2: on: must be a real date written YYYY-MM-DD, not "2026-02-30"'],
    [{ ...good, at: '25:00' }, 'entry 2: at: must be a time written HH:MM, not "25:00"'],
    [
      { ...good, framesOfBees: 0.3 },
      'entry 2: framesOfBees: must be in quarter frames (0.25, 0.5, …), not 0.3',
    ],
    [{ ...good, framesOfBees: -1 }, 'entry 2: framesOfBees: must not be negative, not -1'],
    [{ ...good, temper: 6 }, 'entry 2: temper: must be 1 (calm) to 5 (fierce), not 6'],
    [{ ...good, kind: 'dance' }, 'entry 2: kind: is not a known value: "dance"'],
    [{ ...good, note: 'x'.repeat(2001) }, 'entry 2: note: must be at most 2000 characters'],
    [{ ...good, signs: ['beatles'] }, 'entry 2: signs.0: must be one of'],
    [
      { ...base(2, '2026-05-06'), kind: 'intake', removal: {}, yard: 'N', queen: 'loose' },
      'entry 2: removal.type: is missing',
    ],
  ])('%#', (input, line) => {
    expect(complaint(input)).toContain(line)
  })
})

describe('hours from opening to boxed', () => {
  test('are read wherever they were written', () => {
    expect(hoursOpenToBoxed(intake(1, '2026-05-01', { hoursOpenToBoxed: 5 }) as Intake)).toBe(5)
    expect(
      hoursOpenToBoxed(intake(1, '2026-05-01', { removal: { type: 'wall', hoursOpenToBoxed: 4 } }) as Intake),
    ).toBe(4)
  })
})

describe('corrections and withdrawals', () => {
  test('a correction takes the place of what it names', () => {
    const fixed = look(3, '2026-05-06', { eggs: 'none', replaces: id(2) })
    const history = historyOf('X-1', [intake(), look(2, '2026-05-06', { eggs: 'single' }), fixed])
    expect(history?.entries.map((e) => e.id)).toEqual([id(1), id(3)])
  })

  test('a withdrawal takes the whole line back', () => {
    const entries = [
      intake(),
      look(2, '2026-05-06'),
      look(3, '2026-05-06', { replaces: id(2) }),
      entry.parse({ ...base(4, '2026-05-07'), kind: 'withdrawal', replaces: id(3), reason: 'wrong box' }),
    ]
    expect(historyOf('X-1', entries)?.entries.map((e) => e.id)).toEqual([id(1)])
    expect(contradictions(entries, '2026-05-10')).toEqual([])
  })

  test('a withdrawn intake leaves no colony', () => {
    const gone = entry.parse({
      ...base(2, '2026-05-01'),
      kind: 'withdrawal',
      replaces: id(1),
      reason: 'logged twice',
    })
    expect(historyOf('X-1', [intake(), gone])).toBeNull()
    expect(contradictions([intake(), gone], '2026-05-02')).toEqual([])
  })
})

describe('contradictions', () => {
  const out = (n: number, on: string) => entry.parse({ ...base(n, on), kind: 'outcome', what: 'died' })
  test.each([
    ['an inspection before the intake', [intake(), look(2, '2026-04-30')], 'before the intake'],
    ['a date in the future', [intake(), look(2, '2026-06-01')], 'in the future'],
    ['two outcomes', [intake(), out(2, '2026-05-10'), out(3, '2026-05-11')], 'second outcome'],
    [
      'a visit after the end',
      [intake(), out(2, '2026-05-10'), look(3, '2026-05-11')],
      'after the colony left',
    ],
    ['two intakes', [intake(), intake(2, '2026-05-02')], 'second intake'],
    ['no intake', [look(2, '2026-05-02')], 'without an intake'],
    [
      'a removal after the intake',
      [intake(1, '2026-05-01', { removal: { type: 'wall', removedOn: '2026-05-02' } })],
      'after the intake',
    ],
    [
      'eggs seen through the lid',
      [intake(), look(2, '2026-05-02', { opened: false, eggs: 'single' })],
      'lid on',
    ],
    ['a correction of nothing', [intake(), look(2, '2026-05-02', { replaces: id(9) })], 'names no entry'],
    ['a correction of another kind', [intake(), look(2, '2026-05-02', { replaces: id(1) })], 'same kind'],
    [
      'more mites than bees',
      [intake(), entry.parse({ ...base(2, '2026-05-02'), kind: 'mite-wash', bees: 3, mites: 300 })],
      'swapped',
    ],
  ])('%s', (_name, entries, words) => {
    expect(
      contradictions(entries, '2026-05-31')
        .map((p) => p.message)
        .join('; '),
    ).toContain(words)
  })
})
