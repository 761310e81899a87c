/**
 * What a careful keeper may conclude from her own looks: written apart from the program's proofs, and asked of every fixed rule
 * before a box leaves.
 */
import type { Keeper, Look } from '../keeper.ts'
import { HOLD, MIN_FRAMES } from './rule.ts'

/** The last day on which somebody else can have laid what is seen: the removal, or a frame from a donor. */
function lastSource(keeper: Keeper, before: number): number {
  const brood = keeper.colony.arrival.entry.brood
  const none = brood !== undefined && (brood.eggs ?? 0) + (brood.open ?? 0) + (brood.capped ?? 0) === 0
  const frames = [...keeper.eggsGiven, ...keeper.cappedGiven].filter((day) => day < before)
  return Math.max(none ? Number.NEGATIVE_INFINITY : 0, ...frames)
}

const own = (keeper: Keeper, look: Look, days: number): boolean =>
  look.onFreshComb === true || look.day > lastSource(keeper, look.day) + days

/** Eggs or open brood that only a layer of this box can have laid. */
export const layerSeen = (keeper: Keeper, look: Look): boolean =>
  (look.eggs === 'single' && own(keeper, look, 3)) ||
  (look.open !== undefined &&
    look.open !== 'none' &&
    own(keeper, look, 9) &&
    look.capped !== 'drone-in-worker')

/** Flat worker caps over brood that nobody else can have laid: a mated queen. */
const matedProven = (keeper: Keeper): boolean =>
  keeper.looks.some((look) => look.capped === 'worker' && own(keeper, look, 21))

/** All that is asked of a box before it leaves, by today's look. */
export function mayLeave(keeper: Keeper): boolean {
  const look = keeper.looks.at(-1)
  if (look === undefined || look.day !== keeper.day || keeper.day < HOLD) return false
  const young = look.eggs === 'single' || (look.open !== undefined && look.open !== 'none')
  return (
    matedProven(keeper) &&
    young &&
    look.capped !== 'drone-in-worker' &&
    look.cells !== 'open' &&
    look.cells !== 'capped' &&
    look.framesOfBees !== undefined &&
    look.framesOfBees >= MIN_FRAMES &&
    keeper.day - keeper.washedOn <= 14 &&
    keeper.washed < 3
  )
}

/** Several eggs, with raised caps or late: workers lay. */
export const workersLay = (look: Look): boolean =>
  look.eggs === 'multiple' && (look.capped === 'drone-in-worker' || look.day >= 20)
