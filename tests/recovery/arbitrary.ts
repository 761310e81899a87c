/** Random but valid colonies for property tests: any sighting, any order of events, within one season. */
import fc from 'fast-check'
import { addDays, type Day } from '../../src/days.ts'
import { type Entry, entry, METHODS, QUEEN_AT_INTAKE, REMOVAL_TYPES, SIGNS } from '../../src/journal/entry.ts'
import { contradictions } from '../../src/journal/history.ts'

export const START: Day = '2026-05-01'

/** A UUIDv7-shaped id from a number, so that runs repeat. */
const idOf = (n: number): string => `019707a0-0000-7000-8000-${n.toString(16).padStart(12, '0')}`

const maybe = <T>(a: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(a, { nil: undefined, freq: 3 })
const quarters = (max: number) => fc.integer({ min: 0, max: max * 4 }).map((n) => n / 4)

const intakeFields = fc.record({
  kind: fc.constant('intake' as const),
  removal: fc.record({
    type: fc.constantFrom(...REMOVAL_TYPES),
    outdoorC: maybe(fc.integer({ min: 10, max: 40 })),
    method: maybe(fc.constantFrom(...METHODS)),
    sprayed: maybe(fc.constantFrom('yes', 'no', 'unknown')),
  }),
  yard: fc.constantFrom('North', 'South'),
  queen: fc.constantFrom(...QUEEN_AT_INTAKE),
  brood: maybe(fc.record({ eggs: maybe(quarters(2)), open: maybe(quarters(2)), capped: maybe(quarters(3)) })),
  queenCells: maybe(fc.constantFrom('none', 'open', 'capped')),
  bees: maybe(fc.record({ frames: quarters(10) })),
  tiedComb: maybe(fc.boolean()),
})

export const inspectionFields = fc.record({
  kind: fc.constant('inspection' as const),
  opened: fc.constant(true),
  eggs: maybe(fc.constantFrom('none', 'single', 'multiple')),
  open: maybe(fc.constantFrom('none', 'some', 'plenty')),
  capped: maybe(fc.constantFrom('none', 'worker', 'drone-in-worker')),
  onFreshComb: maybe(fc.boolean()),
  queen: maybe(fc.constantFrom('seen', 'unseen')),
  cells: maybe(fc.constantFrom('none', 'cups', 'open', 'capped', 'emerged', 'torn-down')),
  framesOfBees: maybe(quarters(12)),
  stores: maybe(fc.constantFrom('low', 'enough', 'heavy')),
  signs: maybe(fc.uniqueArray(fc.constantFrom(...SIGNS), { maxLength: 3 })),
})

const outsideFields = fc.record({
  kind: fc.constant('inspection' as const),
  opened: fc.constant(false),
  stores: maybe(fc.constantFrom('low', 'enough')),
})
const givenFields = fc.record({
  kind: fc.constant('given' as const),
  what: fc.constantFrom(
    'egg-frame',
    'open-brood',
    'capped-brood',
    'queen-cell',
    'virgin',
    'mated-queen',
    'syrup',
    'bees',
  ),
  caged: maybe(fc.boolean()),
})
const cageFields = fc.record({
  kind: fc.constant('queen-cage' as const),
  found: fc.constantFrom('released', 'still-caged', 'rejected', 'dead'),
})
const washFields = fc.record({
  kind: fc.constant('mite-wash' as const),
  bees: fc.constant(300),
  mites: fc.integer({ min: 0, max: 30 }),
})
const noteFields = fc.record({ kind: fc.constant('note' as const), text: fc.constant('rain') })
const tiesFields = fc.record({ kind: fc.constant('ties-removed' as const) })
const moveFields = fc.record({ kind: fc.constant('move' as const), yard: fc.constantFrom('North', 'South') })

const eventFields = fc.oneof(
  { weight: 8, arbitrary: inspectionFields },
  { weight: 1, arbitrary: outsideFields },
  { weight: 3, arbitrary: givenFields },
  { weight: 2, arbitrary: cageFields },
  { weight: 1, arbitrary: washFields },
  { weight: 1, arbitrary: noteFields },
  { weight: 1, arbitrary: tiesFields },
  { weight: 1, arbitrary: moveFields },
)

const strip = (o: object): object =>
  Object.fromEntries(
    Object.entries(o)
      .filter(([, v]) => v !== undefined)
      .map(([k, v]) => [k, v !== null && typeof v === 'object' && !Array.isArray(v) ? strip(v) : v]),
  )

export function build(n: number, day: number, fields: object): Entry {
  return entry.parse({ id: idOf(n), colony: 'X-1', on: addDays(START, day), by: 'ada', ...strip(fields) })
}

/** Entries of one colony, dated within `days` of the intake, free of contradictions. */
export const colony = (
  events: fc.Arbitrary<object> = eventFields,
  maxEvents = 14,
  days = 70,
): fc.Arbitrary<Entry[]> =>
  fc
    .tuple(
      intakeFields,
      fc.array(fc.tuple(fc.integer({ min: 0, max: days }), events), { maxLength: maxEvents }),
    )
    .map(([first, rest]) => [
      build(1, 0, first),
      ...rest.sort(([a], [b]) => a - b).map(([day, fields], i) => build(i + 2, day, fields)),
    ])
    .filter((entries) => contradictions(entries, '2027-01-01').length === 0)
