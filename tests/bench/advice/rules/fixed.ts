/**
 * Rules that go by the calendar: looks on set days, then weekly until the box is decided. What is found is answered by one sensible
 * ladder (common practice): a frame of eggs where nothing young is found, time for cells and virgins, a bought queen where a frame
 * came to nothing, uniting for laying workers and for the hopelessly small.
 */
import type { Keeper, Look } from '../keeper.ts'
import { layerSeen, mayLeave, workersLay } from './knowledge.ts'
import { HOLD, type Rule } from './rule.ts'

/** Frees a caged queen, sees to a cage and gives a queen that came: done between looks, as any keeper would. */
function seeToQueens(keeper: Keeper): void {
  const last = keeper.introduced.at(-1)
  if (keeper.cageOpenQuestion && keeper.day - (last ?? 0) >= (last === undefined ? 3 : 5)) keeper.seeToCage()
  if (!keeper.queenInHand) return
  const look = keeper.look()
  // Eggs after all: the queen is not put in.
  if (look.eggs === 'single' || layerSeen(keeper, look)) keeper.giveQueenAway()
  else keeper.introduce()
}

function washIfDue(keeper: Keeper): void {
  if (keeper.day >= 16 && keeper.day - keeper.washedOn > 12) keeper.wash()
}

/** Common practice: below this there is nothing to build on without a queen. */
const HOPELESS_FRAMES = 1

/** A small colony that lays gets a frame of capped brood, twice at most. */
function strengthen(keeper: Keeper, look: Look): void {
  if ((look.framesOfBees ?? 3) < 2.5 && keeper.day >= 10 && keeper.cappedGiven.length < 2) keeper.boost()
}

function ladder(keeper: Keeper, look: Look): void {
  if (workersLay(look)) keeper.unite()
  else if (look.eggs === 'single' && look.capped === 'drone-in-worker' && keeper.day > 25) keeper.orderQueen()
  else if (look.eggs !== 'none' || layerSeen(keeper, look)) strengthen(keeper, look)
  else if ((look.framesOfBees ?? 3) < HOPELESS_FRAMES) keeper.unite()
  else if (look.cells !== 'open' && look.cells !== 'capped' && look.cells !== 'emerged')
    withoutLayer(keeper, look)
}

/** Neither a layer nor cells: first a frame of eggs; a queen when that came to nothing. */
function withoutLayer(keeper: Keeper, look: Look): void {
  const { day } = keeper
  const frame = keeper.eggsGiven.at(-1)
  const introduced = keeper.introduced.at(-1)
  if (introduced !== undefined && day - introduced < 12) return
  if (frame === undefined || day - frame > 24) {
    if (look.open === 'none' || day >= 12) keeper.giveEggFrame()
    return
  }
  // A frame without cells: a virgin or a queen is there, so wait; three weeks later without eggs she has failed.
  if (day - frame >= 18 || (frame >= 18 && day - frame >= 7)) keeper.orderQueen()
}

function looksOn(name: string, days: readonly number[], every = 7): Rule {
  return {
    name,
    family: 'fixed',
    begin() {
      let next = 0
      return (keeper) => {
        seeToQueens(keeper)
        const wanted = days[next] ?? (days.at(-1) ?? 0) + every * (next - days.length + 1)
        if (keeper.day < wanted || keeper.fate !== null) return
        while ((days[next] ?? (days.at(-1) ?? 0) + every * (next - days.length + 1)) <= keeper.day) next += 1
        const look = keeper.look()
        washIfDue(keeper)
        if (mayLeave(keeper)) keeper.moveOut()
        else ladder(keeper, look)
      }
    },
  }
}

/** A queen is ordered as soon as a look finds no eggs, from day 5 on; again when she was not taken. */
const BUY_AT_ONCE: Rule = {
  name: 'buy a queen at once where no eggs are seen',
  family: 'fixed',
  begin() {
    let next = 5
    return (keeper) => {
      const had = keeper.introduced.length
      seeToQueens(keeper)
      if (keeper.introduced.length > had) next = keeper.day + 9
      if (keeper.day < next || keeper.queenOrdered) return
      const look = keeper.look()
      washIfDue(keeper)
      next = keeper.day + (keeper.day < HOLD - 14 ? 14 : 7)
      // Once a layer was seen, one look without eggs is no reason: young larvae speak for her.
      const none = look.eggs === 'none' && !layerSeen(keeper, look)
      if (mayLeave(keeper)) keeper.moveOut()
      else if (none && keeper.introduced.length < 3) keeper.orderQueen()
      else if (none || workersLay(look)) keeper.unite()
      else strengthen(keeper, look)
    }
  },
}

/** The lid stays on until the hold is over; then a look every week, and nothing is given. */
const NEVER_TOUCH: Rule = {
  name: 'never touch',
  family: 'fixed',
  begin() {
    let next = HOLD
    return (keeper) => {
      if (keeper.cageOpenQuestion && keeper.day >= 3) keeper.seeToCage()
      if (keeper.day < next) return
      next = keeper.day + 7
      keeper.look()
      washIfDue(keeper)
      if (mayLeave(keeper)) keeper.moveOut()
    }
  },
}

const FRAME_DAYS = [5, 16, 22, 28, 35, 42, 49, 56, 63, 70, 77, 84]

/**
 * Frames of eggs on day 16 and 22 wherever no eggs are seen, read at the next look; a queen where cells stand on one.
 *
 * @param leaves what a box must show today to be moved out
 */
function testFrames(
  name: string,
  family: 'fixed' | 'unproven',
  leaves: (keeper: Keeper, look: Look) => boolean,
): Rule {
  return {
    name,
    family,
    begin() {
      const days = [...FRAME_DAYS]
      return (keeper) => {
        seeToQueens(keeper)
        const wanted = days[0]
        if (wanted === undefined || keeper.day < wanted || keeper.fate !== null) return
        while ((days[0] ?? Number.POSITIVE_INFINITY) <= keeper.day) days.shift()
        const look = keeper.look()
        washIfDue(keeper)
        const eggs = look.eggs === 'single'
        const cells = look.cells === 'open' || look.cells === 'capped'
        if (leaves(keeper, look)) keeper.moveOut()
        else if (workersLay(look)) keeper.unite()
        else if (eggs) strengthen(keeper, look)
        else if (keeper.day >= 15 && cells && keeper.eggsGiven.length > 0) keeper.orderQueen()
        else if (keeper.day >= 15 && !keeper.queenOrdered) keeper.giveEggFrame()
      }
    },
  }
}

const TEST_FRAMES = testFrames('test frames on day 16 and 22', 'fixed', mayLeave)

/** Leaves on eggs alone, which may be a donor's: shown for what the proofs are worth, and no yardstick. */
const TEST_FRAMES_BY_THUMB = testFrames(
  'the same by rule of thumb, leaving on eggs alone',
  'unproven',
  (keeper, look) => keeper.day >= HOLD && look.eggs === 'single' && (look.framesOfBees ?? 0) >= 2,
)

export const FIXED: readonly Rule[] = [
  looksOn('look on day 10 and 30', [10, 30]),
  looksOn('look on day 5, 12, 26, 33', [5, 12, 26, 33]),
  looksOn('look on day 7, 21, 35', [7, 21, 35]),
  looksOn('look every week', [5]),
  BUY_AT_ONCE,
  NEVER_TOUCH,
  TEST_FRAMES,
  TEST_FRAMES_BY_THUMB,
]
