/** Calibration on simulated yards, and what is left of it when the true rates are others than the believed ones. */
import { describe, expect, it } from 'vitest'
import { DEFAULT_RATES } from '../../src/forecast/rates.ts'
import { listModelOf } from '../../src/forecast/story/walk.ts'
import { proven } from '../support/proven.ts'
import { type Calibration, calibrate } from './calibration.ts'
import { OTHER_YARDS } from './other-yards.ts'

const worst = (c: Calibration): number =>
  Math.max(...c.bins.filter((b) => b.n >= 150).map((b) => Math.abs(b.so - b.given)))

/** A few thousand simulated colonies take half of the time of all forecast tests. */
const found = proven('calibration', import.meta.filename, () => ({
  believed: calibrate(4000, 11, DEFAULT_RATES, DEFAULT_RATES, listModelOf),
  elsewhere: Object.fromEntries(
    Object.entries(OTHER_YARDS).map(([name, truth]) => [
      name,
      {
        believed: calibrate(160, 23, truth, DEFAULT_RATES, listModelOf),
        knowing: calibrate(160, 23, truth, truth, listModelOf),
      },
    ]),
  ),
}))

describe('odds on simulated yards', () => {
  it('of those given about 70 %, 68-72 % are so; every bin holds; far better than base rates', () => {
    const c = found.believed
    expect(c.atSeventy.n).toBeGreaterThan(2000)
    expect(c.atSeventy.so).toBeGreaterThan(0.68)
    expect(c.atSeventy.so).toBeLessThan(0.72)
    // Bins hold 150 odds or more; most hold thousands. `npm run bench forecast` prints them all on more colonies.
    expect(worst(c)).toBeLessThan(0.05)
    expect(c.brier).toBeLessThan(0.55 * c.brierOfBaseRates)
  })

  it('were asked in every other yard', () =>
    expect(Object.keys(found.elsewhere)).toEqual(Object.keys(OTHER_YARDS)))

  for (const [name, { believed, knowing }] of Object.entries(found.elsewhere))
    it(`still useful where ${name}: within 0.15 in every bin, Brier at most a fifth above the best possible`, () => {
      expect(worst(believed)).toBeLessThan(0.15)
      expect(believed.brier).toBeLessThan(1.2 * knowing.brier)
    })
})
