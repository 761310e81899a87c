/**
 * Aalen-Johansen cumulative incidence against R 4.2.2, survival 3.5-3 (competing.json: mgus2, Kyle et al. 2002; toy).
 * Tolerance 1e-9 relative.
 */
import { describe, expect, it } from 'vitest'
import { countByDay } from '../../src/statistics/day-counts.ts'
import { cumulativeIncidence, incidenceLimits, stepAt } from '../../src/statistics/incidence.ts'
import { expectNear, type Numbers, reference } from './read.ts'

interface Cause {
  cause: string
  at: {
    time: number[]
    cif: Numbers
    std_err: Numbers
    std_err_delta: Numbers
    lower_log: Numbers
    upper_log: Numbers
  }
  steps: { n_event: number[]; cif: Numbers; std_err: Numbers }
}
interface Group {
  group: string
  n: number
  steps: { time: number[]; n_risk: number[]; n_censor: number[] }
  event_free: { prob: Numbers; at: { time: number[]; prob: Numbers; std_err: Numbers } }
  causes: Cause[]
}
interface Entry {
  data: { time: number[]; cause: number[]; group: string[] }
  group_order: string[]
  groups: Group[]
}
const file = reference<Record<'mgus2' | 'toy', Entry>>('competing')
const NEAR = 1e-9

describe.each(['mgus2', 'toy'] as const)('%s', (name) => {
  const entry = file[name]
  const counts = countByDay({ day: entry.data.time, way: entry.data.cause }, 2, {
    of: entry.data.group.map((g) => entry.group_order.indexOf(g)),
    count: entry.group_order.length,
  })
  it.each(entry.groups.map((g, i) => [g.group, g, i] as const))('group %s as R', (_name, group, i) => {
    const c = counts[i]
    if (c === undefined) throw new Error('no such group')
    const got = cumulativeIncidence(c)
    expect(got.colonies).toBe(group.n)
    expect(got.days).toEqual(group.steps.time)
    expect(got.atRisk).toEqual(group.steps.n_risk)
    expect(got.left).toEqual(group.steps.n_censor)
    expectNear(got.free, group.event_free.prob, NEAR, 'free')
    const { at } = group.event_free
    const on = at.time.map((t) => stepAt(got.days, t))
    expectNear(
      on.map((s) => (s < 0 ? 1 : got.free[s])),
      at.prob,
      NEAR,
      'free at',
    )
    expectNear(
      on.map((s) => (s < 0 ? 0 : got.freeStdErr[s])),
      at.std_err,
      NEAR,
      'its error',
    )
    for (const [w, want] of group.causes.entries()) {
      const way = got.ways[w]
      expect(way?.lost).toEqual(want.steps.n_event)
      expectNear(way?.share ?? [], want.steps.cif, NEAR, `${want.cause} share`)
      expectNear(way?.stdErr ?? [], want.steps.std_err, NEAR, `${want.cause} error`)
      const steps = want.at.time.map((t) => stepAt(got.days, t))
      const share = steps.map((s) => (s < 0 ? 0 : (way?.share[s] ?? Number.NaN)))
      const error = steps.map((s) => (s < 0 ? 0 : (way?.stdErr[s] ?? Number.NaN)))
      expectNear(share, want.at.cif, NEAR, `${want.cause} share at`)
      expectNear(error, want.at.std_err_delta, NEAR, `${want.cause} delta error at`)
      const limits = share.map((f, k) => incidenceLimits(f, error[k] ?? Number.NaN))
      expectNear(
        limits.map((l) => l?.[0] ?? null),
        want.at.lower_log,
        NEAR,
        `${want.cause} lower`,
      )
      expectNear(
        limits.map((l) => l?.[1] ?? null),
        want.at.upper_log,
        NEAR,
        `${want.cause} upper`,
      )
    }
  })
})
