/**
 * Newton's method for a likelihood, ordinary or penalised, with step halving, and limits from its profile.
 * The models hand over an evaluation at a point; nothing here knows which model it is.
 */
import { cholesky, type Matrix, solve, submatrix } from './matrix.ts'
import { root } from './root.ts'
import { chiSquareQuantile } from './special.ts'

export interface Evaluation {
  /** log likelihood, with the penalty where there is one. */
  value: number
  /** Derivative of `value`. */
  score: Float64Array
  /** Fisher information of the likelihood without penalty. */
  information: Matrix
}

/** The likelihood at a point; null where it is undefined there. */
export type Likelihood = (beta: Float64Array) => Evaluation | null

export interface Maximum {
  beta: Float64Array
  at: Evaluation
  iterations: number
  /** False: no maximum was found; the likelihood still rose (or was flat) in the last step. */
  converged: boolean
  /** The step that Newton would still take, by free coefficient: near 1 or more where there is no maximum. */
  step: Float64Array
}

/** Longest Newton step in any coefficient, in standard deviations of its column (columns are standardised). */
const LONGEST_STEP = 5
const MAX_HALVINGS = 30

/**
 * Climbs from `start`, moving only the coefficients in `free`. Converged when a Newton step is below 1e-10 in every
 * coefficient. Where the likelihood has no maximum (separation) Newton's steps stay near 1, so it runs into
 * `maxIterations` and says so. Null when the start is undefined or a matrix is singular.
 */
export function maximise(
  likelihood: Likelihood,
  start: Float64Array,
  free: readonly number[] = Array.from(start, (_, i) => i),
  maxIterations = 30,
): Maximum | null {
  let beta = start
  let at = likelihood(beta)
  if (at === null) return null
  for (let iterations = 0; ; iterations++) {
    const step = newtonStep(at, free)
    if (step === null) return null
    if (step.every((s) => Math.abs(s) < 1e-10)) return { beta, at, iterations, converged: true, step }
    if (iterations === maxIterations) return { beta, at, iterations, converged: false, step }
    const next = climb(likelihood, beta, at.value, free, step)
    // No way up is left within rounding: this is the top if the step was tiny, and no maximum otherwise.
    if (next === null) return { beta, at, iterations, converged: step.every((s) => Math.abs(s) < 1e-6), step }
    beta = next.beta
    at = next.at
  }
}

function newtonStep(at: Evaluation, free: readonly number[]): Float64Array | null {
  if (free.length === 0) return new Float64Array(0)
  const factor = cholesky(submatrix(at.information, free))
  if (factor === null) return null
  const step = solve(
    factor,
    Float64Array.from(free, (j) => at.score[j] ?? 0),
  )
  const longest = step.reduce((m, s) => Math.max(m, Math.abs(s)), 0)
  return longest > LONGEST_STEP ? step.map((s) => (s * LONGEST_STEP) / longest) : step
}

function climb(
  likelihood: Likelihood,
  beta: Float64Array,
  value: number,
  free: readonly number[],
  step: Float64Array,
): { beta: Float64Array; at: Evaluation } | null {
  const slack = 1e-12 * Math.max(1, Math.abs(value))
  let share = 1
  for (let halving = 0; halving < MAX_HALVINGS; halving++) {
    const next = Float64Array.from(beta)
    for (const [i, j] of free.entries()) next[j] = (beta[j] ?? 0) + share * (step[i] ?? 0)
    const at = likelihood(next)
    if (at !== null && at.value >= value - slack) return { beta: next, at }
    share /= 2
  }
  return null
}

/**
 * Limits of one coefficient by its profile: where the maximum over the others has fallen by half the chi-square
 * quantile. Venzon DJ, Moolgavkar SH (1988) Applied Statistics 37:87-94. A side that is not found is null.
 */
export function profileLimits(
  likelihood: Likelihood,
  top: Maximum,
  j: number,
  stdErr: number,
  confidence = 0.95,
): [lower: number | null, upper: number | null] {
  const target = top.at.value - chiSquareQuantile(confidence, 1) / 2
  const others = Array.from(top.beta, (_, i) => i).filter((i) => i !== j)
  let from = top.beta
  const height = (value: number): number => {
    const start = Float64Array.from(from)
    start[j] = value
    const found = maximise(likelihood, start, others, 200)
    if (found === null) return Number.NaN
    from = found.beta
    return found.at.value - target
  }
  const side = (direction: 1 | -1): number | null => {
    from = top.beta
    const centre = top.beta[j] ?? 0
    let inside = centre
    let outside = centre + direction * 2 * stdErr
    let gap = height(outside)
    for (let tries = 0; gap > 0 && tries < 40; tries++) {
      inside = outside
      outside += direction * 2 * stdErr
      gap = height(outside)
    }
    return gap <= 0 ? root(height, inside, outside) : null
  }
  return [side(-1), side(1)]
}

/** Twice the fall of the maximum when these coefficients are held at 0: the penalised (or plain) likelihood ratio test. */
export function ratioTest(likelihood: Likelihood, top: Maximum, zero: readonly number[]): number | null {
  const start = Float64Array.from(top.beta)
  for (const j of zero) start[j] = 0
  const others = Array.from(start, (_, i) => i).filter((i) => !zero.includes(i))
  const held = maximise(likelihood, start, others, 200)
  return held === null ? null : Math.max(0, 2 * (top.at.value - held.at.value))
}
