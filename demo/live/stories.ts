/** The yard as it stands today. */
import { arrivals } from './arrivals.ts'
import { boughtQueens } from './bought-queens.ts'
import { doubtfulQueens } from './doubtful-queens.ts'
import { eggFrames } from './egg-frames.ts'
import { gone } from './gone.ts'
import { mistakes } from './mistakes.ts'
import { ownQueen } from './own-queen.ts'
import { raising } from './raising.ts'
import { trouble } from './trouble.ts'

/** Colonies in the yard now, and those that left in these weeks. */
export const liveStories = [
  ...arrivals,
  ...ownQueen,
  ...raising,
  ...doubtfulQueens,
  ...eggFrames,
  ...boughtQueens,
  ...trouble,
  ...mistakes,
  ...gone,
]
