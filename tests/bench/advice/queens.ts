/** Queens in the box: what they are, how a virgin becomes a layer, how a stranger is taken or killed. */
import type { Dice } from './dice.ts'
import type { World } from './world.ts'

export interface Queen {
  /** A drone-layer is any queen that cannot lay worker eggs (any more). */
  kind: 'mated' | 'virgin' | 'drone-layer'
  origin: 'old' | 'raised' | 'bought'
  /** Day on which a virgin left her cell. */
  emergedOn: number
  /** First day of laying; Infinity until it is known. */
  laysFrom: number
  /** Eggs laid, as a share of what a good queen lays. */
  vigour: number
  /** Day on which she fails, and what becomes of her then. */
  failsOn: number
  failsAs: 'dies' | 'drone-layer'
}

/** A laying queen that came along. `n` keeps her dice apart from another's. */
export function oldQueen(world: World, dice: Dice, n: number): Queen {
  const fails = dice.chance(world.failing, 'queen', n, 1)
  return {
    kind: 'mated',
    origin: 'old',
    emergedOn: Number.NEGATIVE_INFINITY,
    laysFrom: Number.POSITIVE_INFINITY,
    vigour: dice.between(0.7, 1, 'queen', n, 2),
    failsOn: fails ? Math.floor(dice.between(3, 70, 'queen', n, 3)) : Number.POSITIVE_INFINITY,
    failsAs: dice.chance(0.6, 'queen', n, 4) ? 'dies' : 'drone-layer',
  }
}

export function boughtQueen(dice: Dice, n: number, day: number): Queen {
  // Superseded or lost within the first month: "common" (Oliver 2021); 13-30 % in 16 weeks (Rhodes & Denney 2003).
  const fails = dice.chance(0.06, 'introduction', n, 11)
  return {
    kind: 'mated',
    origin: 'bought',
    emergedOn: Number.NEGATIVE_INFINITY,
    laysFrom: day + 1 + Math.floor(dice.at('introduction', n, 12) * 4),
    vigour: dice.between(0.85, 1, 'introduction', n, 13),
    failsOn: fails ? day + Math.floor(dice.between(8, 60, 'introduction', n, 14)) : Number.POSITIVE_INFINITY,
    failsAs: dice.chance(0.7, 'introduction', n, 15) ? 'dies' : 'drone-layer',
  }
}

export function virginQueen(dice: Dice, batch: number, day: number): Queen {
  return {
    kind: 'virgin',
    origin: 'raised',
    emergedOn: day,
    laysFrom: Number.POSITIVE_INFINITY,
    vigour: dice.between(0.75, 1, 'mating', batch, 2),
    failsOn: dice.chance(0.04, 'mating', batch, 3)
      ? day + Math.floor(dice.between(20, 80, 'mating', batch, 4))
      : Number.POSITIVE_INFINITY,
    failsAs: 'dies',
  }
}

/**
 * A day in a virgin's life: ripe at 6 days (5-6: McNeil; 6-13 by others), flies on calm warm days, is lost or comes home mated;
 * too old after three to four weeks (Oliver 2021; Breconshire). Returns false when she did not come home.
 */
export function virginDay(
  queen: Queen,
  world: World,
  dice: Dice,
  batch: number,
  day: number,
  weather: { flies: boolean; drones: number },
  bees: number,
): boolean {
  const age = day - queen.emergedOn
  const ripe = 5 + Math.floor(dice.at('mating', batch, 5) * 3)
  if (age >= 28) {
    queen.kind = 'drone-layer'
    queen.laysFrom = day + Math.floor(dice.between(0, 10, 'mating', batch, 6))
    return true
  }
  if (age < ripe || !weather.flies) return true
  if (!dice.chance(world.flightSafe, 'mating', batch, 100 + age)) return false
  const old = age > 21 ? 0.5 : 1
  if (!dice.chance(world.flightMates * weather.drones * old, 'mating', batch, 200 + age)) return true
  queen.kind = 'mated'
  // A handful of bees delays laying by days (J. Apic. Res. 1990, 29:101-106: 150 attendants 15 days, 9,500 7 days).
  const few = bees < 2500 ? 2 : 0
  const lag = 2 - (world.mateToEgg - 2) * Math.log(1 - dice.at('mating', batch, 7))
  queen.laysFrom = day + few + Math.min(9, Math.round(lag))
  // Badly mated: lays drones after some weeks. Judgement, a part of "superseded within the first month".
  if (dice.chance(0.03, 'mating', batch, 8)) {
    queen.failsOn = queen.laysFrom + Math.floor(dice.between(5, 40, 'mating', batch, 9))
    queen.failsAs = 'drone-layer'
  }
  return true
}

/** What a bought queen finds when she leaves her cage. */
export interface Reception {
  queen: Queen | null
  liveCells: boolean
  layingWorkers: boolean
  daysQueenless: number
  bees: number
  disturbed: boolean
}

/** Chance that the bees take her. */
export function acceptance(world: World, at: Reception): number {
  const stranger =
    at.queen === null
      ? 1
      : at.queen.kind === 'mated'
        ? 0.03 // 1 of 54 in queenright colonies (Invernizzi et al.)
        : at.queen.kind === 'virgin'
          ? 0.12 // judgement: "no queen while a virgin is present"
          : 0.2 // a drone-laying queen: judgement
  const cells = at.liveCells ? 0.5 : 1 // judgement: cells must go first
  const workers = at.layingWorkers ? 0.1 : 1 // "mostly fails"
  const fresh = at.daysQueenless < 1 ? 0.75 : at.daysQueenless < 3 ? 0.92 : 1 // Szabo: less aggression after 1-20 days
  const small = at.bees < 5000 ? 1.05 : 1 // judgement: small colonies take queens more easily
  const peace = at.disturbed ? 0.92 : 1 // judgement: opened within two days of her release
  return Math.min(0.97, world.accepted * stranger * cells * workers * fresh * small * peace)
}
