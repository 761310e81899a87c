/**
 * A colony that is told to be left alone has no chore that is late: comb ties and the mite wash wait for the look that was decided,
 * or the box is opened for them (common practice: the lid comes off once for both).
 */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addDays, type Day } from '../../src/days.ts'
import { planOf } from '../../src/decision/index.ts'
import type { Entry } from '../../src/journal/entry.ts'
import { type History, historyOf } from '../../src/journal/history.ts'
import type { Plan } from '../../src/recovery/index.ts'
import { colony, START } from '../recovery/arbitrary.ts'
import { often } from '../support/long.ts'

const RUNS = often(4000, 150)

const knownOn = (entries: readonly Entry[], today: Day): History | null => {
  const history = historyOf(
    'X-1',
    entries.filter((e) => e.on <= today),
  )
  return history === null || history.intake.on > today ? null : history
}

const chore = (plan: Plan, rule: string) => plan.checks.find((c) => c.rule === rule)
const late = (plan: Plan): string[] =>
  plan.checks
    .filter((c) => (c.rule === 'comb-ties' || c.rule === 'mite-wash') && c.status === 'overdue')
    .map((c) => c.rule)

it('whatever is recorded, no chore is late in a box that is to be left alone', () => {
  fc.assert(
    fc.property(colony(), fc.integer({ min: 5, max: 80 }), (entries, t) => {
      const today = addDays(START, t)
      const history = knownOn(entries, today)
      if (history === null) return
      const plan = planOf(history, today)
      // In quiet time the lid stays on for a virgin, and a chore waits for its end.
      const quiet = plan.quiet !== null && plan.quiet.from <= today && today <= plan.quiet.to
      if (plan.advice.action === 'leave-alone' && !quiet) expect(late(plan), plan.advice.why).toEqual([])
    }),
    { numRuns: RUNS, seed: 5 },
  )
}, 3_600_000)

let n = 0
const entry = (kind: string, t: number, more: object): Entry =>
  ({
    id: `019707a0-0000-7000-8000-${(++n).toString(16).padStart(12, '0')}`,
    colony: 'X-1',
    kind,
    on: addDays(START, t),
    by: 'Juno',
    ...more,
  }) as Entry

const intake = (frames: number) =>
  entry('intake', 0, {
    removal: { type: 'wall' },
    yard: 'North field',
    queen: 'unseen',
    brood: { eggs: 0.5, open: 1, capped: 1 },
    bees: { frames },
    onFrames: true,
  })
const eggs = (t: number, framesOfBees: number) =>
  entry('inspection', t, { opened: true, eggs: 'single', open: 'young', queen: 'seen', framesOfBees })

describe('a queen that lays', () => {
  it('in a strong colony is left in peace, and the wash is done at the look that lets it go', () => {
    const entries = [intake(7), eggs(12, 6)]
    for (let t = 13; t < 60; t++) {
      const history = knownOn(entries, addDays(START, t))
      if (history === null) throw new Error('no history')
      const plan = planOf(history, addDays(START, t))
      expect(late(plan), `day ${t}`).toEqual([])
      if (plan.advice.action !== 'open-and-look') continue
      const wash = chore(plan, 'mite-wash')
      expect(wash?.status).toBe('due')
      expect(t).toBeLessThanOrEqual(37)
      return
    }
    throw new Error('never asked')
  })

  it('in one that has to grow for weeks is washed in its days, and looked at later', () => {
    const entries = [intake(3), eggs(22, 1.8), entry('given', 22, { what: 'capped-brood', frames: 1 })]
    const asked = Array.from({ length: 40 }, (_, d) => d + 23).flatMap((t) => {
      const history = knownOn(entries, addDays(START, t))
      const plan = history === null ? null : planOf(history, addDays(START, t))
      return plan?.advice.action === 'open-and-look' ? [{ t, rule: plan.advice.rule }] : []
    })
    expect(asked[0]).toMatchObject({ rule: 'mite-wash' })
    expect(asked[0]?.t).toBeLessThanOrEqual(30)
  })
})
