/** The closed loop, small: what must hold whatever the advice is. The figures are those of `npm run bench -- advice`. */
import { readdirSync, readFileSync } from 'node:fs'
import { beforeAll, describe, expect, it } from 'vitest'
import { entry } from '../../../src/journal/entry.ts'
import { contradictions } from '../../../src/journal/history.ts'
import { provenLater } from '../../support/proven.ts'
import { inProcess } from './ask.ts'
import { DEFAULT_COSTS, Keeper } from './keeper.ts'
import { measure, type Results } from './measure.ts'
import { diceFor, FATES, LAST_DAY, play } from './play.ts'
import { RULES } from './rules/all.ts'
import { cost, paired, rowOf, saved, share } from './tally.ts'
import { Colony } from './truth.ts'
import { AS_PUBLISHED } from './world.ts'
import { randomWorld, WORLDS } from './worlds.ts'

const SEED = 1
const COLONIES = 120
const FEW = 8
const SOME = ['the advice', 'look every week']
const TRUTH = 'a rule that knows the truth'
const settings = { asker: inProcess(), costs: DEFAULT_COSTS }
const job = (to: number, rules = RULES.map((r) => r.name)) => ({
  world: AS_PUBLISHED,
  rules,
  seed: SEED,
  from: 0,
  to,
  ask: 'plan' as const,
})

/** What a rule's colonies came to. */
interface Played {
  colonies: number
  fates: Partial<Record<string, number>>
  longest: number
  /** Still here, but not on the last day. */
  leftEarly: number
  /** The shares of all fates, together. */
  shares: number
  /** Means over the same colonies, against the rule that knows the truth, and against never touching. */
  truthSavesMore: number
  truthCostsMore: number
  savesMoreThanNothing: number
}

function played(rule: string, results: Results): Played {
  const of = (name: string) => results[name] ?? []
  const own = of(rule)
  const { fates } = rowOf(rule, own)
  return {
    colonies: own.length,
    fates: Object.fromEntries(
      [...new Set(own.map((r) => r.fate))].map((f) => [f, own.filter((r) => r.fate === f).length]),
    ),
    longest: Math.max(...own.map((r) => r.days)),
    leftEarly: own.filter((r) => r.fate === 'still-here' && r.days !== LAST_DAY).length,
    shares: FATES.reduce((sum, fate) => sum + fates[fate].mean, 0),
    truthSavesMore: paired(of(TRUTH), own, saved).mean,
    truthCostsMore: paired(of(TRUTH), own, cost).mean,
    savesMoreThanNothing: paired(own, of('never touch'), saved).mean,
  }
}

describe('one world, all rules', () => {
  /** A plan for each visit of 120 colonies under sixteen rules takes half a minute: kept, as the other studies are. */
  let found: Record<string, Played>
  /** The same, a few of them, played every day. */
  let few: Results

  beforeAll(async () => {
    found = await provenLater('closed-loop', import.meta.filename, async () => {
      const results = await measure(job(COLONIES))
      return Object.fromEntries(RULES.map(({ name }) => [name, played(name, results)]))
    })
    few = await measure(job(FEW, SOME))
  })

  const of = (name: string): Played => {
    const row = found[name]
    if (row === undefined) throw new Error(`no rule "${name}" was played`)
    return row
  }

  it('gives each colony exactly one fate, within 90 days', () => {
    for (const rule of RULES) {
      const row = of(rule.name)
      expect(row.colonies).toBe(COLONIES)
      for (const fate of Object.keys(row.fates)) expect(FATES).toContain(fate)
      expect(row.longest).toBeLessThanOrEqual(LAST_DAY)
      expect(row.leftEarly).toBe(0)
      expect(row.shares).toBeCloseTo(1, 10)
    }
  })

  it('nobody saves more, or for less, than the rule that knows the truth', () => {
    for (const rule of RULES) {
      expect(of(rule.name).truthSavesMore, rule.name).toBeGreaterThanOrEqual(0)
      expect(of(rule.name).truthCostsMore, rule.name).toBeLessThanOrEqual(0)
    }
    expect((of(TRUTH).fates.saved ?? 0) / COLONIES).toBeGreaterThan(0.9)
  })

  it('doing something sensible is better than nothing', () =>
    expect(of('look every week').savesMoreThanNothing).toBeGreaterThan(0))

  it('hardly any colony leaves in error where proofs are asked for', () => {
    for (const rule of RULES.filter((r) => r.family !== 'unproven'))
      expect((of(rule.name).fates['moved-out-in-error'] ?? 0) / COLONIES, rule.name).toBeLessThan(0.05)
  })

  it('the same seed gives the same results, and another seed others', async () => {
    const again = await measure(job(FEW, SOME))
    expect(again).toEqual(few)
    const other = await measure({ ...job(FEW, SOME), seed: SEED + 1 })
    expect(other['look every week']).not.toEqual(again['look every week'])
  })

  it('colonies are the same from the middle as from the start, so that parts can be played apart', async () => {
    const part = await measure({ ...job(FEW, SOME), from: FEW - 3 })
    for (const rule of SOME) expect(part[rule]).toEqual(few[rule]?.slice(FEW - 3))
  })
})

describe('the same dice for every rule', () => {
  it('a box that is opened daily lives as one that is not, where opening does no harm', () => {
    const harmless = { ...AS_PUBLISHED, openingLosesVirgin: 0, openingMakesLeave: 0 }
    for (let n = 0; n < 40; n++) {
      const [left, opened] = [0, 1].map(() => new Colony(harmless, diceFor(harmless, SEED, n)))
      if (left === undefined || opened === undefined) throw new Error('two colonies were made')
      const keeper = new Keeper(opened)
      while (left.day < 40 && left.gone === null) {
        left.step()
        opened.step()
        keeper.look()
        expect(opened.gone).toBe(left.gone)
        expect(opened.queen).toEqual(left.queen)
        expect(opened.bees.count).toBe(left.bees.count)
      }
    }
  })

  it('the intake, and the days on which the keeper comes, are those of the colony', () => {
    const days = (n: number, touch: boolean): string => {
      const colony = new Colony(AS_PUBLISHED, diceFor(AS_PUBLISHED, SEED, n))
      const keeper = new Keeper(colony)
      const comes: number[] = []
      while (colony.day < 50) {
        colony.step()
        if (keeper.comes) comes.push(colony.day)
        if (touch && colony.day === 9) keeper.giveEggFrame()
      }
      return JSON.stringify([keeper.entries[0], comes])
    }
    for (let n = 0; n < 10; n++) expect(days(n, true)).toBe(days(n, false))
  })
})

it('what the keeper writes is what the journal takes', async () => {
  const worlds = [...WORLDS, randomWorld(3, 0)]
  for (const world of worlds)
    for (let n = 0; n < 12; n++) {
      const colony = new Colony(world, diceFor(world, SEED, n))
      const keeper = new Keeper(colony)
      const visit = RULES.find((r) => r.name === 'look every week')?.begin(settings)
      while (colony.day < LAST_DAY && keeper.fate === null && colony.gone === null) {
        colony.step()
        if (colony.gone === null && keeper.comes) await visit?.(keeper)
      }
      for (const e of keeper.entries) expect(entry.safeParse(e).error?.message).toBeUndefined()
      expect(contradictions(keeper.entries, colony.on)).toEqual([])
    }
})

it('a keeper who is never there does nothing, and costs nothing but days and what is lost', async () => {
  const empty = { ...AS_PUBLISHED, presence: 1e-9 }
  const rule = RULES.find((r) => r.name === 'the advice')
  if (rule === undefined) throw new Error('no rule "the advice"')
  const result = await play(empty, rule, SEED, 0, settings)
  expect([result.openings, result.queens, result.frames]).toEqual([0, 0, 0])
})

it("Wilson's limits: 81 of 263 give 0.255 to 0.366 (Newcombe 1998, table I)", () => {
  const { lower, upper } = share(81, 263)
  expect(lower).toBeCloseTo(0.2553, 3)
  expect(upper).toBeCloseTo(0.3662, 3)
})

it('shares nothing with the belief: only `ask.ts` reaches the plan, and nobody its insides', () => {
  const folder = new URL('.', import.meta.url)
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
    (name) => name.endsWith('.ts') && !name.endsWith('.test.ts'),
  )
  expect(files).toContain('truth.ts')
  const allowed = (name: string): RegExp =>
    name === 'ask.ts'
      ? /src\/(days|journal\/|decision\/plan\.ts|recovery\/protocol\.ts|bin\.mjs)/
      : /src\/(days|journal\/)/
  for (const name of files) {
    const text = readFileSync(new URL(name, folder), 'utf8')
    for (const [path] of text.matchAll(/(?:\.\.\/)+src\/[\w./-]+/g)) expect(path, name).toMatch(allowed(name))
  }
})
