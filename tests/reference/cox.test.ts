/**
 * Cox models against R 4.2.2, survival 3.5-3, Efron ties (cox.json: lung, Loprinzi et al. 1994; veteran, Kalbfleisch
 * and Prentice 1980; gehan, Freireich et al. 1963). Tolerance 1e-6 relative asked, 1e-9 kept.
 */
import { describe, expect, it } from 'vitest'
import { cox } from '../../src/statistics/cox.ts'
import { difference, expectNear, reference } from './read.ts'

interface Test {
  chisq: number
  df: number
  p: number
}
interface Entry {
  n: number
  events: number
  terms: string[]
  data: Record<string, number[]>
  coef: number[]
  se: number[]
  p: number[]
  hazard_ratio: number[]
  hazard_ratio_ci95: { lower: number[]; upper: number[] }
  vcov: number[][]
  loglik_null: number
  loglik: number
  lr_test: Test
  wald_test: Test
  score_test: Test
  baseline_cumhaz_at_zero_covariates: { time: number[]; cumhaz: number[] }
  breslow_for_contrast: { coef: number[] }
}
const names = ['lung', 'veteran', 'gehan'] as const
const file = reference<Record<(typeof names)[number], Entry>>('cox')
const NEAR = 1e-9

describe.each(names)('%s', (name) => {
  const entry = file[name]
  const rows = { day: entry.data.time ?? [], lost: entry.data.status ?? [] }
  const columns = entry.terms.map((t) => ({ name: t, values: entry.data[t] ?? [] }))
  const fit = cox(rows, columns)
  const column = (k: 'coef' | 'stdErr' | 'ratio' | 'lower' | 'upper' | 'p') =>
    fit?.terms.map((t) => t[k]) ?? []

  it('coefficients, errors, ratios and limits as R', () => {
    expect(fit).toMatchObject({ method: 'maximum-likelihood', colonies: entry.n, lost: entry.events })
    expectNear(column('coef'), entry.coef, NEAR, 'coef')
    expectNear(column('stdErr'), entry.se, NEAR, 'se')
    expectNear(column('p'), entry.p, NEAR, 'p')
    expectNear(column('ratio'), entry.hazard_ratio, NEAR, 'ratio')
    expectNear(column('lower'), entry.hazard_ratio_ci95.lower, NEAR, 'lower')
    expectNear(column('upper'), entry.hazard_ratio_ci95.upper, NEAR, 'upper')
    // R's own covariances cancel where they are small beside the variances.
    const flat = fit?.covariance.flatMap((r) => [...r]) ?? []
    expectNear(flat, entry.vcov.flat(), 1e-8, 'vcov')
  })

  it('likelihoods and the three tests as R', () => {
    expectNear(
      [fit?.logLikelihoodNull, fit?.logLikelihood],
      [entry.loglik_null, entry.loglik],
      NEAR,
      'log likelihood',
    )
    const three = (t: Test | null | undefined) => [t?.chisq, t?.df, t?.p]
    const want = (t: Test) => [t.chisq, t.df, t.p]
    expectNear(three(fit?.likelihoodRatio), want(entry.lr_test), NEAR, 'likelihood ratio')
    expectNear(three(fit?.wald), want(entry.wald_test), NEAR, 'wald')
    expectNear(three(fit?.score), want(entry.score_test), NEAR, 'score')
  })

  it('baseline hazard as R', () => {
    const want = entry.baseline_cumhaz_at_zero_covariates
    const baseline = fit?.baseline() ?? []
    const got = want.time.map((t) => baseline.findLast((b) => b.day <= t)?.cumulative ?? 0)
    expectNear(got, want.cumhaz, NEAR, 'cumulative hazard')
  })

  it('is not the fit with Breslow ties', () => {
    const apart = entry.breslow_for_contrast.coef.map((b, j) => difference(column('coef')[j], b))
    expect(Math.max(...apart)).toBeGreaterThan(1e-4)
  })
})
