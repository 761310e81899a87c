/**
 * Places where a small slip would go unnoticed by every larger test: a mutation run found that none of them failed when the
 * sign, the limit or the "and" there was turned round. Days in the comments are counted by hand.
 */
import { describe, expect, test } from 'vitest'
import { addDays, type Day } from '../../src/days.ts'
import { type Entry, entry } from '../../src/journal/entry.ts'
import { type History, historyOf } from '../../src/journal/history.ts'
import { fold } from '../../src/recovery/fold/fold.ts'
import { planOf } from '../../src/recovery/plan.ts'
import type { Check, Plan } from '../../src/recovery/plan-types.ts'
import { protocolWith } from '../../src/recovery/protocol.ts'
import { changeFor, totalsOf } from '../../src/recovery/protocol-preview.ts'
import { emergenceFromCells } from '../../src/recovery/rearing.ts'
import { broodAlong } from '../../src/recovery/sources.ts'

const START: Day = '2026-05-01'
const day = (n: number): Day => addDays(START, n)
type Fields = Record<string, unknown>

function historyWith(intake: Fields, ...rest: [n: number, kind: string, fields: Fields][]): History {
  const raw = [
    [0, 'intake', { removal: { type: 'wall' }, yard: 'North', queen: 'unseen', ...intake }],
    ...rest,
  ] as const
  const entries = raw.map(([n, kind, fields], i): Entry => {
    const id = `${String(i).padStart(8, '0')}-0000-7000-8000-000000000000`
    return entry.parse({ id, colony: 'X-1', by: 'ada', on: day(n), kind, ...fields })
  })
  const history = historyOf('X-1', entries)
  if (history === null) throw new Error('no intake')
  return history
}

const planAt = (n: number, history: History): Plan => planOf(history, day(n), protocolWith())
const checkOf = (plan: Plan, rule: string): Check | undefined => plan.checks.find((c) => c.rule === rule)
const BROOD = { eggs: 1, open: 1, capped: 1 }

describe('cells', () => {
  test('an empty cell was left within the eight days for which it can have been sealed', () => {
    // Sealed on day 8, left on day 16 after the egg (common practice; Winston 1987, from memory).
    const { span } = emergenceFromCells('emerged', day(20), [], null)
    expect([span.earliest, span.latest]).toEqual([day(12), day(20)])
  })

  test('on a frame of eggs come of that frame alone, whatever other brood lies in the box', () => {
    // Cells are known, then a frame of open brood goes in on day 10 and one of eggs on day 12; capped cells on day 19.
    const history = historyWith(
      { brood: BROOD },
      [6, 'inspection', { opened: true, eggs: 'none', cells: 'open' }],
      [10, 'given', { what: 'open-brood', donor: 'D-1' }],
      [12, 'given', { what: 'egg-frame', donor: 'D-1' }],
      [19, 'inspection', { opened: true, cells: 'capped' }],
    )
    const { emergence } = planAt(19, history).spans
    const alone = planAt(
      19,
      historyWith(
        { brood: BROOD },
        [6, 'inspection', { opened: true, eggs: 'none', cells: 'open' }],
        [12, 'given', { what: 'egg-frame', donor: 'D-1' }],
        [19, 'inspection', { opened: true, cells: 'capped' }],
      ),
    ).spans.emergence
    expect(emergence).toBeDefined()
    expect(emergence).toEqual(alone)
  })
})

describe('the first brood check', () => {
  const looked = (fields: Fields, n = 5): Plan =>
    planAt(n, historyWith({ brood: BROOD }, [n, 'inspection', { opened: true, ...fields }]))

  test('is answered by eggs and cells both looked for, and not by half a look', () => {
    expect(checkOf(looked({ eggs: 'none', cells: 'none' }), 'telling-visit')?.status).toBe('answered')
    for (const half of [{ eggs: 'none' }, { cells: 'none' }])
      expect(checkOf(looked(half), 'telling-visit')?.status, JSON.stringify(half)).not.toBe('answered')
  })

  test('is not answered by a whole look before it opens', () => {
    const opens = checkOf(planAt(0, historyWith({ brood: BROOD })), 'telling-visit')?.opens
    expect(opens).toBe(day(4))
    expect(checkOf(looked({ eggs: 'none', cells: 'none' }, 4), 'telling-visit')?.status).toBe('answered')
    const early = looked({ eggs: 'none', cells: 'none' }, 3)
    expect(checkOf(early, 'telling-visit')?.answeredOn ?? null).toBeNull()
  })
})

describe('brood that came along', () => {
  const along = (brood: Fields) => broodAlong(historyWith({ brood }).intake)

  test.each([
    // What was not counted, while its neighbour was, counts as none: whoever counted one looked for both.
    [
      { eggs: 0, capped: 1 },
      { any: true, young: false },
    ],
    [
      { open: 0, capped: 1 },
      { any: true, young: false },
    ],
    [{ eggs: 1 }, { any: true, young: true }],
    [{ open: 1 }, { any: true, young: true }],
    [
      { eggs: 0, open: 1 },
      { any: true, young: true },
    ],
    [
      { eggs: 1, open: 0 },
      { any: true, young: true },
    ],
    [
      { eggs: 0, open: 0, capped: 0 },
      { any: false, young: false },
    ],
    [
      { eggs: 0, open: 0 },
      { any: false, young: false },
    ],
    // Capped alone was counted: of eggs and open brood nothing is known, which is not none.
    [{ capped: 0 }, { any: true, young: true }],
    [{ capped: 2 }, { any: true, young: true }],
  ])('%j', (brood, expected) => expect(along(brood)).toEqual(expected))
})

describe('days without laying workers', () => {
  test('are counted back by the age of capped brood only where neither eggs nor larvae came along', () => {
    const risk = (brood: Fields) =>
      planAt(1, historyWith({ removal: { type: 'wall', sprayed: 'yes' }, queen: 'lost', brood })).spans
        .layingWorkerRisk
    const none = risk({ eggs: 0, open: 0, capped: 1 })
    expect(none).toBeDefined()
    expect(none).not.toEqual(risk({ eggs: 0, open: 1, capped: 1 }))
    expect(risk({ eggs: 1, open: 0, capped: 1 })).toEqual(risk({ eggs: 1, open: 1, capped: 1 }))
    expect(risk({ eggs: 0, open: 1, capped: 1 })).toEqual(risk({ eggs: 1, open: 1, capped: 1 }))
  })
})

describe('what another protocol changes', () => {
  const unchanged = {
    tag: 'X-1',
    moved: [],
    added: [],
    dropped: [],
    becomesLate: [],
    noLongerLate: [],
    action: null,
    ready: null,
    expected: null,
  }

  test('is counted only where it changes', () => {
    const expected = { before: day(30), after: day(40) }
    const totals = totalsOf(9, [
      { ...unchanged, becomesLate: ['telling-visit'] },
      { ...unchanged, noLongerLate: ['telling-visit'] },
      { ...unchanged, action: { before: 'feed', after: 'wash' } },
      { ...unchanged, ready: { before: false, after: true } },
      { ...unchanged, expected },
      { ...unchanged, ready: { before: false, after: true }, expected },
    ])
    expect(totals).toEqual({
      colonies: 9,
      changed: 6,
      checksMove: 0,
      becomeLate: 1,
      noLongerLate: 1,
      otherAdvice: 1,
      readiness: 3,
    })
  })

  test('of a hold that is longer is when it may leave, and until when mites may be counted', () => {
    const history = historyWith({ brood: BROOD, queen: 'loose' })
    const plan = (own: { holdDays?: number } = {}) => planOf(history, day(2), protocolWith(own))
    const change = changeFor(plan({ holdDays: 45 }), plan({ holdDays: 80 }))
    expect(change).toMatchObject({ added: [], dropped: [], action: null, ready: null })
    expect(change?.moved.map((m) => m.rule)).toEqual(['mite-wash'])
    expect(change?.expected).not.toBeNull()
    expect(changeFor(plan(), plan())).toBeNull()
  })
})

describe('a move', () => {
  const movedIn = (...moves: [n: number, yard: string][]) =>
    fold(
      historyWith({}, ...moves.map(([n, yard]): [number, string, Fields] => [n, 'move', { yard }])),
      protocolWith(),
    ).moved

  test('is within the yard only when the colony was in that yard just before', () => {
    expect(movedIn([3, 'North'])?.sameYard).toBe(true)
    expect(movedIn([3, 'South'])?.sameYard).toBe(false)
    expect(movedIn([3, 'South'], [6, 'South'])?.sameYard).toBe(true)
    // Back again: the last place counts, not the first.
    expect(movedIn([3, 'South'], [6, 'North'])?.sameYard).toBe(false)
    // Twice on one day.
    expect(movedIn([3, 'South'], [3, 'South'])?.sameYard).toBe(true)
  })
})

describe('quiet time and readiness', () => {
  test('what needs an open box cannot be met before the day after quiet time', () => {
    const history = historyWith({ brood: BROOD }, [
      6,
      'inspection',
      { opened: true, eggs: 'none', cells: 'capped' },
    ])
    const { quiet } = planAt(6, history)
    if (quiet === null) throw new Error('no quiet time')
    const during = planAt(12, history)
    expect(quiet.from <= day(12) && day(12) <= quiet.to).toBe(true)
    const needing = during.readiness.unmet.filter(
      (u) => u.earliest !== null && !/^(hold|stores)/.test(u.what),
    )
    const after = addDays(quiet.to, 1)
    expect(needing.map((u) => u.earliest)).toContain(after)
    for (const u of needing) expect((u.earliest ?? '') >= after, u.what).toBe(true)
  })

  test('a colony may go from the day on which the last of it was met, also where that is its queen', () => {
    // All but the queen is met by day 31 (the hold of 30 days; wash, stores and disease look before it and still valid).
    const history = historyWith(
      { queen: 'lost', brood: { eggs: 0, open: 0, capped: 0 } },
      [5, 'given', { what: 'mated-queen' }],
      [8, 'queen-cage', { found: 'released' }],
      [28, 'mite-wash', { bees: 300, mites: 0 }],
      [
        29,
        'inspection',
        { opened: true, framesOfBees: 6, framesOfBrood: 3, stores: 'heavy', signs: [], temper: 2 },
      ],
      [33, 'inspection', { opened: true, eggs: 'single', open: 'plenty', capped: 'worker' }],
    )
    const plan = planAt(33, history)
    expect(plan.readiness.unmet).toEqual([])
    expect(checkOf(plan, 'move-out')?.opens).toBe(day(33))
  })
})

describe('the removal', () => {
  test.each([
    ['in heat', { removal: { type: 'wall', outdoorC: 36 } }],
    ['with many dead bees', { deadBeesKg: 0.3 }],
  ])('%s is seen to on the day it came, and another is left alone', (_what, intake) => {
    expect(planAt(0, historyWith(intake)).advice.action).toBe('see-to-signs')
    const mild = historyWith({ removal: { type: 'wall', outdoorC: 20 }, deadBeesKg: 0.01 })
    expect(planAt(0, mild).advice.action).not.toBe('see-to-signs')
  })
})

describe('the ladder', () => {
  test('a bought queen that failed too leads to uniting; brood of their own that failed does not', () => {
    const bought = historyWith(
      { queen: 'lost', brood: { eggs: 0, open: 0, capped: 0 } },
      [30, 'given', { what: 'mated-queen' }],
      [34, 'queen-cage', { found: 'released' }],
      [50, 'inspection', { opened: true, eggs: 'none', open: 'none', cells: 'none' }],
      [58, 'inspection', { opened: true, eggs: 'none', open: 'none', cells: 'none' }],
    )
    const plan = planAt(58, bought)
    expect(checkOf(plan, 'unite-or-boost')?.why).toContain('failed too')
    expect(checkOf(plan, 'buy-queen')?.why).toContain('instead of uniting it')
    const own = historyWith({ brood: BROOD }, [
      6,
      'inspection',
      { opened: true, eggs: 'none', open: 'none', cells: 'none' },
    ])
    expect(checkOf(planAt(6, own), 'unite-or-boost')).toBeUndefined()
    expect(checkOf(planAt(6, own), 'egg-frame')).toBeDefined()
  })
})

describe('words and proofs that hang on one comparison', () => {
  test('a queen caged at the removal was caged at intake where both are one day, else on the day of the removal', () => {
    const caged = (removal: Fields) =>
      planAt(2, historyWith({ queen: 'caged', removal, brood: BROOD })).advice
    expect(caged({ type: 'wall' }).reasons).toEqual([{ code: 'caged-at-removal', on: null }])
    expect(caged({ type: 'wall', removedOn: day(-1) }).reasons).toContainEqual({
      code: 'caged-at-removal',
      on: day(-1),
    })
  })

  test('a bought queen that the ladder asks for answers its question by name', () => {
    // Own cells on day 5, and nobody lays by day 38, after the last day to expect it.
    const none = { opened: true, eggs: 'none', open: 'none', cells: 'none' }
    const history = historyWith(
      { queen: 'lost', brood: BROOD },
      [5, 'inspection', { opened: true, eggs: 'none', cells: 'capped' }],
      [26, 'inspection', none],
      [30, 'inspection', none],
      [38, 'inspection', none],
    )
    expect(planAt(38, history).advice).toMatchObject({ action: 'buy-queen', rule: 'buy-queen' })
  })

  test('drone caps on comb drawn since intake are of who lays now; on old comb, the former queen may have laid them', () => {
    // Day 11: drones leave their cells 24 days after the egg (Winston 1987, from memory), so hers can be capped yet.
    const seen = (onFreshComb: boolean) =>
      planAt(
        11,
        historyWith({ queen: 'loose', brood: BROOD }, [
          11,
          'inspection',
          { opened: true, capped: 'drone-in-worker', queen: 'seen', onFreshComb },
        ]),
      )
    expect(seen(true).advice.action).toBe('take-out-queen')
    expect(seen(false).advice.action).not.toBe('take-out-queen')
  })

  test('young brood seen since a look that found none settles it', () => {
    const look = (n: number, fields: Fields): [number, string, Fields] => [
      n,
      'inspection',
      { opened: true, ...fields },
    ]
    const raised = [look(5, { eggs: 'none', cells: 'open' }), look(25, { eggs: 'single' })] as const
    const unmet = (...more: [number, string, Fields][]) =>
      planAt(42, historyWith({ queen: 'lost', brood: BROOD }, ...raised, ...more)).readiness.unmet.map(
        (u) => u.reason.code,
      )
    expect(unmet(look(40, { eggs: 'single', capped: 'worker' }))).not.toContain('brood-none')
    expect(
      unmet(look(40, { eggs: 'single', capped: 'worker' }), look(42, { eggs: 'none', open: 'none' })),
    ).toContain('brood-none')
  })

  test('what is seen on combs keeps its day while looks from outside see nothing, and no longer', () => {
    const moths: [number, string, Fields] = [6, 'inspection', { opened: true, signs: ['moths'] }]
    const signs = (...more: [number, string, Fields][]) =>
      fold(historyWith({ brood: BROOD }, moths, ...more), protocolWith()).signs
    const outside = (seen: string[]): [number, string, Fields] => [
      9,
      'inspection',
      { opened: false, signs: seen },
    ]
    expect(signs(outside([]))).toEqual({ on: day(6), seen: ['moths'] })
    expect(signs(outside(['robbing']))).toEqual({ on: day(9), seen: ['robbing', 'moths'] })
    expect(signs([9, 'inspection', { opened: true, signs: [] }])).toEqual({ on: day(9), seen: [] })
    // The first look of all has nothing before it.
    const first = historyWith({ brood: BROOD }, outside([]))
    expect(fold(first, protocolWith()).signs).toEqual({ on: day(9), seen: [] })
  })

  test('nothing capped when worker caps were due: the same question once more', () => {
    // Eggs on day 25 of a queen raised here; caps can be looked for from day 34 (egg to cap nine days), due by day 37.
    const asked = (capped: string) =>
      planAt(
        45,
        historyWith(
          { queen: 'lost', brood: BROOD },
          [5, 'inspection', { opened: true, eggs: 'none', cells: 'open' }],
          [25, 'inspection', { opened: true, eggs: 'single', cells: 'none' }],
          [45, 'inspection', { opened: true, eggs: 'single', cells: 'none', capped }],
        ),
      )
        .checks.filter((c) => c.rule === 'worker-brood')
        .map((c) => c.status)
    expect(asked('none')).toEqual(['answered', 'waiting'])
    expect(asked('worker')).toEqual(['answered'])
  })

  test('an empty cell that has hung there for weeks, and no eggs: she has had her time', () => {
    // Emerged by day 16 at the latest, and eggs within 21 days more: none on day 47 is too late.
    const seen = (eggs: string) =>
      planAt(
        47,
        historyWith({ queen: 'lost', brood: BROOD }, [
          47,
          'inspection',
          { opened: true, eggs, cells: 'emerged' },
        ]),
      )
    expect(seen('none').phase).toBe('queenless')
    expect(checkOf(seen('none'), 'buy-queen')?.status).toBe('open')
    expect(seen('single').phase).toBe('laying')
  })
})
