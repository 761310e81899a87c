/**
 * A model's columns, centred and scaled so that Newton's steps mean the same in each (columns of 0 and 1 stay as they
 * are: zeros are quick to add), and the columns that say nothing new set aside. Coefficients are taken back to the
 * columns' own units afterwards.
 */
import { independent, type Matrix } from './matrix.ts'

export interface Standardised {
  /** The columns kept, by place in the list given. */
  kept: number[]
  /** What was taken off each kept column, and what it was then divided by. */
  mean: Float64Array
  scale: Float64Array
  rows: number
  /** Row after row, kept columns only: (value - mean) / scale. */
  values: Float64Array
}

interface Shape {
  varies: boolean
  mean: number
  scale: number
}

/** Sets aside constant columns and those that are a combination of earlier ones and a constant. */
export function standardise(columns: readonly ArrayLike<number>[]): Standardised {
  const rows = columns[0]?.length ?? 0
  const shapes = columns.map(shapeOf)
  const varied = shapes.flatMap((s, j) => (s.varies ? [j] : []))
  const all = layOut(columns, varied, shapes, rows)
  const kept = independent(spreadProducts(all, varied.length)).map((i) => varied[i] ?? 0)
  const values = kept.length === varied.length ? all : layOut(columns, kept, shapes, rows)
  return {
    kept,
    mean: Float64Array.from(kept, (j) => shapes[j]?.mean ?? 0),
    scale: Float64Array.from(kept, (j) => shapes[j]?.scale ?? 1),
    rows,
    values,
  }
}

function shapeOf(c: ArrayLike<number>): Shape {
  let sum = 0
  let indicator = true
  for (let i = 0; i < c.length; i++) {
    const v = c[i] as number
    sum += v
    if (v !== 0 && v !== 1) indicator = false
  }
  if (indicator) return { varies: sum > 0 && sum < c.length, mean: 0, scale: 1 }
  const mean = sum / c.length
  let squares = 0
  for (let i = 0; i < c.length; i++) squares += ((c[i] as number) - mean) ** 2
  const scale = Math.sqrt(squares / c.length)
  return { varies: scale > 1e-12 * Math.max(1, Math.abs(mean)), mean, scale }
}

function layOut(
  columns: readonly ArrayLike<number>[],
  keep: readonly number[],
  shapes: readonly Shape[],
  rows: number,
): Float64Array {
  const width = keep.length
  const values = new Float64Array(rows * width)
  for (const [k, j] of keep.entries()) {
    const column = columns[j]
    const shape = shapes[j]
    if (column === undefined || shape === undefined) continue
    const { mean, scale } = shape
    for (let i = 0; i < rows; i++) values[i * width + k] = ((column[i] as number) - mean) / scale
  }
  return values
}

/** Sums of squares and products about the columns' means. */
function spreadProducts(values: Float64Array, width: number): Matrix {
  const packed = new Float64Array((width * (width + 1)) / 2)
  const sums = new Float64Array(width)
  for (let row = 0; row < values.length; row += width) {
    let k = 0
    for (let i = 0; i < width; i++) {
      const v = values[row + i] as number
      if (v === 0) {
        k += i + 1
        continue
      }
      sums[i] = (sums[i] as number) + v
      for (let j = 0; j <= i; j++, k++) packed[k] = (packed[k] as number) + v * (values[row + j] as number)
    }
  }
  const rows = width === 0 ? 0 : values.length / width
  for (let i = 0, k = 0; i < width; i++)
    for (let j = 0; j <= i; j++, k++)
      packed[k] = (packed[k] as number) - ((sums[i] as number) * (sums[j] as number)) / rows
  return unpacked(packed, width)
}

/** A symmetric matrix from its lower triangle, row after row. */
export function unpacked(packed: Float64Array, width: number): Matrix {
  const place = (i: number, j: number): number => (i >= j ? (i * (i + 1)) / 2 + j : (j * (j + 1)) / 2 + i)
  return Array.from({ length: width }, (_, i) =>
    Float64Array.from({ length: width }, (_, j) => packed[place(i, j)] ?? 0),
  )
}
