/** The odds agree with a Monte-Carlo simulation of the same story, within sampling error. */
import { describe, expect, it } from 'vitest'
import { addDays } from '../../src/days.ts'
import { queenOdds, storyOf } from '../../src/forecast/queen-odds.ts'
import { DEFAULT_RATES, ratesWith } from '../../src/forecast/rates.ts'
import { KINDS } from '../../src/forecast/story/kinds.ts'
import { modelOf } from '../../src/forecast/story/walk.ts'
import { historyOf } from '../../src/journal/history.ts'
import { seeded } from './random.ts'
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

describe('shares of stories by day equal those of simulated colonies', () => {
  for (const [name, intake] of Object.entries(INTAKES))
    for (const [with_, rates] of Object.entries({
      'the default rates': DEFAULT_RATES,
      'rates that try every turn': LIVELY,
    }))
      it(`queen ${name}, ${with_}, a frame of eggs on day 9, a bought queen on day 20`, () => {
        const random = seeded(name.length * 1000 + with_.length)
        const seen = DAYS.map(() => new Map<string, number>())
        let first: Colony | undefined
        for (let i = 0; i < RUNS; i++) {
          const c = new Colony(random, rates, intake)
          while (c.t < 60) {
            c.night()
            if (c.t === 9) c.giveEggs()
            if (c.t === 20) c.giveQueen()
          }
          DAYS.forEach((t, k) => {
            const kind = c.truth[t] ?? ''
            seen[k]?.set(kind, (seen[k]?.get(kind) ?? 0) + 1)
          })
          first ??= c
        }
        const history = historyOf('S-1', first?.entries ?? [])
        if (history === null) throw new Error('no history')
        const odds = queenOdds(storyOf(history, addDays(START, 60), modelOf(rates)))
        // Nothing was seen, only given, so hindsight adds nothing and the shares are the forecast itself.
        DAYS.forEach((t, k) => {
          const row = odds.days[t]
          if (row === undefined) throw new Error(`no day ${t}`)
          for (const kind of KINDS) {
            const p = row[kind]
            const share = (seen[k]?.get(kind) ?? 0) / RUNS
            const error = Math.sqrt(Math.max(p * (1 - p), 1 / RUNS) / RUNS)
            expect(Math.abs(share - p), `${kind} on day ${t}: ${share} simulated, ${p} counted`).toBeLessThan(
              4.2 * error,
            )
          }
        })
      })
})
