/** The round: which boxes, in which order, how far one has got, what waits and what does not. */
import { describe, expect, it } from 'vitest'
import { addDays } from '../../../src/days.ts'
import type { Box } from '../../../src/features/round/box.ts'
import { paceOf } from '../../../src/features/round/pace.ts'
import { type Round, roundOf } from '../../../src/features/round/round.ts'
import { box, PLANNER, TODAY, type Told } from './yard.ts'

const round = (...boxes: Box[]): Round => roundOf(boxes, TODAY, PLANNER, paceOf([]))
const tags = (r: Round): string[] => r.stops.map((s) => s.box.tag)

/** First brood check due on day 5, closes on day 7; cells are possible until day 6. */
const telling = (tag: string, age = 5, more: Partial<Parameters<typeof box>[0]> = {}) =>
  box({ tag, age, entries: [{ kind: 'inspection', day: 1 - age, opened: false, signs: [] }], ...more })

const look = (day: number, seen: Record<string, unknown> = {}): Told => ({
  kind: 'inspection',
  day,
  opened: true,
  ...seen,
})
const missed = (day: number, more: Record<string, unknown> = {}): Told => ({
  kind: 'missed-visit',
  day,
  reason: 'rain',
  ...more,
})

describe('the order', () => {
  it('is that of the stands, numbers read as numbers, what stands nowhere last', () => {
    const r = round(
      telling('A-1', 5, { stand: '10' }),
      telling('A-2', 5, { stand: '2' }),
      telling('A-3', 5, { stand: null }),
      telling('A-4', 5, { stand: '2b' }),
    )
    expect(tags(r)).toEqual(['A-2', 'A-4', 'A-1', 'A-3'])
  })

  it('is by yard first, so that nobody drives to and fro', () => {
    const r = round(telling('B-1', 5, { yard: 'South' }), telling('A-9', 5, { yard: 'North' }))
    expect(tags(r)).toEqual(['A-9', 'B-1'])
  })

  it('leaves out what asks nothing today', () => {
    const quiet = box({
      tag: 'Q-1',
      age: 2,
      entries: [{ kind: 'inspection', day: -1, opened: false, signs: [] }],
    })
    expect(quiet.plan.advice.action).toBe('leave-alone')
    expect(tags(round(quiet, telling('A-1')))).toEqual(['A-1'])
  })
})

describe('progress', () => {
  it('counts the boxes of the morning: recording a visit ticks off, it does not shorten the list', () => {
    const seen = telling('A-1', 5, { entries: [look(0, { eggs: 'single', open: 'some' })] })
    const r = round(seen, telling('A-2'), telling('A-3'))
    expect(tags(r)).toEqual(['A-1', 'A-2', 'A-3'])
    expect(r.progress).toMatchObject({ of: 3, seen: 1, notReached: 0 })
    expect(r.stops[0]?.state).toBe('seen')
  })

  it('says which were late and are not seen yet', () => {
    const r = round(telling('A-1', 9), telling('A-2'))
    expect(r.progress).toMatchObject({ of: 2, seen: 0, late: 1 })
    const done = telling('A-1', 9, { entries: [look(0, { eggs: 'single' })] })
    expect(round(done, telling('A-2')).progress).toMatchObject({ of: 2, seen: 1, late: 0 })
  })

  it('keeps a colony that left the yard today among those seen', () => {
    const gone = telling('A-1', 9, { entries: [{ kind: 'outcome', day: 0, what: 'absconded' }] })
    expect(round(gone).stops[0]).toMatchObject({ state: 'seen', stillAsks: false })
  })

  it('says where a visit has shown that something is to be done still', () => {
    const neither = telling('A-1', 8, {
      queen: 'lost',
      entries: [look(0, { eggs: 'none', open: 'none', cells: 'none' })],
    })
    expect(neither.plan.advice.action).toBe('give-egg-frame')
    const r = round(neither)
    expect(r.stops[0]).toMatchObject({ state: 'seen', stillAsks: true })
    expect(r.progress.stillAsk).toBe(1)
  })

  it('does not put today’s intake on the round of the morning', () => {
    const fresh = box({ tag: 'N-1', age: 0 })
    expect(tags(round(fresh))).toEqual([])
  })
})

describe('a box that was not reached', () => {
  it('counts as tried today, not as seen, and stays on the list', () => {
    const r = round(telling('A-1', 5, { entries: [missed(0)] }), telling('A-2'))
    expect(r.stops[0]).toMatchObject({ state: 'not-reached' })
    expect(r.progress).toMatchObject({ of: 2, seen: 0, notReached: 1 })
  })

  it('is to do again the day after, when nothing else was said', () => {
    const r = round(telling('A-1', 8, { entries: [missed(-1)] }))
    expect(r.stops[0]).toMatchObject({ state: 'to-do', missed: { again: TODAY } })
  })

  it('is put off to the day that was said, visibly and apart', () => {
    // A welfare look: nothing of the bees' own is closing.
    const welfare = box({
      tag: 'W-1',
      age: 70,
      queen: 'loose',
      entries: [
        look(-60, {
          capped: 'worker',
          eggs: 'single',
          onFreshComb: true,
          framesOfBees: 6,
          signs: [],
          stores: 'enough',
        }),
        { kind: 'mite-wash', day: -40, bees: 300, mites: 1 },
        look(-9, { capped: 'worker', eggs: 'single', framesOfBees: 6, stores: 'enough' }),
        missed(-1, { again: addDays(TODAY, 1) }),
      ],
    })
    const r = round(welfare)
    expect(r.stops).toEqual([])
    expect(r.putOff.map((s) => s.box.tag)).toEqual(['W-1'])
    expect(r.progress.of).toBe(0)
  })

  it('is never put off while cells can still be started', () => {
    const r = round(telling('A-1', 5, { entries: [missed(-1, { again: addDays(TODAY, 4) })] }))
    expect(r.putOff).toEqual([])
    expect(r.stops[0]).toMatchObject({ state: 'to-do', urgency: { rank: 'closing-window' } })
  })

  it('is reached by a later visit of the same day, not by an earlier one', () => {
    const after = telling('A-1', 5, { entries: [missed(0), look(0, { eggs: 'single' })] })
    const before = telling('A-2', 5, { entries: [look(0, { temper: 5 }), missed(0)] })
    const r = round(after, before)
    expect(r.stops.map((s) => [s.box.tag, s.state, s.missed !== null])).toEqual([
      ['A-1', 'seen', false],
      ['A-2', 'seen', true],
    ])
  })
})
