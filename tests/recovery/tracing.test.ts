/** Foulbrood traced in both directions, since the last clean look (common practice of inspectors). */
import { describe, expect, test } from 'vitest'
import { addDays, type Day } from '../../src/days.ts'
import type { Entry } from '../../src/journal/entry.ts'
import { historyOf } from '../../src/journal/history.ts'
import { planOf } from '../../src/recovery/plan.ts'
import { type Traced, traceFoulbrood } from '../../src/recovery/tracing.ts'
import { build, START } from './arbitrary.ts'

const on = (day: number): Day => addDays(START, day)
const intake = build(0, 0, { kind: 'intake', removal: { type: 'wall' }, yard: 'North', queen: 'unseen' })
const look = (day: number, signs: string[], opened = true): Entry =>
  build(day + 1, day, { kind: 'inspection', opened, signs })
const given = (day: number, what: string, donor: string): Entry =>
  build(day + 1, day, { kind: 'given', what, donor })

function colony(tag: string, entries: Entry[], more: Partial<Traced> = {}): Traced {
  const history = historyOf(tag, [intake, ...entries])
  if (history === null) throw new Error('no intake')
  return { tag, yard: 'North', entries: history.entries, suspectedSince: null, ...more }
}

const sick = (entries: Entry[] = []): Traced =>
  colony('W-7', [...entries, look(20, ['brood-disease-suspected'])], { suspectedSince: on(20) })

const bonds = (...colonies: Traced[]): [string, string][] =>
  [...traceFoulbrood(colonies)].map(([tag, e]): [string, string] => [tag, e.bond])

describe('bound to a suspected colony', () => {
  test('through a frame, either way', () => {
    const donor = colony('D-1', [])
    const taker = colony('T-1', [given(10, 'combs', 'W-7')])
    expect(bonds(sick([given(5, 'egg-frame', 'D-1')]), donor, taker)).toEqual([
      ['D-1', 'gave'],
      ['T-1', 'got'],
    ])
  })

  test('through uniting', () => {
    const gone = colony('U-1', [build(9, 8, { kind: 'outcome', what: 'united', into: 'W-7' })])
    expect(bonds(sick(), gone)).toEqual([['U-1', 'united']])
  })

  test('through robbing at either box of one yard, and not of another', () => {
    const near = colony('N-1', [look(12, ['robbing'], false)])
    const far = colony('F-1', [look(12, ['robbing'], false)], { yard: 'South' })
    expect(bonds(sick(), near, far)).toEqual([['N-1', 'robbing']])
    expect(bonds(sick([look(13, ['robbing'], false)]), colony('N-2', []))).toEqual([['N-2', 'robbing']])
  })

  test('not through feed, a queen, or what was before the last clean look', () => {
    expect(bonds(sick(), colony('S-1', [given(5, 'syrup', 'W-7'), given(6, 'mated-queen', 'W-7')]))).toEqual(
      [],
    )
    expect(bonds(sick([given(3, 'egg-frame', 'D-1'), look(6, [])]), colony('D-1', []))).toEqual([])
  })

  test('is known by its id and former names as well as by its tag in any letters, and not where nobody is named', () => {
    const donor = colony('D-1', [], { id: 'an-id', names: ['D-old'] })
    for (const name of ['an-id', 'D-old', 'd-1'])
      expect(
        bonds(sick([given(5, 'egg-frame', name)]), donor).map(([, how]) => how),
        name,
      ).toEqual(['gave'])
    const unnamed = build(6, 5, { kind: 'given', what: 'egg-frame' })
    expect(bonds(sick([unnamed]), donor)).toEqual([])
  })

  test('asks for a full brood look two to eight weeks on, which ends it', () => {
    const s = sick([given(5, 'egg-frame', 'D-1')])
    expect(traceFoulbrood([s, colony('D-1', [])]).get('D-1')?.look).toEqual({
      opens: on(19),
      due: on(33),
      closes: on(61),
    })
    expect(bonds(s, colony('D-1', [look(18, [])]))).toEqual([['D-1', 'gave']])
    expect(bonds(s, colony('D-1', [look(25, [])]))).toEqual([])
  })

  test('has been held since the first suspicion, however many there are', () => {
    const donor = colony('D-1', [])
    const first = sick([given(5, 'egg-frame', 'D-1')])
    expect(traceFoulbrood([first, donor]).get('D-1')?.since).toBe(on(20))
    const second = colony('W-8', [given(9, 'combs', 'D-1'), look(25, ['brood-disease-suspected'])], {
      suspectedSince: on(25),
    })
    for (const order of [
      [first, second],
      [second, first],
    ])
      expect(traceFoulbrood([...order, donor]).get('D-1')).toMatchObject({ since: on(20), on: on(9) })
  })

  test('is held: no move-out, no uniting, no chores, and the look is what is asked', () => {
    const exposure =
      traceFoulbrood([sick([given(5, 'egg-frame', 'D-1')]), colony('D-1', [])]).get('D-1') ?? null
    const history = historyOf('D-1', [
      intake,
      build(6, 5, { kind: 'inspection', opened: true, eggs: 'none', cells: 'none', framesOfBees: 1 }),
    ])
    if (history === null || exposure === null) throw new Error('no history')
    expect(planOf(history, on(10)).advice.action).toBe('unite')
    expect(planOf(history, on(10), undefined, { exposure }).advice.action).not.toBe('unite')
    const later = planOf(history, on(30), undefined, { exposure })
    expect(later.advice.action).toBe('open-and-look')
    expect(later.advice.why).toContain('W-7')
    expect(later.readiness.unmet.map((u) => u.what).join()).toContain('clear of brood disease')
  })
})

test('a long past is not gone through pair by pair', () => {
  // Each hundredth is suspected, robbed or gave a frame; the rest have nothing to do with any of them.
  let reads = 0
  const counted = (c: Traced): Traced => ({
    ...c,
    get entries() {
      reads++
      return c.entries
    },
  })
  const of = (n: number): Traced => {
    if (n % 100 === 0)
      return colony(`S-${n}`, [given(5, 'egg-frame', `C-${n + 1}`)], { suspectedSince: on(20) })
    return colony(`C-${n}`, n % 100 === 50 ? [look(12, ['robbing'], false)] : [], { yard: `Yard ${n % 7}` })
  }
  const readFor = (n: number): number => {
    reads = 0
    const found = traceFoulbrood(Array.from({ length: n }, (_, i) => counted(of(i))))
    for (let s = 0; s < n; s += 100) expect(found.get(`C-${s + 1}`)?.bond).toBe('gave')
    return reads
  }
  const some = readFor(500)
  // Pair by pair it would be sixteen times as many for four times the colonies.
  expect(readFor(2000)).toBeLessThan(6 * some)
})
