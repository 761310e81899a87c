/** The bound: knows what is in the box, though not the dice to come, and has no better means than the others. */
import type { Rule } from './rule.ts'
import { HOLD, MIN_FRAMES } from './rule.ts'

export const KNOWS_THE_TRUTH: Rule = {
  name: 'a rule that knows the truth',
  family: 'truth',
  begin() {
    return (keeper) => {
      const { colony, day } = keeper
      if (colony.cage !== null && !colony.cage.bought && day >= 2) keeper.seeToCage()
      const failing = colony.queen?.kind === 'drone-layer'
      const lost = colony.queen === null && colony.cage?.queen == null && colony.cells?.alive !== true
      const young = colony.brood.raisable() >= 60 && colony.cells === null && colony.day < 3
      if (keeper.queenInHand) {
        if ((lost || failing) && colony.cage === null) {
          if (failing) colony.takeOutQueen()
          keeper.introduce()
        }
      } else if ((lost && !young) || failing) keeper.orderQueen()
      if (colony.layingWorkers && lost && day % 3 === 0 && keeper.frames < 4) keeper.giveEggFrame()
      if (
        colony.frames < 2.2 &&
        colony.hopeful &&
        day - (keeper.cappedGiven.at(-1) ?? -9) > 8 &&
        keeper.frames < 3
      )
        keeper.boost()
      if (colony.storesKg < 1.5) keeper.feed()
      // What has a mated queen and sealed brood of hers leaves on the first day on which it is strong enough.
      const sealed = colony.queen !== null && day - colony.queen.laysFrom >= 9
      if (day >= HOLD && colony.queenright && sealed && colony.frames >= MIN_FRAMES) keeper.moveOut()
    }
  },
}
