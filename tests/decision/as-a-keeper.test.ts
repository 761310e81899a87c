/** Advice as a keeper would give it, in situations where rules that were each right used to give another (common practice throughout). */
import { describe, expect, it } from 'vitest'
import { addDays, type Day } from '../../src/days.ts'
import { planOf } from '../../src/decision/index.ts'
import type { Entry } from '../../src/journal/entry.ts'
import { historyOf } from '../../src/journal/history.ts'
import { protocolWith } from '../../src/recovery/protocol.ts'

const MATING = protocolWith({ matingMonths: ['4', '5', '6', '7', '8', '9'] })
const IN_HAND = { queensInHand: 1, daysUntilQueens: 0, eggFrames: 3 }
const TO_ORDER = { queensInHand: 0, daysUntilQueens: 5, eggFrames: 3 }

/** Entries by days since the removal. */
function box(from: Day, days: Record<number, object>) {
  let n = 0
  const entry = (t: number, more: object): Entry =>
    ({
      id: `019707a0-0000-7000-8000-${(++n).toString(16).padStart(12, '0')}`,
      colony: 'X-1',
      on: addDays(from, t),
      by: 'Juno',
      ...more,
    }) as Entry
  const wall = {
    kind: 'intake',
    removal: { type: 'wall', removedOn: from },
    yard: 'North field',
    queen: 'unseen',
    brood: { eggs: 0.5, open: 0.75, capped: 1.5 },
    bees: { frames: 6 },
  }
  const entries = [entry(0, wall), ...Object.entries(days).map(([t, more]) => entry(Number(t), more))]
  return (t: number, supplies = TO_ORDER) => {
    const today = addDays(from, t)
    const history = historyOf(
      'X-1',
      entries.filter((e) => e.on <= today),
    )
    if (history === null) throw new Error('a box without an intake')
    return planOf(history, today, MATING, { supplies })
  }
}

const look = (more: object) => ({
  kind: 'inspection',
  opened: true,
  eggs: 'none',
  open: 'none',
  capped: 'none',
  cells: 'none',
  queen: 'unseen',
  framesOfBees: 6,
  ...more,
})
const CELLS = look({ open: 'some', capped: 'worker', cells: 'capped', cellCount: 8 })
const EGG_FRAME = { kind: 'given', what: 'egg-frame', frames: 1, donor: 'D-1' }

describe('a frame of eggs', () => {
  const plan = box('2026-06-01', { 6: CELLS, 20: EGG_FRAME, 25: CELLS })

  it('is read before another is given, and not before its day', () => {
    for (const t of [20, 21, 22])
      expect([t, plan(t).advice.action]).toEqual([t, expect.stringMatching(/leave-alone|outside-look/)])
    expect(plan(24).advice.action).toBe('open-and-look')
  })

  it('is never given on two days on end, whatever is at hand', () => {
    const twice = box('2026-06-01', { 6: CELLS, 20: EGG_FRAME, 25: CELLS, 34: EGG_FRAME })
    for (const supplies of [TO_ORDER, IN_HAND])
      for (let t = 34; t < 38; t++) expect(twice(t, supplies).advice.action).not.toBe('give-egg-frame')
  })
})

describe('a queen in hand', () => {
  it('goes into a box in which two looks found nobody, and does not wait for a third', () => {
    const none = box('2026-06-01', {
      6: look({ open: 'some', capped: 'worker' }),
      10: look({ capped: 'worker' }),
    })
    expect(none(10, IN_HAND).advice.action).toBe('buy-queen')
  })

  it('goes in where cells were found, for a month is won', () => {
    expect(box('2026-06-01', { 6: CELLS })(6, IN_HAND).advice.action).toBe('buy-queen')
  })
})

describe('a queen that fails', () => {
  const drones = look({ eggs: 'single', open: 'some', capped: 'drone-in-worker', queen: 'seen' })
  const looks = { 6: CELLS, 33: drones, 44: drones }

  it('comes out on the day on which another goes in; until then one is sent for', () => {
    const plan = box('2026-06-01', looks)
    expect(plan(44).advice.action).toBe('order-queen')
    expect(plan(44, IN_HAND).advice.action).toBe('take-out-queen')
  })

  it('is not looked for day after day, once she was looked for and not found', () => {
    const gone = look({ eggs: 'single', open: 'some', capped: 'drone-in-worker' })
    const plan = box('2026-06-01', { ...looks, 45: gone })
    for (const t of [45, 46, 47]) expect(plan(t, IN_HAND).advice.action).not.toBe('take-out-queen')
  })
})

describe('the cold', () => {
  const late = {
    12: { kind: 'given', what: 'mated-queen', caged: true },
    15: { kind: 'queen-cage', found: 'released' },
  }

  it('does not leave a queen unproven until spring: one look on a mild day of its first weeks', () => {
    const plan = box('2026-09-26', late)
    const { advice } = plan(41)
    expect(advice.action).toBe('open-and-look')
    expect(advice.why).toContain('cold season: only on a calm day')
  })

  it('keeps the lid on in the depth of winter', () => {
    const plan = box('2026-09-26', late)
    for (const t of [80, 90, 110]) expect(plan(t).advice.action).not.toBe('open-and-look')
  })
})

describe('open cells on day 11 of a comb whose last egg was laid on the day of the removal', () => {
  // A queen's cell is capped on day 8 from the egg (reference tables of development): these are too late to be of that brood.
  const codes = (seen: object) => {
    const plan = box('2026-05-30', { 2: look({ opened: false }), 11: look(seen) })(11)
    return plan.advice.reasons.map((r) => r.code)
  }

  it('are not called nothing to raise a queen from, though a frame of eggs is asked for', () => {
    const seen = codes({ capped: undefined, cells: 'open' })
    expect(seen).toContain('cells-in-doubt')
    expect(seen).not.toContain('nobody-lays')
  })

  it('without cells there is nothing', () => {
    expect(codes({ capped: undefined })).toContain('nobody-lays')
  })
})
