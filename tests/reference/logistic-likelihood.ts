/**
 * Logistic regression by maximum likelihood, or with Firth's penalty when the outcomes are separated and no finite
 * maximum exists. Firth D (1993) Biometrika 80:27-38; Heinze G, Schemper M (2002) Statistics in Medicine 21:2409-2419.
 */
import { cholesky, type Matrix, solve, zeros } from '../../src/statistics/matrix.ts'
import type { Evaluation, Likelihood } from '../../src/statistics/maximise.ts'

/** log(1 / (1 + exp(-x))) without overflow. */
const logChance = (x: number): number => (x > 0 ? -Math.log1p(Math.exp(-x)) : x - Math.log1p(Math.exp(x)))
const chance = (x: number): number => (x > 0 ? 1 / (1 + Math.exp(-x)) : Math.exp(x) / (1 + Math.exp(x)))

/**
 * The log likelihood of 0/1 outcomes `y` given rows of `width` values (a column of ones among them for an intercept),
 * with half the log determinant of the information added when `firth`.
 */
export function logisticLikelihood(
  values: Float64Array,
  width: number,
  y: ArrayLike<number>,
  firth: boolean,
): Likelihood {
  const rows = y.length
  const fitted = new Float64Array(rows)
  return (beta) => {
    const score = new Float64Array(width)
    const information = zeros(width)
    let value = 0
    for (let i = 0; i < rows; i++) {
      const row = i * width
      let eta = 0
      for (let j = 0; j < width; j++) eta += (values[row + j] ?? 0) * (beta[j] ?? 0)
      const yes = y[i] === 1
      const p = chance(eta)
      fitted[i] = p
      value += yes ? logChance(eta) : logChance(-eta)
      addRow(score, information, values, row, (yes ? 1 : 0) - p, p * (1 - p))
    }
    mirror(information)
    if (!Number.isFinite(value)) return null
    const at = { value, score, information }
    return firth ? penalised(at, values, width, fitted) : at
  }
}

function addRow(
  score: Float64Array,
  information: Matrix,
  values: Float64Array,
  row: number,
  residual: number,
  weight: number,
): void {
  for (const [j, sums] of information.entries()) {
    const v = values[row + j] ?? 0
    score[j] = (score[j] ?? 0) + v * residual
    for (let k = 0; k <= j; k++) sums[k] = (sums[k] ?? 0) + weight * v * (values[row + k] ?? 0)
  }
}

function mirror(m: Matrix): void {
  for (const [j, row] of m.entries()) for (let k = j + 1; k < m.length; k++) row[k] = m[k]?.[j] ?? 0
}

/** Firth's score: the residual of each row gains h (1/2 - p), with h its leverage. */
function penalised(
  at: Evaluation,
  values: Float64Array,
  width: number,
  fitted: Float64Array,
): Evaluation | null {
  const factor = cholesky(at.information)
  if (factor === null) return null
  const score = Float64Array.from(at.score)
  for (const [i, p] of fitted.entries()) {
    const x = values.subarray(i * width, (i + 1) * width)
    const solved = solve(factor, x)
    let leverage = 0
    for (let j = 0; j < width; j++) leverage += (x[j] ?? 0) * (solved[j] ?? 0)
    const pull = leverage * p * (1 - p) * (0.5 - p)
    for (let j = 0; j < width; j++) score[j] = (score[j] ?? 0) + (x[j] ?? 0) * pull
  }
  return { value: at.value + factor.logDeterminant / 2, score, information: at.information }
}
