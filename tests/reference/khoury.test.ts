/** Khoury, Myerscough & Barron 2011 and Khoury, Barron & Myerscough 2013: reference solutions, closed forms and published figures. */
import { describe, expect, it } from 'vitest'
import {
  bisect,
  criticalDeathRate,
  criticalStores,
  dailySteps,
  khoury,
  PAPER_2011,
  PAPER_2013,
  plenty2013,
  settlesAt,
  thresholds2013,
} from './khoury-models.ts'
import { reference } from './read.ts'

interface Run {
  m: number
  H0: number
  F0: number
  t: number[]
  H: number[]
  F: number[]
  check: { H: number[]; F: number[] }
  equilibrium: { survives: boolean; H: number; F: number }
}
const { khoury: R } = reference<{ khoury: { critical_m: number; runs: Run[] } }>('colony-ode')
const near = (got: number, want: number, tolerance: number): void =>
  expect(Math.abs(got - want) / Math.max(1, Math.abs(want))).toBeLessThan(tolerance)

describe('the 2011 model against deSolve (R), to 1e-6', () => {
  for (const run of R.runs)
    it(`m = ${run.m}, from ${run.H0} + ${run.F0} bees`, () => {
      let at = { H: run.H0, F: run.F0 }
      run.t.forEach((t, i) => {
        at = khoury(at, t - (run.t[i - 1] ?? 0), { ...PAPER_2011, m: run.m })
        near(at.H, run.H[i] ?? Number.NaN, 1e-6)
        near(at.F, run.F[i] ?? Number.NaN, 1e-6)
      })
      const end = settlesAt({ ...PAPER_2011, m: run.m })
      near(end.H, run.equilibrium.survives ? run.equilibrium.H : 0, 1e-9)
      near(end.F, run.equilibrium.survives ? run.equilibrium.F : 0, 1e-9)
    })
})

describe('the 2011 model, published figures', () => {
  it('no colony lasts above a death rate of 0.355: closed form', () => {
    expect(criticalDeathRate(PAPER_2011)).toBeCloseTo(0.3551966886, 10)
    expect(criticalDeathRate(PAPER_2011)).toBeCloseTo(R.critical_m, 12)
    // The paper prints 0.355 (from memory).
    expect(criticalDeathRate(PAPER_2011)).toBeCloseTo(0.355, 3)
  })

  it('and by bisection on whether a small colony grows or shrinks', () => {
    // Long after its start a small colony grows or shrinks at a steady rate; the critical rate is where that rate is nought.
    const growth = (m: number): number => {
      const p = { ...PAPER_2011, m }
      const [early, late] = [khoury({ H: 1e-3, F: 3e-4 }, 60, p), khoury({ H: 1e-3, F: 3e-4 }, 80, p)]
      return Math.log(late.H / early.H)
    }
    expect(bisect(growth, 0.3, 0.4)).toBeCloseTo(criticalDeathRate(PAPER_2011), 6)
  })

  it('daily steps rounded to whole bees: University of Western Australia, course CITS2401, lab 2', () => {
    const rows = dailySteps({ H: 1, F: 1 }, 10, { L: 1000, w: 80, alpha: 0.25, sigma: 0.75, m: 0.4 })
    expect(rows.map((r) => r.H)).toEqual([1, 26, 265, 975, 1706, 2396, 3034, 3621, 4160, 4654, 5106])
    expect(rows.map((r) => r.F)).toEqual([1, 0, 6, 65, 237, 413, 583, 742, 889, 1024, 1148])
  })
})

describe('the 2013 model: thresholds as restated in A. Fritzler, thesis, TUM 2026', () => {
  it('foraging: break-even 0.319, existence 0.415, accumulation 0.518', () => {
    const t = thresholds2013(PAPER_2013)
    expect(t.breakEven).toBeCloseTo(0.31948, 5)
    expect(t.exists).toBeCloseTo(0.41515, 5)
    expect(t.gathers).toBeCloseTo(0.51782, 5)
  })

  it('critical stores about 313 g, honey per bee reared 0.162 g', () => {
    expect(criticalStores(PAPER_2013)).toBeCloseTo(313.12, 2)
    expect(PAPER_2013.gammaB / PAPER_2013.phi).toBeCloseTo(0.162, 12)
  })

  it('with food in plenty it settles at 31797 hive bees, 11222 foragers, 15554 cells', () => {
    const { H, F, B } = plenty2013(PAPER_2013)
    expect(H).toBeCloseTo(31797.48, 2)
    expect(F).toBeCloseTo(11222.35, 2)
    expect(B).toBeCloseTo(15554.2, 1)
  })
})
