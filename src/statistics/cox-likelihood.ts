/**
 * The Cox partial likelihood with Efron's treatment of ties: its value, score and information, and with Firth's penalty.
 *
 * Cox DR (1972) JRSS B 34:187-220; Efron B (1977) JASA 72:557-565; Heinze G, Schemper M (2001) Biometrics 57:114-119.
 *
 * With d lost on a day, Efron takes the risk set d times, each time with a share f = r/d (r = 0..d-1) of the lost taken
 * out. Sums over those d sets need only a few sums of powers of f over powers of s, so a day costs the same however many
 * were lost on it.
 */
import { unpacked } from './columns.ts'
import { cholesky, dot, inverse, type Matrix } from './matrix.ts'
import type { Likelihood } from './maximise.ts'
import type { Order, RiskSets } from './risk-sets.ts'

/** Weighted sums over a set of rows: of 1, x, x x' (lower triangle packed by row), and, for the penalty, q and q x. */
interface Sums {
  one: number
  x: Float64Array
  xx: Float64Array
  q: number
  qx: Float64Array
}

const sumsOf = (width: number): Sums => ({
  one: 0,
  x: new Float64Array(width),
  xx: new Float64Array((width * (width + 1)) / 2),
  q: 0,
  qx: new Float64Array(width),
})

function clear(s: Sums): void {
  s.one = 0
  s.q = 0
  s.x.fill(0)
  s.xx.fill(0)
  s.qx.fill(0)
}

/** Adds a row of weight w (negative: takes it out) to the sums of 1, x and x x'. */
function addRow(s: Sums, values: Float64Array, row: number, width: number, w: number): void {
  const { x, xx } = s
  s.one += w
  let k = 0
  for (let i = 0; i < width; i++) {
    const v = values[row + i] as number
    if (v === 0) {
      k += i + 1
      continue
    }
    const wx = w * v
    x[i] = (x[i] as number) + wx
    for (let j = 0; j <= i; j++, k++) xx[k] = (xx[k] as number) + wx * (values[row + j] as number)
  }
}

/** Adds to the sums of q and q x. */
function addPull(s: Sums, values: Float64Array, row: number, width: number, w: number, q: number): void {
  s.q += w * q
  for (let i = 0; i < width; i++) (s.qx[i] as number) += w * q * (values[row + i] as number)
}

/** Adds all sums of one set to another. */
function addSums(to: Sums, from: Sums): void {
  to.one += from.one
  to.q += from.q
  for (let i = 0; i < to.x.length; i++) {
    to.x[i] = (to.x[i] as number) + (from.x[i] as number)
    to.qx[i] = (to.qx[i] as number) + (from.qx[i] as number)
  }
  for (let k = 0; k < to.xx.length; k++) to.xx[k] = (to.xx[k] as number) + (from.xx[k] as number)
}

export interface CoxRows {
  sets: RiskSets
  lost: ArrayLike<number>
  /** Standardised columns, row after row. */
  values: Float64Array
  width: number
}

/** Rows of a day in an order: [from, to). */
const span = (o: Order, day: number): [number, number] => [o.begin[day + 1] ?? 0, o.begin[day] ?? 0]

/** What a row weighs in the sums, and, for the penalty, its q. */
interface Weights {
  weight: Float64Array
  pull: Float64Array | null
}

/**
 * Walks the days back from the last, keeping the sums over those at risk, and calls `visit` on each day with a loss:
 * with the sums over those at risk and over those lost, how many were lost, and where the day's rows lie in the order.
 */
function walk(
  { sets, lost, values }: CoxRows,
  width: number,
  { weight, pull }: Weights,
  visit: (day: number, atRisk: Sums, gone: Sums, count: number, from: number, to: number) => void,
): void {
  const atRisk = sumsOf(width)
  const gone = sumsOf(width)
  const add = (s: Sums, row: number, sign: 1 | -1): void => {
    const w = sign * (weight[row] as number)
    addRow(s, values, row * width, width, w)
    if (pull !== null) addPull(s, values, row * width, width, w, pull[row] as number)
  }
  let number = 0
  for (let day = sets.lastDay; day >= 0; day--) {
    const [from, to] = span(sets.leaving, day)
    let count = 0
    for (let k = from; k < to; k++) {
      const row = sets.leaving.rows[k] as number
      if (lost[row] === 1 && count++ === 0) clear(gone)
      add(lost[row] === 1 ? gone : atRisk, row, 1)
    }
    if (count > 0) addSums(atRisk, gone)
    number += to - from
    if (sets.entering !== null && day > 0) {
      const [first, end] = span(sets.entering, day)
      for (let k = first; k < end; k++) add(atRisk, sets.entering.rows[k] as number, -1)
      number -= end - first
      // Nobody left at risk: what subtracting left behind is rounding.
      if (number === 0) clear(atRisk)
    }
    if (count > 0) visit(day, atRisk, gone, count, from, to)
  }
}

/** The sums over Efron's d risk sets of 1/s, f/s, 1/s², f/s², f²/s² and log s, with s = all - f gone. */
function efron(all: number, gone: number, d: number) {
  let [log, s1, f1, s2, f2, ff2] = [0, 0, 0, 0, 0, 0]
  for (let r = 0; r < d; r++) {
    const f = r / d
    const s = all - f * gone
    const inv = 1 / s
    log += Math.log(s)
    s1 += inv
    f1 += f * inv
    s2 += inv * inv
    f2 += f * inv * inv
    ff2 += f * f * inv * inv
  }
  return { log, s1, f1, s2, f2, ff2 }
}

/** The log partial likelihood as a function of the coefficients of the standardised columns. */
export function coxLikelihood(rows: CoxRows, firth: boolean): Likelihood {
  const { width, values, lost } = rows
  const n = lost.length
  const weight = new Float64Array(n)
  const eta = new Float64Array(n)
  return (beta) => {
    for (let i = 0; i < n; i++) {
      let sum = 0
      for (let j = 0; j < width; j++) sum += (values[i * width + j] as number) * (beta[j] as number)
      eta[i] = sum
      weight[i] = Math.exp(sum)
    }
    const score = new Float64Array(width)
    const packed = new Float64Array((width * (width + 1)) / 2)
    let value = 0
    walk(rows, width, { weight, pull: null }, (_day, atRisk, gone, d, from, to) => {
      const e = efron(atRisk.one, gone.one, d)
      value -= e.log
      for (let k = from; k < to; k++) {
        const row = rows.sets.leaving.rows[k] as number
        if (lost[row] !== 1) continue
        value += eta[row] as number
        for (let j = 0; j < width; j++) (score[j] as number) += values[row * width + j] as number
      }
      let k = 0
      for (let i = 0; i < width; i++) {
        const [a, g] = [atRisk.x[i] as number, gone.x[i] as number]
        ;(score[i] as number) -= a * e.s1 - g * e.f1
        for (let j = 0; j <= i; j++) {
          const [b, h] = [atRisk.x[j] as number, gone.x[j] as number]
          ;(packed[k] as number) +=
            (atRisk.xx[k] as number) * e.s1 -
            (gone.xx[k] as number) * e.f1 -
            (a * b * e.s2 - (a * h + g * b) * e.f2 + g * h * e.ff2)
          k++
        }
      }
    })
    if (!Number.isFinite(value)) return null
    const information = unpacked(packed, width)
    if (!firth) return { value, score, information }
    const factor = cholesky(information)
    if (factor === null) return null
    addPenalty(score, rows, weight, inverse(factor))
    return { value: value + factor.logDeterminant / 2, score, information }
  }
}

/**
 * Adds half the derivative of the log determinant of the information: for each risk set half of
 * E[(x-m)' V (x-m) (x-m)], V the inverse information, m the set's mean; written with q = x' V x. Over Efron's d risk sets
 * of a day every term is a product of sums that are straight lines in f, so the day costs the same however many were lost.
 */
function addPenalty(score: Float64Array, rows: CoxRows, weight: Float64Array, v: Matrix): void {
  const { width, values } = rows
  const pull = pulls(v, values, width, weight.length)
  const [va, vg] = [new Float64Array(width), new Float64Array(width)]
  walk(rows, width, { weight, pull }, (_day, a, g, d) => {
    const e = efron(a.one, g.one, d)
    const c = cubes(a.one, g.one, d)
    times(va, v, a.x)
    times(vg, v, g.x)
    const [aa, ag, gg] = [dot(va, a.x), dot(va, g.x), dot(vg, g.x)]
    // Over the risk sets: (1/s³)(aa - 2f ag + f² gg), once as it is and once times f.
    const around = aa * c.s3 - 2 * ag * c.f3 + gg * c.ff3
    const aroundF = aa * c.f3 - 2 * ag * c.ff3 + gg * c.fff3
    for (let l = 0; l < width; l++) {
      let [own, mixed, gone] = [0, 0, 0]
      for (let j = 0; j < width; j++) {
        const k = l >= j ? (l * (l + 1)) / 2 + j : (j * (j + 1)) / 2 + l
        const [ax, gx, pa, pg] = [a.xx[k] as number, g.xx[k] as number, va[j] as number, vg[j] as number]
        own += ax * pa
        mixed += ax * pg + gx * pa
        gone += gx * pg
      }
      const [x, y] = [a.x[l] as number, g.x[l] as number]
      const meanQx = (a.qx[l] as number) * e.s1 - (g.qx[l] as number) * e.f1
      const cross = own * e.s2 - mixed * e.f2 + gone * e.ff2
      const meanTimesQ = x * a.q * e.s2 - (x * g.q + y * a.q) * e.f2 + y * g.q * e.ff2
      ;(score[l] as number) += (meanQx - 2 * cross - meanTimesQ + 2 * (x * around - y * aroundF)) / 2
    }
  })
}

/** The sums over Efron's d risk sets of 1/s³, f/s³, f²/s³ and f³/s³. */
function cubes(all: number, gone: number, d: number) {
  let [s3, f3, ff3, fff3] = [0, 0, 0, 0]
  for (let r = 0; r < d; r++) {
    const f = r / d
    const inv = 1 / (all - f * gone)
    const cube = inv * inv * inv
    s3 += cube
    f3 += f * cube
    ff3 += f * f * cube
    fff3 += f * f * f * cube
  }
  return { s3, f3, ff3, fff3 }
}

/** out = m x */
function times(out: Float64Array, m: Matrix, x: Float64Array): void {
  for (let i = 0; i < out.length; i++) out[i] = dot(m[i] ?? [], x)
}

/** x' V x of every row; columns of 0 and 1 are mostly 0, and zeros add nothing. */
function pulls(v: Matrix, values: Float64Array, width: number, rows: number): Float64Array {
  const flat = new Float64Array(width * width)
  for (let i = 0; i < width; i++) flat.set(v[i] ?? [], i * width)
  const out = new Float64Array(rows)
  const used = new Int32Array(width)
  for (let row = 0; row < rows; row++) {
    const from = row * width
    let n = 0
    for (let i = 0; i < width; i++) if (values[from + i] !== 0) used[n++] = i
    let sum = 0
    for (let p = 0; p < n; p++) {
      const i = used[p] as number
      const x = values[from + i] as number
      sum += (flat[i * width + i] as number) * x * x
      for (let r = 0; r < p; r++) {
        const j = used[r] as number
        sum += 2 * (flat[i * width + j] as number) * x * (values[from + j] as number)
      }
    }
    out[row] = sum
  }
  return out
}

/** Efron's baseline hazard by day with a loss, at the means of the standardised columns. */
export function baselineHazard(rows: CoxRows, beta: Float64Array): { day: number; hazard: number }[] {
  const { width, values } = rows
  const out: { day: number; hazard: number }[] = []
  const weight = Float64Array.from({ length: rows.lost.length }, (_, row) => {
    let eta = 0
    for (let j = 0; j < width; j++) eta += (values[row * width + j] ?? 0) * (beta[j] ?? 0)
    return Math.exp(eta)
  })
  walk(rows, 0, { weight, pull: null }, (day, atRisk, gone, d) =>
    out.push({ day, hazard: efron(atRisk.one, gone.one, d).s1 }),
  )
  return out.reverse()
}
