/**
 * A model's columns, centred and scaled so that Newton's steps mean the same in each, and the columns that say nothing
 * new set aside. Coefficients are taken back to the columns' own units afterwards.
 */
import { independent, type Matrix } from './matrix.ts'

export interface Standardised {
  /** The columns kept, by place in the list given. */
  kept: number[]
  mean: Float64Array
  scale: Float64Array
  rows: number
  /** Row after row, kept columns only: (value - mean) / scale. */
  values: Float64Array
}

/**
 * Centres and scales; sets aside constant columns and those that are a combination of earlier ones.
 * `centre` false keeps the means at 0: for models with an intercept among their columns.
 */
export function standardise(columns: readonly ArrayLike<number>[], centre = true): Standardised {
  const rows = columns[0]?.length ?? 0
  const means = columns.map((c) => (centre ? meanOf(c) : 0))
  const spreads = columns.map((c, j) => spreadOf(c, means[j] ?? 0))
  const varied = columns.flatMap((_, j) =>
    (spreads[j] ?? 0) > 1e-12 * Math.max(1, Math.abs(means[j] ?? 0)) ? [j] : [],
  )
  const all = layOut(columns, varied, means, spreads, rows)
  const places = independent(crossProducts(all, varied.length))
  const kept = places.map((i) => varied[i] ?? 0)
  const values = kept.length === varied.length ? all : layOut(columns, kept, means, spreads, rows)
  return {
    kept,
    mean: Float64Array.from(kept, (j) => means[j] ?? 0),
    scale: Float64Array.from(kept, (j) => spreads[j] ?? 1),
    rows,
    values,
  }
}

function meanOf(c: ArrayLike<number>): number {
  let sum = 0
  for (let i = 0; i < c.length; i++) sum += c[i] ?? 0
  return c.length === 0 ? 0 : sum / c.length
}

function spreadOf(c: ArrayLike<number>, mean: number): number {
  let sum = 0
  for (let i = 0; i < c.length; i++) sum += ((c[i] ?? 0) - mean) ** 2
  return c.length === 0 ? 0 : Math.sqrt(sum / c.length)
}

function layOut(
  columns: readonly ArrayLike<number>[],
  keep: readonly number[],
  means: readonly number[],
  spreads: readonly number[],
  rows: number,
): Float64Array {
  const values = new Float64Array(rows * keep.length)
  for (const [k, j] of keep.entries()) {
    const column = columns[j]
    const mean = means[j] ?? 0
    const scale = spreads[j] ?? 1
    if (column === undefined) continue
    for (let i = 0; i < rows; i++) values[i * keep.length + k] = ((column[i] ?? 0) - mean) / scale
  }
  return values
}

function crossProducts(values: Float64Array, width: number): Matrix {
  const packed = new Float64Array((width * (width + 1)) / 2)
  for (let row = 0; row < values.length; row += width) {
    let k = 0
    for (let i = 0; i < width; i++) {
      const v = values[row + i] as number
      for (let j = 0; j <= i; j++, k++) packed[k] = (packed[k] as number) + v * (values[row + j] as number)
    }
  }
  return unpacked(packed, width)
}

/** A symmetric matrix from its lower triangle, row after row. */
export function unpacked(packed: Float64Array, width: number): Matrix {
  const place = (i: number, j: number): number => (i >= j ? (i * (i + 1)) / 2 + j : (j * (j + 1)) / 2 + i)
  return Array.from({ length: width }, (_, i) =>
    Float64Array.from({ length: width }, (_, j) => packed[place(i, j)] ?? 0),
  )
}
