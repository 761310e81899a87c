/**
 * Places of the weighing where a small slip would go unnoticed by every larger test: a mutation run found that none of them
 * failed when the limit, the "and" or the sign there was turned round. Figures are worked out by hand from the constants'
 * own sentences.
 */
import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { describe, expect, test } from 'vitest'
import { addDays } from '../../src/days.ts'
import { aheadOf } from '../../src/decision/ahead.ts'
import { COMPACT, COMPACT_STATES, compactOf } from '../../src/decision/compact.ts'
import { DEFAULT_COSTS, DEFAULT_SUPPLIES, type Supplies } from '../../src/decision/costs.ts'
import { decisionOf } from '../../src/decision/decide.ts'
import { outcomesOf } from '../../src/decision/leaf.ts'
import { libraryOf } from '../../src/decision/library.ts'
import { leadOf, type Option, Room } from '../../src/decision/options.ts'
import { believable } from '../../src/decision/phase.ts'
import { storyAt } from '../../src/decision/stories.ts'
import {
  DEFAULT_RATES,
  KINDS,
  type KindShares,
  listModelOf,
  NOTHING_AROUND,
  Q,
  STATE,
} from '../../src/forecast/index.ts'
import { entry, historyOf } from '../../src/journal/index.ts'
import { DEFAULT_PROTOCOL } from '../../src/recovery/index.ts'

const option = (act: Option['act'], value: number, inDays = 0, keeps = 0.5): Option => ({
  act,
  inDays,
  value,
  keeps,
  queenNext: 0,
})
const decided = (options: Option[], gain = 0) => decisionOf(options, 100, () => gain)

describe('of what is worth the same, of a colony worth 100', () => {
  test('a graver step is taken only for more than 0.6 of a hundred', () => {
    expect(decided([option('look', 50), option('give', 50.6)])?.act).toBe('look')
    expect(decided([option('look', 50), option('give', 50.7)])?.act).toBe('give')
  })

  test('a queen is not bought to win days where a gentler step keeps over three of a hundred more', () => {
    expect(decided([option('look', 50, 0, 0.5), option('queen', 60, 0, 0.465)])?.act).toBe('look')
    expect(decided([option('look', 50, 0, 0.5), option('queen', 60, 0, 0.475)])?.act).toBe('queen')
    // Frames of eggs and uniting are not asked that.
    expect(decided([option('look', 50, 0, 0.5), option('unite', 60, 0, 0.4)])?.act).toBe('unite')
  })

  test('of looks within 0.2 of the best the latest, of frames of eggs the soonest', () => {
    expect(decided([option('look', 50, 3), option('look', 49.8, 7), option('look', 49.7, 9)])?.inDays).toBe(7)
    expect(decided([option('give', 50, 6), option('give', 49.8, 3), option('give', 49.7, 0)])?.inDays).toBe(3)
  })

  test('a queen is sent for where that gains more than two of a hundred', () => {
    expect(decided([option('look', 50)], 2)?.order).toBe(false)
    expect(decided([option('look', 50)], 2.1)?.order).toBe(true)
  })

  test('of each kind the best is told, the first of two alike, and a look to come is another kind than one now', () => {
    const [now, soon, late] = [option('look', 40), option('look', 45, 3), option('look', 45, 5)]
    expect(decided([now, soon, late, option('give', 60), option('give', 50, 3)])?.options).toEqual([
      option('give', 60),
      soon,
      now,
    ])
  })
})

test('days until a queen are reckoned in steps, each to its last day', () => {
  const lead = (daysUntilQueens: number, queensInHand = 0) =>
    leadOf({ queensInHand, daysUntilQueens, eggFrames: 0 })
  expect([0, 3, 4, 6, 7, 10, 11, 60].map((days) => lead(days))).toEqual([3, 3, 5, 5, 8, 8, 14, 14])
  expect(lead(10, 1)).toBe(0)
})

describe('the small states', () => {
  test('each stands for itself', () => {
    expect(COMPACT.map((s) => compactOf(s, -1))).toEqual(COMPACT.map((_, i) => i))
    expect(COMPACT).toHaveLength(COMPACT_STATES)
  })

  test('know the age of young brood up to nine days, her own or a frame’s, whichever is younger', () => {
    const orphaned = (old: number, gift: number) =>
      compactOf({ stage: Q.none, age: 4, old, caged: false }, gift)
    const none = compactOf({ stage: Q.none, age: 4, old: 40, caged: false }, -1)
    expect(COMPACT[none]).toMatchObject({ stage: Q.none, age: 4 })
    expect([9, 10].map((old) => orphaned(old, -1))).toEqual([9, none])
    expect([0, 9, 10].map((gift) => orphaned(40, gift))).toEqual([0, 9, none])
    expect(orphaned(3, 7)).toBe(3)
  })
})

test('a belief of just a half is enough to bear a phase out, or to name one', () => {
  const odds = (some: Partial<KindShares>): KindShares => ({
    ...(Object.fromEntries(KINDS.map((k) => [k, 0])) as KindShares),
    ...some,
  })
  expect(believable('laying', odds({ laying: 0.5, queenless: 0.5 }))).toBe('laying')
  expect(believable('laying', odds({ laying: 0.49, raising: 0.5, chance: 0.01 }))).toBe('rearing')
  expect(believable('laying', odds({ laying: 0.49, raising: 0.26, chance: 0.25 }))).toBe('queenless')
})

const model = listModelOf(DEFAULT_RATES)

describe('a look', () => {
  test('loses nothing of the belief: what it may show sums to what there was, and a virgin it loses is an orphan then', () => {
    // A third each: a virgin young enough to be lost, one too old for that, a layer.
    const find = (stage: number, age: number): number =>
      STATE.findIndex((s) => s.stage === stage && s.age === age)
    const states = [find(Q.virgin, 3), find(Q.virgin, 20), find(Q.laying, 10)]
    const shown = outcomesOf({ states, w: [1 / 3, 1 / 3, 1 / 3] } as never, NOTHING_AROUND, model)
    expect(shown.reduce((sum, b) => sum + b.total, 0)).toBeCloseTo(1, 9)
    const orphaned = shown.reduce(
      (sum, b) =>
        sum + b.w.reduce((s, w, i) => s + (COMPACT[b.states[i] ?? -1]?.stage === Q.none ? w : 0), 0),
      0,
    )
    expect(orphaned).toBeGreaterThan(0)
    expect(orphaned).toBeLessThan(1 / 3)
  })
})

describe('options', () => {
  const START = '2026-05-01'
  const raw = [
    {
      kind: 'intake',
      on: START,
      removal: { type: 'wall' },
      yard: 'North',
      queen: 'unseen',
      brood: { eggs: 1, open: 1 },
    },
    { kind: 'inspection', on: addDays(START, 7), opened: true, eggs: 'none', cells: 'none', framesOfBees: 5 },
  ]
  const history = historyOf(
    'X-1',
    raw.map((e, i) =>
      entry.parse({ id: `0000000${i}-0000-7000-8000-000000000000`, colony: 'X-1', by: 'ada', ...e }),
    ),
  )
  if (history === null) throw new Error('no intake')
  const library = libraryOf()
  const roomWith = (supplies: Partial<Supplies>): Room =>
    new Room({
      story: storyAt(history, addDays(START, 8), model),
      costs: DEFAULT_COSTS,
      supplies: { ...DEFAULT_SUPPLIES, ...supplies },
      library,
      frames: 5,
      protocol: DEFAULT_PROTOCOL,
      mayOpen: () => true,
      mayGive: () => true,
      framesLeft: true,
      mayBuy: true,
      mayUnite: true,
      openToday: false,
    })

  test('are worth what they are worth, and a frame for strength costs the frame and the opening besides', () => {
    const room = roomWith({})
    const options = room.options()
    const looks = options.filter((o) => o.act === 'look')
    expect(looks.length).toBeGreaterThan(5)
    for (const o of looks) expect(o.value).toBe(room.look(o.inDays)?.value)
    expect(options.find((o) => o.act === 'queen')?.value).toBe(room.straight('b').value)
  })

  test('a queen on her way is worth what the look is worth with her there, less her price', () => {
    const room = roomWith({ daysUntilQueens: 14 })
    const look = room.options().find((o) => o.act === 'look' && o.inDays === 3)
    if (look === undefined) throw new Error('no look in three days')
    const there = room.look(3, 5, 0)?.value ?? Number.NaN
    expect(there).toBeGreaterThan(look.value)
    expect(room.orderGain(look)).toBeCloseTo(there - look.value - DEFAULT_COSTS.queen, 9)
    // Nothing is gained where a queen is in hand, or is bought, or none will be needed.
    expect(roomWith({ queensInHand: 1 }).orderGain(look)).toBe(0)
    expect(room.orderGain(option('queen', 50))).toBe(0)
    expect(room.orderGain(option('unite', 50))).toBe(0)
    expect(room.orderGain(option('give', 50))).toBe(Number.NEGATIVE_INFINITY)
  })
})

test('tables of what plans are worth keep what is asked of them, and not what was reckoned on the way', async () => {
  setFlagsFromString('--expose-gc')
  const gc = runInNewContext('gc') as () => void
  const season = { now: 1, soon: 1, begun: 1, shut: 0 }
  const kept: unknown[] = []
  const make = (strength: number, lead: number): void => {
    const ahead = aheadOf({ model, costs: DEFAULT_COSTS, strength, season, lead })
    for (const v of ahead.vectors) ahead.keeps(v)
    kept.push(ahead)
  }
  // What all tables of a model share is made first.
  for (let strength = 0; strength < 5; strength++) make(strength, 0)
  gc()
  const before = process.memoryUsage().arrayBuffers
  for (const lead of [3, 5, 8, 14]) for (let strength = 0; strength < 5; strength++) make(strength, lead)
  // 1.2 MB as measured, most of it for the chances of keeping a queen; 6.1 when all was kept. What is let go is cleared away
  // by other threads, a little later.
  const each = (): number => (process.memoryUsage().arrayBuffers - before) / 20
  for (let n = 0; n < 20 && each() > 2_000_000; n++) {
    gc()
    await new Promise((done) => setTimeout(done, 50))
  }
  expect(each()).toBeLessThan(3_000_000)
  expect(kept).toHaveLength(25)
})

test('the chance of a queen kept is a chance, whatever things cost, and a box united at once keeps none', () => {
  const season = { now: 1, soon: 1, begun: 1, shut: 0 }
  const tableAt = (strength: number, lead: number) =>
    aheadOf({ model, costs: DEFAULT_COSTS, strength, season, lead })
  const plan = (steps: string) => ({ first: 'u', key: `0${steps}`, value: new Float64Array() }) as const
  // One in hand is paid for; one to be sent for is not.
  for (const [strength, lead] of [
    [0, 0],
    [2, 3],
    [4, 0],
  ] as const) {
    const { keeps, vectors } = tableAt(strength, lead)
    expect(new Set(keeps(plan('')))).toEqual(new Set([0]))
    for (const steps of [...vectors.map((v) => v.key.slice(1)), 'b', 'g', 'w9,b', 'g,b']) {
      if (!/^([wgb]|$)/.test(steps)) continue
      const chances = keeps(plan(steps))
      expect(Math.min(...chances), steps).toBeGreaterThanOrEqual(0)
      expect(Math.max(...chances), steps).toBeLessThanOrEqual(1)
    }
  }
  // A queen in hand is taken by most colonies that have none; nothing is taken off for her price.
  expect(tableAt(2, 0).keeps(plan('b'))[0]).toBeGreaterThan(0.5)
})
