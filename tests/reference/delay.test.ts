/** The day-cohort bookkeeping against closed-form decay, and against a delay equation solved in R (colony-ode.json, `delay`). */
import { describe, expect, it } from 'vitest'
import { type CohortRun, runCohorts } from '../../src/forecast/cohorts.ts'
import { reference } from './read.ts'

interface Solved {
  parameters: {
    L0: number
    w2: number
    T0: number
    D: number
    mu: number
    N0: number
    capped0: number
    span: number
  }
  t: number[]
  N: number[]
  B: number[]
}
const { delay } = reference<{ delay: { run: Solved; run_no_break: Solved } }>('colony-ode')

describe('without brood', () => {
  for (const perDay of [1, 4])
    it(`bees that die at a constant rate decay as exp(-t/35), in ${perDay} steps a day`, () => {
      const none: CohortRun = {
        steps: 90 * perDay,
        perDay,
        adults: 8000,
        firstLeft: (i) => Math.exp(-i / perDay / 35),
        left: (i, j) => Math.exp(-(i - j) / perDay / 35),
        emerging: () => 0,
        development: 21,
        survival: 1,
        laying: () => 0,
      }
      const { adults, brood } = runCohorts(none)
      for (let d = 0; d <= 90; d++) expect(adults[d * perDay]).toBeCloseTo(8000 * Math.exp(-d / 35), 6)
      expect(Math.max(...brood)).toBe(0)
    })
})

function cohortsFor(p: Solved['parameters'], perDay: number): { N: number[]; B: number[] } {
  const h = 1 / perDay
  const { adults, brood } = runCohorts({
    steps: 90 * perDay,
    perDay,
    adults: p.N0,
    firstLeft: (i) => Math.exp(-p.mu * i * h),
    left: (i, j) => Math.exp(-p.mu * (i - j + 0.5) * h),
    emerging: (i) => (i * h < p.span - 1e-9 ? (p.capped0 / p.span) * h : 0),
    development: p.D,
    survival: 1,
    laying: (i, N) => (i * h < p.T0 - 1e-9 ? 0 : (p.L0 * N) / (N + p.w2)),
  })
  const every = <T>(list: ArrayLike<T>): T[] => Array.from(list).filter((_, i) => i % perDay === 0)
  const salvaged = every(adults).map((_, d) => p.capped0 * Math.max(0, 1 - d / p.span))
  return { N: every(adults), B: every(brood).map((b, d) => b + (salvaged[d] ?? 0)) }
}

describe('the delay equation dN/dt = e0 + lay(t - 21) - mu N, lay = L0 N / (N + w2)', () => {
  const furthest = (got: number[], want: number[]): number =>
    Math.max(...want.map((w, i) => Math.abs((got[i] ?? Number.NaN) - w) / Math.max(100, w)))
  for (const [name, run] of Object.entries(delay)) {
    if (typeof run !== 'object' || !('N' in run)) continue
    const solved = run as Solved
    it(`${name}: whole days lie within 2 %, and shorter steps close in on it in proportion`, () => {
      const off = [1, 2, 4, 8, 16].map((perDay) => {
        const { N, B } = cohortsFor(solved.parameters, perDay)
        return Math.max(furthest(N, solved.N), furthest(B, solved.B))
      })
      expect(off[0]).toBeLessThan(0.02)
      off.slice(1).forEach((x, i) => {
        expect(x / (off[i] ?? 0)).toBeLessThan(0.6)
      })
      expect(off[4]).toBeLessThan(0.0015)
    })
  }
})
