/** The odds agree with a Monte-Carlo simulation of the same story, within sampling error. */
import { describe, expect, it } from 'vitest'
import { addDays } from '../../src/days.ts'
import { queenOdds, storyOf } from '../../src/forecast/queen-odds.ts'
import { DEFAULT_RATES, type Rates, ratesWith } from '../../src/forecast/rates.ts'
import { KINDS } from '../../src/forecast/story/kinds.ts'
import { modelOf } from '../../src/forecast/story/walk.ts'
import { historyOf } from '../../src/journal/history.ts'
import { proven } from '../support/proven.ts'
import { type Random, seeded } from './random.ts'
import { Colony, START } from './simulator.ts'

const BROOD = { eggs: 0.5, open: 1, capped: 1 }
const INTAKES = {
  unseen: {
    removal: { type: 'wall' },
    by: 'sim',
    yard: 'N',
    queen: 'unseen',
    brood: BROOD,
    broodCare: 'closed-chest',
  },
  caged: {
    removal: { type: 'tree' },
    by: 'sim',
    yard: 'N',
    queen: 'caged',
    brood: BROOD,
    broodCare: 'open-air',
  },
  lost: {
    removal: { type: 'roof' },
    by: 'sim',
    yard: 'N',
    queen: 'lost',
    brood: { eggs: 0, open: 1, capped: 0 },
  },
} as const
const DAYS = [1, 3, 5, 8, 12, 16, 20, 25, 30, 40, 60]
const RUNS = 8_000
const LIVELY = ratesWith({ layerFails: 0.02, strayArrives: 0.01, virginDroneLayer: 0.1, virginStays: 0.15 })

const RATES = { 'the default rates': DEFAULT_RATES, 'rates that try every turn': LIVELY }

function livedThrough(random: Random, rates: Rates, intake: (typeof INTAKES)[keyof typeof INTAKES]): Colony {
  const c = new Colony(random, rates, intake)
  while (c.t < 60) {
    c.night()
    if (c.t === 9) c.giveEggs()
    if (c.t === 20) c.giveQueen()
  }
  return c
}

const diceOf = (name: string, with_: string): Random => seeded(name.length * 1000 + with_.length)

/** How many of the simulated colonies had each kind, on each of the days. */
const simulated = proven('same-story', import.meta.filename, () =>
  Object.entries(INTAKES).flatMap(([name, intake]) =>
    Object.entries(RATES).map(([with_, rates]) => {
      const random = diceOf(name, with_)
      const seen = DAYS.map((): Record<string, number> => ({}))
      for (let i = 0; i < RUNS; i++) {
        const c = livedThrough(random, rates, intake)
        DAYS.forEach((t, k) => {
          const [kind, counts] = [c.truth[t] ?? '', seen[k] ?? {}]
          counts[kind] = (counts[kind] ?? 0) + 1
        })
      }
      return { name, with_, seen }
    }),
  ),
)

describe('shares of stories by day equal those of simulated colonies', () => {
  it('simulated as many as there are', () => {
    expect(simulated).toHaveLength(Object.keys(INTAKES).length * Object.keys(RATES).length)
    for (const { seen } of simulated)
      for (const counts of seen) expect(Object.values(counts).reduce((a, b) => a + b, 0)).toBe(RUNS)
  })

  for (const [name, intake] of Object.entries(INTAKES))
    for (const [with_, rates] of Object.entries(RATES))
      it(`queen ${name}, ${with_}, a frame of eggs on day 9, a bought queen on day 20`, () => {
        const seen = simulated.find((s) => s.name === name && s.with_ === with_)?.seen
        const first = livedThrough(diceOf(name, with_), rates, intake)
        const history = historyOf('S-1', first.entries)
        if (history === null) throw new Error('no history')
        const odds = queenOdds(storyOf(history, addDays(START, 60), modelOf(rates)))
        // Nothing was seen, only given, so hindsight adds nothing and the shares are the forecast itself.
        DAYS.forEach((t, k) => {
          const row = odds.days[t]
          if (row === undefined) throw new Error(`no day ${t}`)
          for (const kind of KINDS) {
            const p = row[kind]
            const share = (seen?.[k]?.[kind] ?? 0) / RUNS
            const error = Math.sqrt(Math.max(p * (1 - p), 1 / RUNS) / RUNS)
            expect(Math.abs(share - p), `${kind} on day ${t}: ${share} simulated, ${p} counted`).toBeLessThan(
              4.2 * error,
            )
          }
        })
      })
})
