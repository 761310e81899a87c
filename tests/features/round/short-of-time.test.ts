/** Urgency as the trade orders it, the choice when time is short, and what waiting costs. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addDays } from '../../../src/days.ts'
import { planOf } from '../../../src/decision/index.ts'
import { asks, type Box } from '../../../src/features/round/box.ts'
import { type Pace, paceOf } from '../../../src/features/round/pace.ts'
import { roundOf, type Stop } from '../../../src/features/round/round.ts'
import { byUrgency, costOfWaiting, inMinutes } from '../../../src/features/round/short-of-time.ts'
import { morePressing, RANKS, urgencyOf } from '../../../src/features/round/urgency.ts'
import { historyOf } from '../../../src/journal/history.ts'
import { colony, START } from '../../recovery/arbitrary.ts'
import { often } from '../../support/long.ts'
import { box, PLANNER, TODAY } from './yard.ts'

const PACE: Pace = {
  outside: { minutes: 3, visits: 0 },
  open: { minutes: 12, visits: 0 },
  act: { minutes: 18, visits: 0 },
}
const stops = (...boxes: Box[]): Stop[] => roundOf(boxes, TODAY, PLANNER, PACE).stops
const look = (day: number, seen: Record<string, unknown> = {}) => ({
  kind: 'inspection',
  day,
  opened: true,
  ...seen,
})

/** A mated queen is proven; the hold is not over, so nothing but welfare is asked. */
const QUEENRIGHT = [
  look(-12, {
    capped: 'worker',
    eggs: 'single',
    onFreshComb: true,
    framesOfBees: 6,
    signs: [],
    stores: 'enough',
  }),
  { kind: 'mite-wash', day: -11, bees: 300, mites: 1 },
]
/** Telling visit while cells can still be started. */
const closing = box({
  tag: 'C-1',
  age: 5,
  entries: [{ kind: 'inspection', day: -4, opened: false, signs: [] }],
})
/** Neither eggs nor cells, and no young brood left: give a frame of eggs. */
const rung = box({
  tag: 'R-1',
  age: 12,
  queen: 'lost',
  entries: [look(-2, { eggs: 'none', open: 'none', cells: 'none', framesOfBees: 5, stores: 'enough' })],
})
/** The telling visit was never made; too late for cells, too early for laying workers. */
const late = box({
  tag: 'L-1',
  age: 12,
  entries: [{ kind: 'inspection', day: -4, opened: false, signs: [] }],
})
/** Welfare look on its second to last day, on its last day, and late. */
const welfare = (tag: string, lastSeen: number) =>
  box({
    tag,
    age: 25,
    queen: 'loose',
    entries: [...QUEENRIGHT, look(lastSeen, { eggs: 'single', stores: 'enough' })],
  })

describe('the order of urgency', () => {
  it('is: closing biological window, action rung, late, due, open', () => {
    const due = welfare('D-1', -8)
    const open = welfare('O-1', -5)
    const all = stops(open, due, late, rung, closing)
    expect(byUrgency(all).map((s) => [s.box.tag, s.urgency.rank])).toEqual([
      ['C-1', 'closing-window'],
      ['R-1', 'action'],
      ['L-1', 'overdue'],
      ['D-1', 'due'],
      ['O-1', 'open'],
    ])
  })

  it('counts the risk of laying workers as closing from two days before it begins', () => {
    const queenless = (age: number) =>
      box({
        tag: `K-${age}`,
        age,
        queen: 'lost',
        intake: { brood: { eggs: 0, open: 0, capped: 1 } },
        entries: [look(-1, { eggs: 'none', open: 'none', cells: 'none', framesOfBees: 5 })],
      })
    expect(urgencyOf(queenless(18).plan)).toMatchObject({ rank: 'action', window: null })
    expect(urgencyOf(queenless(19).plan)).toMatchObject({
      rank: 'closing-window',
      window: { of: 'laying-workers', day: addDays(TODAY, 2) },
    })
  })

  it('puts the nearer end first within a rank', () => {
    const [a, b] = stops(welfare('D-1', -8), welfare('D-2', -10))
    if (a === undefined || b === undefined) throw new Error('both ask')
    expect(morePressing(b.urgency, a.urgency)).toBeLessThan(0)
  })

  it('lets the worth of a look decide among boxes of one rank, never across ranks', () => {
    const all = stops(welfare('D-1', -10), welfare('D-2', -8), closing)
    const worth = (s: Stop): number => (s.box.tag === 'D-2' ? 5 : s.box.tag === 'D-1' ? 1 : 0)
    expect(byUrgency(all, worth).map((s) => s.box.tag)).toEqual(['C-1', 'D-2', 'D-1'])
  })

  it('gives every plan that asks something a rank', () => {
    fc.assert(
      fc.property(colony(), fc.integer({ min: 0, max: 110 }), (entries, day) => {
        const today = addDays(START, day)
        const history = historyOf(
          'X-1',
          entries.filter((e) => e.kind === 'intake' || e.on <= today),
        )
        if (history === null) return
        const plan = planOf(history, today)
        if (!asks(plan)) return
        const u = urgencyOf(plan)
        expect(RANKS).toContain(u.rank)
        if (u.window?.of === 'cells') expect(u.window.day >= today).toBe(true)
      }),
      { numRuns: often(3000, 100) },
    )
  })
})

describe('short of time', () => {
  const all = stops(welfare('O-1', -5), welfare('D-1', -8), late, rung, closing)

  it('opens the most urgent first until the minutes are used up', () => {
    const choice = inMinutes(all, 45)
    expect(choice.open.map((s) => s.box.tag)).toEqual(['C-1', 'R-1', 'L-1', 'D-1'])
    expect(choice).toMatchObject({ used: 12 + 18 + 12 + 3 })
    expect(choice.left.map((s) => s.box.tag)).toEqual(['O-1'])
  })

  it('lets a shorter box in where a longer one no longer fits', () => {
    const choice = inMinutes(all, 16)
    expect(choice.open.map((s) => s.box.tag)).toEqual(['C-1', 'D-1'])
    expect(choice.left.map((s) => s.box.tag)).toEqual(['R-1', 'L-1', 'O-1'])
  })

  it('never takes longer than there is, and leaves nothing out unsaid', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 200 }), (minutes) => {
        const choice = inMinutes(all, minutes)
        expect(choice.used).toBeLessThanOrEqual(minutes)
        expect([...choice.open, ...choice.left].map((s) => s.box.tag).sort()).toEqual(
          all.map((s) => s.box.tag).sort(),
        )
        expect(choice.used).toBe(choice.open.reduce((n, s) => n + s.minutes, 0))
      }),
    )
  })
})

describe('a box that was seen, or tried, today', () => {
  it('takes none of the time that is left', () => {
    const seen = box({ tag: 'S-1', age: 5, entries: [look(0, { eggs: 'single' })] })
    const tried = box({ tag: 'N-1', age: 5, entries: [{ kind: 'missed-visit', day: 0, reason: 'rain' }] })
    const choice = inMinutes(stops(seen, tried, closing), 60)
    expect(choice.open.map((s) => s.box.tag)).toEqual(['C-1'])
    expect(choice.left).toEqual([])
  })
})

describe('what waiting until tomorrow costs', () => {
  const cost = (b: Box, days = 1) => {
    const [stop] = stops(b)
    if (stop === undefined) throw new Error('asks nothing')
    return costOfWaiting(stop, TODAY, addDays(TODAY, days))
  }
  it('nothing of the window yet, where it is still open then', () =>
    expect(cost(closing)).toMatchObject({ of: 'window', lost: false, window: { of: 'cells' } }))
  it('the window, where it ends before', () =>
    expect(cost(closing, 3)).toMatchObject({ of: 'window', lost: true, window: { of: 'cells' } }))
  it('a delay of what is to be done', () => expect(cost(rung)).toMatchObject({ of: 'delay' }))
  it('lateness, and more of it', () =>
    expect(cost(late)).toMatchObject({ of: 'later-still', since: addDays(TODAY, -5) }))
  it('lateness that begins', () =>
    expect(cost(welfare('D-1', -10))).toEqual({ of: 'becomes-late', closes: TODAY }))
  it('nothing that can be put off, where disease is suspected: the call is made from anywhere', () => {
    const sick = look(-1, { eggs: 'single', signs: ['brood-disease-suspected'] })
    expect(cost(box({ tag: 'F-1', age: 20, queen: 'loose', entries: [sick] }))).toEqual({ of: 'call' })
  })
  it('bees, where laying workers are there already', () => {
    const gone = look(-1, { eggs: 'multiple', open: 'some', capped: 'drone-in-worker', cells: 'none' })
    const drones = box({ tag: 'G-1', age: 40, queen: 'lost', entries: [gone] })
    expect(drones.plan.phase).toBe('laying-workers')
    expect(cost(drones)).toMatchObject({ of: 'window', window: { of: 'has-laying-workers' } })
  })
  it('nothing, while the window stays open', () =>
    expect(cost(welfare('D-1', -8))).toEqual({ of: 'nothing', until: addDays(TODAY, 2) }))
})

describe('minutes', () => {
  const noted = (on: string, at: string, tag: string, kind: 'outside' | 'open' = 'open', by = 'Odalys') => ({
    colony: tag,
    yard: 'Quarry',
    on,
    at,
    by,
    kind,
  })
  const walk = (on: string, ...gaps: number[]) => {
    let minute = 9 * 60
    return [0, ...gaps].map((gap, i) => {
      minute += gap
      return noted(
        on,
        `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`,
        `T-${i}`,
      )
    })
  }

  it('are the usual ones, marked as such, until five boxes were timed', () => {
    expect(paceOf(walk('2026-05-01', 8, 8, 8, 8)).open).toEqual({ minutes: 12, visits: 0 })
    expect(paceOf(walk('2026-05-01', 8, 8, 8, 8, 8)).open).toEqual({ minutes: 8, visits: 5 })
  })
  it('are the median from one box to the next, breaks left out', () =>
    expect(paceOf(walk('2026-05-01', 6, 7, 9, 30, 7, 120)).open).toEqual({ minutes: 7, visits: 5 }))
  it('do not mix days, people or yards', () => {
    const two = [...walk('2026-05-01', 5, 5, 5), ...walk('2026-05-02', 5, 5)]
    expect(paceOf(two).open).toEqual({ minutes: 5, visits: 5 })
    const others = walk('2026-05-01', 5, 5, 5, 5, 5).map((n, i) => ({ ...n, by: i % 2 ? 'Bram' : 'Odalys' }))
    expect(paceOf(others).open.visits).toBe(0)
  })
  it('count several things done at one box as one visit, by the most that was done', () => {
    const walked = ['09:00', '09:10', '09:20', '09:30', '09:40', '09:50'].flatMap((at, i) => [
      noted('2026-05-01', at, `T-${i}`, 'outside'),
      noted('2026-05-01', at.replace(/0$/, '2'), `T-${i}`, 'open'),
    ])
    expect(paceOf(walked)).toMatchObject({ open: { minutes: 10, visits: 5 }, outside: { visits: 0 } })
  })
  it('do not count times typed in afterwards, all the same', () =>
    expect(paceOf(walk('2026-05-01', 0, 0, 0, 0, 0, 0)).open.visits).toBe(0))
})
