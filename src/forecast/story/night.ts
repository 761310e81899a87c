/** One night: from a state at nightfall to the states possible at the next, with their chances. */
import { OLDEST_FOR_QUEEN, VIRGIN_AGE_WHEN_GIVEN } from '../../biology/index.ts'
import type { Rates } from '../rates.ts'
import type { Around, CageKind } from './around.ts'
import { NO_OLD, pack, Q, type State } from './state.ts'
import type { Tables } from './tables.ts'

/** What a step decided, for learning; 0: nothing that is learned. */
export const TALLY = {
  none: 0,
  cellEmerged: 1,
  cellFailed: 2,
  virginLaid: 3,
  virginFailed: 4,
  boughtTook: 5,
  boughtRefused: 6,
} as const

/** Where a step can lead: state numbers, their chances (summing to 1), and what each decided. */
export interface Row {
  to: number[]
  p: number[]
  tally: number[]
}

const emptyRow = (): Row => ({ to: [], p: [], tally: [] })
const add = (row: Row, p: number, to: number, tally: number = TALLY.none): void => {
  if (p <= 0) return
  row.to.push(to)
  row.p.push(p)
  row.tally.push(tally)
}

/** Open brood is capped nine days after the last egg. */
const LAST_OPEN = 9

/** Open brood of a former layer or a donor frame is in the box: its scent holds laying workers back. */
const openBroodHere = (old: number, around: Around): boolean =>
  old <= LAST_OPEN || (around.gift >= 0 && around.gift <= 9)

/** A layer can fail once her own capped brood is there; before that, failing belongs to acceptance or mating. */
export const LAYER_CAN_FAIL_FROM = 10

function nobody(row: Row, s: State, old: number, around: Around, rates: Rates, t: Tables, w: number): void {
  const held = s.caged ? rates.cagedHoldsCells : 1
  const own = old <= OLDEST_FOR_QUEEN ? rates.cellStartPerDay * held : 0
  const fromGift = around.gift >= 1 && around.gift <= OLDEST_FOR_QUEEN
  const gift = fromGift ? rates.cellStartPerDay * around.giftWorth * held : 0
  const begin = 1 - (1 - own) * (1 - gift)
  if (begin > 0)
    for (const [share, youngest] of [
      [own / (own + gift), old],
      [gift / (own + gift), around.gift],
    ] as const)
      if (share > 0)
        t.cellDays[youngest]?.forEach((p, left) => {
          add(row, w * begin * share * p, pack(Q.raising, left, old, s.caged))
        })
  const rest = w * (1 - begin)
  add(row, rest * rates.strayArrives, pack(Q.settling, 0, old, s.caged))
  const without = openBroodHere(old, around) || s.caged ? 0 : s.age + 1
  const workers = s.caged ? 0 : (t.workersBegin[Math.min(without, t.workersBegin.length - 1)] ?? 0)
  const still = rest * (1 - rates.strayArrives)
  add(row, still * workers, pack(Q.workers, 0, old, s.caged))
  add(row, still * (1 - workers), pack(Q.none, without, old, s.caged))
}

/**
 * Days towards laying workers when a cell or a virgin comes to nothing: the clock runs from the last open brood, since the loss of the
 * queen who laid it (Collison; Oliver 2021), and half as fast while a virgin is there (judgement).
 */
const broodlessFor = (old: number, asVirgin: number): number =>
  Math.max(0, old - LAST_OPEN - Math.round(asVirgin / 2))

function virgin(row: Row, s: State, old: number, mates: number, rates: Rates, t: Tables, w: number): void {
  const age = s.age + 1
  if (age > 28) {
    add(row, w * rates.dudGoes, pack(Q.none, broodlessFor(old, age), old, s.caged))
    add(row, w * (1 - rates.dudGoes) * rates.dudDrones, pack(Q.drones, 0, old, s.caged))
    add(row, w * (1 - rates.dudGoes) * (1 - rates.dudDrones), pack(Q.virgin, age, old, s.caged))
    return
  }
  // Out of the mating months she does not fly: she grows too old, or lays drones.
  const lays = mates * (t.virginLays[age] ?? 0)
  const drones = t.virginDrones[age] ?? 0
  const lost = t.virginLost[age] ?? 0
  add(row, w * lays, pack(Q.laying, 0, old, s.caged), TALLY.virginLaid)
  add(row, w * drones, pack(Q.drones, 0, old, s.caged), TALLY.virginFailed)
  add(row, w * lost, pack(Q.none, broodlessFor(old, age), old, s.caged), TALLY.virginFailed)
  const stays = w * (1 - lays - drones - lost)
  add(row, stays, pack(Q.virgin, age, old, s.caged), age > 28 ? TALLY.virginFailed : TALLY.none)
}

/** The colony's own doings overnight, with weight `w`, the cage apart. */
function resident(row: Row, s: State, around: Around, rates: Rates, t: Tables, w: number): void {
  const old = Math.min(s.old + 1, NO_OLD)
  switch (s.stage) {
    case Q.none:
      nobody(row, s, old, around, rates, t, w)
      return
    case Q.settling: {
      const lays = t.settles[Math.min(s.age + 1, t.settles.length - 1)] ?? 0
      const dies = (1 - lays) * rates.settlingDies
      add(row, w * lays, pack(Q.laying, 0, old, s.caged))
      add(row, w * dies, pack(Q.none, 0, old, s.caged))
      add(row, w * (1 - lays - dies), pack(Q.settling, s.age + 1, old, s.caged))
      return
    }
    case Q.laying: {
      const fails = s.age >= LAYER_CAN_FAIL_FROM ? rates.layerFails : 0
      add(row, w * fails * (1 - rates.layerTurnsDrones), pack(Q.none, 0, 0, s.caged))
      add(row, w * fails * rates.layerTurnsDrones, pack(Q.drones, 0, 0, s.caged))
      add(row, w * (1 - fails), pack(Q.laying, s.age + 1, old, s.caged))
      return
    }
    case Q.raising: {
      const fails = s.age <= 1 ? t.cellFailsAtLast : t.cellFails
      add(row, w * fails, pack(Q.none, broodlessFor(old, 0), old, s.caged), TALLY.cellFailed)
      if (s.age <= 1) add(row, w * (1 - fails), pack(Q.virgin, 0, old, s.caged), TALLY.cellEmerged)
      else add(row, w * (1 - fails), pack(Q.raising, s.age - 1, old, s.caged))
      return
    }
    case Q.virgin:
      virgin(row, s, old, around.mates, rates, t, w)
      return
    case Q.workers: {
      const turned = around.gift >= 1 && around.gift <= LAST_OPEN ? rates.framesTurnWorkers : 0
      add(row, w * turned, pack(Q.none, 0, old, s.caged))
      add(row, w * (1 - turned), pack(Q.workers, s.age + 1, old, s.caged))
      return
    }
    default:
      add(row, w * rates.droneLayerGoes, pack(Q.none, 0, old, s.caged))
      add(row, w * (1 - rates.droneLayerGoes), pack(Q.drones, s.age + 1, old, s.caged))
  }
}

/** Chance that a queen let out of her cage is taken, by what she meets. */
function takes(stage: number, cage: CageKind | null, rates: Rates): number {
  if (cage === 'own')
    return stage === Q.none ? rates.ownTakesBack : stage === Q.raising ? 0.6 : rates.boughtTakesOverQueen
  if (stage === Q.none) return cage === 'virgin' ? rates.givenVirginTakes : rates.boughtTakes
  if (stage === Q.raising) return rates.boughtTakesWithCells
  if (stage === Q.virgin) return cage === 'virgin' ? rates.boughtTakesOverQueen : rates.boughtTakesOverVirgin
  if (stage === Q.workers || stage === Q.drones) return rates.boughtTakesLayingWorkers
  return rates.boughtTakesOverQueen
}

/** The state after she was taken, with a former layer's brood that old. */
const taken = (cage: CageKind | null, old: number): number =>
  cage === 'virgin' ? pack(Q.virgin, VIRGIN_AGE_WHEN_GIVEN / 2, old, false) : pack(Q.settling, 0, old, false)

/** Whether a queen is taken is learned only of bought ones, in colonies that had none. */
const learned = (s: State, cage: CageKind | null): boolean => cage === 'bought' && s.stage === Q.none

/** The cage is opened by day, or she is put in free: she is taken or not; who was here stays in the second case. */
export function freed(s: State, cage: CageKind | null, rates: Rates): Row {
  const row = emptyRow()
  const p = takes(s.stage, cage, rates)
  const learn = learned(s, cage)
  add(row, p, taken(cage, s.old), learn ? TALLY.boughtTook : TALLY.none)
  add(row, 1 - p, pack(s.stage, s.age, s.old, false), learn ? TALLY.boughtRefused : TALLY.none)
  return row
}

/** Where a night leads. `around` is what lay in the box that night, dated to the day it leads to. */
export function nightFrom(s: State, around: Around, rates: Rates, t: Tables): Row {
  const row = emptyRow()
  if (!s.caged) {
    resident(row, s, around, rates, t, 1)
    return row
  }
  const out = t.candy[Math.min(around.cagedFor, t.candy.length - 1)] ?? 0
  const p = takes(s.stage, around.cage, rates)
  const learn = learned(s, around.cage)
  const old = Math.min(s.old + 1, NO_OLD)
  add(row, out * p, taken(around.cage, old), learn ? TALLY.boughtTook : TALLY.none)
  const refused = row.to.length
  resident(row, { ...s, caged: false }, around, rates, t, out * (1 - p))
  if (learn) row.tally.fill(TALLY.boughtRefused, refused)
  resident(row, s, around, rates, t, 1 - out)
  return row
}
