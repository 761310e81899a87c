/** One belief: whatever is recorded, phase and advice do not go against it. TEST_LONG=1 asks 20,000 histories. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addDays, inWords } from '../../src/days.ts'
import { planOf } from '../../src/decision/index.ts'
import { support } from '../../src/decision/phase.ts'
import { DEFAULT_RATES, KINDS, listModelOf, oddsToday, storyOf } from '../../src/forecast/index.ts'
import { historyOf } from '../../src/journal/history.ts'
import { seeded } from '../forecast/random.ts'
import { Colony, playOut, START as SIMULATED, someIntake } from '../forecast/simulator.ts'
import { colony, START } from '../recovery/arbitrary.ts'
import { often } from '../support/long.ts'
import { proven } from '../support/proven.ts'

const RUNS = often(20_000, 400)
const model = listModelOf(DEFAULT_RATES)

/** The same histories each time, so that what was found is kept until what it rests on changes. */
const asked = proven('one-belief', import.meta.filename, () => {
  const { failed, numRuns, counterexample, errorInstance } = fc.check(
    fc.property(colony(), fc.integer({ min: 0, max: 90 }), (entries, t) => {
      const today = addDays(START, t)
      const history = historyOf(
        'X-1',
        entries.filter((e) => e.on <= today),
      )
      if (history === null || history.intake.on > today) return
      const plan = planOf(history, today)
      const odds = oddsToday(storyOf(history, today, model, today))
      expect(support(plan.phase, odds), plan.phase).toBeGreaterThanOrEqual(0.5)
      const count = history.entries.findLast((e) => e.kind === 'inspection' && e.framesOfBees !== undefined)
      const handful = count?.kind === 'inspection' && (count.framesOfBees ?? 9) < 1.5
      const gives = ['unite', 'buy-queen', 'take-out-queen'].includes(plan.advice.action)
      if (gives && !handful)
        expect(
          odds.laying + (plan.advice.action === 'take-out-queen' ? 0 : odds.present),
        ).toBeLessThanOrEqual(0.5)
      // Of a colony that has left nothing is reckoned.
      if (history.outcome !== null) {
        expect(plan).toMatchObject({ belief: [], options: [] })
        return
      }
      expect(plan.belief.reduce((sum, b) => sum + b.odds, 0)).toBeGreaterThan(0.95)
      expect(KINDS.some((k) => k === plan.belief[0]?.story)).toBe(true)
    }),
    { numRuns: RUNS, seed: 12 },
  )
  return {
    failed,
    numRuns,
    what: failed ? `${JSON.stringify(counterexample)}: ${String(errorInstance)}` : '',
  }
})

describe('whatever is recorded', () => {
  it('no phase stands that the belief gives under half, and no queen is given up or replaced against it', () =>
    expect(asked).toEqual({ failed: false, numRuns: RUNS, what: '' }))
})

/** 'until Tue 23 Jun, then look', 'until Sun 14 Jun; look on Tue 23 Jun.': the day of what was decided. */
const DEED = /until (\w+ \d+ \w+), then|; (?:look|give it a frame of eggs) on (\w+ \d+ \w+)\./
const DAYS = Array.from({ length: 60 }, (_, d) => d + 1)

describe('a colony left alone', () => {
  it('is told the same day until that day comes, and asked for it then', () => {
    const random = seeded(31)
    let waits = 0
    for (let i = 0; i < 30; i++) {
      const c = playOut(new Colony(random, DEFAULT_RATES, someIntake(random)), 3 + (i % 24))
      const history = historyOf(c.tag, c.entries)
      if (history === null) throw new Error('no history')
      const today = addDays(SIMULATED, c.t)
      const first = planOf(history, today).advice
      const [, then, later] = DEED.exec(first.why) ?? []
      const said = first.action === 'leave-alone' ? (then ?? later) : undefined
      if (said === undefined) continue
      waits++
      const ahead = DAYS.find((d) => inWords(addDays(today, d)) === said)
      if (ahead === undefined) throw new Error(`no day to come is ${said}`)
      for (let d = 1; d < ahead; d++) {
        const { action, why } = planOf(history, addDays(today, d)).advice
        // A look from outside, and a question whose own window has come due, are asked on days that the checks announce.
        expect(['leave-alone', 'outside-look', 'open-and-look', 'feed']).toContain(action)
        if (action === 'leave-alone') expect(why).toContain(said)
      }
      expect(['open-and-look', 'give-egg-frame']).toContain(
        planOf(history, addDays(today, ahead)).advice.action,
      )
    }
    expect(waits).toBeGreaterThan(3)
  })
})
