/** The strength forecast of rescued colonies. */
import { describe, expect, it } from 'vitest'
import { BEES_PER_FRAME } from '../../src/biology/strength.ts'
import { addDays } from '../../src/days.ts'
import { effectOfCappedFrame } from '../../src/forecast/frame-effect.ts'
import { ageing, alive, aliveAt, mixedLeft } from '../../src/forecast/life.ts'
import type { DayPmf } from '../../src/forecast/pmf.ts'
import { queenOdds, storyOf } from '../../src/forecast/queen-odds.ts'
import { DEFAULT_RATES } from '../../src/forecast/rates.ts'
import { modelOf } from '../../src/forecast/story/walk.ts'
import { strengthForecast } from '../../src/forecast/strength.ts'
import { bands } from '../../src/forecast/weighted.ts'
import type { Entry, Intake } from '../../src/journal/entry.ts'
import { historyOf } from '../../src/journal/history.ts'

const model = modelOf(DEFAULT_RATES)
const ON = '2026-05-01'
const OPTIONS = { minFrames: 3, holdDays: 30 }
let seq = 0
const id = (): string => `00000000-0000-7000-8000-${String(++seq).padStart(12, '0')}`

const intake = (over: Partial<Intake>): Entry => ({
  id: id(),
  kind: 'intake',
  colony: 'S-1',
  by: 'x',
  on: ON,
  removal: { type: 'wall' },
  yard: 'N',
  queen: 'unseen',
  bees: { frames: 6 },
  ...over,
})
const counted = (t: number, framesOfBees: number): Entry => ({
  id: id(),
  kind: 'inspection',
  colony: 'S-1',
  by: 'x',
  on: addDays(ON, t),
  opened: true,
  framesOfBees,
})
function storyFrom(entries: Entry[], t: number) {
  const history = historyOf('S-1', entries)
  if (history === null) throw new Error('no history')
  return storyOf(history, addDays(ON, t), model)
}
const never: DayPmf = { from: 0, p: [] }
const surely = (day: number): DayPmf => ({ from: 0, p: [...new Array<number>(day).fill(0), 1] })
const NO_BROOD = { eggs: 0, open: 0, capped: 0 }

describe('strength', () => {
  it('with no brood and no layer the median is what is left of a mixed lot of bees, ageing as the broodless do: closed form', () => {
    const f = strengthForecast(storyFrom([intake({ brood: NO_BROOD })], 0), never, OPTIONS)
    const age = ageing(ON, 90, 'north', () => true)
    f.days.forEach((d, i) => {
      expect(d.median).toBeCloseTo(6 * mixedLeft(age[i] ?? 0), 1)
    })
    expect(f.days[0]?.median).toBeCloseTo(6, 6)
    expect(f.chanceUnder).toBeGreaterThan(0.85)
  })

  it('salvaged capped brood lifts the first twelve days by what emerges', () => {
    const without = strengthForecast(storyFrom([intake({ brood: NO_BROOD })], 0), never, OPTIONS)
    const with_ = strengthForecast(
      storyFrom([intake({ brood: { ...NO_BROOD, capped: 2 } })], 0),
      never,
      OPTIONS,
    )
    const gain = (with_.days[12]?.median ?? 0) - (without.days[12]?.median ?? 0)
    // Two frames, 0.7 full, 0.85 of which live through it, 0.985 emerge; few of them die within twelve days.
    const bees = 2 * 7000 * 0.7 * 0.85 * 0.985
    expect(gain * BEES_PER_FRAME).toBeGreaterThan(0.9 * bees)
    expect(gain * BEES_PER_FRAME).toBeLessThanOrEqual(bees)
  })

  it('the dip: a queen that lays from day 3 makes it smallest about day 24, one from day 24 about day 45', () => {
    const TWO = { minFrames: 2, holdDays: 60 }
    const early = strengthForecast(storyFrom([intake({ brood: NO_BROOD })], 0), surely(3), TWO)
    const late = strengthForecast(storyFrom([intake({ brood: NO_BROOD })], 0), surely(24), TWO)
    expect(early.lowest.day >= addDays(ON, 22) && early.lowest.day <= addDays(ON, 26)).toBe(true)
    expect(late.lowest.day >= addDays(ON, 43) && late.lowest.day <= addDays(ON, 48)).toBe(true)
    expect(late.lowest.frames).toBeLessThan(early.lowest.frames)
    expect(late.chanceUnder).toBeGreaterThan(early.chanceUnder)
  })

  it('a recount moves the forecast to what was counted, and makes unlikely what foretold otherwise', () => {
    const before = strengthForecast(storyFrom([intake({ brood: NO_BROOD })], 20), surely(3), OPTIONS)
    const after = strengthForecast(
      storyFrom([intake({ brood: NO_BROOD }), counted(20, 6)], 20),
      surely(3),
      OPTIONS,
    )
    expect(after.days[20]?.median).toBeCloseTo(6, 1)
    expect(before.days[20]?.median).toBeLessThan(4.5)
    expect(after.days[40]?.median).toBeGreaterThan(before.days[40]?.median ?? 0)
    expect(after.counted).toEqual([{ day: addDays(ON, 20), frames: 6 }])
    // A count far above the reckoning speaks for a layer since long, not for none.
    const half: DayPmf = { from: 0, p: [0, 0, 0, 0.5] }
    const many = strengthForecast(storyFrom([intake({ brood: NO_BROOD }), counted(45, 7)], 45), half, OPTIONS)
    const few = strengthForecast(
      storyFrom([intake({ brood: NO_BROOD }), counted(45, 0.5)], 45),
      half,
      OPTIONS,
    )
    expect(many.days[60]?.low).toBeGreaterThan(4)
    expect(few.days[60]?.median).toBeLessThan(2)
  })

  it('a frame of capped brood lifts the lowest point and lowers the chance of falling under the minimum', () => {
    const story = storyFrom([intake({ queen: 'unseen', brood: { eggs: 0.5, open: 0.5, capped: 0.5 } })], 5)
    const { before, after } = effectOfCappedFrame(story, queenOdds(story).firstEgg, OPTIONS, addDays(ON, 6))
    expect(after.lowest.frames).toBeGreaterThan(before.lowest.frames)
    expect(after.chanceUnder).toBeLessThan(before.chanceUnder)
    for (const [i, d] of after.days.entries())
      expect(d.median).toBeGreaterThanOrEqual((before.days[i]?.median ?? 0) - 1e-9)
  })

  it('the band holds the median, and is wider where no bees were written down', () => {
    const known = storyFrom([intake({ brood: NO_BROOD })], 3)
    const unknown = storyFrom([intake({ brood: NO_BROOD, bees: undefined } as Partial<Intake>)], 3)
    const [a, b] = [known, unknown].map((s) => strengthForecast(s, queenOdds(s).firstEgg, OPTIONS))
    for (const d of a?.days ?? []) expect(d.low <= d.median && d.median <= d.high).toBe(true)
    const width = (f: typeof a): number => (f?.days[5]?.high ?? 0) - (f?.days[5]?.low ?? 0)
    expect(b?.assumed).toBe(true)
    expect(width(b)).toBeGreaterThan(width(a))
  })
})

it('the table of the survival curve is good to five digits', () => {
  for (let x = 0; x < 4; x += 0.0137) expect(Math.abs(aliveAt(x) - alive(x))).toBeLessThan(1e-5)
})

describe('weighted quantiles', () => {
  it('of equal weights lie where order says', () => {
    expect(bands([3, 1, 2], [1 / 3, 1 / 3, 1 / 3], [0.5])[0]).toBeCloseTo(2, 12)
    expect(bands([5, 5, 5], [0.2, 0.3, 0.5], [0.1, 0.9])).toEqual([5, 5])
  })
})
