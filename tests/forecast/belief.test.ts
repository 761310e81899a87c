/** The belief is bounded, fallible and knows the season. */
import { describe, expect, it } from 'vitest'
import { addDays } from '../../src/days.ts'
import { learnRates } from '../../src/forecast/learn.ts'
import { following, kindShares, oddsOn, oddsToday, storyOf } from '../../src/forecast/queen-odds.ts'
import { DEFAULT_RATES, ratesWith } from '../../src/forecast/rates.ts'
import { KINDS } from '../../src/forecast/story/kinds.ts'
import { daysOf } from '../../src/forecast/story/steps.ts'
import { listModelOf, modelOf, walk } from '../../src/forecast/story/walk.ts'
import type { Entry } from '../../src/journal/entry.ts'
import { type History, historyOf } from '../../src/journal/history.ts'
import { proven } from '../support/proven.ts'
import { calibrate } from './calibration.ts'
import { type Random, seeded } from './random.ts'
import { Colony, playOut, START, someIntake } from './simulator.ts'

const dice = seeded(17)
function lived(days: number, rates = DEFAULT_RATES, random = dice): History {
  const c = playOut(new Colony(random, rates, someIntake(random)), days)
  const h = historyOf(c.tag, c.entries)
  if (h === null) throw new Error('no history')
  return h
}

/** How far the odds of one that stayed so long are from those with all its nights followed, at most. */
function apart(days: number, random: Random): number {
  const model = modelOf(DEFAULT_RATES)
  const h = lived(days, DEFAULT_RATES, random)
  const today = addDays(START, days)
  const all = daysOf(h, today, today)
  const whole = walk(model, h.intake, all).byDay[days]
  const [last] = all.slice(-1)
  if (whole === undefined || last === undefined) throw new Error('no last day')
  const followed = oddsToday(storyOf(h, today, model, today))
  const shares = kindShares(whole, last)
  return Math.max(...KINDS.map((k) => Math.abs(followed[k] - shares[k])))
}

const found = proven('belief', import.meta.filename, () => {
  const random = seeded(18)
  const long = [120, 180, 260].flatMap((days) => Array.from({ length: 8 }, () => apart(days, random)))
  return {
    longStays: { of: long.length, most: Math.max(...long) },
    inHaste: calibrate(1500, 29, ratesWith({ careless: 1 / 7 }), DEFAULT_RATES, listModelOf),
  }
})

describe('a colony that has stayed long', () => {
  it('has the odds it would have if all its nights were followed, to a thousandth', () => {
    expect(found.longStays.of).toBe(24)
    expect(found.longStays.most).toBeLessThan(0.001)
  })

  it('is followed through no more nights after years than after months', () => {
    const model = listModelOf(DEFAULT_RATES)
    const steps = [200, 1500].map((days) => {
      const h = lived(days)
      return storyOf(h, addDays(START, days), model, addDays(START, days)).walk.links.filter(
        (l) => l.kind === 'night',
      ).length
    })
    for (const n of steps) expect(n).toBeLessThan(120)
  })

  it('pauses while it is worked out, and can be left', () => {
    const h = lived(60)
    const reckoning = following(h, addDays(START, 60), modelOf(DEFAULT_RATES))
    let pauses = 0
    while (reckoning.next().done !== true && pauses < 5) pauses++
    expect(pauses).toBe(5)
  })
})

describe('a fallible look', () => {
  const model = modelOf(DEFAULT_RATES)
  const entry = (t: number, rest: object): Entry =>
    ({
      id: `00000000-0000-7000-8000-${String(t).padStart(12, '0')}`,
      colony: 'A-1',
      by: 'x',
      on: addDays(START, t),
      ...rest,
    }) as Entry
  const laying = (searched?: 'in-haste' | 'thoroughly', looks = 1): number => {
    const h = historyOf('A-1', [
      entry(0, {
        kind: 'intake',
        removal: { type: 'wall' },
        yard: 'N',
        queen: 'loose',
        brood: { eggs: 0, open: 0, capped: 0 },
      }),
      ...Array.from({ length: looks }, (_, i) =>
        entry(10 + i, {
          kind: 'inspection',
          opened: true,
          eggs: 'none',
          open: 'none',
          capped: 'none',
          ...(searched === undefined ? {} : { searched }),
        }),
      ),
    ])
    if (h === null) throw new Error('no history')
    return oddsToday(storyOf(h, addDays(START, 20), model, addDays(START, 20))).laying
  }

  it('says less in haste than after a search, and one look settles nothing', () => {
    expect(laying('in-haste')).toBeGreaterThan(laying() + 0.05)
    expect(laying()).toBeGreaterThan(laying('thoroughly'))
    expect(laying('thoroughly')).toBeGreaterThan(0.001)
    expect(laying(undefined, 4)).toBeGreaterThan(0)
  })

  it('leaves the odds honest where one look in seven is made in haste', () => {
    const c = found.inHaste
    expect(c.atSeventy.n).toBeGreaterThan(200)
    expect(Math.abs(c.atSeventy.so - c.atSeventy.given)).toBeLessThan(0.05)
    for (const b of c.bins.filter((x) => x.n >= 150)) expect(Math.abs(b.so - b.given)).toBeLessThan(0.07)
  })

  it('is learned from looks that contradict each other', () => {
    const hasty = ratesWith({ careless: 0.5 })
    const closed = Array.from({ length: 60 }, (): History => {
      const h = lived(50, hasty)
      return { ...h, outcome: { ...entry(50, { kind: 'outcome', what: 'moved-out' }) } as History['outcome'] }
    })
    const { rates } = learnRates(closed)
    expect(rates.careless).toBeGreaterThan(DEFAULT_RATES.careless + 0.05)
  })
})

describe('out of the months in which queens mate', () => {
  it('no virgin comes to lay', () => {
    const c = new Colony(seeded(3), DEFAULT_RATES, {
      removal: { type: 'wall' },
      by: 'x',
      yard: 'N',
      queen: 'lost',
      brood: { eggs: 1, open: 1, capped: 1 },
    })
    const h = historyOf(c.tag, c.entries)
    if (h === null) throw new Error('no history')
    const today = START
    const inSeason = oddsOn(storyOf(h, today, modelOf(DEFAULT_RATES)), 45).laying
    const outOfIt = oddsOn(storyOf(h, today, modelOf(DEFAULT_RATES, 0, ['1'])), 45).laying
    expect(inSeason).toBeGreaterThan(0.5)
    expect(outOfIt).toBeLessThan(0.05)
  })
})
