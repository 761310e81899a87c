/**
 * Limits of shares, beta-binomial and special functions against R 4.2.2 (intervals.json), and the worked examples of
 * Newcombe RG (1998) Statistics in Medicine 17:857-872. Tolerance 1e-9 relative, tails included.
 */
import { describe, expect, it } from 'vitest'
import { betaBinomial, cumulative, quantileOf } from '../../src/statistics/beta-binomial.ts'
import { betaLimits, exact, jeffreys, wilson, wilsonCorrected } from '../../src/statistics/intervals.ts'
import {
  betaBelow,
  betaQuantile,
  chiSquareAbove,
  chiSquareQuantile,
  logGamma,
  normalAbove,
  normalBelow,
  normalQuantile,
} from '../../src/statistics/special.ts'
import { expectNear, reference } from './read.ts'

interface Row {
  x: number
  n: number
  conf: number
  wilson: number[]
  wilson_cc: number[]
  jeffreys: number[]
  jeffreys_modified: number[]
  uniform_beta: number[]
  clopper_pearson: number[]
  published_method3_4dp?: number[]
  published_method4_4dp?: number[]
}
type Grid = Record<string, number[]>
const file = reference<{
  newcombe_1998: { rows: Row[] }
  proportions: Row[]
  beta_binomial: {
    m: number
    a: number
    b: number
    pmf: number[]
    cdf: number[]
    probs: number[]
    quantile: number[]
  }[]
  pbeta: Grid
  qbeta: Grid
  pchisq: Grid
  qchisq: Grid
  qnorm: Grid
  pnorm: Grid
  lgamma: Grid
}>('intervals')
const NEAR = 1e-9

const column = (grid: Grid, name: string): number[] => {
  const values = grid[name]
  if (values === undefined) throw new Error(`no column ${name}`)
  return values
}
/** The function at every row of the grid. */
function over(grid: Grid, names: string[], f: (...args: number[]) => number): number[] {
  const columns = names.map((n) => column(grid, n))
  return (columns[0] ?? []).map((_, i) => f(...columns.map((c) => c[i] ?? Number.NaN)))
}

describe('limits of a share', () => {
  const rows = [...file.newcombe_1998.rows, ...file.proportions]
  it.each([
    // The last decimals of R's own Wilson limits cancel at x = 1, n large: 3e-11 (see the notes of the file).
    ['wilson', wilson, (r: Row) => r.wilson],
    ['wilson with continuity correction', wilsonCorrected, (r: Row) => r.wilson_cc],
    ['jeffreys', jeffreys, (r: Row) => r.jeffreys_modified],
    ['exact', exact, (r: Row) => r.clopper_pearson],
    [
      'beta, Jeffreys prior',
      (x: number, n: number, c?: number) => betaLimits(x + 0.5, n - x + 0.5, c),
      (r: Row) => r.jeffreys,
    ],
    [
      'beta, uniform prior',
      (x: number, n: number, c?: number) => betaLimits(x + 1, n - x + 1, c),
      (r: Row) => r.uniform_beta,
    ],
  ] as const)('%s as R', (name, f, want) => {
    for (const r of rows) expectNear(f(r.x, r.n, r.conf), want(r), NEAR, `${name} ${r.x}/${r.n} at ${r.conf}`)
  })

  it("Newcombe's printed figures, methods 3 and 4", () => {
    for (const r of file.newcombe_1998.rows) {
      const printed = (limits: number[]) => limits.map((l) => Number(l.toFixed(4)))
      expect(printed(wilson(r.x, r.n))).toEqual(r.published_method3_4dp)
      expect(printed(wilsonCorrected(r.x, r.n))).toEqual(r.published_method4_4dp)
    }
  })

  it('refuses counts that are none', () => {
    expect(() => wilson(3, 2)).toThrow(RangeError)
    expect(() => jeffreys(0, 0)).toThrow(RangeError)
  })
})

describe('beta-binomial', () => {
  it.each(file.beta_binomial)('m = $m, a = $a, b = $b', (want) => {
    const chances = betaBinomial(want.m, want.a, want.b)
    expectNear(chances, want.pmf, NEAR, 'pmf')
    expectNear(cumulative(chances), want.cdf, NEAR, 'cdf')
    expect(want.probs.map((p) => quantileOf(chances, p))).toEqual(want.quantile)
  })
})

describe('special functions on R grids', () => {
  const g = file
  it.each([
    ['beta below', over(g.pbeta, ['x', 'a', 'b'], betaBelow), column(g.pbeta, 'lower')],
    ['beta quantile', over(g.qbeta, ['p', 'a', 'b'], betaQuantile), column(g.qbeta, 'x')],
    ['chi-square above', over(g.pchisq, ['x', 'df'], chiSquareAbove), column(g.pchisq, 'upper')],
    ['chi-square quantile', over(g.qchisq, ['p', 'df'], chiSquareQuantile), column(g.qchisq, 'x')],
    ['normal quantile', over(g.qnorm, ['p'], normalQuantile), column(g.qnorm, 'z')],
    ['normal below', over(g.pnorm, ['z'], normalBelow), column(g.pnorm, 'lower')],
    ['normal above', over(g.pnorm, ['z'], normalAbove), column(g.pnorm, 'upper')],
    ['log gamma', over(g.lgamma, ['x'], logGamma), column(g.lgamma, 'value')],
  ] as const)('%s', (name, got, want) => expectNear(got, want, NEAR, name))
})
