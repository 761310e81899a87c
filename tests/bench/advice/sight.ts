/** What a keeper sees of the truth, and writes down. Errors are the world's `eyes`; a field left out was not looked for. */
import type { Inspection } from '../../../src/journal/entry.ts'
import { BEES_A_FRAME, CELLS_A_FRAME } from './brood.ts'
import type { Colony } from './truth.ts'

const quarter = (frames: number): number => Math.max(0, Math.round(frames * 4) / 4)

/** A patch of few cells is overlooked more easily: half as often seen at 60 cells (judgement). */
const patch = (cells: number): number => cells / (cells + 60)

type Seen = Pick<
  Inspection,
  | 'eggs'
  | 'open'
  | 'capped'
  | 'cells'
  | 'cellCount'
  | 'queen'
  | 'onFreshComb'
  | 'framesOfBees'
  | 'framesOfBrood'
  | 'stores'
  | 'signs'
>

/** One look into the open box. Two looks on one day see the same. */
export function seenIn(colony: Colony): Seen {
  const { dice, day, world, brood } = colony
  const { eyes } = world
  const hasty = dice.chance(eyes.haste, 'sight', day, 1)
  const half = dice.chance(eyes.half, 'sight', day, 2)
  const sharp = hasty ? eyes.hasteFactor : 1
  const sees = (p: number, n: number): boolean => dice.chance(p * sharp, 'sight', day, n)

  const scattered = colony.workers.active && colony.queen === null
  const eggsSeen = sees(eyes.eggs * patch(brood.eggs()), 3)
  const young =
    colony.queen?.origin === 'raised' &&
    colony.day - colony.queen.laysFrom < 6 &&
    dice.chance(0.15, 'sight', day, 4)
  const eggs = eggsSeen
    ? (scattered && dice.chance(0.85, 'sight', day, 5)) || young
      ? 'multiple'
      : 'single'
    : dice.chance(eyes.falseEggs, 'sight', day, 6)
      ? 'single'
      : 'none'

  const openCells = brood.open()
  const open = sees(eyes.open * patch(openCells), 7)
    ? openCells > CELLS_A_FRAME * 0.5
      ? 'plenty'
      : 'some'
    : 'none'

  const flat = brood.cappedWorker()
  const raised = brood.cappedDrone()
  // A few caps are mistaken, hardly ever whole combs of them (judgement).
  const mistaken = dice.chance(eyes.falseCaps * (flat + raised < 700 ? 1 : 0.15), 'sight', day, 9)
  const cappedSeen = sees(eyes.capped * patch(flat + raised), 8)
  const mostlyDrone = raised > flat * 0.5 && raised > 20
  const capped = cappedSeen ? (mostlyDrone !== mistaken ? 'drone-in-worker' : 'worker') : 'none'

  const cells = cellsSeen(colony, sharp)
  const queen = queenSeen(colony, sharp)
  const frames = quarter(colony.frames * Math.exp(dice.normal(0, 0.14, 'sight', day, 12)))
  const broodFrames = quarter((brood.eggs() + openCells + flat + raised) / CELLS_A_FRAME)
  const fresh = colony.arrival.bareBox && colony.donorFrames === 0 && eggs !== 'none'
  const stores = colony.nest.storesKg < 1.5 ? 'low' : colony.nest.storesKg > 9 ? 'heavy' : 'enough'
  return {
    eggs,
    open,
    // A half look leaves the cells, or the capped brood, or the counting out.
    ...(half && dice.chance(0.5, 'sight', day, 13) ? {} : { capped }),
    ...(half && dice.chance(0.6, 'sight', day, 14) ? {} : cells),
    ...(half && dice.chance(0.3, 'sight', day, 15) ? {} : { framesOfBees: Math.min(60, frames), stores }),
    ...(fresh && dice.chance(0.6, 'sight', day, 16) ? { onFreshComb: true } : {}),
    queen,
    framesOfBrood: Math.min(60, broodFrames),
    signs: signsSeen(colony),
  }
}

function cellsSeen(colony: Colony, sharp: number): Pick<Seen, 'cells' | 'cellCount'> {
  const { dice, day, world, cells } = colony
  const eyes = world.eyes
  if (cells !== null && dice.chance(eyes.cells * sharp, 'sight', day, 10)) {
    const kind = day >= cells.cappedFrom ? 'capped' : 'open'
    return { cells: kind, cellCount: cells.count }
  }
  // A cell just left, while its virgin is young: seen now and then.
  const virgin = colony.queen?.kind === 'virgin' ? day - colony.queen.emergedOn : 99
  if (virgin < 6 && dice.chance(eyes.cells * sharp * 0.6, 'sight', day, 17)) return { cells: 'emerged' }
  if (cells === null && dice.chance(eyes.falseCells, 'sight', day, 18)) return { cells: 'open', cellCount: 1 }
  return { cells: dice.chance(0.1, 'sight', day, 19) ? 'cups' : 'none' }
}

/** A virgin is small and quick: a third as often seen as a laying queen (judgement). */
function queenSeen(colony: Colony, sharp: number): 'seen' | 'unseen' {
  const { queen, dice, day, world } = colony
  if (queen === null) return 'unseen'
  const ease = queen.kind === 'virgin' ? 0.35 : queen.laysFrom > day ? 0.7 : 1
  const few = colony.bees.count < 2 * BEES_A_FRAME ? 1.2 : 1
  return dice.chance(world.eyes.queen * ease * few * sharp, 'sight', day, 11) ? 'seen' : 'unseen'
}

function signsSeen(colony: Colony): Inspection['signs'] {
  const { dice, day } = colony
  const signs: NonNullable<Inspection['signs']> = []
  if (colony.diseased && day > 20 && dice.chance(0.3, 'sight', day, 20)) signs.push('brood-disease-suspected')
  if (colony.frames < 1.5 && dice.chance(0.05, 'sight', day, 21)) signs.push('beetles')
  if (colony.queen === null && !colony.workers.active && dice.chance(0.15, 'sight', day, 22))
    signs.push('queenless-roar')
  return signs
}

/** What can be told with the lid on: that they fly. */
export const seenOutside = (colony: Colony): Seen => ({
  stores: colony.nest.storesKg < 1.2 ? 'low' : 'enough',
  signs: [],
})
