/** The year and the weather of a day, in a temperate place of the northern half. Shapes are judgement, limits are published. */
import { type Day, dayNumber } from '../../../src/days.ts'
import type { Dice } from './dice.ts'
import type { World } from './world.ts'

/** By month, January first: share of the summer's best. */
const LAYING = [0.02, 0.1, 0.4, 0.8, 1, 1, 0.95, 0.8, 0.55, 0.25, 0.06, 0.02]
const FLYING = [0, 0, 0.15, 0.7, 1, 1, 1, 0.9, 0.5, 0.08, 0, 0]
const FORAGE = [0, 0, 0.4, 0.9, 1, 1, 0.85, 0.6, 0.4, 0.15, 0, 0]
/** Share of days warm and dry enough to take frames out: 15.6 °C for a short look (Caron). */
const OPENING = [0.05, 0.1, 0.4, 0.75, 0.88, 0.92, 0.95, 0.94, 0.85, 0.55, 0.2, 0.05]
/** Drones are about, so a virgin that flies can mate. */
const DRONES = [0, 0, 0.1, 0.8, 1, 1, 1, 0.9, 0.35, 0.02, 0, 0]

/** Between the middles of months, so that nothing jumps on the first. */
function through(year: readonly number[], day: Day): number {
  const at = Number(day.slice(5, 7)) - 1 + (Number(day.slice(8, 10)) - 15.5) / 30.5
  const month = Math.floor(at)
  const part = at - month
  const of = (m: number): number => year[(m + 12) % 12] ?? 0
  return of(month) * (1 - part) + of(month + 1) * part
}

/** Share of summer's chance that a queen who is ripe on that day will be mated. */
export const matingOn = (day: Day): number => through(FLYING, day) * through(DRONES, day)

export interface Weather {
  /** Frames can be taken out. */
  opens: boolean
  /** A virgin can fly. */
  flies: boolean
  /** Share of best: laying, forage, drones. */
  laying: number
  forage: number
  drones: number
  /** Bees that are reared now live through the winter. */
  winterBees: boolean
}

export function weatherOn(world: World, dice: Dice, day: Day): Weather {
  const n = dayNumber(day)
  // Good days come in runs: half of each day's luck is that of its three-day spell.
  const luck = (dice.at('weather', n) + dice.at('weather', Math.floor(n / 3), 1)) / 2
  // The sum of two uniforms is not uniform: this is its share below `luck`.
  const rank = luck < 0.5 ? 2 * luck * luck : 1 - 2 * (1 - luck) * (1 - luck)
  return {
    opens: rank < through(OPENING, day),
    flies: rank < world.flyable * through(FLYING, day),
    laying: through(LAYING, day),
    forage: through(FORAGE, day) * world.forage * (rank < 0.75 ? 1 : 0.2),
    drones: through(DRONES, day),
    winterBees: day.slice(5) >= '09-10' || day.slice(5) < '03-01',
  }
}
