/** Guard rails hold whatever was entered: advice never asks for what they forbid. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { addDays, type Day } from '../../src/days.ts'
import type { Entry } from '../../src/journal/entry.ts'
import { type History, historyOf } from '../../src/journal/history.ts'
import { fold } from '../../src/recovery/fold/fold.ts'
import { mayBuy, mayGive, mayOpen, mayUnite } from '../../src/recovery/guards.ts'
import { planOf } from '../../src/recovery/plan.ts'
import { protocolWith } from '../../src/recovery/protocol.ts'
import { reasonWords } from '../../src/recovery/reasons.ts'
import { build, colony, START } from './arbitrary.ts'

const protocols = [
  protocolWith(),
  protocolWith({ matingMonths: ['3', '4', '5'] }),
  protocolWith({ matingMonths: ['10'] }),
]

function historyFrom(entries: readonly Entry[]): History {
  const history = historyOf('X-1', entries)
  if (history === null) throw new Error('no intake')
  return history
}

const GUARD = {
  unite: mayUnite,
  'buy-queen': mayBuy,
  'give-egg-frame': mayGive,
  wash: mayOpen,
  boost: mayOpen,
}

describe('whatever is entered', () => {
  test('advice asks for nothing that a guard rail forbids', () => {
    const seen = new Set<string>()
    fc.assert(
      fc.property(
        colony(undefined, 10, 60),
        fc.integer({ min: 0, max: 110 }),
        fc.constantFrom(...protocols),
        (entries, day, protocol) => {
          const today = addDays(START, day)
          const history = historyFrom(entries.filter((e) => e.on <= today))
          const { advice, asOf } = planOf(history, today, protocol)
          seen.add(advice.action)
          const guard = GUARD[advice.action as keyof typeof GUARD]
          const s = fold(history, protocol)
          const reason = guard === undefined ? null : guard(s, asOf)
          expect(reason, `${advice.action} ${JSON.stringify(entries)}`).toBeNull()
        },
      ),
      { numRuns: 2000 },
    )
    for (const action of ['unite', 'buy-queen', 'give-egg-frame', 'boost'])
      expect([...seen]).toContain(action)
  })
})

/** Each guard rail with a history that meets it, and one that does not. */
const at = (day: number, fields: object): Entry =>
  build(day + 1, day, { kind: 'inspection', opened: true, ...fields })
const on = (day: number): Day => addDays(START, day)
const intake = (fields: object = {}): Entry =>
  build(0, 0, { kind: 'intake', removal: { type: 'wall' }, yard: 'North', queen: 'unseen', ...fields })
const state = (...entries: Entry[]) =>
  fold(historyFrom(entries), protocolWith({ matingMonths: ['4', '5', '6', '7', '8'] }))

describe('guard rails', () => {
  test('a nucleus with a laying queen is not united; a handful of bees may be', () => {
    const with3 = state(intake(), at(5, { eggs: 'single', framesOfBees: 2 }))
    expect(mayUnite(with3, on(5))).toEqual({ code: 'layer-with-bees', frames: 2 })
    expect(mayUnite(state(intake(), at(5, { eggs: 'single', framesOfBees: 1 })), on(5))).toBeNull()
  })
  test('suspected disease forbids all four', () => {
    const sick = state(intake(), at(5, { eggs: 'none', signs: ['brood-disease-suspected'] }))
    for (const may of [mayUnite, mayBuy, mayGive, mayOpen]) expect(may(sick, on(6))?.code).toBe('held')
  })
  test('no queen is bought while one is being raised, caged, or laying', () => {
    expect(mayBuy(state(intake(), at(5, { eggs: 'none', cells: 'capped' })), on(10))?.code).toBe('raising')
    expect(mayBuy(state(intake({ queen: 'caged' })), on(3))?.code).toBe('caged-queen')
    expect(mayBuy(state(intake(), at(5, { eggs: 'single' })), on(6))?.code).toBe('layer')
    expect(mayBuy(state(intake(), at(5, { eggs: 'none', cells: 'none' })), on(6))).toBeNull()
  })
  test('no frame of eggs from which a queen could not mate', () => {
    const s = state(intake(), at(5, { eggs: 'none', cells: 'none' }))
    expect(mayGive(s, on(6))).toBeNull()
    expect(mayGive(s, '2026-09-01')?.code).toBe('no-mating')
  })
  test('the lid stays on in quiet time, with robbers about, and in the cold', () => {
    expect(mayOpen(state(intake(), at(5, { eggs: 'none', cells: 'capped' })), on(12))?.code).toBe('quiet')
    expect(mayOpen(state(intake(), at(5, { eggs: 'single', signs: ['robbing'] })), on(6))?.code).toBe(
      'robbing',
    )
    expect(mayOpen(state(intake()), '2026-12-24')?.code).toBe('cold-season')
    // D. Caron: a full look from 70 °F (21 °C), a short one from 60 °F (15.6 °C).
    expect(mayOpen(state(intake()), on(5), { outdoorC: 18, look: 'full' })).toMatchObject({ leastC: 21 })
    expect(mayOpen(state(intake()), on(5), { outdoorC: 18, look: 'short' })).toBeNull()
    expect(mayOpen(state(intake()), '2026-12-24', { outdoorC: 18 })).toBeNull()
  })
  test('every reason has a sentence', () => {
    const s = state(intake(), at(5, { eggs: 'none', cells: 'capped' }))
    const reason = mayBuy(s, on(10))
    expect(reason === null ? '' : reasonWords(reason)).toContain('would kill her')
  })
})
