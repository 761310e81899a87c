/**
 * The plan's proofs and the odds agree: what lies beyond the ambiguity horizon makes a layer all but certain. All but: one glance may
 * be wrong, more so in haste, so no single sighting is worth more than 95 in 100.
 */
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { addDays, type Day, daysBetween } from '../../src/days.ts'
import { planOf } from '../../src/decision/index.ts'
import { type KindShares, oddsToday, type Story, storyOf } from '../../src/forecast/queen-odds.ts'
import { DEFAULT_RATES, ratesWith } from '../../src/forecast/rates.ts'
import { KINDS } from '../../src/forecast/story/kinds.ts'
import { Q, STATE } from '../../src/forecast/story/state.ts'
import { listModelOf, modelOf } from '../../src/forecast/story/walk.ts'
import type { Entry, Inspection } from '../../src/journal/entry.ts'
import { historyOf } from '../../src/journal/history.ts'
import type { Plan } from '../../src/recovery/plan-types.ts'
import { seeded } from './random.ts'
import { Colony, playOut, START, someIntake } from './simulator.ts'

const model = modelOf(DEFAULT_RATES)

interface Both {
  plan: Plan
  odds: KindShares
  /** Share of stories in which somebody has laid here since the removal, whoever lays now. */
  hasLaid: number
  /** The same within three days: what eggs prove (eggs are 0-3 days old). */
  laidLately: number
}

/** Share of stories in which somebody lays now, or has since the removal and at most so many days ago. */
function hasLaid(story: Story, within = Number.POSITIVE_INFINITY): number {
  const shares = story.walk.byDay[story.t]
  if (shares === undefined) throw new Error('no shares')
  return shares.states.reduce((sum, n, i) => {
    const s = STATE[n]
    if (s === undefined) return sum
    const former = s.old < story.t && s.old <= within
    const laid = s.stage === Q.laying || s.stage === Q.drones || former
    return sum + (laid ? (shares.w[i] ?? 0) : 0)
  }, 0)
}

function both(entries: readonly Entry[], today: Day): Both | null {
  const history = historyOf(
    entries[0]?.colony ?? '',
    entries.filter((e) => e.on <= today),
  )
  if (history === null) return null
  const story = storyOf(history, today, model, today)
  return {
    plan: planOf(history, today),
    odds: oddsToday(story),
    hasLaid: hasLaid(story),
    laidLately: hasLaid(story, 3),
  }
}

/** What of a look lies beyond its horizon, by the plan before the look. */
function provenBy(entries: readonly Entry[], look: Inspection): { eggs: boolean; any: boolean } {
  const before = both(
    entries.filter((e) => e !== look && e.on <= look.on),
    look.on,
  )
  if (before === null || !look.opened) return { eggs: false, any: false }
  const past = (limit: Day | null): boolean => look.onFreshComb === true || limit === null || look.on > limit
  const { horizon } = before.plan
  const eggs = look.eggs === 'single' && past(horizon.eggs)
  return { eggs, any: eggs || (look.capped === 'worker' && past(horizon.capped)) }
}

interface Case {
  name: string
  input: { tag: string; entries: (Record<string, unknown> & { on: string; known?: string })[] }
  expect: { asOf: string }[]
}
const cases: Case[] = ['worked', 'own'].flatMap((file) =>
  JSON.parse(readFileSync(new URL(`../recovery/cases/${file}.json`, import.meta.url), 'utf8')),
)

describe('worked case histories', () => {
  for (const c of cases) {
    const all = c.input.entries.map((e, i) => ({
      id: `00000000-0000-7000-8000-${String(i).padStart(12, '0')}`,
      colony: c.input.tag,
      ...e,
    }))
    const knownOn = (day: Day): Entry[] =>
      all.filter((e) => (e.known ?? e.on) <= day).map(({ known: _, ...e }) => e as unknown as Entry)
    for (const day of [...new Set([...c.expect.map((e) => e.asOf), ...all.map((e) => e.on)])].sort())
      it(`${c.name} on ${day}`, () => {
        const entries = knownOn(day)
        const now = both(entries, day)
        if (now === null) throw new Error('no history')
        const { plan, odds, hasLaid } = now
        expect(KINDS.reduce((sum, k) => sum + odds[k], 0)).toBeCloseTo(1, 9)
        // Where the record contradicts itself the plan says so and the odds weigh who is likelier wrong: no proof.
        if (plan.surprises.length > 0) return
        const look = historyOf(c.input.tag, entries)?.entries.findLast(
          (e) => e.kind === 'inspection' && e.opened,
        )
        if (look?.kind === 'inspection' && look.on === day && provenBy(entries, look).any)
          expect(hasLaid).toBeGreaterThan(0.95)
        // Several eggs in a cell are never a proof by themselves: the plan asks to look again.
        const doubles = look?.kind === 'inspection' && look.eggs === 'multiple'
        if ((plan.phase === 'laying' || plan.phase === 'queenright') && !doubles)
          expect(odds.laying).toBeGreaterThan(look?.on === day ? 0.95 : 0.9)
        if (plan.phase === 'laying-workers') expect(odds['laying-workers']).toBeGreaterThan(0.9)
        if (plan.phase === 'queenless') expect(odds.laying).toBeLessThan(0.5)
        if (plan.phase === 'rearing') expect(odds.raising + odds.virgin).toBeGreaterThan(0.5)
      })
  }
})

/** Several eggs a cell or raised caps, then or before: never a proof of a queen by themselves, whatever single eggs follow. */
const workersSeen = (entries: readonly Entry[], look: Inspection): boolean =>
  entries.some(
    (e) =>
      e.kind === 'inspection' && e.on <= look.on && (e.eggs === 'multiple' || e.capped === 'drone-in-worker'),
  )

describe('random colonies', () => {
  const RATES = {
    'the default rates': DEFAULT_RATES,
    'many drone layers and failures': ratesWith({ virginDroneLayer: 0.1, layerFails: 0.01, misread: 0.005 }),
  }
  for (const [name, rates] of Object.entries(RATES))
    it(`a proof beyond the horizon, without a surprise, is more than 95 % (${name})`, () => {
      const random = seeded(5)
      let proofs = 0
      for (let i = 0; i < 100; i++) {
        const c = playOut(new Colony(random, rates, someIntake(random)), 45)
        for (const look of c.entries.filter((e): e is Inspection => e.kind === 'inspection')) {
          const proven = provenBy(c.entries, look)
          if (!proven.any || workersSeen(c.entries, look)) continue
          const now = both(c.entries, look.on)
          if (now === null || now.plan.surprises.length > 0 || now.plan.phase === 'laying-workers') continue
          proofs++
          const seen = JSON.stringify(
            c.entries.filter((e) => e.on <= look.on).map(({ id: _, colony: __, by: ___, ...e }) => e),
          )
          const what = `day ${daysBetween(START, look.on)}: ${now.plan.phase} ${JSON.stringify(now.odds)} ${seen}`
          expect(now.hasLaid, what).toBeGreaterThan(0.95)
          if (proven.eggs) {
            expect(now.laidLately, what).toBeGreaterThan(0.95)
            const lays = now.plan.phase === 'laying' || now.plan.phase === 'queenright'
            if (lays) expect(now.odds.laying, what).toBeGreaterThan(0.9)
          }
        }
      }
      expect(proofs).toBeGreaterThan(80)
    })

  it('odds sum to one on every day, whatever is entered', () => {
    const random = seeded(6)
    for (let i = 0; i < 60; i++) {
      const c = playOut(new Colony(random, DEFAULT_RATES, someIntake(random)), 40)
      const history = historyOf(c.tag, c.entries)
      if (history === null) throw new Error('no history')
      const story = storyOf(history, addDays(START, 40), model)
      for (const shares of story.walk.byDay) expect(shares.w.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9)
    }
  })

  it('the quick model for lists stays within a thousandth of the exact odds', () => {
    const random = seeded(8)
    const quick = listModelOf(DEFAULT_RATES)
    for (let i = 0; i < 40; i++) {
      const c = playOut(new Colony(random, DEFAULT_RATES, someIntake(random)), 10 + (i % 30))
      const history = historyOf(c.tag, c.entries)
      if (history === null) throw new Error('no history')
      const today = addDays(START, c.t)
      const [exact, fast] = [model, quick].map((m) => oddsToday(storyOf(history, today, m, today)))
      for (const k of KINDS) expect(Math.abs((exact?.[k] ?? 0) - (fast?.[k] ?? 1))).toBeLessThan(0.001)
    }
  })
})
