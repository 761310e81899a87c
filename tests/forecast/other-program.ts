/**
 * The story and the sightings told anew, from the tables alone, in WebPPL (Goodman & Stuhlmüller, The Design and
 * Implementation of Probabilistic Programming Languages, dippl.org): a general-purpose probabilistic language, which counts
 * every execution of a program. Its answers are kept in other-program.json; make-other-program.ts makes them.
 */
import { createHash } from 'node:crypto'
import { logNormalDays } from '../../src/forecast/pmf.ts'
import { DURATIONS, FIRST_EGG, type Rates, ratesWith } from '../../src/forecast/rates.ts'
import type { Inspection, Intake } from '../../src/journal/entry.ts'

const PROGRAM = `
var D = DATA
var hazard = function(pmf, i) { var before = sum(pmf.slice(0, i)); return before >= 1 - 1e-12 ? 1 : Math.min(1, pmf[i] / (1 - before)) }
var pick = function(pairs) { return categorical({vs: map(first, pairs), ps: map(second, pairs)}) }
var settles = function(day) { return day < D.settling.length ? hazard(D.settling, day) : 0.1 }
var cellDays = function(youngest) {
  var all = filter(function(x) { return x[1] > 0 },
    reduce(function(m, rows) { return map(function(age) {
      var left = 14 + m - age; var loss = left + youngest
      return [left, age >= youngest && loss >= 10 && loss <= 18 ? D.brood[age] * D.emergence[m] : 0]
    }, [0, 1, 2, 3, 4, 5, 6]).concat(rows) }, [], [0, 1, 2, 3, 4]))
  var lefts = [4,5,6,7,8,9,10,11,12,13,14,15,16,17,18]
  return filter(function(x) { return x[1] > 0 }, map(function(l) { return [l, sum(map(second, filter(function(x) { return x[0] === l }, all)))] }, lefts))
}
var night = function(s, t) {
  var old = Math.min(s.old + 1, 22)
  if (s.q === 'settling') {
    return flip(settles(s.age + 1)) ? {q: 'laying', age: 0, old: old}
      : flip(D.settlingDies) ? {q: 'none', age: 0, old: old} : {q: 'settling', age: s.age + 1, old: old}
  }
  if (s.q === 'laying') { return {q: 'laying', age: s.age + 1, old: old} }
  if (s.q === 'workers') { return {q: 'workers', age: s.age + 1, old: old} }
  if (s.q === 'cell') {
    return flip(s.age <= 1 ? D.cellFailsAtLast : D.cellFails) ? {q: 'none', age: Math.max(0, old - 9), old: old}
      : s.age <= 1 ? {q: 'virgin', age: 0, old: old} : {q: 'cell', age: s.age - 1, old: old}
  }
  if (s.q === 'virgin') {
    var v = s.age + 1
    var ends = map(function(e) { return e[v] || 0 }, D.virgin)
    var left = 1 - sum(map(function(e) { return sum(e.slice(0, v)) }, D.virgin))
    var end = pick([['laying', ends[0] / left], ['drones', ends[1] / left], ['none', ends[2] / left], ['virgin', 1 - sum(ends) / left]])
    return {q: end, age: end === 'virgin' ? v : end === 'none' ? Math.max(0, old - 9 - Math.round(v / 2)) : 0, old: old}
  }
  if (s.q === 'drones') { return flip(D.droneLayerGoes) ? {q: 'none', age: 0, old: old} : {q: 'drones', age: s.age + 1, old: old} }
  if (old <= 6 && flip(D.cellStart)) { return {q: 'cell', age: pick(cellDays(old)), old: old} }
  var age = old <= 9 ? 0 : s.age + 1
  return flip(D.workers[Math.min(age, D.workers.length - 1)]) ? {q: 'workers', age: 0, old: old} : {q: 'none', age: age, old: old}
}
var at = function(table, i, beyond) { return i < table.length ? table[i] : beyond }
var any = function(ps) { return 1 - product(map(function(p) { return 1 - p }, ps)) }
var blurBy = function(E) { return function(p, n) { return (1 - E.misread) * p + E.misread / n } }
var chance = function(s, look, E) {
  var blur = blurBy(E)
  var lays = s.q === 'laying'
  var drones = s.q === 'drones'
  var workers = s.q === 'workers'
  var eggs = any([lays || drones ? E.seesEggs * at([0.5, 0.8], s.age, 1) : 0, E.seesEggs * 0.8 * at([1, 0.9, 0.7, 0.3], s.old, 0)])
  var theirs = workers ? E.seesEggs * at([0.5, 0.8], s.age, 1) : 0
  var open = any([lays || drones || workers ? E.seesOpen * at([0, 0, 0, 0.4, 0.8], s.age, 1) : 0,
    E.seesOpen * at([1, 1, 1, 1, 1, 1, 0.95, 0.85, 0.6, 0.3], s.old, 0)])
  var double = (lays || drones) && s.age <= 7 ? D.doublesNew : D.doublesAny
  var noEggs = (1 - eggs) * (1 - theirs)
  var both = eggs * theirs * (1 - D.singlesWorkers)
  var rawSingle = eggs * (1 - double) + (1 - eggs) * theirs * D.singlesWorkers
  var single = rawSingle - Math.min(rawSingle, both)
  var queen = lays || drones || s.q === 'settling' ? E.seesQueen : s.q === 'virgin' ? E.seesVirgin : 0
  var sealed = sum(map(function(i) { return s.age <= 5 + i ? D.sealed[i] : 0 }, [0, 1, 2, 3]))
  var sees = E.seesCells * at([1, 1, 1, 1, 1, 1, 1, 1, 1, 0.95, 0.85, 0.7, 0.5, 0.35], s.age, 0.25)
  var cells = s.q === 'cell' ? {none: (1 - sees) * 0.75, open: sees * (1 - sealed), capped: sees * sealed * 0.985}
    : s.q === 'virgin' ? (s.age <= 7 ? {none: 0.4, open: 0.01, capped: 0.06} : {none: 0.7, open: 0.01, capped: 0.01})
    : s.q === 'none' && s.old < 22 ? {none: 0.79, open: 0.012, capped: 0.008} : {none: 0.869, open: 0.008, capped: 0.003}
  return (look.eggs === 'none' ? blur(noEggs, 3) : look.eggs === 'single' ? blur(single, 3) : 1)
    * (look.open === 'none' ? blur(1 - open, 2) : look.open === 'some' ? blur(open, 2) : 1)
    * (look.queen === 'unseen' ? blur(1 - queen, 2) : look.queen === 'seen' ? blur(queen, 2) : 1)
    * (look.cells === undefined ? 1 : blur(cells[look.cells], 6))
}
var kind = function(s) {
  return s.q === 'none' ? (s.old <= 6 ? 'chance' : 'queenless')
    : s.q === 'settling' ? 'present' : s.q === 'cell' ? 'raising' : s.q === 'workers' || s.q === 'drones' ? 'laying-workers' : s.q
}
var judged = function(s, t) {
  var look = D.looks[t]
  if (look !== undefined) { factor(Math.log((1 - D.careless) * chance(s, look, D.careful) + D.careless * chance(s, look, D.hasty))) }
  return s
}
// Days are inferred one after the other: each day's exact distribution is the next day's start.
var live = function(dist, t) {
  return t > D.last ? dist : live(Infer({method: 'enumerate', model: function() { return judged(night(sample(dist), t), t) }}), t + 1)
}
var start = Infer({method: 'enumerate', model: function() {
  var old = pick(D.oldBrood)
  return judged(flip(D.alive) ? {q: 'settling', age: 0, old: old} : {q: 'none', age: 0, old: old}, 0)
}})
var end = live(start, 1)
Infer({method: 'enumerate', model: function() { return kind(sample(end)) }})
`

function ended(rates: Rates): number[][] {
  const first = logNormalDays(FIRST_EGG.mean, FIRST_EGG.log, FIRST_EGG.from, FIRST_EGG.to)
  const sum = DURATIONS.virginLost.reduce((a, b) => a + b, 0)
  const lost = 1 - rates.virginLays - rates.virginDroneLayer - rates.virginStays
  return [
    first.map((p) => p * rates.virginLays),
    first.map((p) => p * rates.virginDroneLayer),
    DURATIONS.virginLost.map((p) => (p / sum) * lost),
  ]
}

type Seen = Pick<Inspection, 'eggs' | 'open' | 'queen' | 'cells'>

/** What of each thing is seen, times what haste leaves of it; words are mistaken so many times as often. */
const seeing = (r: Rates, misread: number, left: Record<'eggs' | 'open' | 'queen' | 'cells', number>) => ({
  misread: r.misread * misread,
  seesEggs: r.seesEggs * left.eggs,
  seesOpen: r.seesOpen * left.open,
  seesQueen: r.seesQueen * left.queen,
  seesVirgin: r.seesVirgin * left.queen,
  seesCells: r.seesCells * left.cells,
})

export function programOf(
  rates: Rates,
  alive: number,
  oldBrood: [number, number][],
  looks: Record<number, Seen>,
  last: number,
): string {
  const data = {
    ...DURATIONS,
    virgin: ended(rates),
    workers: DURATIONS.layingWorkers,
    alive,
    oldBrood,
    looks,
    last,
    cellFails: 1 - rates.cellEmerges ** ((1 - rates.cellFailsLate) / 11),
    cellFailsAtLast: 1 - rates.cellEmerges ** rates.cellFailsLate,
    cellStart: rates.cellStartPerDay,
    settlingDies: rates.settlingDies,
    droneLayerGoes: rates.droneLayerGoes,
    careless: rates.careless,
    careful: seeing(rates, 1, { eggs: 1, open: 1, queen: 1, cells: 1 }),
    hasty: seeing(rates, 5, {
      eggs: rates.hasteEggs,
      open: rates.hasteOpen,
      queen: rates.hasteQueen,
      cells: rates.hasteCells,
    }),
    doublesNew: rates.doublesNewQueen,
    doublesAny: rates.doublesAnyQueen,
    singlesWorkers: rates.singlesLayingWorkers,
  }
  return PROGRAM.replace('DATA', JSON.stringify(data))
}

const BASE = { removal: { type: 'wall' }, yard: 'N', by: 'x' } as const
const YOUNG = { brood: { eggs: 1, open: 1, capped: 1 }, broodCare: 'closed-chest' } as const
const NONE = { brood: { eggs: 0, open: 0, capped: 0 } } as const
export const rates = ratesWith({ strayArrives: 0, layerFails: 0 })
const DIED_YOUNG: [number, number][] = [
  [0, rates.broodAliveClosed],
  [9, 1 - rates.broodAliveClosed],
]
const GONE: [number, number][] = [[22, 1]]

export const MODELS: {
  name: string
  intake: Pick<Intake, 'removal' | 'yard' | 'by' | 'brood' | 'broodCare'>
  brood: [number, number][]
  looks: Record<number, Seen>
  last: number
}[] = [
  { name: 'nothing seen', intake: { ...BASE, ...YOUNG }, brood: DIED_YOUNG, looks: {}, last: 12 },
  {
    name: 'no eggs, no cells on day 5',
    intake: { ...BASE, ...YOUNG },
    brood: DIED_YOUNG,
    looks: { 5: { eggs: 'none', open: 'some', cells: 'none', queen: 'unseen' } },
    last: 14,
  },
  {
    name: 'eggs too early, then capped cells',
    intake: { ...BASE, ...YOUNG },
    brood: DIED_YOUNG,
    looks: { 3: { eggs: 'single' }, 7: { eggs: 'none', cells: 'capped' } },
    last: 26,
  },
  {
    name: 'a virgin mates, or not',
    intake: { ...BASE, ...YOUNG },
    brood: DIED_YOUNG,
    looks: {
      6: { cells: 'open' },
      24: { eggs: 'none', queen: 'unseen' },
      30: { eggs: 'single', queen: 'seen' },
    },
    last: 34,
  },
  {
    name: 'no brood came along',
    intake: { ...BASE, ...NONE },
    brood: GONE,
    looks: { 6: { eggs: 'none', open: 'none' }, 20: { eggs: 'single' } },
    last: 28,
  },
]

/** Tells whether kept answers are those of this program on these tables. */
export const hashOf = (program: string): string =>
  createHash('sha256').update(program).digest('hex').slice(0, 16)
