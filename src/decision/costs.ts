/** What things are worth in a yard, and what is at hand. The yard's own figures; the defaults are common prices (judgement). */

/** In the yard's money. */
export interface Costs {
  /** A colony that moves out with a laying queen. */
  worth: number
  /** A mated queen, bought. */
  queen: number
  /** A frame of brood taken from a donor. */
  frame: number
  /** Opening a box: a quarter of an hour, and what it takes out of the bees. */
  opening: number
  /** A day in the yard: the stand and its share of the rounds. */
  day: number
  /** What a frame of bees is worth to the colony it is united with. */
  unitedFrame: number
}

export const DEFAULT_COSTS: Costs = { worth: 200, queen: 40, frame: 15, opening: 4, day: 1, unitedFrame: 10 }
export const COST_NAMES = Object.keys(DEFAULT_COSTS) as (keyof Costs)[]

/** What is at hand today. */
export interface Supplies {
  queensInHand: number
  /** Days until a queen can be here: those left of an order under way, else those an order would take. */
  daysUntilQueens: number
  /** Frames of eggs that donors can spare. */
  eggFrames: number
}

/** Nothing said: no queen in hand, five days to have one (common practice), eggs to be had. */
export const DEFAULT_SUPPLIES: Supplies = { queensInHand: 0, daysUntilQueens: 5, eggFrames: 1 }

/**
 * A colony lost costs more than its price: the work on it is lost with it, and the yard's good name. Judgement, chosen among 1, 3,
 * 5 and 8 on the simulated yards of tests/bench/advice: more saves more colonies and costs more frames and looks.
 */
const LOST_COSTS_MORE = 5

/**
 * Share of colonies that come to grief in a day, whatever is done, as long as they stay: their queen fails (5-17 % in 16 weeks,
 * Rhodes & Denney 2003: up to 0.0015), or they are robbed, slimed or knocked over (judgement).
 */
const LOST_A_DAY = 0.0025

/** The yard's costs over the defaults, as the decision weighs them. Negative figures count as 0. */
export function costsWith(own: { [K in keyof Costs]?: number | undefined } = {}): Costs {
  const known = Object.fromEntries(
    COST_NAMES.flatMap((name) => {
      const value = own[name]
      return value === undefined ? [] : [[name, Math.max(0, value)]]
    }),
  )
  const costs = { ...DEFAULT_COSTS, ...known }
  const worth = costs.worth * LOST_COSTS_MORE
  return { ...costs, worth, day: costs.day + worth * LOST_A_DAY }
}

/** What is at hand, the defaults where nobody said. */
export const suppliesWith = (own: { [K in keyof Supplies]?: number | undefined } = {}): Supplies => ({
  queensInHand: own.queensInHand ?? DEFAULT_SUPPLIES.queensInHand,
  daysUntilQueens: own.daysUntilQueens ?? DEFAULT_SUPPLIES.daysUntilQueens,
  eggFrames: own.eggFrames ?? DEFAULT_SUPPLIES.eggFrames,
})
