/** The most telling day: expected information against its definition, and what a beekeeper would expect. */
import { describe, expect, it } from 'vitest'
import { addDays } from '../../src/days.ts'
import { oddsOn, type Story, storyOf } from '../../src/forecast/queen-odds.ts'
import { DEFAULT_RATES } from '../../src/forecast/rates.ts'
import { modelOf } from '../../src/forecast/story/walk.ts'
import { mostTelling, mutualInformation, tellingDays } from '../../src/forecast/telling-day.ts'
import type { Entry, Inspection, Intake } from '../../src/journal/entry.ts'
import { historyOf } from '../../src/journal/history.ts'
import { bestLookWords } from '../../src/words/forecasts.ts'

const model = modelOf(DEFAULT_RATES)
const ON = '2026-05-01'
let seq = 0
const base = (t: number) => ({
  id: `00000000-0000-7000-8000-${String(++seq).padStart(12, '0')}`,
  colony: 'T-1',
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
  broodCare: 'closed-chest',
  ...over,
})
const look = (t: number, seen: Partial<Inspection>): Entry => ({
  ...base(t),
  kind: 'inspection',
  opened: true,
  ...seen,
})
function storyFrom(entries: Entry[], t: number): Story {
  const history = historyOf('T-1', entries)
  if (history === null) throw new Error('no history')
  return storyOf(history, addDays(ON, t), model)
}

const entropy = (p: readonly number[]): number => -p.reduce((a, x) => a + (x > 0 ? x * Math.log2(x) : 0), 0)
/** What decides the next action, from the seven kinds. */
const decisions = (story: Story, t: number): number[] => {
  const o = oddsOn(story, t)
  return [o.laying + o.present, o.raising + o.virgin + o.chance, o.queenless, o['laying-workers']]
}

describe('mutual information', () => {
  it('is 0 for independent things, 1 bit for a fair coin seen, and that of a noisy channel in between', () => {
    const table = (...rows: number[][]): Float64Array[] => rows.map((r) => Float64Array.from(r))
    expect(mutualInformation(table([0.25, 0.25], [0.25, 0.25]))).toBeCloseTo(0, 12)
    expect(mutualInformation(table([0.5, 0], [0, 0.5]))).toBeCloseTo(1, 12)
    // Binary symmetric channel: 1 - H(0.1) (Cover & Thomas, Elements of Information Theory, ch. 7).
    expect(mutualInformation(table([0.45, 0.05], [0.05, 0.45]))).toBeCloseTo(1 - entropy([0.1, 0.9]), 12)
  })

  it('of a look equals the doubt it is expected to remove, outcome by outcome', () => {
    const before = [intake(), look(5, { eggs: 'none', cells: 'none' })]
    const t = 8
    const now = storyFrom(before, t)
    const bits = tellingDays(now, 0)[0]?.bits ?? Number.NaN
    let [left, all] = [0, 0]
    for (const eggs of ['none', 'single', 'multiple'] as const)
      for (const open of ['none', 'some'] as const)
        for (const capped of ['none', 'worker', 'drone-in-worker'] as const)
          for (const queen of ['seen', 'unseen'] as const)
            for (const cells of ['none', 'cups', 'open', 'capped', 'emerged', 'torn-down'] as const) {
              const after = storyFrom([...before, look(t, { eggs, open, capped, queen, cells })], t)
              const p = Math.exp(after.walk.logChance - now.walk.logChance)
              all += p
              left += p * entropy(decisions(after, t))
            }
    expect(all).toBeCloseTo(1, 9)
    // The sighting that is plain wrong (4 in 10,000) is left out of the quick reckoning.
    expect(Math.abs(bits - (entropy(decisions(now, t)) - left))).toBeLessThan(0.02)
  })
})

describe('what a beekeeper would expect', () => {
  it('an unseen queen: day 5 or later tells far more than day 1 (old eggs are gone, cells show)', () => {
    const days = tellingDays(storyFrom([intake()], 0), 10)
    const best = mostTelling(days)
    expect(best !== null && best.day >= addDays(ON, 4) && best.day <= addDays(ON, 9)).toBe(true)
    expect(days[5]?.net ?? 0).toBeGreaterThan(2 * (days[1]?.net ?? 0))
    expect(bestLookWords(days, undefined, days[1])).toMatch(/^A look on \w{3} \d+ May tells most/)
  })

  it('a virgin about to fly: looking costs more than it tells', () => {
    const story = storyFrom([intake(), look(5, { eggs: 'none', cells: 'capped' })], 14)
    const days = tellingDays(story, 2)
    for (const d of days) expect(d.net).toBeLessThan(0)
    expect(bestLookWords(days)).toMatch(/leave the lid on|would tell little/)
  })

  it('a colony known to be queenright: a look tells next to nothing', () => {
    const sure = look(25, { eggs: 'single', open: 'plenty', capped: 'worker', queen: 'seen' })
    const days = tellingDays(storyFrom([intake(), sure], 26), 7)
    for (const d of days) expect(d.bits).toBeLessThan(0.08)
  })
})
