/**
 * The plan's proofs and the odds agree: what lies beyond the ambiguity horizon makes a layer all but certain. All but: one glance may
 * be wrong, more so in haste, so no single sighting is worth more than 95 in 100.
 */
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { addDays, type Day, daysBetween } from '../../src/days.ts'
import { planOf } from '../../src/decision/index.ts'
import { type KindShares, oddsToday, type Story, storyOf } from '../../src/forecast/queen-odds.ts'
import { DEFAULT_RATES, type Rates, ratesWith } from '../../src/forecast/rates.ts'
import { KINDS } from '../../src/forecast/story/kinds.ts'
import { Q, STATE } from '../../src/forecast/story/state.ts'
import { listModelOf, modelOf } from '../../src/forecast/story/walk.ts'
import type { Entry, Inspection } from '../../src/journal/entry.ts'
import { historyOf } from '../../src/journal/history.ts'
import type { Plan } from '../../src/recovery/plan-types.ts'
import { proven } from '../support/proven.ts'
import { type Random, seeded } from './random.ts'
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

const RATES = {
  'the default rates': DEFAULT_RATES,
  'many drone layers and failures': ratesWith({ virginDroneLayer: 0.1, layerFails: 0.01, misread: 0.005 }),
}

/** A proof beyond the horizon, without a surprise: what the plan says it is, and what the odds say. */
interface Proof {
  what: string
  eggs: boolean
  phase: Plan['phase']
  hasLaid: number
  laidLately: number
  laying: number
}

function proofsIn(c: Colony): Proof[] {
  const looks = c.entries.filter((e): e is Inspection => e.kind === 'inspection')
  return looks.flatMap((look) => {
    const { any, eggs } = provenBy(c.entries, look)
    if (!any || workersSeen(c.entries, look)) return []
    const now = both(c.entries, look.on)
    if (now === null || now.plan.surprises.length > 0 || now.plan.phase === 'laying-workers') return []
    const { hasLaid, laidLately, odds } = now
    const { phase } = now.plan
    const what = `${c.tag}, day ${daysBetween(START, look.on)}: ${phase} ${JSON.stringify(odds)}`
    return { what, eggs, phase, hasLaid, laidLately, laying: odds.laying }
  })
}

/** The proof of which the odds are least sure. Throws where there is none at all. */
function least(
  proofs: readonly Proof[],
  by: 'hasLaid' | 'laidLately' | 'laying',
): { least: number; what: string } {
  const [first, ...others] = proofs
  if (first === undefined) throw new Error(`no proof to be judged by ${by}`)
  const found = others.reduce((a, b) => (b[by] < a[by] ? b : a), first)
  return { least: found[by], what: found.what }
}

function simulated(random: Random, rates: Rates, nights: number, n = 0): Colony {
  return playOut(new Colony(random, rates, someIntake(random), `S-${n}`), nights)
}

/** Simulated colonies, the same each time: what was found is kept until what it rests on changes. */
const found = proven('agrees-with-plan', import.meta.filename, () => {
  const dice = seeded(6)
  const sums = Array.from({ length: 60 }, () => {
    const c = simulated(dice, DEFAULT_RATES, 40)
    const history = historyOf(c.tag, c.entries)
    if (history === null) throw new Error('no history')
    const { byDay } = storyOf(history, addDays(START, 40), model).walk
    return Math.max(...byDay.map((shares) => Math.abs(shares.w.reduce((a, b) => a + b, 0) - 1)))
  })
  const [others, quick] = [seeded(8), listModelOf(DEFAULT_RATES)]
  const quickly = Array.from({ length: 40 }, (_, i) => {
    const c = simulated(others, DEFAULT_RATES, 10 + (i % 30))
    const history = historyOf(c.tag, c.entries)
    if (history === null) throw new Error('no history')
    const today = addDays(START, c.t)
    const [exact, fast] = [model, quick].map((m) => oddsToday(storyOf(history, today, m, today)))
    return Math.max(...KINDS.map((k) => Math.abs((exact?.[k] ?? 0) - (fast?.[k] ?? 1))))
  })
  const proofs = Object.entries(RATES).map(([name, rates]) => {
    const random = seeded(5)
    const all = Array.from({ length: 100 }, (_, n) => proofsIn(simulated(random, rates, 45, n))).flat()
    const byEggs = all.filter((p) => p.eggs)
    const named = byEggs.filter((p) => p.phase === 'laying' || p.phase === 'queenright')
    return {
      name,
      proofs: all.length,
      hasLaid: least(all, 'hasLaid'),
      laidLately: least(byEggs, 'laidLately'),
      laying: least(named, 'laying'),
    }
  })
  return {
    sums: { of: sums.length, most: Math.max(...sums) },
    quickly: { of: quickly.length, most: Math.max(...quickly) },
    proofs,
  }
})

describe('random colonies', () => {
  for (const name of Object.keys(RATES))
    it(`a proof beyond the horizon, without a surprise, is more than 95 % (${name})`, () => {
      const of = found.proofs.find((p) => p.name === name)
      expect(of?.proofs).toBeGreaterThan(80)
      expect(of?.hasLaid.least, of?.hasLaid.what).toBeGreaterThan(0.95)
      expect(of?.laidLately.least, of?.laidLately.what).toBeGreaterThan(0.95)
      expect(of?.laying.least, of?.laying.what).toBeGreaterThan(0.9)
    })

  it('odds sum to one on every day, whatever is entered', () => {
    expect(found.sums.of).toBe(60)
    expect(found.sums.most).toBeCloseTo(0, 9)
  })

  it('the quick model for lists stays within a thousandth of the exact odds', () => {
    expect(found.quickly.of).toBe(40)
    expect(found.quickly.most).toBeLessThan(0.001)
  })
})
