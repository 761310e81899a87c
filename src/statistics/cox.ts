/**
 * Cox proportional hazards: how the rate of losing goes with each fact, the others held equal. Efron ties; Wald limits;
 * where a fact separates the lost from the rest and no finite estimate exists, Firth's penalised likelihood with profile
 * limits, and `method` says so.
 */

import { type Standardised, standardise } from './columns.ts'
import { baselineHazard, type CoxRows, coxLikelihood } from './cox-likelihood.ts'
import { at, cholesky, dot, inverse, type Matrix, solve, submatrix, zeros } from './matrix.ts'
import { type Likelihood, type Maximum, maximise, profileLimits, ratioTest } from './maximise.ts'
import { riskSets, type SurvivalRows } from './risk-sets.ts'
import { chiSquareAbove, normalAbove, zFor } from './special.ts'

interface Term {
  name: string
  /** log hazard ratio per unit; null when the column is constant or repeats earlier ones. */
  coef: number | null
  stdErr: number | null
  /** Hazard ratio and its limits. */
  ratio: number | null
  lower: number | null
  upper: number | null
  p: number | null
  /**
   * Where limits and p come from: Wald, or the profile of the likelihood: of the penalised one for the columns that
   * separate, of the plain one where it was asked for (up to {@link PROFILE_UP_TO} colonies, it is slow).
   */
  limitsBy: 'wald' | 'profile' | null
}

export interface ChiSquareTest {
  chisq: number
  df: number
  p: number
}

export interface CoxFit {
  method: 'maximum-likelihood' | 'firth-penalised'
  colonies: number
  lost: number
  terms: Term[]
  /** Covariance of the coefficients that were estimated, in the order of the terms that have one. */
  covariance: Matrix
  logLikelihoodNull: number
  /** Without the penalty. */
  logLikelihood: number
  likelihoodRatio: ChiSquareTest
  wald: ChiSquareTest
  /** Rao's score test at zero. */
  score: ChiSquareTest
  /**
   * One test for several columns at once, by their places in the list given: the likelihood ratio (penalised where the fit
   * is), or Wald's for many colonies. Null when none of the columns could be estimated.
   */
  testOf: (columns: readonly number[]) => ChiSquareTest | null
  /** Cumulative hazard when every column is 0, by day with a loss; worked out when asked for. */
  baseline: () => { day: number; cumulative: number }[]
}

export interface Column {
  name: string
  values: ArrayLike<number>
}

/** Beyond so many colonies separation is rare and Wald's limits at the penalised estimate stand in. */
const PROFILE_UP_TO = 5000

/** A coefficient that Newton would still move by more than this has not settled: it separates. */
const SETTLED = 1e-3

/** Where limits come from the profile. */
interface Profile {
  likelihood: Likelihood
  /** True for the coefficients whose limits are to come from the profile. */
  profiled: (i: number) => boolean
}

/** What a fit needs beside the maximum: kept here so that both methods share it. */
interface Problem {
  rows: CoxRows
  columns: Standardised
  plain: Likelihood
}

/**
 * Fits the model; null when nobody was lost or no column varies.
 * `method` 'firth-penalised' asks for the penalty whatever the data; `profile` for profile limits in every column, which
 * hold with few losses where Wald's do not.
 * Example: the gehan data with control = 1 for placebo: ratio 4.82 (2.15 to 10.81), see tests/reference/cox.test.ts.
 */
export function cox(
  rows: SurvivalRows,
  columns: readonly Column[],
  options: { confidence?: number; method?: CoxFit['method']; profile?: boolean } = {},
): CoxFit | null {
  // Rows are laid out in the order in which they are walked, so that memory is read straight through.
  const order = riskSets(rows).leaving.rows
  const ordered = {
    day: pick(rows.day, order),
    lost: pick(rows.lost, order),
    entry: pick(rows.entry ?? [], order),
  }
  const sets = riskSets(ordered)
  const standard = standardise(columns.map((c) => pick(c.values, order)))
  if (sets.events === 0 || standard.kept.length === 0) return null
  const width = standard.kept.length
  const coxRows: CoxRows = { sets, lost: ordered.lost, values: standard.values, width }
  const problem = { rows: coxRows, columns: standard, plain: coxLikelihood(coxRows, false) }
  const start = firstGuess(coxRows, ordered)
  const plain = options.method === 'firth-penalised' ? null : maximise(problem.plain, start)
  const few = standard.rows <= PROFILE_UP_TO
  if (plain?.converged === true) {
    const profiled = (): boolean => few && options.profile === true
    const profile = { likelihood: problem.plain, profiled }
    return described(problem, columns, plain, 'maximum-likelihood', profile, options.confidence)
  }
  const likelihood = coxLikelihood(coxRows, true)
  const top = maximise(likelihood, start, undefined, 500)
  if (top === null || !top.converged) return null
  const profiled = (i: number): boolean =>
    few && (options.profile === true || Math.abs(plain?.step[i] ?? 1) > SETTLED)
  return described(problem, columns, top, 'firth-penalised', { likelihood, profiled }, options.confidence)
}

/** Above so many rows, a fit to every eighth of them is taken to start from: fewer steps through all of them. */
const SAMPLE_FROM = 20_000
const SAMPLE_EVERY = 8

/** Where to start climbing: no difference, or with many rows what a sample of them says. The top is the same. */
function firstGuess(
  { values, width }: CoxRows,
  rows: { day: Float64Array; lost: Float64Array; entry: Float64Array },
) {
  const none = new Float64Array(width)
  if (rows.day.length < SAMPLE_FROM) return none
  const taken = Int32Array.from(
    { length: Math.floor(rows.day.length / SAMPLE_EVERY) },
    (_, k) => k * SAMPLE_EVERY,
  )
  const lost = pick(rows.lost, taken)
  const sets = riskSets({ day: pick(rows.day, taken), lost, entry: pick(rows.entry, taken) })
  const some = new Float64Array(taken.length * width)
  for (const [k, i] of taken.entries()) some.set(values.subarray(i * width, (i + 1) * width), k * width)
  const found = maximise(coxLikelihood({ sets, lost, values: some, width }, false), none)
  return found?.converged === true ? found.beta : none
}

/** The values in that order; 0 where there is none. */
function pick(values: ArrayLike<number>, order: Int32Array): Float64Array {
  const picked = new Float64Array(order.length)
  for (let k = 0; k < order.length; k++) picked[k] = values[order[k] as number] ?? 0
  return picked
}

function described(
  { rows, columns, plain }: Problem,
  given: readonly Column[],
  top: Maximum,
  method: CoxFit['method'],
  profile: Profile,
  confidence = 0.95,
): CoxFit | null {
  const factor = cholesky(top.at.information)
  const nullAt = plain(new Float64Array(rows.width))
  const topAt = method === 'maximum-likelihood' ? top.at : plain(top.beta)
  const nullFactor = nullAt === null ? null : cholesky(nullAt.information)
  if (factor === null || nullAt === null || nullFactor === null || topAt === null) return null
  const inner = inverse(factor)
  const scaled = zeros(rows.width)
  for (const [i, row] of scaled.entries())
    for (let j = 0; j < rows.width; j++)
      row[j] = at(inner, i, j) / ((columns.scale[i] ?? 1) * (columns.scale[j] ?? 1))
  const terms = given.map((c, j): Term => {
    const i = columns.kept.indexOf(j)
    if (i < 0)
      return {
        name: c.name,
        coef: null,
        stdErr: null,
        ratio: null,
        lower: null,
        upper: null,
        p: null,
        limitsBy: null,
      }
    return term(c.name, i, columns.scale[i] ?? 1, at(inner, i, i), top, profile, confidence)
  })
  const df = rows.width
  const test = (chisq: number): ChiSquareTest => ({ chisq, df, p: chiSquareAbove(chisq, df) })
  const information = top.at.information
  return {
    method,
    colonies: rows.sets.leaving.rows.length,
    lost: rows.sets.events,
    terms,
    covariance: scaled,
    logLikelihoodNull: nullAt.value,
    logLikelihood: topAt.value,
    likelihoodRatio: test(Math.max(0, 2 * (topAt.value - nullAt.value))),
    wald: test(
      dot(
        top.beta,
        Float64Array.from(information, (row) => dot(row, top.beta)),
      ),
    ),
    score: test(dot(nullAt.score, solve(nullFactor, nullAt.score))),
    testOf: (asked) =>
      jointTest(
        asked.flatMap((j) => columns.kept.indexOf(j)).filter((i) => i >= 0),
        top,
        inner,
        columns.rows <= PROFILE_UP_TO ? profile.likelihood : null,
      ),
    baseline: () => baseline(rows, columns, top.beta),
  }
}

function term(
  name: string,
  i: number,
  scale: number,
  variance: number,
  top: Maximum,
  profile: Profile,
  confidence: number,
): Term {
  const inner = top.beta[i] ?? 0
  const error = Math.sqrt(variance)
  const coef = inner / scale
  const shared = { name, coef, stdErr: error / scale, ratio: Math.exp(coef) }
  if (!profile.profiled(i)) {
    const half = zFor(confidence) * error
    return {
      ...shared,
      lower: Math.exp((inner - half) / scale),
      upper: Math.exp((inner + half) / scale),
      p: 2 * normalAbove(Math.abs(inner / error)),
      limitsBy: 'wald',
    }
  }
  const [lower, upper] = profileLimits(profile.likelihood, top, i, error, confidence)
  const ratio = ratioTest(profile.likelihood, top, [i])
  return {
    ...shared,
    lower: lower === null ? null : Math.exp(lower / scale),
    upper: upper === null ? null : Math.exp(upper / scale),
    p: ratio === null ? null : chiSquareAbove(ratio, 1),
    limitsBy: 'profile',
  }
}

/** By the likelihood ratio where a likelihood is handed over, else Wald's. */
function jointTest(
  places: readonly number[],
  top: Maximum,
  covariance: Matrix,
  likelihood: Likelihood | null,
): ChiSquareTest | null {
  const df = places.length
  if (df === 0) return null
  const chisq = likelihood === null ? waldOf(places, top, covariance) : ratioTest(likelihood, top, places)
  return chisq === null ? null : { chisq, df, p: chiSquareAbove(chisq, df) }
}

function waldOf(places: readonly number[], top: Maximum, covariance: Matrix): number | null {
  const factor = cholesky(submatrix(covariance, places))
  if (factor === null) return null
  const beta = Float64Array.from(places, (i) => top.beta[i] ?? 0)
  return dot(beta, solve(factor, beta))
}

function baseline(rows: CoxRows, columns: Standardised, beta: Float64Array): ReturnType<CoxFit['baseline']> {
  let offset = 0
  for (let i = 0; i < rows.width; i++)
    offset += ((beta[i] ?? 0) * (columns.mean[i] ?? 0)) / (columns.scale[i] ?? 1)
  let cumulative = 0
  return baselineHazard(rows, beta).map(({ day, hazard }) => {
    cumulative += hazard * Math.exp(-offset)
    return { day, cumulative }
  })
}
