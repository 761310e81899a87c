/**
 * Writes the calibration that the Rates page draws: odds on simulated colonies, whose rates are the believed ones, and on
 * yards whose rates are others.
 * Run: npx tsx tests/forecast/make-calibration.ts   (a few minutes; the same seed gives the same file)
 */
import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { CalibrationData } from '../../src/forecast/calibration-data.ts'
import { DEFAULT_RATES, type Rates } from '../../src/forecast/rates.ts'
import { listModelOf } from '../../src/forecast/story/walk.ts'
import { type Calibration, calibrate } from './calibration.ts'
import { OTHER_YARDS } from './other-yards.ts'

const FILE = fileURLToPath(new URL('../../src/forecast/calibration.json', import.meta.url))
const COLONIES = 8000
const COLONIES_ELSEWHERE = 1000
const SEED = 11

const rounded = (n: number): number => Math.round(n * 10_000) / 10_000

const kept = (c: Calibration, colonies: number) => ({
  colonies,
  forecasts: c.forecasts,
  bins: c.bins.map(({ n, given, so }) => ({ n, given: rounded(given), so: rounded(so) })),
  atSeventy: { n: c.atSeventy.n, given: rounded(c.atSeventy.given), so: rounded(c.atSeventy.so) },
  brier: rounded(c.brier),
  brierOfBaseRates: rounded(c.brierOfBaseRates),
  right: rounded(c.right),
})

const run = (truth: Rates, believed: Rates, colonies: number): Calibration =>
  calibrate(colonies, SEED, truth, believed, listModelOf)

const data: CalibrationData = {
  command: 'npx tsx tests/forecast/make-calibration.ts',
  seed: SEED,
  believed: kept(run(DEFAULT_RATES, DEFAULT_RATES, COLONIES), COLONIES),
  elsewhere: Object.entries(OTHER_YARDS).map(([name, truth]) => ({
    name,
    /** The lowest Brier score anybody could reach there: that of a forecaster who knows the true rates. */
    brierOfKnowing: rounded(run(truth, truth, COLONIES_ELSEWHERE).brier),
    ...kept(run(truth, DEFAULT_RATES, COLONIES_ELSEWHERE), COLONIES_ELSEWHERE),
  })),
}
writeFileSync(FILE, `${JSON.stringify(data, null, 2)}\n`)
