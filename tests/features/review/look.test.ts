/** What the review page shows for one choice of colonies: which are taken, how they are grouped, what is left unsaid. */
import { describe, expect, it } from 'vitest'
import { hemisphereOf } from '../../../src/biology/hemisphere.ts'
import { addDays } from '../../../src/days.ts'
import { chosen, everything, namesIn, narrows } from '../../../src/features/review/choice.ts'
import { printedFates } from '../../../src/features/review/fates.ts'
import { reviewOf } from '../../../src/features/review/review.ts'
import { type ColonyRecord, type Group, reviewView } from '../../../src/features/review/view.ts'
import type { ColonyId } from '../../../src/ids.ts'
import type { History } from '../../../src/journal/history.ts'
import { DEFAULT_PROTOCOL } from '../../../src/recovery/protocol.ts'
import { type ColonyFacts, factsOf, historyUntil, stayOf } from '../../../src/stays/index.ts'

const AS_OF = '2026-08-01'
const OPTIONS = { heatLimitC: 29.4, rates: { visit: 4, day: 1, frame: 15 } }

interface Told {
  type?: string
  on?: string
  queen?: ColonyFacts['queen']
  heat?: number
  gone?: ['died' | 'absconded' | 'united' | 'moved-out', number]
}

let made = 0
/** A colony with an intake and, when it has gone, an outcome. */
function told({ type = 'wall', on = '2026-05-01', queen = 'unseen', heat, gone }: Told = {}): History {
  const tag = `T-${++made}`
  const base = { colony: tag, by: 'Ines' }
  const intake = {
    ...base,
    id: `${tag}-in`,
    kind: 'intake' as const,
    on,
    yard: 'Orchard',
    queen,
    removal: { type, ...(heat === undefined ? {} : { outdoorC: heat }) },
  }
  const outcome =
    gone === undefined
      ? null
      : { ...base, id: `${tag}-out`, kind: 'outcome' as const, on: addDays(on, gone[1]), what: gone[0] }
  const history: History = {
    tag,
    intake,
    removedOn: on,
    entries: [intake, ...(outcome === null ? [] : [outcome])],
    outcome,
  }
  return history
}

const record = (about: Told = {}): ColonyRecord => {
  const history = told(about)
  const stayOn = (asOf: string) => stayOf(historyUntil(history, asOf), asOf, DEFAULT_PROTOCOL)
  return { id: history.intake.id as ColonyId, facts: factsOf(history), stayOn }
}

const many = (n: number, about: Told): ColonyRecord[] => Array.from({ length: n }, () => record(about))

const WALLS = [...many(12, { type: 'wall' }), ...many(8, { type: 'wall', gone: ['died', 20] })]
const TREES = [...many(10, { type: 'tree' }), ...many(2, { type: 'tree', gone: ['united', 12] })]
const SWARMS = many(2, { type: 'swarm', queen: 'caged', heat: 33 })
const ALL = [...SWARMS, ...TREES, ...WALLS]

describe('choosing', () => {
  it('everything, by default', () => {
    expect(chosen(ALL, everything(AS_OF), OPTIONS)).toHaveLength(34)
    expect(narrows(everything(AS_OF))).toBe(false)
  })

  it('by days of intake, both ends included; those not yet taken in do not exist', () => {
    const records = ['2026-05-01', '2026-05-10', '2026-05-20', '2026-09-01'].map((on) => record({ on }))
    const choice = { ...everything(AS_OF), from: '2026-05-10', to: '2026-05-20' }
    expect(chosen(records, choice, OPTIONS).map((r) => r.facts.intakeOn)).toEqual([
      '2026-05-10',
      '2026-05-20',
    ])
    expect(chosen(records, everything(AS_OF), OPTIONS)).toHaveLength(3)
  })

  it('by several cohorts at once', () => {
    const only = { removalType: 'swarm', heat: 'above the heat limit' }
    expect(chosen(ALL, { ...everything(AS_OF), only }, OPTIONS)).toEqual(SWARMS)
    expect(chosen(ALL, { ...everything(AS_OF), only: { ...only, queen: 'lost' } }, OPTIONS)).toEqual([])
  })

  it('names what there is to choose from', () => {
    const names = namesIn(
      ALL.map((r) => r.facts),
      OPTIONS,
    )
    expect(names.removalType).toEqual(['swarm', 'tree', 'wall'])
    expect(names.heat).toEqual(['above the heat limit', 'not recorded'])
  })
})

describe('looking', () => {
  const look = reviewView(ALL, everything(AS_OF), OPTIONS)

  it('says what `resettle review` says', () => {
    const review = reviewOf(
      ALL.map((r) => r.facts),
      AS_OF,
    )
    const printed = (g: Group) => ({ ...g.review, fates: printedFates(g.fates), withoutDay: g.withoutDay })
    expect(printed(look.all)).toEqual(review.overall)
    expect(Object.fromEntries(look.groups.map((g) => [g.name, printed(g)]))).toEqual(review.byType)
    // Read between the groups of ten or more; the public format compares the two swarms as well.
    const large = reviewOf(
      [...TREES, ...WALLS].map((r) => r.facts),
      AS_OF,
    )
    expect(look.grayTests).toEqual(large.grayTests)
    expect(look.logRank).toEqual(large.logRank)
  })

  it('puts the largest groups first, and draws those large enough', () => {
    expect(look.groups.map((g) => g.name)).toEqual(['wall', 'tree', 'swarm'])
    expect(look.drawn.map((g) => g.name)).toEqual(['wall', 'tree'])
  })

  it('draws what is asked for, at most five', () => {
    const types = ['a', 'b', 'c', 'd', 'e', 'f', 'g'].flatMap((type) => many(3, { type }))
    const choice = { ...everything(AS_OF), shown: ['g', 'f', 'e', 'd', 'c', 'b', 'nothing'] }
    expect(reviewView(types, choice, OPTIONS).drawn.map((g) => g.name)).toEqual(['b', 'c', 'd', 'e', 'f'])
    expect(reviewView(types, everything(AS_OF), OPTIONS).drawn).toEqual([])
  })

  it('counts united as a loss where the operator says so', () => {
    const asLoss = reviewView(ALL, { ...everything(AS_OF), unitedIsLoss: true }, OPTIONS)
    expect([look.all.curve.lost, asLoss.all.curve.lost]).toEqual([8, 10])
  })

  it('leans on nothing on a day that nobody was followed to', () => {
    // All lost by day 20 or moved out by day 40: a group lost to the last has a share on day 60, the whole has none.
    const short = [
      ...many(3, { type: 'tree', gone: ['died', 20] }),
      ...many(9, { type: 'wall', gone: ['moved-out', 40] }),
    ]
    const { alive, onDay } = reviewView(short, everything(AS_OF), OPTIONS)
    expect(alive[60].survival).toBeNull()
    expect(onDay[60].map((t) => [t.name, t.survival, t.pooled])).toEqual([
      ['wall', null, null],
      ['tree', 0, null],
    ])
    expect(onDay[30].every((t) => t.pooled !== null)).toBe(true)
  })

  it('as of an earlier day knows nothing of what came later', () => {
    const early = reviewView(ALL, everything('2026-05-15'), OPTIONS)
    expect(early.all.curve.lost).toBe(0)
    expect(early.money.ended).toBe(2)
    expect(early.paths.find((p) => p.path === 'not-yet')?.colonies).toBe(32)
  })

  it('nobody at all is an answer', () => {
    const none = reviewView([], everything(AS_OF), OPTIONS)
    expect(none).toMatchObject({ taken: 0, groups: [], drawn: [], logRank: null })
    expect(none.alive[30]).toMatchObject({ colonies: 0, survival: null })
  })
})

it('a history until a day leaves the later entries out, and changes nothing', () => {
  const history = told({ gone: ['died', 20] })
  const copy = structuredClone(history)
  expect(historyUntil(history, '2026-05-10')).toMatchObject({ entries: [history.intake], outcome: null })
  expect(historyUntil(history, '2026-05-21')).toBe(history)
  expect(history).toEqual(copy)
})

it('seasons go by the side of the equator on which the yard’s time zone lies (zone.tab of the tz database)', () => {
  expect(
    ['Europe/Berlin', 'America/Phoenix', 'Indian/Maldives', 'Asia/Singapore', 'UTC'].map(hemisphereOf),
  ).toEqual(Array(5).fill('north'))
  expect(
    [
      'Australia/Perth',
      'Pacific/Auckland',
      'America/Argentina/Ushuaia',
      'Africa/Johannesburg',
      'Indian/Reunion',
    ].map(hemisphereOf),
  ).toEqual(Array(5).fill('south'))
})
