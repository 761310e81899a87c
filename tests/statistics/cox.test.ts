/**
 * The Cox model where R has no reference here: left truncation and Firth's penalty, against a slow second
 * implementation written straight from the definitions (Efron 1977; Heinze and Schemper 2001), and by its properties.
 */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type CoxFit, cox } from '../../src/statistics/cox.ts'

interface Row {
  entry: number
  day: number
  lost: 0 | 1
  x: number[]
}

/** Log partial likelihood with Efron ties, summed term by term over risk sets found anew each time. */
function slowLogLikelihood(rows: Row[], beta: number[]): number {
  const weight = (r: Row) => Math.exp(r.x.reduce((s, v, j) => s + v * (beta[j] ?? 0), 0))
  let sum = 0
  for (const t of new Set(rows.filter((r) => r.lost).map((r) => r.day))) {
    const atRisk = rows.filter((r) => r.day >= t && (r.entry === 0 || r.entry < t))
    const gone = atRisk.filter((r) => r.day === t && r.lost)
    const all = atRisk.reduce((s, r) => s + weight(r), 0)
    const lost = gone.reduce((s, r) => s + weight(r), 0)
    for (const [k, r] of gone.entries()) sum += Math.log(weight(r)) - Math.log(all - (k / gone.length) * lost)
  }
  return sum
}

/** Minus the second derivatives, by central differences. */
function slowInformation(rows: Row[], beta: number[]): number[][] {
  const h = 1e-4
  const f = (i: number, j: number, a: number, b: number) => {
    const moved = [...beta]
    moved[i] = (moved[i] ?? 0) + a * h
    moved[j] = (moved[j] ?? 0) + b * h
    return slowLogLikelihood(rows, moved)
  }
  return beta.map((_, i) =>
    beta.map((_, j) => -(f(i, j, 1, 1) - f(i, j, 1, -1) - f(i, j, -1, 1) + f(i, j, -1, -1)) / (4 * h * h)),
  )
}
const determinant = (m: number[][]): number =>
  m.length === 1
    ? (m[0]?.[0] ?? 0)
    : (m[0]?.[0] ?? 0) * (m[1]?.[1] ?? 0) - (m[0]?.[1] ?? 0) * (m[1]?.[0] ?? 0)
const slowPenalised = (rows: Row[], beta: number[]) =>
  slowLogLikelihood(rows, beta) + Math.log(determinant(slowInformation(rows, beta))) / 2

function fitOf(rows: Row[], method?: CoxFit['method']): CoxFit {
  const width = rows[0]?.x.length ?? 0
  const fit = cox(
    { day: rows.map((r) => r.day), lost: rows.map((r) => r.lost), entry: rows.map((r) => r.entry) },
    Array.from({ length: width }, (_, j) => ({ name: `x${j}`, values: rows.map((r) => r.x[j] ?? 0) })),
    method === undefined ? {} : { method },
  )
  if (fit === null) throw new Error('no fit')
  return fit
}
const coefs = (fit: CoxFit) => fit.terms.map((t) => t.coef ?? Number.NaN)

const row = (day: number, lost: 0 | 1, x: number[], entry = 0): Row => ({ entry, day, lost, x })
/** Ties, a day 0, a number beside a yes/no; invented. */
const PLAIN: Row[] = [
  row(0, 1, [1, 31]),
  row(3, 1, [1, 33]),
  row(3, 1, [0, 24]),
  row(3, 0, [1, 20]),
  row(8, 1, [0, 30]),
  row(9, 0, [0, 22]),
  row(12, 1, [1, 28]),
  row(12, 1, [1, 29]),
  row(15, 1, [0, 35]),
  row(20, 0, [0, 19]),
  row(22, 1, [1, 21]),
  row(30, 0, [0, 25]),
  row(30, 0, [1, 23]),
  row(41, 0, [0, 27]),
]
/** Every loss has x = 1: the hazard ratio of x has no finite estimate. */
const SEPARATED: Row[] = [
  row(2, 1, [1, 30]),
  row(4, 1, [1, 22]),
  row(4, 0, [1, 25]),
  row(7, 1, [1, 28]),
  row(9, 0, [0, 33]),
  row(30, 0, [0, 26]),
  row(30, 0, [0, 21]),
  row(30, 0, [1, 24]),
  row(30, 0, [0, 29]),
]

describe("Firth's penalty", () => {
  it('is used, and said, when a fact separates the lost from the rest', () => {
    const fit = fitOf(SEPARATED)
    expect(fit.method).toBe('firth-penalised')
    for (const t of fit.terms) {
      expect(Number.isFinite(t.coef)).toBe(true)
      expect(t.lower ?? Number.NaN).toBeLessThan(t.ratio ?? 0)
      expect(t.upper ?? Number.NaN).toBeGreaterThan(t.ratio ?? 0)
    }
    expect(fitOf(PLAIN).method).toBe('maximum-likelihood')
  })

  it.each([
    ['separated', SEPARATED],
    ['plain', PLAIN],
    [
      'late entries',
      PLAIN.map((r, i) => (r.day > 10 && i % 2 ? { ...r, entry: 5 + i } : r)).filter(
        (r) => r.entry < r.day || r.entry === 0,
      ),
    ],
  ])('sits at the top of the penalised likelihood worked out slowly: %s', (_name, rows) => {
    const top = coefs(fitOf(rows, 'firth-penalised'))
    const height = slowPenalised(rows, top)
    for (const [j] of top.entries())
      for (const step of [-0.02, 0.02]) {
        const scale = j === 1 ? 0.1 : 1
        const moved = top.map((b, k) => (k === j ? b + step * scale : b))
        expect(slowPenalised(rows, moved)).toBeLessThan(height)
      }
    // Central difference of the penalised likelihood: 0 at the top, within the error of the differences.
    for (const [j] of top.entries()) {
      const side = (s: number) =>
        slowPenalised(
          rows,
          top.map((b, k) => (k === j ? b + s * 1e-3 : b)),
        )
      expect(Math.abs(side(1) - side(-1)) / 2e-3).toBeLessThan(j === 1 ? 2e-2 : 2e-3)
    }
  })

  it('profile limits lie where the penalised likelihood has fallen by half of 3.84', () => {
    const one = SEPARATED.map((r) => ({ ...r, x: [r.x[0] ?? 0] }))
    const fit = fitOf(one)
    const [term] = fit.terms
    const height = slowPenalised(one, coefs(fit))
    for (const limit of [term?.lower, term?.upper])
      expect(height - slowPenalised(one, [Math.log(limit ?? Number.NaN)])).toBeCloseTo(
        3.841458820694124 / 2,
        4,
      )
  })
})

describe('left truncation', () => {
  it('sits at the top of the likelihood worked out slowly', () => {
    const rows = PLAIN.map((r, i) => (r.day > 10 && i % 2 ? { ...r, entry: 5 } : r))
    const fit = fitOf(rows)
    expect(fit.logLikelihood).toBeCloseTo(slowLogLikelihood(rows, coefs(fit)), 10)
    for (const [j] of fit.terms.entries())
      for (const step of [-1e-3, 1e-3]) {
        const moved = coefs(fit).map((b, k) => (k === j ? b + step : b))
        expect(slowLogLikelihood(rows, moved)).toBeLessThan(fit.logLikelihood)
      }
  })

  it('leaves out a colony that was never at risk', () => {
    const base = fitOf(PLAIN)
    const more = fitOf([...PLAIN, row(7, 1, [1, 40], 9), row(7, 1, [0, 40], 7)])
    expect(coefs(more)).toEqual(coefs(base).map((c) => expect.closeTo(c, 10)))
    expect(more.colonies).toBe(base.colonies)
  })
})

describe('columns', () => {
  it('a constant column and a repeated one get no coefficient; the others are as without them', () => {
    const base = fitOf(PLAIN)
    const more = fitOf(PLAIN.map((r) => ({ ...r, x: [...r.x, 7, 1 - (r.x[0] ?? 0)] })))
    expect(more.terms.map((t) => t.coef === null)).toEqual([false, false, true, true])
    expect(coefs(more).slice(0, 2)).toEqual(coefs(base).map((c) => expect.closeTo(c, 10)))
  })

  it('no losses, or nothing that varies: no model', () => {
    expect(cox({ day: [1, 2], lost: [0, 0] }, [{ name: 'x', values: [0, 1] }])).toBeNull()
    expect(cox({ day: [1, 2], lost: [1, 1] }, [{ name: 'x', values: [1, 1] }])).toBeNull()
  })
})

const anyRows = fc.array(
  fc.record({
    entry: fc.constant(0),
    day: fc.integer({ min: 0, max: 12 }),
    lost: fc.constantFrom<0 | 1>(0, 1),
    x: fc.tuple(fc.integer({ min: 0, max: 1 }), fc.integer({ min: 15, max: 40 })).map((t) => [...t]),
  }),
  { minLength: 12, maxLength: 40 },
)
const tryFit = (rows: Row[]) => {
  try {
    return fitOf(rows)
  } catch {
    return null
  }
}

describe('properties', () => {
  it('the order of the rows changes nothing', () => {
    fc.assert(
      fc.property(anyRows, (rows) => {
        const [a, b] = [tryFit(rows), tryFit(rows.toReversed())]
        expect(b?.method).toBe(a?.method)
        for (const [j, t] of (a?.terms ?? []).entries())
          if (t.coef !== null) expect(b?.terms[j]?.coef ?? Number.NaN).toBeCloseTo(t.coef, 6)
      }),
      { numRuns: 60 },
    )
  })

  it('another unit scales the coefficient and nothing else', () => {
    fc.assert(
      fc.property(anyRows, (rows) => {
        const a = tryFit(rows)
        const b = tryFit(rows.map((r) => ({ ...r, x: [r.x[0] ?? 0, (r.x[1] ?? 0) * 1.8 + 32] })))
        expect(b?.method).toBe(a?.method)
        const [x, y] = [a?.terms[1]?.coef, b?.terms[1]?.coef]
        if (a !== null && typeof x === 'number') expect((y ?? Number.NaN) * 1.8).toBeCloseTo(x, 6)
      }),
      { numRuns: 60 },
    )
  })
})
