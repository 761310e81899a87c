/** Calibration on simulated yards, and what is left of it when the true rates are others than the believed ones. */
import { describe, expect, it } from 'vitest'
import { DEFAULT_RATES } from '../../src/forecast/rates.ts'
import { listModelOf } from '../../src/forecast/story/walk.ts'
import { type Calibration, calibrate } from './calibration.ts'
import { OTHER_YARDS } from './other-yards.ts'

const worst = (c: Calibration): number =>
  Math.max(...c.bins.filter((b) => b.n >= 150).map((b) => Math.abs(b.so - b.given)))

describe('odds on simulated yards', () => {
  it('of those given about 70 %, 68-72 % are so; every bin holds; far better than base rates', () => {
    const c = calibrate(4000, 11, DEFAULT_RATES, DEFAULT_RATES, listModelOf)
    expect(c.atSeventy.n).toBeGreaterThan(2000)
    expect(c.atSeventy.so).toBeGreaterThan(0.68)
    expect(c.atSeventy.so).toBeLessThan(0.72)
    // Bins hold 150 odds or more; most hold thousands. `npm run bench forecast` prints them all on more colonies.
    expect(worst(c)).toBeLessThan(0.05)
    expect(c.brier).toBeLessThan(0.55 * c.brierOfBaseRates)
  }, 60_000)

  for (const [name, truth] of Object.entries(OTHER_YARDS))
    it(`still useful where ${name}: within 0.15 in every bin, Brier at most a fifth above the best possible`, () => {
      const believed = calibrate(160, 23, truth, DEFAULT_RATES, listModelOf)
      const knowing = calibrate(160, 23, truth, truth, listModelOf)
      expect(worst(believed)).toBeLessThan(0.15)
      expect(believed.brier).toBeLessThan(1.2 * knowing.brier)
    }, 60_000)
})
