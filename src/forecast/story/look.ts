/**
 * How likely what was written down is, in a given state: each thing looked at multiplies, since given the state they do not
 * depend on each other. What was not looked at says nothing.
 */
import type { Inspection } from '../../journal/index.ts'
import type { Rates } from '../rates.ts'
import type { Around } from './around.ts'
import { NO_OLD, Q, type State } from './state.ts'
import type { Tables } from './tables.ts'

const LOOKED_AT = ['eggs', 'open', 'capped', 'queen', 'cells', 'roar'] as const
export type LookedAt = (typeof LOOKED_AT)[number]

/** One thing looked at: its value as written, and how likely that is in a state. */
export interface Sighting {
  what: LookedAt
  value: string
  chance: (s: State, brood: Brood) => number
}

/** Brood a state shows: all there is, and only what whoever lays here now has laid. Worked out once for all sightings. */
export interface Brood {
  all: BroodSeen
  fresh: BroodSeen
}

/** How much there is of it, 0-1, by days since the last egg of a source: nothing beyond the ambiguity horizon. */
const EGGS_LEFT = [1, 0.9, 0.7, 0.3]
const OPEN_LEFT = [1, 1, 1, 1, 1, 1, 0.95, 0.85, 0.6, 0.3]
const CAPPED_LEFT = [...new Array<number>(20).fill(1), 0.5, 0.15]
/** The same for a layer, by days since her first egg: hatching at 3, capping at 9 (8 at the earliest). */
const EGGS_NEW = [0.5, 0.8]
const OPEN_NEW = [0, 0, 0, 0.4, 0.8]
const CAPPED_NEW = [0, 0, 0, 0, 0, 0, 0, 0, 0.1, 0.5, 0.9]
/** Cells of laying workers and drone layers are capped from day 10 (drones: day 10 after the egg). */
const DRONE_CAPS_NEW = [0, 0, 0, 0, 0, 0, 0, 0, 0, 0.3, 0.7]

const left = (table: readonly number[], days: number): number => (days < 0 ? 0 : (table[days] ?? 0))
const grown = (table: readonly number[], days: number): number => table[Math.min(days, table.length)] ?? 1

/** Chance that at least one of several independent things is seen. */
const either = (a: number, b: number, c: number, d = 0): number => 1 - (1 - a) * (1 - b) * (1 - c) * (1 - d)

/** Mixes in the chance that the sighting is plain wrong, spread over the possible answers. */
const floor = (p: number, answers: number, rates: Rates): number =>
  (1 - rates.misread) * p + rates.misread / answers

export interface BroodSeen {
  /** Chance that eggs of others than laying workers are seen, and that theirs are. */
  eggs: number
  workerEggs: number
  open: number
  capped: number
  droneCaps: number
}

/** Chances of seeing each stage of brood. `fresh`: only brood laid by whoever lays here now counts. */
export function broodSeen(s: State, a: Around, rates: Rates, fresh = false): BroodSeen {
  const layer = s.stage === Q.laying
  const drones = s.stage === Q.drones
  const workers = s.stage === Q.workers
  const elsewhere = fresh ? 0 : 1
  const old = elsewhere * left(EGGS_LEFT, s.old)
  const gift = elsewhere * left(EGGS_LEFT, a.gift)
  const oldOpen = a.oldOpen ? elsewhere * left(OPEN_LEFT, s.old) : 0
  const oldCapped = a.oldCapped ? elsewhere * left(CAPPED_LEFT, s.old) : 0
  // A frame of capped brood carries little else; what is capped in it emerges within 12 days, younger brood later.
  const cappedGift = elsewhere * Math.max(left(CAPPED_LEFT, a.gift), left(CAPPED_LEFT, a.cappedGift))
  return {
    eggs: either(
      layer || drones ? rates.seesEggs * grown(EGGS_NEW, s.age) : 0,
      rates.seesEggs * old * 0.8,
      rates.seesEggs * gift,
      elsewhere * 0.15 * left(EGGS_LEFT, a.cappedGift),
    ),
    workerEggs: workers ? rates.seesEggs * grown(EGGS_NEW, s.age) : 0,
    open: either(
      layer || drones || workers ? rates.seesOpen * grown(OPEN_NEW, s.age) : 0,
      rates.seesOpen * oldOpen,
      rates.seesOpen * left(OPEN_LEFT, a.gift) * elsewhere,
      elsewhere * 0.3 * left(OPEN_LEFT, a.cappedGift),
    ),
    capped: either(
      layer ? rates.seesCapped * grown(CAPPED_NEW, s.age) : 0,
      rates.seesCapped * oldCapped,
      rates.seesCapped * cappedGift,
    ),
    droneCaps: workers || drones ? rates.seesCapped * grown(DRONE_CAPS_NEW, s.age) : 0,
  }
}

/** Chances of 'none', 'single', 'multiple'. */
export function eggsChances(s: State, b: BroodSeen, rates: Rates): readonly [number, number, number] {
  const newQueen = (s.stage === Q.laying || s.stage === Q.drones) && s.age <= 7
  const doubles = newQueen ? rates.doublesNewQueen : rates.doublesAnyQueen
  const singles = b.eggs * (1 - doubles) + (1 - b.eggs) * b.workerEggs * rates.singlesLayingWorkers
  const none = (1 - b.eggs) * (1 - b.workerEggs)
  // Where queens' and workers' eggs stand side by side, the several in a cell are what is written down.
  const both = b.eggs * b.workerEggs * (1 - rates.singlesLayingWorkers)
  const single = singles - Math.min(singles, both)
  return [none, single, 1 - none - single]
}

/** Chances of 'none', 'worker', 'drone-in-worker'. */
export function cappedChances(b: BroodSeen, rates: Rates): readonly [number, number, number] {
  const none = (1 - b.capped) * (1 - b.droneCaps)
  const drone = b.droneCaps * (0.97 - 0.27 * b.capped) + (1 - b.droneCaps) * b.capped * rates.capsMistaken
  return [none, 1 - none - drone, drone]
}

/** Chance that "queen seen" is written of one in a cage (judgement). */
const SEES_CAGED = 0.6

/** Chance that a queen is seen. */
export function queenSeen(s: State, rates: Rates): number {
  if (s.stage === Q.laying || s.stage === Q.settling || s.stage === Q.drones) return rates.seesQueen
  if (s.caged) return SEES_CAGED
  if (s.stage === Q.virgin) return rates.seesVirgin
  return 0
}

/** Order of the answers in {@link cellChances}. */
export const CELL_ANSWERS = ['none', 'cups', 'open', 'capped', 'emerged', 'torn-down'] as const

/** Where no queen is being raised: cups are common, the rest is rare (judgement). */
const NO_CELLS = [0.869, 0.1, 0.008, 0.003, 0.01, 0.01] as const
const CELLS_OF_A_VIRGIN = [0.4, 0.05, 0.01, 0.06, 0.33, 0.15] as const
const CELLS_OF_THE_ORPHANED = [0.79, 0.1, 0.012, 0.008, 0.02, 0.07] as const
const CELLS_LONG_GONE = [0.7, 0.09, 0.01, 0.01, 0.11, 0.08] as const

/** How well a cell shows, by days until she leaves it: hard to tell from a cup in its first days, easily seen after 3-5 days (geelongweb; naturesnectar; "by the next day" Oliver 2021). Judgement on the steps. */
export const CELL_SHOWS = [1, 1, 1, 1, 1, 1, 1, 1, 1, 0.95, 0.85, 0.7, 0.5, 0.35] as const
export const CELL_SHOWS_LEAST = 0.25

/** Chances of each answer about queen cells, in the order of {@link CELL_ANSWERS}. */
export function cellChances(s: State, rates: Rates, t: Tables): readonly number[] {
  if (s.stage === Q.raising) {
    const sealed = t.sealed[s.age] ?? 0
    const see = rates.seesCells * (CELL_SHOWS[s.age] ?? CELL_SHOWS_LEAST)
    const rest = 1 - see
    return [rest * 0.75, rest * 0.25, see * (1 - sealed), see * sealed * 0.985, see * sealed * 0.015, 0]
  }
  if (s.stage === Q.virgin) return s.age <= 7 ? CELLS_OF_A_VIRGIN : CELLS_LONG_GONE
  return s.stage === Q.none && s.old < NO_OLD ? CELLS_OF_THE_ORPHANED : NO_CELLS
}

/** The brood a state shows; `fresh` is worked out only when asked for. */
export function broodOf(s: State, around: Around, rates: Rates, fresh: boolean): Brood {
  const all = broodSeen(s, around, rates)
  return { all, fresh: fresh ? broodSeen(s, around, rates, true) : all }
}

/** The sightings of an inspection, ready to be held against every state. Outside looks and what was left out are silent. */
export function sightingsOf(look: Inspection, rates: Rates, t: Tables): Sighting[] {
  const out: Sighting[] = []
  // Only brood that was seen can be said to lie on fresh comb; none seen says it of all comb.
  const fresh = look.onFreshComb === true
  const on = (brood: Brood, seen: boolean): BroodSeen => (seen && fresh ? brood.fresh : brood.all)
  const say = (what: LookedAt, value: string, chance: Sighting['chance']): void => {
    out.push({ what, value, chance })
  }
  if (look.opened) {
    const { eggs, open, capped, queen, cells } = look
    if (eggs !== undefined) {
      const at = ['none', 'single', 'multiple'].indexOf(eggs)
      say('eggs', eggs, (s, brood) => floor(eggsChances(s, on(brood, at > 0), rates)[at] ?? 0, 3, rates))
    }
    if (open !== undefined)
      say('open', open, (_, brood) => {
        const p = on(brood, open !== 'none').open
        return floor(open === 'none' ? 1 - p : p, 2, rates)
      })
    if (capped !== undefined) {
      const at = ['none', 'worker', 'drone-in-worker'].indexOf(capped)
      say('capped', capped, (_, brood) => floor(cappedChances(on(brood, at > 0), rates)[at] ?? 0, 3, rates))
    }
    if (queen !== undefined)
      say('queen', queen, (s) => {
        const p = queenSeen(s, rates)
        return floor(queen === 'seen' ? p : 1 - p, 2, rates)
      })
    if (cells !== undefined) {
      const at = CELL_ANSWERS.indexOf(cells)
      say('cells', cells, (s) => floor(cellChances(s, rates, t)[at] ?? 0, 6, rates))
    }
  }
  if (look.signs !== undefined) {
    const heard = look.signs.includes('queenless-roar')
    if (heard || look.opened)
      say('roar', heard ? 'heard' : 'not heard', (s) => {
        const without = (s.stage === Q.none && !s.caged) || s.stage === Q.workers
        const p = without ? rates.hearsRoar : rates.roarAnyway
        return heard ? p : 1 - p
      })
  }
  return out
}
