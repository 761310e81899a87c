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
