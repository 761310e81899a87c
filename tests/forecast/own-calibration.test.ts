/** How the odds keep their word in a yard: on simulated colonies, where the rates are known to be true, and by hand. */
import { expect, test } from 'vitest'
import { offWords } from '../../src/features/rates/own-trust.tsx'
import { calibrating, eggsForeseen, type OwnCalibration, summed } from '../../src/forecast/own-calibration.ts'
import { DEFAULT_RATES } from '../../src/forecast/rates.ts'
import { listModelOf } from '../../src/forecast/story/walk.ts'
import type { Inspection } from '../../src/journal/entry.ts'
import { type History, historyOf } from '../../src/journal/history.ts'
import { seeded } from './random.ts'
import { Colony, playOut, someIntake } from './simulator.ts'

function simulated(count: number): History[] {
  const random = seeded(11)
  return Array.from({ length: count }, () => {
    const { entries } = playOut(new Colony(random, DEFAULT_RATES, someIntake(random)), 45)
    const history = historyOf(entries[0]?.colony ?? '', entries)
    if (history === null) throw new Error('no history')
    return history
  })
}

function all(histories: readonly History[]): OwnCalibration {
  const steps = calibrating(histories, DEFAULT_RATES)
  for (;;) {
    const { done, value } = steps.next()
    if (done === true) return value
  }
}

test('by hand: three forecasts, two bins, two scores', () => {
  const given = [
    { odds: 0.7, found: true },
    { odds: 0.7, found: false },
    { odds: 1, found: true },
  ]
  const { looks, found, bins, brier, brierOfShare } = summed(given)
  expect([looks, found]).toEqual([3, 2])
  expect(bins.map((b) => [b.n, b.given, b.so])).toEqual([
    [2, 0.7, 0.5],
    [1, 1, 1],
  ])
  expect(brier).toBeCloseTo((0.3 ** 2 + 0.7 ** 2 + 0) / 3, 12)
  expect(brierOfShare).toBeCloseTo((2 * (1 / 3) ** 2 + (2 / 3) ** 2) / 3, 12)
  expect(summed([])).toEqual({ looks: 0, found: 0, bins: [], brier: 0, brierOfShare: 0 })
})

test('where the rates are true, odds of finding eggs mean what they say, and beat the overall share', () => {
  const own = all(simulated(400))
  expect(own.looks).toBeGreaterThan(1000)
  for (const b of own.bins.filter((x) => x.n >= 100)) {
    // Three standard errors: one bin in four hundred would fail by chance.
    const error = 3 * Math.sqrt((b.given * (1 - b.given)) / b.n)
    expect(Math.abs(b.so - b.given), `${b.n} given ${b.given}`).toBeLessThan(error)
  }
  expect(own.brier).toBeLessThan(0.7 * own.brierOfShare)
  // Not pooled: the same of every kind of story, and all looks are in one of them.
  expect(own.byKind.reduce((sum, k) => sum + k.n, 0)).toBe(own.looks)
  for (const k of own.byKind.filter((x) => x.n >= 100)) {
    const error = 3 * Math.sqrt((k.given * (1 - k.given)) / k.n)
    expect(Math.abs(k.so - k.given), `${k.kind}: ${k.n} given ${k.given}`).toBeLessThan(error)
  }
})

test('which way the odds of a kind are off is said in words, within chance or beyond it', () => {
  const words = (n: number, given: number, so: number) => offWords({ kind: 'laying', n, given, so })
  // Two standard errors of 100 looks at 0.5: 0.1.
  expect(words(100, 0.5, 0.41)).toBe('about as said')
  expect(words(100, 0.5, 0.38)).toBe('fewer than said')
  expect(words(100, 0.5, 0.62)).toBe('more than said')
})

test('a forecast knows nothing of the look itself, nor of what came after', () => {
  const model = listModelOf(DEFAULT_RATES)
  const history = simulated(12).find((h) => h.entries.filter((e) => e.kind === 'inspection').length > 3)
  const looks = history?.entries.filter((e): e is Inspection => e.kind === 'inspection' && e.opened) ?? []
  const look = looks[1]
  if (history === undefined || look === undefined) throw new Error('no look')
  const other: Inspection = { ...look, eggs: look.eggs === 'none' ? 'single' : 'none', cells: 'capped' }
  const changed = history.entries
    .slice(0, history.entries.indexOf(look) + 1)
    .map((e) => (e === look ? other : e))
  expect(eggsForeseen({ ...history, entries: changed }, other, model)).toBe(
    eggsForeseen(history, look, model),
  )
})
