/** What to load, and when the next round is. */
import { describe, expect, it } from 'vitest'
import { addDays } from '../../src/days.ts'
import { DEFAULT_PROTOCOL } from '../../src/recovery/protocol.ts'
import { loadFor } from '../../src/round/bring.ts'
import { nextRound } from '../../src/round/next-round.ts'
import { box, TODAY } from './yard.ts'

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
    const resting = box({ tag: 'Q-1', age: 2, entries: [{ kind: 'inspection', day: -1, opened: false }] })
    expect(loadFor([resting])).toEqual([])
  })
})

describe('the next round', () => {
  it('is tomorrow where something is still to be done', () => {
    const next = nextRound([needsEggs('A-1')], TODAY, DEFAULT_PROTOCOL)
    expect(next).toMatchObject({ day: addDays(TODAY, 1), load: [{ item: 'egg-frame', tags: ['A-1'] }] })
  })

  it('is the first day on which a box asks something: the telling visit of day 4', () => {
    const resting = box({ tag: 'Q-1', age: 2, entries: [{ kind: 'inspection', day: 0, opened: false }] })
    expect(nextRound([resting], TODAY, DEFAULT_PROTOCOL)).toMatchObject({ day: addDays(TODAY, 2) })
  })

  it('waits for a box put off, until the day that was said', () => {
    const put = box({
      tag: 'P-1',
      age: 9,
      entries: [{ kind: 'missed-visit', day: 0, reason: 'rain', again: addDays(TODAY, 3) }],
    })
    expect(nextRound([put], TODAY, DEFAULT_PROTOCOL)?.day).toBe(addDays(TODAY, 3))
  })

  it('is none where nobody is in the yard', () => expect(nextRound([], TODAY, DEFAULT_PROTOCOL)).toBeNull())
})
