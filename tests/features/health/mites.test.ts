import { describe, expect, test } from 'vitest'
import { changeBetween, trendOf, type Wash, washOf } from '../../../src/features/health/mites.ts'
import { miteWash } from '../../../src/journal/entry.ts'
import { DEFAULT_PROTOCOL, miteThresholdOn, protocolWith } from '../../../src/recovery/protocol.ts'

const wash = (on: string, mites: number, bees = 300, protocol = DEFAULT_PROTOCOL): Wash =>
  washOf(
    miteWash.parse({
      id: '019707a0-0000-7000-8000-000000000001',
      colony: 'W-1',
      kind: 'mite-wash',
      on,
      by: 'O',
      bees,
      mites,
    }),
    protocol,
  )

describe('a wash', () => {
  test('has the rate and Wilson’s limits per 100 bees (Newcombe 1998, Stat. Med. 17:857, table I: 15 of 148)', () => {
    const w = wash('2026-06-01', 15, 148)
    expect(w.rate).toBeCloseTo(10.135, 3)
    expect(w.lower).toBeCloseTo(6.24, 2)
    expect(w.upper).toBeCloseTo(16.05, 2)
    expect(w.small).toBe(true)
  })
  test('no mites on 300 bees still leaves room for 1.3 per 100', () => {
    const w = wash('2026-06-01', 0)
    expect([w.rate, w.lower]).toEqual([0, 0])
    expect(w.upper).toBeCloseTo(1.264, 3)
    expect(w.stands).toBe('under')
  })
  test('says over or under only where the whole range is', () => {
    expect(wash('2026-06-01', 9).stands).toBe('either')
    expect(wash('2026-06-01', 30).stands).toBe('over')
    expect(wash('2026-06-01', 2).stands).toBe('under')
  })
  test('is held against the threshold of its month', () => {
    const p = protocolWith({ miteThreshold: 3, miteThresholdByMonth: { '4': 1, '9': 2 } })
    expect([miteThresholdOn(p, '2026-04-30'), miteThresholdOn(p, '2026-05-01')]).toEqual([1, 3])
    expect(wash('2026-04-10', 9, 300, p)).toMatchObject({ threshold: 1, stands: 'over' })
    expect(wash('2026-05-10', 9, 300, p)).toMatchObject({ threshold: 3, stands: 'either' })
  })
})

describe('the change between two washes', () => {
  // Newcombe RG (1998) Statistics in Medicine 17:873-890, table II, method 10; numbers from memory.
  test.each([
    [56, 70, 48, 80, 0.0524, 0.3339],
    [9, 10, 3, 10, 0.1705, 0.809],
    [6, 7, 2, 7, 0.0582, 0.8062],
    [5, 56, 0, 29, -0.0381, 0.1926],
    [0, 10, 0, 20, -0.1611, 0.2775],
    [10, 10, 0, 20, 0.6791, 1],
  ])('%i/%i less %i/%i', (x1, n1, x2, n2, lower, upper) => {
    const t = changeBetween(wash('2026-06-01', x2, n2), wash('2026-06-15', x1, n1))
    expect(t.lower / 100).toBeCloseTo(lower, 4)
    expect(t.upper / 100).toBeCloseTo(upper, 4)
  })
  test('3 to 8 per 100 in two weeks is a rise; 3 to 4 could be chance', () => {
    expect(changeBetween(wash('2026-06-01', 9), wash('2026-06-15', 24))).toMatchObject({
      is: 'rising',
      days: 14,
    })
    expect(changeBetween(wash('2026-06-01', 9), wash('2026-06-15', 12)).is).toBe('unclear')
    expect(changeBetween(wash('2026-06-01', 30), wash('2026-06-15', 3)).is).toBe('falling')
  })
  test('doubling: 3 to 6 per 100 in two weeks doubles in two weeks', () => {
    expect(changeBetween(wash('2026-06-01', 9), wash('2026-06-15', 18)).doublesIn).toBeCloseTo(14, 10)
    expect(changeBetween(wash('2026-06-01', 0), wash('2026-06-15', 18)).doublesIn).toBeNull()
    expect(changeBetween(wash('2026-06-01', 18), wash('2026-06-15', 9)).doublesIn).toBeNull()
  })
  test('two washes on one day are no trend', () => {
    const [a, b] = [wash('2026-06-01', 9), wash('2026-06-01', 12)]
    expect(trendOf([a, b])).toBeNull()
    expect(trendOf([a, b, wash('2026-06-10', 9)])?.from).toBe(b)
    expect(trendOf([])).toBeNull()
  })
})
