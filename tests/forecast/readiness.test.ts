/** Move-out as odds, stands free by date, and rates learned from closed colonies. */
import { describe, expect, it } from 'vitest'
import { addDays, daysBetween } from '../../src/days.ts'
import { betaQuantile, learnRates } from '../../src/forecast/learn.ts'
import { freeFrom, occupancyForecast, stillHere } from '../../src/forecast/occupancy.ts'
import { queenOdds, storyOf } from '../../src/forecast/queen-odds.ts'
import { DEFAULT_RATES, ratesWith } from '../../src/forecast/rates.ts'
import { type MoveOutForecast, moveOutForecast } from '../../src/forecast/readiness.ts'
import { modelOf } from '../../src/forecast/story/walk.ts'
import { strengthForecast } from '../../src/forecast/strength.ts'
import type { Entry, Inspection, Intake } from '../../src/journal/entry.ts'
import { historyOf } from '../../src/journal/history.ts'
import { planOf } from '../../src/recovery/plan.ts'
import { DEFAULT_PROTOCOL } from '../../src/recovery/protocol.ts'
import { moveOutWords } from '../../src/words/forecasts.ts'
import { proven } from '../support/proven.ts'
import { seeded } from './random.ts'
import { Colony, playOut, START, someIntake } from './simulator.ts'

const model = modelOf(DEFAULT_RATES)
const ON = '2026-05-01'
let seq = 0
const base = (t: number) => ({
  id: `00000000-0000-7000-8000-${String(++seq).padStart(12, '0')}`,
  colony: 'M-1',
  by: 'x',
  on: addDays(ON, t),
})
const intake = (over: Partial<Intake> = {}): Entry => ({
  ...base(0),
  kind: 'intake',
  removal: { type: 'wall' },
  yard: 'N',
  queen: 'unseen',
  brood: { eggs: 1, open: 1, capped: 1 },
  bees: { frames: 8 },
  ...over,
})
const look = (t: number, seen: Partial<Inspection>): Entry => ({
  ...base(t),
  kind: 'inspection',
  opened: true,
  ...seen,
})

function moveOut(entries: Entry[], t: number): MoveOutForecast {
  const today = addDays(ON, t)
  const history = historyOf('M-1', entries)
  if (history === null) throw new Error('no history')
  const story = storyOf(history, today, model)
  const { firstEgg } = queenOdds(story)
  const strength = strengthForecast(story, firstEgg, { minFrames: 3, holdDays: 30 })
  return moveOutForecast(story, firstEgg, strength, planOf(history, today), DEFAULT_PROTOCOL)
}

describe('the move-out day', () => {
  it('with her old queen laying again: the hold decides, day 30', () => {
    const f = moveOut([intake({ queen: 'caged' }), look(9, { eggs: 'single', queen: 'seen' })], 10)
    expect(f.expected).toBe(addDays(ON, 30))
    expect(f.ever).toBeGreaterThan(0.95)
  })

  it('raising her own queen from the start: not before about day 32-36, and far from certain', () => {
    const f = moveOut([intake(), look(5, { eggs: 'none', cells: 'capped', queen: 'unseen' })], 6)
    const day = daysBetween(ON, f.expected ?? ON)
    expect(day).toBeGreaterThanOrEqual(31)
    expect(day).toBeLessThanOrEqual(55)
    expect(f.ever).toBeGreaterThan(0.5)
    expect(f.ever).toBeLessThan(0.85)
    expect(f.range !== null && f.range.from <= (f.expected ?? '') && (f.expected ?? '') <= f.range.to).toBe(
      true,
    )
    expect(moveOutWords(f)).toMatch(/^It can be ready to move out about .* if it gets there: \d+ in 100\.$/)
  })

  it('suspected brood disease: no day is named', () => {
    const f = moveOut(
      [intake({ queen: 'caged' }), look(9, { eggs: 'single', signs: ['brood-disease-suspected'] })],
      10,
    )
    expect(f.blocked?.code).toBe('disease-suspected')
    expect(moveOutWords(f)).toMatch(/^No move-out day can be named: .*disease/)
    expect(f.expected).toBeNull()
  })

  it('laying workers: next to no chance', () => {
    const f = moveOut(
      [
        intake({ queen: 'lost', brood: { eggs: 0, open: 0, capped: 0 } }),
        look(28, { eggs: 'multiple', capped: 'drone-in-worker', cells: 'none' }),
      ],
      28,
    )
    expect(f.ever).toBeLessThan(0.02)
    expect(moveOutWords(f)).toBe('As things stand it will not get ready to move out.')
  })
})

describe('stands', () => {
  const leaving = (...chances: number[]): MoveOutForecast => ({
    chances: { from: 0, p: chances },
    ever: 1,
    expected: ON,
    range: null,
    blocked: null,
  })

  it('come free as colonies get ready, three days on', () => {
    const f = leaving(0, 0.5, 0.5)
    expect([0, 3, 4, 5, 6].map((d) => stillHere(f, d))).toEqual([1, 1, 0.5, 0, 0])
    const days = occupancyForecast([f, f, leaving(0)], ON, 7, 3)
    expect(days[0]).toMatchObject({ expected: 3, low: 3, high: 3, freeSurely: 0, anyFree: 0 })
    expect(days[4]?.anyFree).toBeCloseTo(0.75, 12)
    expect(days[5]).toMatchObject({ expected: 1, freeSurely: 2 })
    expect(freeFrom(days, 2)).toBe(addDays(ON, 5))
    expect(freeFrom(days, 3)).toBeNull()
  })

  it('an unknown number of stands promises none', () => {
    expect(occupancyForecast([leaving(1)], ON, 5, null)[5]).toMatchObject({ freeSurely: null, anyFree: null })
  })
})

describe("a yard's own rates", () => {
  const yard = (truth: typeof DEFAULT_RATES, colonies: number, seed: number) => {
    const random = seeded(seed)
    return Array.from({ length: colonies }, (_, i) => {
      const c = playOut(new Colony(random, truth, someIntake(random), `L-${i}`), 60)
      const end: Entry = {
        id: `00000000-0000-7000-8000-${String(900_000 + i).padStart(12, '0')}`,
        colony: c.tag,
        by: 'x',
        on: addDays(START, 60),
        kind: 'outcome',
        what: 'moved-out',
      }
      const h = historyOf(c.tag, [...c.entries, end])
      if (h === null) throw new Error('no history')
      return h
    })
  }

  const truth = ratesWith({ aliveUnseen: 0.75, virginLays: 0.6, boughtTakes: 0.5 })
  const learned = proven('own-rates', import.meta.filename, () => {
    const [elsewhere, asBelieved] = [learnRates(yard(truth, 140, 4)), learnRates(yard(DEFAULT_RATES, 250, 5))]
    const { colonies, rates, table } = elsewhere
    return { elsewhere: { colonies, rates, table }, asBelieved: asBelieved.rates }
  })

  it('are the defaults with nothing closed, and move towards the truth with a few seasons', () => {
    expect(learnRates([]).rates).toEqual(DEFAULT_RATES)
    const { colonies, rates, table } = learned.elsewhere
    expect(colonies).toBe(140)
    for (const name of ['aliveUnseen', 'virginLays', 'boughtTakes'] as const) {
      const before = Math.abs(DEFAULT_RATES[name] - truth[name])
      expect(Math.abs(rates[name] - truth[name]), name).toBeLessThan(0.8 * before)
      const row = table.find((r) => r.name === name)
      expect(row?.low).toBeLessThan(row?.own ?? 0)
      expect(row?.high).toBeGreaterThan(row?.own ?? 1)
      expect(row?.default).toBe(DEFAULT_RATES[name])
    }
  })

  it('stay near the defaults where those are true', () => {
    const rates = learned.asBelieved
    for (const name of ['aliveUnseen', 'virginLays', 'boughtTakes', 'cellEmerges'] as const)
      expect(Math.abs(rates[name] - DEFAULT_RATES[name]), name).toBeLessThan(0.12)
  })

  it('the limits are those of the Beta distribution where those have a closed form', () => {
    expect(betaQuantile(0.5, 3, 3)).toBeCloseTo(0.5, 3)
    // Beta(2, 1) has the quantile sqrt(q), Beta(1, 1) q itself.
    expect(betaQuantile(0.25, 2, 1)).toBeCloseTo(0.5, 2)
    expect(betaQuantile(0.3, 1, 1)).toBeCloseTo(0.3, 3)
  })
})
