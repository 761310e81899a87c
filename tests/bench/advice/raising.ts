/** Cells: begun on young brood when no queen is felt, and what comes of them. */
import type { Dice } from './dice.ts'
import type { Nest } from './nest.ts'
import type { World } from './world.ts'

export interface CellBatch {
  /** Day on which the first virgin leaves it, if one does. */
  emergesOn: number
  /** From here on it is capped. */
  cappedFrom: number
  count: number
  /** False: no virgin will come of it. */
  alive: boolean
}

/** Fewer cells with young brood than this, or fewer bees, and none is raised. Judgement. */
const LEAST_BROOD = 60
const LEAST_BEES = 1200

export const canRaise = (nest: Nest): boolean =>
  nest.brood.raisable() >= LEAST_BROOD && nest.bees.count >= LEAST_BEES

/** Whether they begin today: within 12-48 hours of the loss (Fell & Morse 1984). */
export const beginsToday = (dice: Dice, batch: number, day: number): boolean =>
  !dice.chance(0.3, 'cells', batch, 50 + (day % 40))

/** The batch of cells begun today, or null where they do not take to this brood. Workers that lay, and few bees, do so less. */
export function begun(
  world: World,
  dice: Dice,
  batch: number,
  day: number,
  nest: Nest,
  workersLay: boolean,
): CellBatch | null {
  const bees = nest.bees.count
  const able = world.cellsStarted * (workersLay ? 0.5 : 1) * (bees < 3000 ? 0.85 : 1)
  if (!dice.chance(able, 'cells', batch, 1)) return null
  const age = nest.brood.raisableAge()
  const total = Math.min(18, Math.max(14, dice.normal(15.7, 0.7, 'cells', batch, 2))) // Tofilski & Czekonska 2004
  const old = age > 5 ? 0.75 : 1 // small, intercaste-like queens of old larvae (Woyke 1971)
  const few = bees < 4000 ? 0.88 : 1
  return {
    emergesOn: day + Math.round(total - age),
    cappedFrom: day + Math.round(Math.max(1, 8.8 - age)),
    count: 2 + Math.floor(dice.at('cells', batch, 3) * 14),
    alive: dice.chance(world.cellsGiveVirgin * old * few, 'cells', batch, 4),
  }
}
