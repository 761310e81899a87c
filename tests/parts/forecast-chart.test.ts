/** Shapes of the forecasts' charts. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { addDays } from '../../src/days.ts'
import { along, linePath, namesIn, scaleFor, stacked, stretchOf } from '../../src/parts/forecast-chart.ts'

const KINDS = ['a', 'b', 'c'] as const
const shares = fc
  .array(fc.tuple(fc.nat(99), fc.nat(99), fc.nat(99)), { minLength: 5, maxLength: 80 })
  .map((rows) =>
    rows.map(([a, b, c]) => {
      const sum = a + b + c + 1
      return { a: (a + 1) / sum, b: b / sum, c: c / sum }
    }),
  )

describe('stacked areas', () => {
  test('fill the whole height on every day', () => {
    fc.assert(
      fc.property(shares, (days) => {
        const layers = stacked(KINDS, days, 0)
        days.forEach((_, i) => {
          expect(layers.at(-1)?.upper[i]).toBeCloseTo(1, 9)
          layers.slice(1).forEach((l, k) => {
            expect(l.lower[i]).toBe(layers[k]?.upper[i])
          })
        })
      }),
      { numRuns: 50 },
    )
  })

  test('have their names inside them, and inside the plot', () => {
    fc.assert(
      fc.property(shares, fc.nat(80), (days, now) => {
        const names = { a: 'ab', b: 'abc', c: 'abcde' }
        const layers = stacked(KINDS, days)
        for (const { of, x, y } of namesIn(layers, names, now)) {
          const layer = layers.find((l) => l.of === of)
          const at = Math.round((x / 100) * (days.length - 1))
          expect(1 - y / 100).toBeGreaterThan(layer?.lower[at] ?? 1)
          expect(1 - y / 100).toBeLessThan(layer?.upper[at] ?? 0)
          expect(x).toBeGreaterThan(0)
          expect(x).toBeLessThan(100)
        }
      }),
      { numRuns: 100 },
    )
  })

  test('name a layer in the days to come rather than in the past', () => {
    const days = Array.from({ length: 41 }, (_, i) =>
      i < 20 ? { a: 1, b: 0, c: 0 } : { a: 0.5, b: 0.5, c: 0 },
    )
    const [a] = namesIn(stacked(KINDS, days), { a: 'a', b: 'b', c: 'c' }, 20)
    expect(a?.x).toBeGreaterThanOrEqual(50)
  })
})

describe('scales', () => {
  test('end on a round number with few steps', () => {
    expect(scaleFor(11)).toEqual({ top: 12, steps: [0, 3, 6, 9, 12] })
    expect(scaleFor(3)).toEqual({ top: 3, steps: [0, 1, 2, 3] })
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 900, noNaN: true }), (most) => {
        const { top, steps } = scaleFor(most)
        expect(top).toBeGreaterThanOrEqual(most - 1e-6)
        expect(steps.length).toBeLessThanOrEqual(7)
        expect(steps.at(-1)).toBeCloseTo(top, 9)
      }),
    )
  })

  test('put a few dates under the days', () => {
    expect(stretchOf('2026-05-01', '2026-06-12').ticks).toEqual([
      '2026-05-01',
      '2026-05-15',
      '2026-05-29',
      '2026-06-12',
    ])
    // The last date ends at its day where it would stick out, so the one before it needs its own width and half of one.
    const [phone, word] = [290, 46]
    for (let days = 1; days < 200; days++) {
      const s = stretchOf('2026-05-01', addDays('2026-05-01', days))
      const at = s.ticks.map((d) => (along(s, d) / 100) * phone)
      for (let i = 1; i < at.length; i++)
        expect((at[i] ?? 0) - (at[i - 1] ?? 0), `${days} days`).toBeGreaterThan(word * 1.5)
    }
    expect(linePath([0, 1], 1)).toBe('M0 1000L1000 0')
  })
})
