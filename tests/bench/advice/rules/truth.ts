/** The bound: knows what is in the box, though not the dice to come, and has no better means than the others. */
import { addDays } from '../../../../src/days.ts'
import type { Keeper } from '../keeper.ts'
import { matingOn } from '../season.ts'
import { HOLD, MIN_FRAMES, type Rule } from './rule.ts'

/** Below this share of summer's chance a virgin is not waited for. */
const MATES_FROM = 0.55

/** Nothing in the box will become a layer: none there, or one that comes too late in the year. */
function needsQueen(keeper: Keeper): boolean {
  const { colony, day } = keeper
  const q = colony.queen
  if (q?.kind === 'drone-layer') return true
  if (colony.cage?.queen != null) return false
  const ripe = q?.kind === 'virgin' ? q.emergedOn + 8 : (colony.cells?.emergesOn ?? day + 11) + 8
  const late = matingOn(addDays(colony.arrival.on, Math.max(day, ripe))) < MATES_FROM
  if (q?.kind === 'virgin') return late || day - q.emergedOn > 22
  if (q !== null) return false
  const cells = colony.cells?.alive === true
  const young = colony.cells === null && day < 3 && colony.brood.raisable() >= 60
  return late || !(cells || young)
}

function bringQueen(keeper: Keeper): void {
  const { colony } = keeper
  if (!needsQueen(keeper)) return
  if (!keeper.queenInHand) keeper.orderQueen()
  else if (colony.cage === null) {
    if (colony.queen !== null) colony.takeOutQueen()
    if (colony.cells !== null) colony.cutCells()
    keeper.introduce()
  }
}

/** A third frame of bees is bought with capped brood when it is wanted soon. */
function strengthen(keeper: Keeper): void {
  const { colony, day } = keeper
  const rests = day - (keeper.cappedGiven.at(-1) ?? -99) > 8
  if (colony.frames < 2.6 && colony.hopeful && rests && keeper.cappedGiven.length < 4) keeper.boost()
}

export const KNOWS_THE_TRUTH: Rule = {
  name: 'a rule that knows the truth',
  family: 'truth',
  begin() {
    return (keeper) => {
      const { colony, day } = keeper
      if (colony.cage !== null && !colony.cage.bought && day >= 2) keeper.seeToCage()
      bringQueen(keeper)
      if (colony.workers.active && colony.queen === null && day % 3 === 0 && keeper.frames < 4)
        keeper.giveEggFrame()
      strengthen(keeper)
      if (colony.nest.storesKg < 1.5) keeper.feed()
      // What has a mated queen and sealed brood of hers leaves on the first day on which it is strong enough.
      const sealed = colony.queen !== null && day - colony.queen.laysFrom >= 9
      if (day >= HOLD && colony.queenright && sealed && colony.frames >= MIN_FRAMES) keeper.moveOut()
    }
  },
}
