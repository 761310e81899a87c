/**
 * Gray's test against cmprsk 2.2-11 in R 4.2.2: competing.json (mgus2, toy) and nine more sets made by gray.R (tied days,
 * two to seven groups, two to four ways, a way that one group never takes, a group of one). Tolerance 1e-9 relative.
 */
import { describe, expect, it, test } from 'vitest'
import { countByDay } from '../../src/statistics/day-counts.ts'
import { grayTest } from '../../src/statistics/gray.ts'
import { difference, reference } from './read.ts'

interface Tested {
  cause: number | string
  chisq: number
  df: number
  p: number
}
interface Rows {
  time: number[]
  cause: number[]
  group: string[]
}
type Own = Record<string, Rows & { tests: Tested[] }>
type Shared = Record<'mgus2' | 'toy', { data: Rows; gray_test: Tested[] }>

const NEAR = 1e-9
const { meta: _, ...own } = reference<Own>('gray')
const shared = reference<Shared>('competing')
const sets: [name: string, rows: Rows, tests: Tested[]][] = [
  ['mgus2', shared.mgus2.data, shared.mgus2.gray_test],
  ['toy', shared.toy.data, shared.toy.gray_test],
  ...Object.entries(own).map(([name, { tests, ...rows }]): [string, Rows, Tested[]] => [name, rows, tests]),
]

const counted = ({ time, cause, group }: Rows, names = [...new Set(group)]) =>
  countByDay({ day: time, way: cause }, Math.max(...cause), {
    of: group.map((g) => names.indexOf(g)),
    count: names.length,
  })

describe('as cmprsk', () => {
  it('has eleven sets', () => expect(sets.length).toBe(11))
  it.each(sets)('%s', (_name, rows, tests) => {
    expect(tests.length).toBeGreaterThan(1)
    for (const [i, want] of tests.entries()) {
      const got = grayTest(counted(rows), [i + 1])
      expect(got?.df).toBe(want.df)
      expect(difference(got?.chisq, want.chisq), `chisq of ${want.cause}`).toBeLessThan(NEAR)
      expect(difference(got?.p, want.p), `p of ${want.cause}`).toBeLessThan(NEAR)
    }
  })
})

test('the order of the groups changes nothing', () => {
  const rows = own.ties_five
  if (rows === undefined) throw new Error('no such set')
  const [one, other] = [
    ['a', 'b', 'c', 'd', 'e'],
    ['e', 'c', 'a', 'd', 'b'],
  ].map((names) => grayTest(counted(rows, names), [1, 2]))
  expect(difference(one?.chisq, other?.chisq ?? null)).toBeLessThan(1e-12)
})

test('nothing to compare is null, not a figure', () => {
  const day = [1, 2, 3, 4]
  expect(grayTest(countByDay({ day, way: [1, 2, 1, 0] }, 2), [1])).toBeNull()
  const of = { of: [0, 0, 1, 1], count: 2 }
  expect(grayTest(countByDay({ day, way: [2, 0, 2, 0] }, 2, of), [1])).toBeNull()
  expect(grayTest([], [1])).toBeNull()
})

/** Under the hypothesis the test rejects as often as it says: 2,000 pairs of yards drawn alike, with late entries in one half. */
test('says 5 % of the time that alike groups differ', () => {
  let seed = 7
  const chance = (): number => {
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0
    return seed / 2 ** 32
  }
  let rejected = 0
  const RUNS = 2000
  for (let run = 0; run < RUNS; run++) {
    const n = 80
    const day = Array.from({ length: n }, () => 1 + Math.floor(60 * chance()))
    const way = Array.from({ length: n }, () => Math.floor(3 * chance()))
    const entry = Array.from({ length: n }, () => (run % 2 === 0 ? 0 : Math.floor(8 * chance())))
    const counts = countByDay({ day, way, entry }, 2, { of: day.map((_, i) => i % 2), count: 2 })
    if ((grayTest(counts, [1])?.p ?? 1) < 0.05) rejected++
  }
  // Three standard errors of 5 % in 2,000: 1.5 points.
  expect(rejected / RUNS).toBeGreaterThan(0.035)
  expect(rejected / RUNS).toBeLessThan(0.065)
})

test('a group of which nobody was there any more says nothing: the test is that of the others', () => {
  const { time, cause, group } = shared.toy.data
  const first = Math.min(...time.filter((_, i) => cause[i] === 1))
  // Two colonies still there when last seen, before anybody left this way; the others as R compared them.
  const more: Rows = {
    time: [...time, first - 1, first - 1],
    cause: [...cause, 0, 0],
    group: [...group, 'late', 'late'],
  }
  const want = shared.toy.gray_test[0]
  const got = grayTest(counted(more), [1])
  expect(got?.df).toBe(want?.df)
  expect(difference(got?.chisq, want?.chisq ?? null)).toBeLessThan(NEAR)
  // Nothing is left to compare where only one group was there.
  expect(grayTest(counted({ time: [3, 9], cause: [0, 1], group: ['a', 'b'] }), [1])).toBeNull()
})
