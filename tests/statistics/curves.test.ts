/** Counting by day and the statistics on it: edges, and properties that must hold for any colonies. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { asLost, countByDay, type DayCounts, together } from '../../src/statistics/day-counts.ts'
import { cumulativeIncidence } from '../../src/statistics/incidence.ts'
import { kaplanMeier, survivalAt } from '../../src/statistics/kaplan-meier.ts'
import { logRank } from '../../src/statistics/log-rank.ts'
import { quantileDay } from '../../src/statistics/quantile.ts'
import { restrictedMean } from '../../src/statistics/restricted-mean.ts'

function counts(day: number[], way: number[], entry?: number[], ways = 1): DayCounts {
  const [c] = countByDay(entry === undefined ? { day, way } : { day, way, entry }, ways)
  if (c === undefined) throw new Error('no counts')
  return c
}
const curve = (day: number[], way: number[], entry?: number[]) => kaplanMeier(counts(day, way, entry))

const colony = fc.record({ day: fc.integer({ min: 0, max: 90 }), way: fc.integer({ min: 0, max: 3 }) })
const colonies = fc.array(colony, { minLength: 1, maxLength: 60 })
const split = (rows: { day: number; way: number }[]) => ({
  day: rows.map((r) => r.day),
  way: rows.map((r) => r.way),
})
const oneWay = (rows: { day: number; way: number }[]) =>
  rows.map((r) => ({ day: r.day, way: r.way > 0 ? 1 : 0 }))

describe('edges, as R has them', () => {
  it('all censored: S stays 1, no limits, no median; the whole time is lived', () => {
    const c = curve([3, 10, 40], [0, 0, 0])
    expect(c.steps.map((s) => [s.survival, s.lower, s.upper])).toEqual([
      [1, null, null],
      [1, null, null],
      [1, null, null],
    ])
    expect(quantileDay(c, 0.5)).toEqual({ day: null, lower: null, upper: null })
    expect(restrictedMean(c, 60)).toEqual({ mean: 60, stdErr: 0 })
  })

  it('one colony, lost: S falls to 0 without limits', () => {
    const c = curve([12], [1])
    expect(c.steps).toEqual([
      { day: 12, atRisk: 1, lost: 1, left: 0, survival: 0, logStdErr: null, lower: null, upper: null },
    ])
    expect(quantileDay(c, 0.5).day).toBe(12)
    expect(restrictedMean(c, 60)).toEqual({ mean: 12, stdErr: 0 })
    expect(survivalAt(c, 60).survival).toBe(0)
  })

  it('one colony, still there: nothing is known after its last day', () => {
    const c = curve([12], [0])
    expect(survivalAt(c, 12).survival).toBe(1)
    expect(survivalAt(c, 13).survival).toBeNull()
  })

  it('losses on day 0 count from the first day on', () => {
    const c = curve([0, 0, 5, 9], [1, 0, 1, 0])
    expect(c.steps.map((s) => [s.day, s.atRisk, s.lost, s.left])).toEqual([
      [0, 4, 1, 1],
      [5, 2, 1, 0],
      [9, 1, 0, 1],
    ])
    expect(c.steps.map((s) => s.survival)).toEqual([0.75, 0.375, 0.375])
    // By hand: 0.75 for 5 days, 0.375 for 5 more.
    expect(restrictedMean(c, 10).mean).toBeCloseTo(5.625, 12)
    expect(quantileDay(c, 0.5).day).toBe(5)
  })

  it('S exactly one half for a while: the middle of it; to the end: the middle to the last day', () => {
    expect(quantileDay(curve([10, 20, 30, 40], [1, 1, 1, 1]), 0.5).day).toBe(25)
    expect(quantileDay(curve([10, 20, 31, 41], [1, 1, 0, 0]), 0.5).day).toBe((20 + 41) / 2)
  })

  it('late colonies are at risk only after they came', () => {
    // By hand: day 5 has colonies 1 and 2 at risk (3 came on day 5), day 8 has 2 and 3.
    const c = curve([5, 8, 9], [1, 1, 0], [0, 0, 5])
    expect(c.steps.map((s) => s.atRisk)).toEqual([2, 2, 1])
    expect(c.steps.map((s) => s.survival)).toEqual([0.5, 0.25, 0.25])
  })

  it('nobody at all', () => {
    const c = curve([], [])
    expect(c).toMatchObject({ colonies: 0, lost: 0, steps: [] })
    expect(survivalAt(c, 0).survival).toBeNull()
  })

  it('no test for one group, or when nobody was lost, or when nobody could be compared', () => {
    const groups = (day: number[], way: number[], of: number[]) =>
      countByDay({ day, way }, 1, { of, count: 2 })
    expect(logRank(groups([1, 2, 3], [1, 1, 0], [0, 0, 0]))).toBeNull()
    expect(logRank(groups([1, 2, 3], [0, 0, 0], [0, 1, 1]))).toBeNull()
    expect(logRank(groups([1, 5, 9], [0, 1, 0], [0, 1, 1]))).toBeNull()
  })

  it('refuses days that are none', () => {
    expect(() => curve([1.5], [1])).toThrow(RangeError)
    expect(() => curve([-1], [1])).toThrow(RangeError)
    expect(() => curve([1], [2])).toThrow(RangeError)
  })
})

describe('whatever the colonies', () => {
  it('their order changes nothing', () => {
    fc.assert(
      fc.property(colonies, fc.infiniteStream(fc.nat()), (rows, keys) => {
        const shuffled = rows
          .map((r) => ({ r, key: keys.next().value ?? 0 }))
          .sort((a, b) => a.key - b.key)
          .map(({ r }) => r)
        const of = (list: typeof rows) => countByDay(split(list), 3)
        expect(of(shuffled)).toEqual(of(rows))
      }),
    )
  })

  it('without censoring the curve is the plain share, and the mean the plain mean', () => {
    fc.assert(
      fc.property(colonies, (rows) => {
        const days = rows.map((r) => r.day)
        const c = curve(
          days,
          days.map(() => 1),
        )
        for (const s of c.steps)
          expect(s.survival).toBeCloseTo(days.filter((d) => d > s.day).length / days.length, 12)
        expect(restrictedMean(c, 90).mean).toBeCloseTo(days.reduce((a, b) => a + b, 0) / days.length, 9)
      }),
    )
  })

  it('S only falls, lies within its limits, and everyone is accounted for', () => {
    fc.assert(
      fc.property(colonies, (rows) => {
        const { day, way } = split(oneWay(rows))
        const c = curve(day, way)
        expect(c.steps.reduce((n, s) => n + s.lost + s.left, 0)).toBe(rows.length)
        let before = 1
        for (const s of c.steps) {
          expect(s.survival).toBeLessThanOrEqual(before)
          before = s.survival
          expect(s.lower ?? 0).toBeLessThanOrEqual(s.survival + 1e-15)
          expect(s.upper ?? 1).toBeGreaterThanOrEqual(s.survival - 1e-15)
        }
      }),
    )
  })

  it('ways of losing and staying add up to 1, and to 1 - S when they are one', () => {
    fc.assert(
      fc.property(colonies, (rows) => {
        const { day, way } = split(rows)
        const three = cumulativeIncidence(counts(day, way, undefined, 3))
        const any = kaplanMeier(asLost(counts(day, way, undefined, 3), [1, 2, 3]))
        for (const [i, s] of any.steps.entries()) {
          const sum = three.ways.reduce((a, w) => a + (w.share[i] ?? 0), 0)
          expect(sum).toBeCloseTo(1 - s.survival, 12)
          expect(three.free[i]).toBeCloseTo(s.survival, 12)
        }
        const one = cumulativeIncidence(asLost(counts(day, way, undefined, 3), [1, 2, 3]))
        for (const [i, s] of any.steps.entries())
          if (s.logStdErr !== null) expect(one.ways[0]?.stdErr[i]).toBeCloseTo(s.survival * s.logStdErr, 12)
      }),
    )
  })

  it('groups taken together are the colonies taken together', () => {
    fc.assert(
      fc.property(colonies, (rows) => {
        const { day, way } = split(rows)
        const groups = countByDay({ day, way }, 3, { of: rows.map((_, i) => i % 3), count: 3 })
        expect(together(groups)).toEqual(counts(day, way, undefined, 3))
      }),
    )
  })

  it('log-rank: observed and expected losses are equally many; group names do not matter', () => {
    fc.assert(
      fc.property(colonies, (rows) => {
        const { day, way } = split(oneWay(rows))
        const of = rows.map((_, i) => i % 3)
        const test = logRank(countByDay({ day, way }, 1, { of, count: 3 }))
        const turned = logRank(countByDay({ day, way }, 1, { of: of.map((g) => (g + 1) % 3), count: 3 }))
        if (test === null) {
          expect(turned).toBeNull()
          return
        }
        const sum = (a: Float64Array) => a.reduce((x, y) => x + y, 0)
        expect(sum(test.observed)).toBeCloseTo(sum(test.expected), 9)
        expect(turned?.chisq ?? Number.NaN).toBeCloseTo(test.chisq, 6)
        expect(test.p).toBeGreaterThanOrEqual(0)
        expect(test.p).toBeLessThanOrEqual(1)
      }),
    )
  })

  it('a colony that came late and was never at risk changes nothing', () => {
    fc.assert(
      fc.property(colonies, fc.integer({ min: 1, max: 80 }), (rows, late) => {
        const { day, way } = split(oneWay(rows))
        const none = rows.map(() => 0)
        const more = counts([...day, late], [...way, 1], [...none, late])
        expect(kaplanMeier(more)).toEqual(kaplanMeier(counts(day, way)))
      }),
    )
  })
})
