/** Facts, cohorts and stays. */
import { describe, expect, it } from 'vitest'
import {
  cohortOf,
  groupsOf,
  inOrder,
  seasonOf,
  staysOf,
  UNKNOWN,
} from '../../../src/features/review/cohort.ts'
import { factsOfRow, followedFromDays } from '../../../src/features/review/facts.ts'
import { reviewOf } from '../../../src/features/review/review.ts'
import { entry } from '../../../src/journal/entry.ts'
import { historyOf } from '../../../src/journal/history.ts'
import { type ColonyFacts, factsOf, type OutcomeKind } from '../../../src/stays/index.ts'

const FACTS: ColonyFacts = {
  tag: 'A',
  removalType: 'wall',
  yard: 'Home',
  intakeOn: '2026-05-01',
  queen: 'caged',
  broodSalvaged: true,
  outdoorC: 29.4,
  hoursOpenToBoxed: 4,
  method: 'vacuum',
  removedBy: 'Rowan',
  lookedAfterBy: null,
  lastSeen: null,
  outcome: null,
  followedFrom: '2026-05-01',
}
const left = (what: OutcomeKind, on: string | null): ColonyFacts => ({
  ...FACTS,
  outcome: { what, on, into: null },
})

describe('facts', () => {
  it('come from a history', () => {
    const intake = entry.parse({
      id: '019707a0-0000-7000-8000-000000000001',
      colony: 'A',
      kind: 'intake',
      on: '2026-05-01',
      by: 'Rowan',
      yard: 'Home',
      queen: 'caged',
      brood: { eggs: 0, open: 0.5 },
      removal: { type: 'wall', outdoorC: 29.4, hoursOpenToBoxed: 4, method: 'vacuum', site: 'private' },
    })
    const history = historyOf('A', [intake])
    if (history === null) throw new Error('no history')
    // Nobody has looked at it since the intake.
    expect(factsOf(history)).toEqual({ ...FACTS, lastSeen: '2026-05-01' })
    // Who enters a colony late says that it is there on that day.
    expect(factsOf(history, '2026-05-20')).toMatchObject({
      followedFrom: '2026-05-20',
      lastSeen: '2026-05-20',
    })
  })

  it('come from a row; what is not there is not known', () => {
    const row = { tag: 'A', removal_type: 'wall', intake_on: '2026-05-01', queen_at_intake: 'lost' as const }
    expect(factsOfRow(row)).toMatchObject({
      broodSalvaged: null,
      outdoorC: null,
      method: null,
      outcome: null,
    })
    expect(factsOfRow({ ...row, capped_frames: 0 }).broodSalvaged).toBe(false)
    expect(factsOfRow({ ...row, capped_frames: 0, egg_frames: 0.25 }).broodSalvaged).toBe(true)
  })
})

describe('colonies entered late', () => {
  const recorded = (intakeOn: string, recordedOn: string, outcomeOn: string | null = null) => ({
    intakeOn,
    recordedOn,
    outcomeOn,
  })
  it('count from the day they were entered, unless a whole old book was', () => {
    expect(followedFromDays([recorded('2026-05-01', '2026-05-20')])).toEqual(['2026-05-20'])
    expect(followedFromDays([recorded('2026-05-01', '2026-05-04')])).toEqual(['2026-05-01'])
    expect(
      followedFromDays([
        recorded('2026-05-01', '2026-06-20'),
        recorded('2026-04-01', '2026-06-20', '2026-04-30'),
      ]),
    ).toEqual(['2026-05-01', '2026-04-01'])
  })
})

describe('stays', () => {
  it('by way of leaving, each with its number; what is still there has none', () => {
    const all = [
      left('died', '2026-05-04'),
      left('absconded', '2026-05-01'),
      left('united', '2026-05-11'),
      left('moved-out', '2026-06-01'),
      left('other', '2026-05-02'),
      left('unknown', '2026-05-03'),
      FACTS,
    ]
    const stays = staysOf(all, '2026-06-10')
    expect([...stays.day]).toEqual([3, 0, 10, 31, 1, 2, 40])
    expect([...stays.way]).toEqual([1, 2, 3, 4, 5, 6, 0])
  })

  it('end with the last sighting where nobody has looked since', () => {
    const seen = { ...FACTS, lastSeen: '2026-05-15' }
    expect([...staysOf([seen], '2026-06-10').day]).toEqual([14])
    // A later sighting proves that it was there on an earlier day of the look.
    expect([...staysOf([seen], '2026-05-11').day]).toEqual([10])
    const { steps } = reviewOf([seen, left('died', '2026-05-31')], '2026-06-10').overall
    expect(steps.map((s) => [s.day, s.atRisk, s.survival])).toEqual([
      [14, 2, 1],
      [30, 1, 0],
    ])
  })

  it('without a day cannot be placed on a curve: counted in the fates, and how many is said', () => {
    const all = [
      left('died', null),
      left('died', '2026-05-11'),
      { ...left('unknown', null), removalType: 'tree' },
    ]
    const review = reviewOf(all, '2026-06-10')
    expect(review.overall).toMatchObject({
      colonies: 1,
      lost: 1,
      withoutDay: 2,
      fates: { colonies: 3, died: 2, unknown: 1, stillHere: 0 },
    })
    expect(review.byType.tree).toMatchObject({ colonies: 0, withoutDay: 1, fates: { unknown: 1 } })
    expect(() => staysOf(all, '2026-06-10')).toThrow(/no day/)
  })

  it('as of an earlier day: what happened later is not known yet', () => {
    const later = { ...FACTS, tag: 'B', intakeOn: '2026-07-01', followedFrom: '2026-07-01' }
    const review = reviewOf([left('died', '2026-06-30'), later], '2026-05-31')
    expect(review.overall).toMatchObject({ colonies: 1, lost: 0 })
    expect(review.overall.steps).toEqual([
      { day: 30, atRisk: 1, lost: 0, left: 1, survival: 1, lower: null, upper: null },
    ])
  })
})

describe('the review', () => {
  const all = [
    left('died', '2026-05-04'),
    left('united', '2026-05-11'),
    { ...left('moved-out', '2026-06-05'), removalType: 'tree' },
    { ...FACTS, removalType: 'tree' },
  ]
  it('united is its own way of leaving, or a loss when the operator says so', () => {
    const [own, loss] = [reviewOf(all, '2026-07-01'), reviewOf(all, '2026-07-01', true)]
    expect([own.overall.lost, loss.overall.lost]).toEqual([1, 2])
    expect(own.overall.at30.survival).toBe(0.75)
    expect(loss.overall.at30.survival).toBe(0.5)
    expect(own.overall.waysOfLeaving).toEqual(loss.overall.waysOfLeaving)
    expect(own.overall.waysOfLeaving.at(-1)).toEqual({ day: 61, died: 0.25, absconded: 0, united: 0.25 })
  })

  it('has exactly the fields of the public format, types in alphabetical order', () => {
    const review = reviewOf(all, '2026-07-01')
    expect(Object.keys(review)).toEqual(['asOf', 'overall', 'byType', 'logRank', 'grayTests'])
    expect(Object.keys(review.byType)).toEqual(['tree', 'wall'])
    expect(Object.keys(review.overall)).toEqual([
      'colonies',
      'lost',
      'steps',
      'at30',
      'at60',
      'median',
      'restrictedMean60',
      'waysOfLeaving',
      'outcomes',
      'fates',
      'withoutDay',
    ])
    const row = review.overall.outcomes[0] ?? {}
    expect(Object.keys(row)).toEqual(['day', 'movedOut', 'died', 'absconded', 'united', 'other', 'stillHere'])
    expect(review.grayTests.map((t) => t.outcome)).toEqual([
      'moved-out',
      'died',
      'absconded',
      'united',
      'lost',
    ])
    expect(Object.keys(review.overall.steps[0] ?? {})).toEqual([
      'day',
      'atRisk',
      'lost',
      'left',
      'survival',
      'lower',
      'upper',
    ])
    expect(Object.keys(review.overall.at60)).toEqual(['survival', 'lower', 'upper'])
    expect(Object.keys(review.overall.median)).toEqual(['day', 'lower', 'upper'])
    expect(reviewOf(all.toReversed(), '2026-07-01')).toEqual(review)
  })

  it('no colonies, and types with awkward names', () => {
    expect(reviewOf([], '2026-07-01')).toEqual({
      asOf: '2026-07-01',
      overall: {
        colonies: 0,
        lost: 0,
        steps: [],
        restrictedMean60: null,
        waysOfLeaving: [],
        at30: { survival: null, lower: null, upper: null },
        at60: { survival: null, lower: null, upper: null },
        median: { day: null, lower: null, upper: null },
        outcomes: [],
        fates: {
          colonies: 0,
          movedOut: 0,
          died: 0,
          absconded: 0,
          united: 0,
          other: 0,
          stillHere: 0,
          unknown: 0,
        },
        withoutDay: 0,
      },
      byType: {},
      logRank: null,
      grayTests: ['moved-out', 'died', 'absconded', 'united', 'lost'].map((outcome) => ({
        outcome,
        chisq: null,
        df: null,
        p: null,
      })),
    })
    const odd = reviewOf([{ ...FACTS, removalType: '__proto__' }], '2026-07-01')
    expect(JSON.stringify(odd)).toContain('"byType":{"__proto__":{"colonies":1,')
  })
})

describe('cohorts', () => {
  const options = { heatLimitC: 29.4 }
  it.each([
    ['removalType', {}, 'wall'],
    ['yard', { yard: null }, UNKNOWN],
    ['season', {}, '2026 spring'],
    ['heat', {}, 'up to the heat limit'],
    ['heat', { outdoorC: 29.5 }, 'above the heat limit'],
    ['heat', { outdoorC: null }, UNKNOWN],
    ['queen', {}, 'caged'],
    ['brood', { broodSalvaged: false }, 'no brood'],
    ['vacuum', { method: 'brushed' }, 'no vacuum'],
    ['hours', {}, '2 to 4 h'],
    ['hours', { hoursOpenToBoxed: 9 }, 'over 8 h'],
    ['removedBy', {}, 'Rowan'],
  ] as const)('%s', (by, change, name) => {
    expect(cohortOf({ ...FACTS, ...change }, by, options)).toBe(name)
  })

  it('a season over the turn of the year is one season, and lists go by time', () => {
    const season = (on: string) => cohortOf({ ...FACTS, intakeOn: on }, 'season', options)
    expect([season('2025-12-20'), season('2026-02-10')]).toEqual(['2025/26 winter', '2025/26 winter'])
    const listed = ['2026 autumn', '2025/26 winter', '2026 spring', '2026 summer', '2025 autumn']
    expect(inOrder(listed, 'season', options)).toEqual([
      '2025 autumn',
      '2025/26 winter',
      '2026 spring',
      '2026 summer',
      '2026 autumn',
    ])
    const south = ['2026 spring', '2025/26 summer', '2026 autumn']
    expect(inOrder(south, 'season', { ...options, hemisphere: 'south' })).toEqual([
      '2025/26 summer',
      '2026 autumn',
      '2026 spring',
    ])
    expect(inOrder(['not recorded', 'over 8 h', '2 to 4 h', 'up to 2 h'], 'hours', options)).toEqual([
      'up to 2 h',
      '2 to 4 h',
      'over 8 h',
      'not recorded',
    ])
  })

  it('seasons are turned round south of the equator', () => {
    expect(['2026-02-28', '2026-03-01', '2026-06-01', '2026-12-01'].map((d) => seasonOf(d))).toEqual([
      'winter',
      'spring',
      'summer',
      'winter',
    ])
    expect(['2026-02-28', '2026-03-01', '2026-09-01'].map((d) => seasonOf(d, 'south'))).toEqual([
      'summer',
      'autumn',
      'spring',
    ])
  })

  it('groups are in alphabetical order', () => {
    expect(
      groupsOf(
        ['b', 'a', 'b'].map((removalType) => ({ ...FACTS, removalType })),
        (c) => c.removalType,
      ),
    ).toEqual({
      names: ['a', 'b'],
      grouping: { of: Int32Array.of(1, 0, 1), count: 2 },
    })
  })
})
