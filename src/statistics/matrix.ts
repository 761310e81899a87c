/** The little linear algebra the models need: symmetric matrices as rows, up to a few dozen columns. */

export type Matrix = Float64Array[]

/** A square matrix of zeros. */
export const zeros = (size: number): Matrix => Array.from({ length: size }, () => new Float64Array(size))

/** Element of a matrix; 0 outside it. */
export const at = (m: Matrix, i: number, j: number): number => m[i]?.[j] ?? 0

export interface Cholesky {
  /** Lower triangle: L L' = the matrix. */
  lower: Matrix
  /** log of the determinant of the matrix. */
  logDeterminant: number
}

/**
 * Cholesky factor of a symmetric positive definite matrix, or null when a pivot falls below `tolerance` times its
 * diagonal element: then a column is a combination of those before it.
 */
export function cholesky(m: Matrix, tolerance = 1e-11): Cholesky | null {
  const lower = zeros(m.length)
  let logDeterminant = 0
  for (const [j, row] of lower.entries()) {
    let pivot = at(m, j, j)
    for (let k = 0; k < j; k++) pivot -= at(lower, j, k) ** 2
    if (!(pivot > tolerance * at(m, j, j)) || !(pivot > 0)) return null
    const root = Math.sqrt(pivot)
    row[j] = root
    logDeterminant += 2 * Math.log(root)
    for (let i = j + 1; i < m.length; i++) {
      let sum = at(m, i, j)
      for (let k = 0; k < j; k++) sum -= at(lower, i, k) * at(lower, j, k)
      const target = lower[i]
      if (target !== undefined) target[j] = sum / root
    }
  }
  return { lower, logDeterminant }
}

/** x with L L' x = b. */
export function solve({ lower }: Cholesky, b: ArrayLike<number>): Float64Array {
  const n = lower.length
  const x = Float64Array.from(b)
  for (let i = 0; i < n; i++) {
    let sum = x[i] ?? 0
    for (let k = 0; k < i; k++) sum -= at(lower, i, k) * (x[k] ?? 0)
    x[i] = sum / at(lower, i, i)
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = x[i] ?? 0
    for (let k = i + 1; k < n; k++) sum -= at(lower, k, i) * (x[k] ?? 0)
    x[i] = sum / at(lower, i, i)
  }
  return x
}

/** Inverse of the matrix that was factored. */
export function inverse(factor: Cholesky): Matrix {
  const n = factor.lower.length
  return Array.from({ length: n }, (_, j) => {
    const unit = new Float64Array(n)
    unit[j] = 1
    return solve(factor, unit)
  })
}

/** a · b */
export function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += (a[i] ?? 0) * (b[i] ?? 0)
  return sum
}

/** The rows and columns named. */
export const submatrix = (m: Matrix, keep: readonly number[]): Matrix =>
  keep.map((i) => Float64Array.from(keep, (j) => at(m, i, j)))

/**
 * The columns that are no combination of earlier ones, judged on a sum of squares and products (R drops the later of
 * two columns that say the same, and so does this).
 */
export function independent(m: Matrix, tolerance = 1e-9): number[] {
  const keep: number[] = []
  for (let j = 0; j < m.length; j++)
    if (cholesky(submatrix(m, [...keep, j]), tolerance) !== null) keep.push(j)
  return keep
}
