/**
 * Kaplan-Meier, quantiles, restricted mean and log-rank against R 4.2.2, package survival 3.5-3 (survival.json: data
 * sets gehan, aml, veteran; citations inside). Tolerance 1e-9 relative.
 */
import { describe, expect, it } from 'vitest'
import { countByDay } from '../../src/statistics/day-counts.ts'
import { kaplanMeier, type LimitKind, stdErr } from '../../src/statistics/kaplan-meier.ts'
import { logRank } from '../../src/statistics/log-rank.ts'
import { quantileDay } from '../../src/statistics/quantile.ts'
import { restrictedMean } from '../../src/statistics/restricted-mean.ts'
import { expectNear, type Numbers, reference } from './read.ts'

interface Limits {
  lower: Numbers
  upper: Numbers
}
interface KmTable {
  group: string
  n: number
  events: number
  time: number[]
  n_risk: number[]
  n_event: number[]
  n_censor: number[]
  surv: number[]
  std_err: Numbers
  std_err_log: Numbers
  ci_loglog: Limits
  ci_log: Limits
  ci_plain: Limits
  median: number | null
  quantiles: Record<string, Limits & { prob: number[]; quantile: Numbers }>
}
interface Test {
  rho: number
  observed: number[]
  expected: number[]
  variance: number[][]
  chisq: number
  df: number
  p: number
}
interface Entry {
  data: { time: number[]; status: number[]; group: string[] }
  group_order: string[]
  km: KmTable[]
  rmst: { tau: number; curves: { group: string; rmst: number; std_err: number }[] }[]
  survdiff?: { logrank: Test; peto_peto_rho1: Test }
}

const file = reference<
  Record<'gehan' | 'aml' | 'veteran' | 'aml_one_sample', Entry> & {
    gehan_conf_levels: Record<'conf_80' | 'conf_90' | 'conf_99', KmTable[]>
  }
>('survival')
const NEAR = 1e-9
const KINDS: [LimitKind, 'ci_loglog' | 'ci_log' | 'ci_plain'][] = [
  ['log-log', 'ci_loglog'],
  ['log', 'ci_log'],
  ['plain', 'ci_plain'],
]

const countsOf = (entry: Entry) =>
  countByDay({ day: entry.data.time, way: entry.data.status }, 1, {
    of: entry.data.group.map((g) => entry.group_order.indexOf(g)),
    count: entry.group_order.length,
  })

function compareCurves(entry: Entry, tables: KmTable[], confidence: number): void {
  const counts = countsOf(entry)
  for (const [g, table] of tables.entries())
    for (const [kind, name] of KINDS) {
      const group = counts[g]
      if (group === undefined) throw new Error('no such group')
      const curve = kaplanMeier(group, confidence, kind)
      const column = <K extends keyof (typeof curve.steps)[number]>(k: K) => curve.steps.map((s) => s[k])
      const what = `${table.group} ${name}`
      expect([curve.colonies, curve.lost]).toEqual([table.n, table.events])
      expect(column('day')).toEqual(table.time)
      expect(column('atRisk')).toEqual(table.n_risk)
      expect(column('lost')).toEqual(table.n_event)
      expect(column('left')).toEqual(table.n_censor)
      expectNear(column('survival'), table.surv, NEAR, `${what} survival`)
      expectNear(column('logStdErr'), table.std_err_log, NEAR, `${what} se of log S`)
      expectNear(curve.steps.map(stdErr), table.std_err, NEAR, `${what} se of S`)
      expectNear(column('lower'), table[name].lower, NEAR, `${what} lower`)
      expectNear(column('upper'), table[name].upper, NEAR, `${what} upper`)
      const q = table.quantiles[name]
      if (q === undefined) throw new Error('no quantiles')
      const days = q.prob.map((p) => quantileDay(curve, p))
      expectNear(
        days.map((d) => d.day),
        q.quantile,
        NEAR,
        `${what} quantile`,
      )
      expectNear(
        days.map((d) => d.lower),
        q.lower,
        NEAR,
        `${what} quantile lower`,
      )
      expectNear(
        days.map((d) => d.upper),
        q.upper,
        NEAR,
        `${what} quantile upper`,
      )
    }
}

describe.each(['gehan', 'aml', 'veteran', 'aml_one_sample'] as const)('%s', (name) => {
  const entry = file[name]
  it('has the curves, limits and quantiles of R', () => compareCurves(entry, entry.km, 0.95))

  it('has the restricted means of R', () => {
    const curves = countsOf(entry).map((c) => kaplanMeier(c))
    for (const { tau, curves: want } of entry.rmst) {
      const got = curves.map((c) => restrictedMean(c, tau))
      expectNear(
        got.map((r) => r.mean),
        want.map((w) => w.rmst),
        NEAR,
        `mean to ${tau}`,
      )
      expectNear(
        got.map((r) => r.stdErr),
        want.map((w) => w.std_err),
        NEAR,
        `its error to ${tau}`,
      )
    }
  })
})

describe.each(['gehan', 'aml', 'veteran'] as const)('%s: groups compared', (name) => {
  const entry = file[name]
  it.each(['logrank', 'peto_peto_rho1'] as const)('%s as R', (which) => {
    const want = entry.survdiff?.[which]
    if (want === undefined) throw new Error('no test in the file')
    const got = logRank(countsOf(entry), want.rho)
    expectNear(got?.observed ?? [], want.observed, NEAR, 'observed')
    expectNear(got?.expected ?? [], want.expected, NEAR, 'expected')
    expectNear(
      (got?.variance ?? []).flatMap((r) => [...r]),
      want.variance.flat(),
      NEAR,
      'variance',
    )
    expectNear([got?.chisq, got?.df, got?.p], [want.chisq, want.df, want.p], NEAR, 'chisq, df, p')
  })
})

describe('gehan at other confidence levels', () => {
  it.each([
    ['conf_80', 0.8],
    ['conf_90', 0.9],
    ['conf_99', 0.99],
  ] as const)('%s', (name, level) => compareCurves(file.gehan, file.gehan_conf_levels[name], level))
})
