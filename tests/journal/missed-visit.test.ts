/** A box that was not reached: said in the journal, but no visit and no evidence. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addDays } from '../../src/days.ts'
import { type Entry, entry, MISSED_REASONS } from '../../src/journal/entry.ts'
import { contradictions, historyOf } from '../../src/journal/history.ts'
import { planOf } from '../../src/recovery/plan.ts'
import { build, colony, START } from '../recovery/arbitrary.ts'

const END = addDays(START, 90)

const missed = (n: number, day: number, more: object = {}): Entry =>
  build(n, day, { kind: 'missed-visit', reason: 'rain', ...more })

const planned = (entries: readonly Entry[], day = END) => {
  const history = historyOf('X-1', entries)
  if (history === null) throw new Error('no intake')
  return planOf(history, day)
}

describe('a box that was not reached', () => {
  it('changes no plan, whatever stands in the journal: it is no visit and proves nothing', () => {
    fc.assert(
      fc.property(
        colony(),
        fc.integer({ min: 0, max: 70 }),
        fc.constantFrom(...MISSED_REASONS),
        fc.integer({ min: 0, max: 90 }),
        (entries, day, reason, asOf) => {
          const on = addDays(START, asOf)
          const known = entries.filter((e) => e.on <= on || e.kind === 'intake')
          if (day > asOf) return
          expect(planned([...known, missed(900, day, { reason })], on)).toEqual(planned(known, on))
        },
      ),
      { numRuns: 300 },
    )
  })

  it('does not stop the windows of the box: the first brood check of day 5 to 7 is late on day 8', () => {
    const intake = build(1, 0, {
      kind: 'intake',
      removal: { type: 'wall' },
      yard: 'North',
      queen: 'unseen',
    })
    const entries = [intake, missed(2, 5), missed(3, 6), missed(4, 7)]
    const check = planned(entries, addDays(START, 8)).checks.find((c) => c.rule === 'telling-visit')
    expect(check).toMatchObject({ status: 'overdue', closes: addDays(START, 7) })
  })

  it('is refused when it is to be tried again on a day that is not later', () => {
    const intake = build(1, 0, { kind: 'intake', removal: { type: 'wall' }, yard: 'North', queen: 'unseen' })
    const same = missed(2, 5, { again: addDays(START, 5) })
    expect(contradictions([intake, same], END)).toEqual([
      {
        entry: 2,
        field: 'again',
        message: '2026-05-06 is not after 2026-05-06: say a later day, or leave it out',
      },
    ])
    expect(contradictions([intake, missed(2, 5, { again: addDays(START, 6) })], END)).toEqual([])
  })

  it('is refused of a colony that has left, as a visit is', () => {
    const intake = build(1, 0, { kind: 'intake', removal: { type: 'wall' }, yard: 'North', queen: 'unseen' })
    const gone = build(2, 3, { kind: 'outcome', what: 'absconded' })
    expect(contradictions([intake, gone, missed(3, 5)], END).map((p) => p.field)).toEqual(['on'])
  })

  it('needs one of the reasons', () => {
    const raw = { ...missed(2, 5), reason: 'tired' }
    expect(entry.safeParse(raw).success).toBe(false)
  })
})
