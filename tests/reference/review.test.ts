/**
 * The whole way of `resettle review`: R's data written as a colonies CSV, read, and reviewed, against R's own tables
 * (survival.json, competing.json).
 */
import { describe, expect, it } from 'vitest'
import { addDays } from '../../src/days.ts'
import { readColonies } from '../../src/features/import/colonies-csv.ts'
import { factsOfRow } from '../../src/features/review/facts.ts'
import { reviewOf } from '../../src/features/review/review.ts'
import { expectNear, type Numbers, reference } from './read.ts'

const AS_OF = '2026-10-01'
const NEAR = 1e-9

/** One line a subject; those not lost moved out, or are still in the yard, turn about. */
function csv(time: number[], what: (string | null)[], group: string[]): string {
  const lines = time.map((t, i) => {
    const kind = what[i] ?? (i % 2 === 0 ? 'moved-out' : null)
    const intake = kind === null ? addDays(AS_OF, -t) : addDays('2010-03-01', i)
    return `S${i},${group[i]},${intake},unseen,${kind ?? ''},${kind === null ? '' : addDays(intake, t)}`
  })
  return ['tag,removal_type,intake_on,queen_at_intake,outcome,outcome_on', ...lines].join('\r\n')
}
function reviewed(text: string) {
  const { rows, problems } = readColonies(text, AS_OF)
  expect(problems).toEqual([])
  return reviewOf(rows.map(factsOfRow), AS_OF)
}

interface Km {
  group: string
  time: number[]
  n_risk: number[]
  n_event: number[]
  n_censor: number[]
  surv: Numbers
  ci_loglog: { lower: Numbers; upper: Numbers }
  median: number | null
  quantiles: { ci_loglog: { lower: Numbers; upper: Numbers } }
}
const survival =
  reference<
    Record<
      'gehan' | 'aml' | 'veteran',
      {
        data: { time: number[]; status: number[]; group: string[] }
        km: Km[]
        survdiff: { logrank: { chisq: number; df: number; p: number } }
      }
    >
  >('survival')

describe.each(['gehan', 'aml', 'veteran'] as const)('%s as colonies', (name) => {
  const { data, km, survdiff } = survival[name]
  const review = reviewed(
    csv(
      data.time,
      data.status.map((s, i) => (s === 1 ? (i % 3 === 0 ? 'absconded' : 'died') : null)),
      data.group,
    ),
  )
  it.each(km)('type $group', (want) => {
    const got = review.byType[want.group]
    const column = (k: 'day' | 'atRisk' | 'lost' | 'left' | 'survival' | 'lower' | 'upper') =>
      got?.steps.map((s) => s[k]) ?? []
    expect(column('day')).toEqual(want.time)
    expect(column('atRisk')).toEqual(want.n_risk)
    expect(column('lost')).toEqual(want.n_event)
    expect(column('left')).toEqual(want.n_censor)
    expectNear(column('survival'), want.surv, NEAR, 'survival')
    expectNear(column('lower'), want.ci_loglog.lower, NEAR, 'lower')
    expectNear(column('upper'), want.ci_loglog.upper, NEAR, 'upper')
    const { lower, upper } = want.quantiles.ci_loglog
    expectNear(
      [got?.median.day, got?.median.lower, got?.median.upper],
      [want.median, lower[1] ?? null, upper[1] ?? null],
      NEAR,
      'median',
    )
  })
  it('log-rank', () => {
    const { chisq, df, p } = survdiff.logrank
    expectNear(
      [review.logRank?.chisq, review.logRank?.df, review.logRank?.p],
      [chisq, df, p],
      NEAR,
      'log-rank',
    )
  })
})

const competing =
  reference<
    Record<
      'mgus2' | 'toy',
      {
        data: { time: number[]; cause: number[]; group: string[] }
        groups: { group: string; steps: { time: number[] }; causes: { steps: { cif: Numbers } }[] }[]
      }
    >
  >('competing')

describe.each(['mgus2', 'toy'] as const)('%s as ways of leaving', (name) => {
  const { data, groups } = competing[name]
  // Cause 2 as united, so that a competing way which is no loss is put to the test.
  const review = reviewed(
    csv(
      data.time,
      data.cause.map((c) => (c === 1 ? 'died' : c === 2 ? 'united' : null)),
      data.group,
    ),
  )
  it.each(groups)('type $group', ({ group, steps, causes }) => {
    const got = review.byType[group]?.waysOfLeaving ?? []
    expect(got.map((w) => w.day)).toEqual(steps.time)
    expectNear(
      got.map((w) => w.died),
      causes[0]?.steps.cif ?? [],
      NEAR,
      'died',
    )
    expectNear(
      got.map((w) => w.united),
      causes[1]?.steps.cif ?? [],
      NEAR,
      'united',
    )
    expect(got.every((w) => w.absconded === 0)).toBe(true)
  })
})
