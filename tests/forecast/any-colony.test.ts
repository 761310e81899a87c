/** Whatever valid colony is entered, in whatever order, the forecasts are figures that make sense. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addDays } from '../../src/days.ts'
import { colonyForecast } from '../../src/forecast/colony-forecast.ts'
import { DEFAULT_RATES } from '../../src/forecast/rates.ts'
import { KINDS } from '../../src/forecast/story/kinds.ts'
import { modelOf } from '../../src/forecast/story/walk.ts'
import { needOf } from '../../src/forecast/supplies.ts'
import { historyOf } from '../../src/journal/history.ts'
import { colony, START } from '../recovery/arbitrary.ts'
import { LONG_ENOUGH, often } from '../support/long.ts'

const model = modelOf(DEFAULT_RATES)
const share = (p: number): boolean => p >= -1e-12 && p <= 1 + 1e-9

describe('random colonies', () => {
  it(
    'have odds that sum to one, bands in order, chances between 0 and 1; nothing throws',
    () => {
      fc.assert(
        fc.property(colony(), fc.integer({ min: 0, max: 120 }), (entries, t) => {
          const today = addDays(START, t)
          const history = historyOf(
            'X-1',
            entries.filter((e) => e.on <= today),
          )
          if (history === null) return
          const { odds, telling, strength, moveOut, story } = colonyForecast(history, today, { model })
          for (const day of odds.days) {
            expect(KINDS.reduce((sum, k) => sum + day[k], 0)).toBeCloseTo(1, 6)
            expect(KINDS.every((k) => share(day[k]))).toBe(true)
          }
          expect(Number.isFinite(odds.logChance)).toBe(true)
          for (const e of odds.evidence) expect(e.factor).toBeGreaterThan(0)
          for (const d of telling) expect(d.bits >= 0 && d.harm >= 0 && Number.isFinite(d.net)).toBe(true)
          for (const d of strength.days)
            expect(d.low <= d.median && d.median <= d.high && share(d.under) && d.brood >= 0).toBe(true)
          expect(share(strength.chanceUnder)).toBe(true)
          expect(share(moveOut.ever)).toBe(true)
          const need = needOf(story, { ahead: 14 })
          expect([...need.queens, ...need.eggFrames].every(share)).toBe(true)
        }),
        { numRuns: often(400, 15) },
      )
    },
    LONG_ENOUGH,
  )

  it(
    'a note changes nothing',
    () => {
      fc.assert(
        fc.property(colony(), (entries) => {
          const today = addDays(START, 50)
          const known = entries.filter((e) => e.on <= today)
          const plain = historyOf('X-1', known)
          const with_ = historyOf('X-1', [
            ...known,
            {
              id: '019707a0-0000-7000-8000-ffffffffffff',
              colony: 'X-1',
              by: 'a',
              on: START,
              kind: 'note',
              text: 'Sunny.',
            },
          ])
          if (plain === null || with_ === null) return
          expect(colonyForecast(with_, today, { model }).odds).toEqual(
            colonyForecast(plain, today, { model }).odds,
          )
        }),
        { numRuns: often(100, 4) },
      )
    },
    LONG_ENOUGH,
  )
})
