/** What to load, and when the next round is. */
import { describe, expect, it } from 'vitest'
import { addDays, type Day } from '../../../src/days.ts'
import type { DecidedPlan } from '../../../src/decision/index.ts'
import type { Box } from '../../../src/features/round/box.ts'
import { loadFor } from '../../../src/features/round/bring.ts'
import { nextRound } from '../../../src/features/round/next-round.ts'
import { paceOf } from '../../../src/features/round/pace.ts'
import { roundOf } from '../../../src/features/round/round.ts'
import type { History } from '../../../src/journal/history.ts'
import type { Planner } from '../../../src/store/index.ts'
import { often } from '../../support/long.ts'
import { box, PLANNER, TODAY, type Told } from './yard.ts'

const look = (day: number, seen: Record<string, unknown> = {}) => ({
  kind: 'inspection',
  day,
  opened: true,
  ...seen,
})

const needsEggs = (tag: string, day = 0) =>
  box({
    tag,
    age: 12,
    queen: 'lost',
    entries: [look(day, { eggs: 'none', open: 'none', cells: 'none', framesOfBees: 5 })],
  })

describe('what to load', () => {
  it('one frame of eggs for each colony that is to get one', () =>
    expect(loadFor([needsEggs('A-1'), needsEggs('A-2')])).toEqual([
      { item: 'egg-frame', tags: ['A-1', 'A-2'] },
    ]))

  it('a queen where one is to be bought', () => {
    const failed = box({
      tag: 'B-1',
      age: 45,
      queen: 'lost',
      entries: [look(-1, { eggs: 'none', open: 'none', cells: 'none', framesOfBees: 5 })],
    })
    expect(failed.plan.advice.action).toBe('buy-queen')
    expect(loadFor([failed])).toContainEqual({ item: 'mated-queen', tags: ['B-1'] })
  })

  it('syrup where stores were low and nobody has fed since', () => {
    const low = { kind: 'inspection', day: -1, opened: false, stores: 'low' }
    const hungry = box({ tag: 'H-1', age: 6, entries: [low] })
    const fed = box({
      tag: 'H-2',
      age: 6,
      entries: [low, { kind: 'given', day: -1, what: 'syrup', litres: 2 }],
    })
    expect(loadFor([hungry, fed])).toContainEqual({ item: 'syrup', tags: ['H-1'] })
  })

  it('nothing for boxes that ask nothing', () => {
    const resting = box({
      tag: 'Q-1',
      age: 2,
      entries: [{ kind: 'inspection', day: -1, opened: false, signs: [] }],
    })
    expect(loadFor([resting])).toEqual([])
  })
})

/** Nobody got there today. */
const rain = (days: number): Told => ({
  kind: 'missed-visit',
  day: 0,
  reason: 'rain',
  again: addDays(TODAY, days),
})

/** Asked of the round, day by day. */
const firstOnTheRound = (b: Box, planner: Planner): Day | undefined =>
  Array.from({ length: 21 }, (_, i) => addDays(TODAY, i + 1)).find((day) => {
    const then = { ...b, plan: planner(b.history, day) }
    return roundOf([then], day, planner, paceOf([])).stops.length > 0
  })

/** Makes a history's plan of a day once, for both that ask for it. */
function plannedOnce(): Planner {
  const made = new Map<History, Map<Day, DecidedPlan>>()
  return (history, day, exposure = null) => {
    if (exposure !== null) return PLANNER(history, day, exposure)
    const own = made.get(history) ?? new Map<Day, DecidedPlan>()
    const plan = own.get(day) ?? PLANNER(history, day)
    made.set(history, own.set(day, plan))
    return plan
  }
}

/** Every ninth age, others from one run to the next; all of them in the long run. */
const STEP = often(1, 9)
const FIRST = 1 + (Date.now() % STEP)

describe('the next round', () => {
  it('is tomorrow where something is still to be done', () => {
    const next = nextRound([needsEggs('A-1')], TODAY, PLANNER)
    expect(next).toMatchObject({ day: addDays(TODAY, 1), load: [{ item: 'egg-frame', tags: ['A-1'] }] })
  })

  it('is the first day on which a box asks something: the telling visit, open from day 4', () => {
    const resting = box({
      tag: 'Q-1',
      age: 2,
      entries: [{ kind: 'inspection', day: 0, opened: false, signs: [] }],
    })
    // Due on day 5; a day in the yard is worth more than the little that it would tell more then.
    expect(nextRound([resting], TODAY, PLANNER)).toMatchObject({ day: addDays(TODAY, 2) })
  })

  it('waits for a box put off, until the day that was said', () => {
    const put = box({
      tag: 'P-1',
      age: 9,
      entries: [{ kind: 'missed-visit', day: 0, reason: 'rain', again: addDays(TODAY, 3) }],
    })
    expect(nextRound([put], TODAY, PLANNER)?.day).toBe(addDays(TODAY, 3))
  })

  it('does not wait past the last day on which young brood at hand can become a queen', () => {
    const closing = box({ tag: 'P-1', age: 5, queen: 'lost', entries: [rain(3)] })
    expect(closing.plan.spans.cellsPossibleUntil).toBe(addDays(TODAY, 1))
    expect(nextRound([closing], TODAY, PLANNER)?.day).toBe(addDays(TODAY, 1))
  })

  it('does not wait where laying workers threaten, and brings the frame of eggs', () => {
    const nothing = look(-2, { eggs: 'none', open: 'none', cells: 'none' })
    const put = box({ tag: 'P-1', age: 17, queen: 'lost', entries: [nothing, rain(10)] })
    const next = nextRound([put], TODAY, PLANNER)
    expect(next?.day).toBe(addDays(put.plan.spans.layingWorkerRisk?.earliest ?? '', -2))
    expect(next?.load).toContainEqual({ item: 'egg-frame', tags: ['P-1'] })
  })

  it.each([null, 1, 5, 15])('is the day that the round itself says, put off by %s days', (days) => {
    for (const queen of ['lost', 'unseen', 'loose', 'caged'] as const)
      for (let age = FIRST; age < 35; age += STEP) {
        const planner = plannedOnce()
        const one = box({ tag: 'R-1', age, queen, entries: days === null ? [] : [rain(days)] })
        const next = nextRound([one], TODAY, planner)
        expect(next?.day, `${queen}, day ${age}`).toBe(firstOnTheRound(one, planner))
      }
  })

  it('is none where nobody is in the yard', () => expect(nextRound([], TODAY, PLANNER)).toBeNull())
})
