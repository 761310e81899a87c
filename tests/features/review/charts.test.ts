/** What the review's charts draw, as numbers and as shapes, and what they say of one day. */

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { axisFor, survivalLine } from '../../../src/features/review/chart-data.ts'
import { linesOn, pointOn, waysOn } from '../../../src/features/review/readout.ts'
import {
  areaPath,
  BOX,
  bandPath,
  barPath,
  labelHeights,
  type StepPoint,
  stepPath,
  tickPath,
  xOf,
  yOf,
} from '../../../src/parts/chart-paths.ts'
import { countByDay } from '../../../src/statistics/day-counts.ts'
import { kaplanMeier } from '../../../src/statistics/kaplan-meier.ts'

const counted = (day: number[], way: number[]) => {
  const [counts] = countByDay({ day, way })
  if (counts === undefined) throw new Error('no counts')
  return counts
}

describe('the axis', () => {
  it('ends a step after the last day on which enough are at risk', () => {
    expect(axisFor(counted([48, 57, 10], [0, 0, 1]))).toEqual({ end: 60, days: [0, 10, 20, 30, 40, 50, 60] })
    expect(axisFor(counted([5], [1])).end).toBe(30)
    expect(axisFor(counted([120, 100], [0, 0])).days).toEqual([0, 30, 60, 90, 120])
  })

  it('does not stretch for one that stayed for ever', () => {
    const day = [...Array.from({ length: 99 }, () => 45), 900]
    expect(
      axisFor(
        counted(
          day,
          day.map(() => 0),
        ),
      ).end,
    ).toBe(50)
  })

  it('nobody has an axis too', () => {
    expect(axisFor(counted([], [])).end).toBe(30)
  })
})

describe('a curve', () => {
  const counts = counted([10, 20, 20, 40], [1, 0, 1, 0])
  const line = survivalLine('wall', kaplanMeier(counts), counts, axisFor(counts))

  it('begins at all, steps where one is lost, goes on to the last day anybody was followed', () => {
    expect(line.points.map(([day, share]) => [day, share])).toEqual([
      [0, 1],
      [10, 0.75],
      [20, 0.5],
      [40, 0.5],
    ])
    expect(line.left).toEqual([
      [20, 0.5],
      [40, 0.5],
    ])
    expect(line.atRisk).toEqual([4, 4, 3, 1, 1])
  })

  it('is cut where the axis ends', () => {
    const cut = survivalLine('wall', kaplanMeier(counts), counts, { end: 30, days: [0, 10, 20, 30] })
    expect(cut.points.at(-1)?.slice(0, 2)).toEqual([30, 0.5])
  })
})

describe('shapes', () => {
  const POINTS: StepPoint[] = [
    [0, 1, null, null],
    [10, 0.75, 0.5, 0.9],
    [20, 0.5, 0.2, 0.8],
    [40, 0.5, 0.2, 0.8],
  ]

  it('a step goes right first, then down', () => {
    expect(stepPath(POINTS.slice(0, 2), 40)).toBe(`M0 ${yOf(1)}H250V${yOf(0.75)}`)
  })

  it('a band spans its limits from where there are some', () => {
    expect(bandPath(POINTS, 40)).toBe(
      `M250 ${yOf(0.9)}L500 ${yOf(0.9)}L500 ${yOf(0.8)}L1000 ${yOf(0.8)}L1000 ${yOf(0.2)}L500 ${yOf(0.2)}L500 ${yOf(0.5)}L250 ${yOf(0.5)}Z`,
    )
    expect(bandPath([[0, 1, null, null]], 40)).toBe('')
  })

  it('limits that end and begin again are two bands', () => {
    const gap: StepPoint[] = [
      [0, 1, 0.9, 1],
      [10, 1, null, null],
      [20, 0.5, 0.2, 0.8],
      [30, 0.5, 0.2, 0.8],
    ]
    expect(bandPath(gap, 40).match(/M/g)).toHaveLength(2)
  })

  it('bars span the limits that hold on a day, and none where nobody was followed or there are no limits', () => {
    const bar = `M504 ${yOf(0.2)}V${yOf(0.8)}M500 ${yOf(0.2)}h8M500 ${yOf(0.8)}h8`
    expect(barPath(POINTS, [20], 40, 4)).toBe(bar)
    expect(barPath(POINTS, [5, 20, 60], 40, 4)).toBe(bar)
  })

  it('ticks stand across the line', () => {
    expect(tickPath([[20, 0.5]], 40, 20)).toBe(`M500 ${(yOf(0.5) - 10).toFixed(1)}v20`)
    expect(tickPath([], 40)).toBe('')
  })

  it('an area lies between two steps', () => {
    expect(areaPath([0, 10], [0, 0], [0, 0.5], 10)).toBe(
      `M0 ${yOf(0)}L${BOX} ${yOf(0)}L${BOX} ${yOf(0.5)}L${BOX} ${yOf(0)}L${BOX} ${yOf(0)}L0 ${yOf(0)}Z`,
    )
  })

  it('days go from left to right, shares from the bottom up', () => {
    expect([xOf(0, 60), xOf(60, 60)]).toEqual([0, BOX])
    expect(yOf(0)).toBe(BOX)
    expect(yOf(1)).toBeGreaterThan(0)
  })

  it('labels keep their order and their distance, inside the plot', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true })
    fc.assert(
      fc.property(fc.array(share, { minLength: 1, maxLength: 6 }), (shares) => {
        const heights = labelHeights(shares, 74)
        const sorted = [...heights].sort((a, b) => a - b)
        for (const [i, y] of sorted.entries()) {
          expect(y).toBeLessThanOrEqual(BOX)
          expect(y).toBeGreaterThan(-BOX / 2)
          if (i > 0) expect(y - (sorted[i - 1] ?? 0)).toBeGreaterThanOrEqual(74 - 0.2)
        }
        for (const [i, a] of shares.entries())
          for (const [j, b] of shares.entries())
            if (a > b) expect(heights[i] ?? 0).toBeLessThan(heights[j] ?? 0)
      }),
    )
  })
})

describe('what is said of a day', () => {
  const LINES = [
    {
      name: 'all',
      colonies: 40,
      points: [
        [0, 1, null, null],
        [10, 0.75, 0.5, 0.9],
        [40, 0.75, 0.5, 0.9],
      ] as StepPoint[],
      left: [],
      atRisk: [],
    },
  ]

  it('the share that holds, with its limits', () => {
    expect(linesOn(LINES, 9)).toBe('Day 9: all 100 %')
    expect(linesOn(LINES, 10)).toBe('Day 10: all 75 % (50 to 90 %)')
    const few = LINES.map((line) => ({ ...line, name: 'ground', colonies: 4 }))
    expect(linesOn(few, 9)).toBe('Day 9: ground 100 %, too few')
    expect(linesOn(LINES, 41)).toBe('Day 41: nobody was followed that long')
    expect(pointOn([], 3)).toBeNull()
  })

  it('the ways gone', () => {
    const ways = { days: [0, 10], died: [0, 0.1], absconded: [0, 0.05], united: [0, 0] }
    expect(waysOn(ways, 10)).toBe('Day 10: died 10 %, absconded 5 %, united 0 %')
    expect(waysOn(ways, 11)).toBe('Day 11: nobody was followed that long')
  })
})
