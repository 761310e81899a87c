/** The Poisson-binomial distribution against R (PoissonBinomial 1.2.5, Biscarri, Zhao & Brunner 2018); see `meta` in the data. */
import { describe, expect, it } from 'vitest'
import {
  enoughFor,
  meanOf,
  moreThan,
  poissonBinomial,
  quantile,
} from '../../src/forecast/poisson-binomial.ts'
import { expectNear, reference } from './read.ts'

interface Case {
  name: string
  p: number[]
  mean: number
  pmf: number[]
  cdf: number[]
  sf_greater: number[]
  quantile_probs: number[]
  quantile: number[]
}
const { cases } = reference<{ cases: Case[] }>('poisson-binomial')

describe('R', () => {
  for (const c of cases)
    it(`${c.name}: ${c.p.length} colonies`, () => {
      const pmf = poissonBinomial(c.p)
      // R's figures carry 15 digits; those below the smallest that doubles hold in full are compared as absolutes.
      pmf.forEach((p, k) => {
        expect(Math.abs(p - (c.pmf[k] ?? 0))).toBeLessThan(1e-14)
        expect(Math.abs(moreThan(pmf, k) - (c.sf_greater[k] ?? 0))).toBeLessThan(1e-13)
      })
      const at = (list: readonly number[]): number[] => list.filter((_, k) => (c.pmf[k] ?? 0) > 1e-250)
      expectNear(at([...pmf]), at(c.pmf), 1e-12, 'pmf')
      const tails = c.sf_greater.map((_, k) => k).filter((k) => (c.sf_greater[k] ?? 0) > 1e-250)
      if (tails.length > 0)
        expectNear(
          tails.map((k) => moreThan(pmf, k)),
          tails.map((k) => c.sf_greater[k] ?? 0),
          1e-12,
          'tail',
        )
      expectNear([meanOf(pmf)], [c.mean], 1e-12, 'mean')
      expect(c.quantile_probs.map((q) => quantile(pmf, q))).toEqual(c.quantile)
    })

  it('the order that keeps a chance of running short is the quantile of its complement', () => {
    for (const c of cases)
      for (const short of [0.05, 0.1, 0.2]) {
        const pmf = poissonBinomial(c.p)
        const n = enoughFor(pmf, short)
        expect(moreThan(pmf, n)).toBeLessThanOrEqual(short)
        if (n > 0) expect(moreThan(pmf, n - 1)).toBeGreaterThan(short)
      }
  })

  it('refuses what is no chance', () => {
    expect(() => poissonBinomial([0.5, 1.2])).toThrow(/0 to 1/)
    expect(() => poissonBinomial([Number.NaN])).toThrow(/0 to 1/)
  })
})
