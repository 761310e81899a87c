/** Queens and frames of eggs to have on hand, orders and donors. */
import { describe, expect, it } from 'vitest'
import { addDays } from '../../src/days.ts'
import { DEFAULT_DONOR_RULES, donorsOf } from '../../src/forecast/donors.ts'
import { storyOf } from '../../src/forecast/queen-odds.ts'
import { DEFAULT_RATES } from '../../src/forecast/rates.ts'
import { modelOf } from '../../src/forecast/story/walk.ts'
import {
  type ColonyNeed,
  DEFAULT_ORDER,
  needOf,
  orderAdvice,
  supplyForecast,
} from '../../src/forecast/supplies.ts'
import { yardSupplies } from '../../src/forecast/yard-supplies.ts'
import type { Entry, Inspection, Intake } from '../../src/journal/entry.ts'
import { type History, historyOf } from '../../src/journal/history.ts'
import { seeded } from './random.ts'

const model = modelOf(DEFAULT_RATES)
const ON = '2026-05-01'
let seq = 0
const base = (t: number, colony = 'A-1') => ({
  id: `00000000-0000-7000-8000-${String(++seq).padStart(12, '0')}`,
  colony,
  by: 'x',
  on: addDays(ON, t),
})
const intake = (over: Partial<Intake> = {}, colony = 'A-1'): Entry => ({
  ...base(0, colony),
  kind: 'intake',
  removal: { type: 'wall' },
  yard: 'N',
  queen: 'unseen',
  brood: { eggs: 1, open: 1, capped: 1 },
  ...over,
})
const look = (t: number, seen: Partial<Inspection>, colony = 'A-1'): Entry => ({
  ...base(t, colony),
  kind: 'inspection',
  opened: true,
  ...seen,
})
function history(entries: Entry[]): History {
  const h = historyOf(entries[0]?.colony ?? '', entries)
  if (h === null) throw new Error('no history')
  return h
}
const need = (entries: Entry[], t: number, straightToQueen = false): ColonyNeed =>
  needOf(storyOf(history(entries), addDays(ON, t), model), { ahead: 21, straightToQueen })

const NEITHER = look(6, { eggs: 'none', open: 'none', cells: 'none', queen: 'unseen' })
const EGGS: Entry = { ...base(7), kind: 'given', what: 'egg-frame', frames: 1 }
const NO_CELLS = look(14, { eggs: 'none', open: 'none', cells: 'none', queen: 'unseen' })

describe('what a colony may need', () => {
  it('climbs the ladder: a frame of eggs first, a queen after it has failed', () => {
    const first = need([intake(), NEITHER], 6)
    expect(first.eggFrames[0]).toBeGreaterThan(0.6)
    expect(first.queens[0]).toBe(0)
    const then = need([intake(), NEITHER, EGGS, NO_CELLS], 14)
    // One look in ten is made in haste, unless it is said that they were thorough.
    expect(then.queens[0]).toBeGreaterThan(0.2)
    const surely = [NEITHER, NO_CELLS].map((e) => ({ ...e, searched: 'thoroughly' }) as Entry)
    expect(need([intake(), EGGS, ...surely], 14).queens[0]).toBeGreaterThan(0.4)
    expect(then.eggFrames[0]).toBe(0)
    expect(need([intake(), NEITHER], 6, true).queens[0]).toBe(first.eggFrames[0])
  })

  it('never falls with time, and is nothing for a laying queen or a colony that left', () => {
    for (const n of [need([intake()], 0), need([intake(), NEITHER, EGGS], 8)])
      for (const list of [n.queens, n.eggFrames])
        list.slice(1).forEach((p, i) => {
          expect(p).toBeGreaterThanOrEqual(list[i] ?? 0)
        })
    const laying = need([intake(), look(9, { eggs: 'single', queen: 'seen' })], 9)
    expect(laying.eggFrames[21]).toBeLessThan(0.05)
    const gone = need([intake(), { ...base(8), kind: 'outcome', what: 'moved-out' }], 9)
    expect(Math.max(...gone.queens, ...gone.eggFrames)).toBe(0)
  })
})

describe('the whole yard', () => {
  const needs = Array.from({ length: 12 }, (_, i): ColonyNeed => {
    const p = 0.05 + 0.06 * i
    return {
      tag: `C-${i}`,
      queens: new Array<number>(22).fill(p),
      eggFrames: new Array<number>(22).fill(p / 2),
    }
  })
  const forecast = supplyForecast(needs, ON, 21)

  it('agrees with drawing each colony by its own chance', () => {
    const random = seeded(3)
    const counts = new Array<number>(13).fill(0)
    const RUNS = 60_000
    for (let r = 0; r < RUNS; r++) {
      const k = needs.filter((n) => random() < (n.queens[10] ?? 0)).length
      counts[k] = (counts[k] ?? 0) + 1
    }
    forecast.queens[10]?.chances.forEach((p, k) => {
      expect(Math.abs(p - (counts[k] ?? 0) / RUNS)).toBeLessThan(4.5 * Math.sqrt((p + 1e-4) / RUNS))
    })
  })

  it('orders the least that keeps the accepted chance of running short, less what is in hand', () => {
    const a = orderAdvice(forecast.queens)
    expect(a.until).toBe(addDays(ON, 12))
    expect(a.rows[a.order]?.chanceShort).toBeLessThanOrEqual(DEFAULT_ORDER.chanceShort)
    expect(a.rows[a.order - 1]?.chanceShort).toBeGreaterThan(DEFAULT_ORDER.chanceShort)
    expect(orderAdvice(forecast.queens, { ...DEFAULT_ORDER, inHand: 2 }).order).toBe(a.order - 2)
    expect(a.sentence).toMatch(/^Order \d+ queens: the chance of running short is then \d+ %\.$/)
  })

  it('the cheapest order is the newsvendor quantile: short share = cost of one over / (over + short)', () => {
    // Arrow, Harris & Marschak 1951, Econometrica 19:250-272: order until P(short) falls under c_over / (c_over + c_short).
    for (const [costOver, costShort] of [
      [35, 150],
      [35, 35],
      [100, 10],
    ] as const) {
      const a = orderAdvice(forecast.queens, { ...DEFAULT_ORDER, costOver, costShort })
      const ratio = costOver / (costOver + costShort)
      expect(a.rows[a.cheapest]?.chanceShort).toBeLessThanOrEqual(ratio)
      if (a.cheapest > 0) expect(a.rows[a.cheapest - 1]?.chanceShort).toBeGreaterThan(ratio)
    }
  })

  it('a yard without need orders nothing', () => {
    const a = orderAdvice(supplyForecast([], ON, 21).queens)
    expect(a.order).toBe(0)
    expect(a.sentence).toMatch(/^No need to order/)
  })
})

describe('a yard in one pass', () => {
  it('says the same as colony by colony', () => {
    const a = history([intake(), NEITHER])
    const b = history([
      intake({ queen: 'caged' }, 'B-1'),
      look(9, { eggs: 'single', framesOfBees: 9, signs: [] }, 'B-1'),
    ])
    const left = history([intake({}, 'C-1'), { ...base(8, 'C-1'), kind: 'outcome', what: 'died' }])
    const today = addDays(ON, 9)
    const yard = yardSupplies([a, b, left], today, model, { ahead: 14 })
    const each = [a, b].map((h) => needOf(storyOf(h, today, model, addDays(today, 14)), { ahead: 14 }))
    expect(yard.needs).toEqual(each)
    expect(yard.forecast).toEqual(supplyForecast(each, today, 14))
    expect([...yard.odds.keys()]).toEqual(['A-1', 'B-1'])
    expect(yard.donors.map((d) => [d.tag, d.spare])).toEqual([
      ['B-1', 1],
      ['A-1', 0],
    ])
    const bought = yardSupplies([a], today, model, { ahead: 14, straightToQueen: new Set(['A-1']) })
    expect(bought.needs[0]?.queens).toEqual(each[0]?.eggFrames)
  })
})

describe('donors', () => {
  const strong = (tag: string, frames: number): Entry[] => [
    intake({ queen: 'caged' }, tag),
    look(20, { eggs: 'single', framesOfBees: frames, signs: [] }, tag),
  ]
  const today = addDays(ON, 25)
  const taker = history([
    intake({}, 'T-1'),
    { ...base(22, 'T-1'), kind: 'given', what: 'egg-frame', donor: 'D-1', frames: 1 },
    { ...base(10, 'T-1'), kind: 'given', what: 'egg-frame', donor: 'D-2', frames: 1 },
  ])
  const sick = history([
    ...strong('D-4', 12),
    look(21, { signs: ['brood-disease-suspected'], framesOfBees: 12 }, 'D-4'),
  ])
  const candidates = [
    ...['D-1', 'D-2', 'D-3'].map((t) => ({ history: history(strong(t, 10)), laying: 0.99 })),
    { history: sick, laying: 0.99 },
    { history: history(strong('D-5', 5)), laying: 0.99 },
    { history: history(strong('D-6', 12)), laying: 0.6 },
    { history: taker, laying: 0.2 },
  ]
  const list = donorsOf(candidates, today)
  const of = (tag: string) => list.find((d) => d.tag === tag)

  it('are strong, healthy, rested and surely queenright; the never used and longest rested come first', () => {
    expect(list.filter((d) => d.spare > 0).map((d) => d.tag)).toEqual(['D-3', 'D-2'])
    expect(of('D-1')?.lastUsed).toBe(addDays(ON, 22))
    expect(of('D-1')?.reasons).toEqual(['it gave a frame lately'])
    expect(of('D-1')?.restedOn).toBe(addDays(ON, 22 + DEFAULT_DONOR_RULES.restDays))
    expect(of('D-2')?.spare).toBe(2)
    expect(of('D-4')?.reasons).toContain('brood disease was suspected here and is not cleared')
    expect(of('D-5')?.reasons).toEqual(['not strong enough'])
    expect(of('D-6')?.reasons).toEqual(['no laying queen is certain'])
  })
})
