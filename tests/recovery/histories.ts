/** Histories of colonies for the sweep: what somebody saw and did, by days since the intake. */
import { addDays, type Day } from '../../src/days.ts'

/** 1 May 2026 unless a history says otherwise. */
export const START: Day = '2026-05-01'

type Fields = Record<string, unknown>
export interface Told {
  name: string
  start?: Day
  protocol?: Fields
  intake: Fields
  entries: [day: number, kind: string, fields: Fields][]
}

const see = (day: number, fields: Fields): [number, string, Fields] => [
  day,
  'inspection',
  { opened: true, ...fields },
]
const out = (day: number, fields: Fields = { signs: [] }): [number, string, Fields] => [
  day,
  'inspection',
  { opened: false, ...fields },
]
const give = (day: number, what: string, fields: Fields = {}): [number, string, Fields] => [
  day,
  'given',
  { what, ...fields },
]
const cage = (day: number, found: string): [number, string, Fields] => [day, 'queen-cage', { found }]
const wash = (day: number, mites: number): [number, string, Fields] => [
  day,
  'mite-wash',
  { bees: 300, mites },
]

const BROOD = { eggs: 0.5, open: 1, capped: 2 }
const NONE = { eggs: 0, open: 0, capped: 0 }
const wall = (queen: string, more: Fields = {}): Fields => ({
  removal: { type: 'wall' },
  queen,
  brood: BROOD,
  ...more,
})
const swarm = (queen: string, more: Fields = {}): Fields => ({
  removal: { type: 'swarm' },
  queen,
  brood: NONE,
  ...more,
})
const NEITHER = { eggs: 'none', open: 'none', cells: 'none' }
const LAYS = { eggs: 'single', open: 'plenty', capped: 'worker', cells: 'none' }
const NORTH = { matingMonths: ['4', '5', '6', '7', '8'] }

export const HISTORIES: Told[] = [
  { name: 'nobody comes, queen unseen', intake: wall('unseen'), entries: [] },
  { name: 'nobody comes, queen caged', intake: wall('caged'), entries: [] },
  { name: 'nobody comes, queen loose', intake: wall('loose'), entries: [] },
  { name: 'nobody comes, queen lost', intake: wall('lost'), entries: [] },
  { name: 'nobody comes, lost without brood', intake: wall('lost', { brood: NONE }), entries: [] },
  {
    name: 'half a look on day 11',
    intake: wall('unseen'),
    entries: [see(11, { eggs: 'none', open: 'none' })],
  },
  {
    name: 'half a look, then the other half next day',
    intake: wall('unseen'),
    entries: [see(6, { eggs: 'none' }), see(7, { cells: 'open' })],
  },
  {
    name: 'two halves on one day',
    intake: wall('unseen'),
    entries: [see(5, { eggs: 'none' }), see(5, { cells: 'none', by: 'eve' })],
  },
  {
    name: 'two people disagree',
    intake: wall('unseen'),
    entries: [see(5, { eggs: 'single', cells: 'none' }), see(5, { eggs: 'none', cells: 'open', by: 'eve' })],
  },
  {
    name: 'eggs, then none two days later',
    intake: wall('unseen'),
    entries: [see(5, { eggs: 'single' }), see(7, NEITHER)],
  },
  {
    name: 'eggs, then none, then eggs',
    intake: wall('unseen'),
    entries: [see(5, { eggs: 'single' }), see(7, NEITHER), see(9, { eggs: 'single', open: 'some' })],
  },
  { name: 'an empty visit', intake: wall('unseen'), entries: [see(5, {}), out(6, {})] },
  {
    name: 'caged and let out, and lays',
    intake: wall('caged'),
    entries: [cage(2, 'released'), see(6, { eggs: 'single' }), see(23, LAYS), wash(23, 1)],
  },
  {
    name: 'caged and forgotten beside another layer',
    intake: wall('caged'),
    entries: [see(5, { eggs: 'single', onFreshComb: true }), cage(6, 'still-caged')],
  },
  { name: 'caged and found dead on day 2', intake: wall('caged'), entries: [cage(2, 'dead')] },
  {
    name: 'caged and found dead on day 8',
    intake: wall('caged'),
    entries: [cage(8, 'dead'), see(8, NEITHER)],
  },
  {
    name: 'caged at the removal, boxed three days later',
    intake: { ...wall('caged'), removal: { type: 'wall', removedOn: '2026-04-28' } },
    entries: [cage(1, 'still-caged')],
  },
  {
    name: 'bought queen rejected, then looked',
    intake: wall('lost', { brood: NONE }),
    entries: [
      give(3, 'mated-queen', { caged: true }),
      cage(7, 'rejected'),
      see(7, NEITHER),
      give(8, 'egg-frame'),
      see(12, { cells: 'open' }),
    ],
  },
  {
    name: 'bought queen, eggs, worker brood, ready',
    intake: wall('lost', { brood: NONE }),
    entries: [
      give(2, 'mated-queen', { caged: true }),
      cage(6, 'released'),
      see(12, { eggs: 'single' }),
      see(26, { ...LAYS, framesOfBees: 6, signs: [], stores: 'enough' }),
      wash(26, 1),
      see(31, { ...LAYS, framesOfBees: 6, signs: [], stores: 'enough' }),
    ],
  },
  {
    name: 'given virgin, still caged',
    intake: wall('lost', { brood: NONE }),
    entries: [give(4, 'virgin', { caged: true }), cage(8, 'still-caged')],
  },
  {
    name: 'ripe cell given',
    intake: wall('lost', { brood: NONE }),
    entries: [give(4, 'queen-cell'), see(19, { eggs: 'none' })],
  },
  {
    name: 'own cells, emerged, lays',
    intake: wall('lost'),
    entries: [
      see(5, { eggs: 'none', cells: 'open' }),
      see(25, { eggs: 'single' }),
      see(40, { eggs: 'single', capped: 'worker' }),
    ],
  },
  {
    name: 'own cells, never lays',
    intake: wall('lost'),
    entries: [
      see(5, { eggs: 'none', cells: 'capped' }),
      see(26, NEITHER),
      see(30, NEITHER),
      see(38, NEITHER),
    ],
  },
  {
    name: 'cells that are dead',
    intake: wall('lost'),
    entries: [
      see(6, { eggs: 'none', cells: 'capped' }),
      see(20, { eggs: 'none', cells: 'capped', open: 'none' }),
    ],
  },
  {
    name: 'test frame on day 18: no cells',
    intake: wall('unseen'),
    entries: [
      see(5, { eggs: 'none', cells: 'open' }),
      give(18, 'egg-frame'),
      see(22, { cells: 'none', eggs: 'none' }),
    ],
  },
  {
    name: 'test frame on day 18: cells',
    intake: wall('unseen'),
    entries: [
      see(5, { eggs: 'none', cells: 'capped' }),
      give(18, 'egg-frame'),
      see(22, { cells: 'open', eggs: 'none' }),
    ],
  },
  {
    name: 'neither, frame, nothing, bought',
    intake: wall('unseen'),
    entries: [see(5, NEITHER), give(6, 'egg-frame'), see(10, { cells: 'none' }), see(16, NEITHER)],
  },
  {
    name: 'supersedure cells on day 24',
    intake: wall('caged'),
    entries: [
      cage(2, 'released'),
      see(6, { eggs: 'single' }),
      see(24, { ...LAYS, cells: 'capped', cellCount: 2 }),
    ],
  },
  {
    name: 'cells came along with a caged queen',
    intake: wall('caged', { queenCells: 'capped' }),
    entries: [cage(3, 'released'), see(8, { eggs: 'single', cells: 'torn-down' })],
  },
  {
    name: 'a hurt queen, seen and never laying',
    intake: wall('loose'),
    entries: [
      see(5, { eggs: 'none', cells: 'none', queen: 'seen' }),
      see(9, { eggs: 'none', cells: 'none', queen: 'seen' }),
      see(13, { ...NEITHER, queen: 'seen' }),
    ],
  },
  {
    name: 'a pause, seen',
    intake: wall('caged'),
    entries: [
      cage(2, 'released'),
      see(6, { eggs: 'single' }),
      see(24, LAYS),
      see(38, { ...NEITHER, queen: 'seen' }),
      see(46, { eggs: 'single' }),
    ],
  },
  {
    name: 'a pause, hungry, and no end to it',
    intake: wall('caged'),
    entries: [
      cage(2, 'released'),
      see(6, { eggs: 'single' }),
      see(24, LAYS),
      see(38, { ...NEITHER, stores: 'low' }),
      give(39, 'syrup'),
      see(46, { ...NEITHER, stores: 'enough' }),
    ],
  },
  {
    name: 'drone-laying queen, seen',
    intake: wall('lost'),
    entries: [
      see(5, { eggs: 'none', cells: 'open' }),
      see(28, { eggs: 'single' }),
      see(40, { eggs: 'single', capped: 'drone-in-worker', queen: 'seen' }),
    ],
  },
  {
    name: 'laying workers on day 30',
    intake: wall('unseen'),
    entries: [see(30, { eggs: 'multiple', capped: 'drone-in-worker', queen: 'unseen' })],
  },
  {
    name: 'laying workers in an abandoned hive',
    intake: { ...wall('unseen'), removal: { type: 'abandoned-hive' } },
    entries: [see(1, { eggs: 'multiple', capped: 'drone-in-worker', queen: 'unseen' })],
  },
  {
    name: 'the old queen’s drones on day 10',
    intake: wall('unseen'),
    entries: [see(10, { eggs: 'none', open: 'none', capped: 'drone-in-worker', cells: 'none' })],
  },
  {
    name: 'prime swarm',
    intake: swarm('unseen'),
    entries: [see(5, { eggs: 'single', onFreshComb: true }), see(14, { ...LAYS, onFreshComb: true })],
  },
  { name: 'cast swarm', intake: swarm('unseen'), entries: [see(5, NEITHER), see(15, NEITHER)] },
  { name: 'cast with its virgin seen', intake: swarm('loose', { queenVirgin: true }), entries: [] },
  {
    name: 'trap-out, nobody seen',
    intake: { removal: { type: 'trap-out' }, queen: 'unseen', brood: NONE },
    entries: [],
  },
  {
    name: 'robbing on day 6, low stores',
    intake: wall('unseen'),
    entries: [see(5, { eggs: 'single' }), out(6, { signs: ['robbing'], stores: 'low' })],
  },
  {
    name: 'beetles and moths in a weak colony',
    intake: wall('caged'),
    entries: [cage(2, 'released'), see(6, { eggs: 'single', framesOfBees: 2, signs: ['beetles', 'moths'] })],
  },
  {
    name: 'deformed wings, treated, washed',
    intake: wall('caged'),
    entries: [
      cage(2, 'released'),
      see(6, { eggs: 'single' }),
      see(15, { eggs: 'single', signs: ['deformed-wings'] }),
      wash(16, 15),
      give(17, 'treatment', { product: 'strips', withdrawalDays: 42 }),
      wash(29, 1),
    ],
  },
  {
    name: 'heat and dead bees',
    intake: {
      removal: { type: 'wall', outdoorC: 40, method: 'vacuum' },
      queen: 'unseen',
      brood: BROOD,
      deadBeesKg: 0.5,
    },
    entries: [],
  },
  {
    name: 'sprayed',
    intake: { removal: { type: 'wall', sprayed: 'yes' }, queen: 'unseen', brood: BROOD },
    entries: [see(5, NEITHER)],
  },
  {
    name: 'suspected disease on day 9',
    intake: wall('unseen'),
    entries: [see(5, { eggs: 'single' }), see(9, { eggs: 'single', signs: ['brood-disease-suspected'] })],
  },
  {
    name: 'found dead on day 12',
    intake: wall('unseen'),
    entries: [see(5, { eggs: 'single' }), out(12, { lost: 'dead' })],
  },
  {
    name: 'no bees left, then bees',
    intake: wall('unseen'),
    entries: [see(5, { eggs: 'single', framesOfBees: 0 }), see(8, { eggs: 'single', framesOfBees: 4 })],
  },
  {
    name: 'weak and raising',
    intake: wall('lost'),
    entries: [see(5, { eggs: 'none', cells: 'open', framesOfBees: 1.5 })],
  },
  {
    name: 'weak and laying, boosted, growing',
    intake: wall('caged'),
    entries: [
      cage(2, 'released'),
      see(5, { eggs: 'single', framesOfBees: 2 }),
      give(6, 'capped-brood'),
      see(12, { eggs: 'single', framesOfBees: 2.5 }),
    ],
  },
  {
    name: 'moved within the yard',
    intake: wall('unseen'),
    entries: [see(5, { eggs: 'single' }), [6, 'move', { yard: 'North', stand: '9' }]],
  },
  {
    name: 'late in the year, queen lost',
    start: '2026-09-28',
    protocol: NORTH,
    intake: wall('lost'),
    entries: [see(5, { eggs: 'none', cells: 'open' })],
  },
  {
    name: 'late in the year, queen unseen',
    start: '2026-08-25',
    protocol: NORTH,
    intake: wall('unseen'),
    entries: [see(5, NEITHER)],
  },
  {
    name: 'winter intake',
    start: '2027-01-10',
    protocol: NORTH,
    intake: { removal: { type: 'tree' }, queen: 'unseen', brood: NONE },
    entries: [],
  },
  {
    name: 'no brood in November',
    start: '2026-09-20',
    protocol: NORTH,
    intake: wall('caged'),
    entries: [cage(2, 'released'), see(6, { eggs: 'single' }), see(24, LAYS), see(51, NEITHER)],
  },
]

/** The entries of a history as `resettle plan` takes them, up to a day. */
export function inputOf(told: Told, upTo: number): { tag: string; protocol?: Fields; entries: Fields[] } {
  const start = told.start ?? START
  return {
    tag: 'X-1',
    ...(told.protocol === undefined ? {} : { protocol: told.protocol }),
    entries: [
      { kind: 'intake', yard: 'North', by: 'ada', on: start, ...told.intake },
      ...told.entries
        .filter(([day]) => day <= upTo)
        .map(([day, kind, fields]) => ({ kind, by: 'ada', on: addDays(start, day), ...fields })),
    ],
  }
}
