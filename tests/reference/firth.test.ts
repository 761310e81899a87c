/**
 * Firth's penalty and profile limits against R 4.2.2 (logistic.json: own R code, agreeing with brglm2 0.9 to 1e-13),
 * on birthwt (Hosmer and Lemeshow 1989) and three separated sets. Coefficients 1e-9, limits 1e-8 relative.
 */
import { describe, expect, it } from 'vitest'
import { at, cholesky, inverse } from '../../src/statistics/matrix.ts'
import { type Maximum, maximise, profileLimits, ratioTest } from '../../src/statistics/maximise.ts'
import { chiSquareAbove } from '../../src/statistics/special.ts'
import { logisticLikelihood } from './logistic-likelihood.ts'
import { expectNear, reference } from './read.ts'

interface Entry {
  terms: string[]
  data: Record<string, number[]>
  ml: { coef?: number[]; se?: number[]; vcov?: number[][]; loglik?: number; diverges?: boolean }
  firth: {
    coef: number[]
    se: number[]
    loglik: number
    penalised_loglik: number
    profile_ci95: { lower: number[]; upper: number[] }
    penalised_lr_chisq: number[]
    penalised_lr_p: number[]
  }
}
const names = ['birthwt', 'separable', 'quasi_separable', 'separable_two'] as const
const file = reference<Record<(typeof names)[number], Entry>>('logistic')

function likelihoodOf(entry: Entry, firth: boolean) {
  const y = entry.data.y ?? []
  const width = entry.terms.length
  const values = Float64Array.from({ length: y.length * width }, (_, i) => {
    const term = entry.terms[i % width] ?? ''
    return term === 'intercept' ? 1 : (entry.data[term]?.[Math.floor(i / width)] ?? Number.NaN)
  })
  return logisticLikelihood(values, width, y, firth)
}
const start = (entry: Entry) => new Float64Array(entry.terms.length)
function covariance(top: Maximum) {
  const factor = cholesky(top.at.information)
  if (factor === null) throw new Error('singular')
  return inverse(factor)
}
const stdErrs = (top: Maximum) => covariance(top).map((row, j) => Math.sqrt(row[j] ?? 0))
function found(top: Maximum | null): Maximum {
  if (top === null) throw new Error('no maximum')
  return top
}

describe.each(names)('%s', (name) => {
  const entry = file[name]
  const likelihood = likelihoodOf(entry, true)
  const top = found(maximise(likelihood, start(entry), undefined, 500))

  it('penalised estimates and errors as R', () => {
    expect(top.converged).toBe(true)
    expectNear(top.beta, entry.firth.coef, 1e-9, 'coef')
    expectNear(stdErrs(top), entry.firth.se, 1e-9, 'se')
    expectNear([top.at.value], [entry.firth.penalised_loglik], 1e-9, 'penalised log likelihood')
    expectNear([likelihoodOf(entry, false)(top.beta)?.value], [entry.firth.loglik], 1e-9, 'log likelihood')
  })

  it('profile limits and penalised likelihood ratio tests as R', () => {
    const errors = stdErrs(top)
    const limits = errors.map((se, j) => profileLimits(likelihood, top, j, se))
    expectNear(
      limits.map((l) => l[0]),
      entry.firth.profile_ci95.lower,
      1e-8,
      'lower',
    )
    expectNear(
      limits.map((l) => l[1]),
      entry.firth.profile_ci95.upper,
      1e-8,
      'upper',
    )
    const ratios = errors.map((_, j) => ratioTest(likelihood, top, [j]) ?? Number.NaN)
    expectNear(ratios, entry.firth.penalised_lr_chisq, 1e-8, 'ratio')
    expectNear(
      ratios.map((r) => chiSquareAbove(r, 1)),
      entry.firth.penalised_lr_p,
      1e-8,
      'p',
    )
  })

  it(
    entry.ml.diverges ? 'no maximum without the penalty, and that is said' : 'maximum likelihood as R',
    () => {
      const plain = maximise(likelihoodOf(entry, false), start(entry))
      if (entry.ml.diverges) {
        expect(plain?.converged ?? false).toBe(false)
        return
      }
      expect(found(plain).converged).toBe(true)
      expectNear(found(plain).beta, entry.ml.coef ?? [], 1e-9, 'coef')
      expectNear(stdErrs(found(plain)), entry.ml.se ?? [], 1e-9, 'se')
      const v = covariance(found(plain))
      const flat = v.flatMap((_, i) => v.map((_, j) => at(v, i, j)))
      expectNear(flat, (entry.ml.vcov ?? []).flat(), 1e-9, 'vcov')
      expectNear([found(plain).at.value], [entry.ml.loglik ?? null], 1e-9, 'log likelihood')
    },
  )
})
