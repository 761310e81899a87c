/** Raising, maturing and mating of a new queen, in days. Handbook values plan; measured extremes only call a thing impossible. */
import { QUEEN, WORKER } from './development.ts'

/**
 * Oldest brood, in days since the egg was laid, from which a queen can be raised: a larva three days after hatching.
 * Sources differ: 24-36 h after hatching at best (Oliver in Kane & Faux 2021), 2-2.5 d (Page), "up to 3 days" (popular
 * rule). 6 is used because a window closed too soon sends a keeper to buy a queen that the colony would have raised.
 */
export const OLDEST_FOR_QUEEN = WORKER.hatch + 3

/**
 * Emergence after queenlessness began (day 0): earliest a three-day larva chosen at once (16 - 6), likely 12
 * (Tofilski & Czekonska 2004: 15.7 - 3.4 = 12.3; Bush: 12), latest an egg laid on the last day (16).
 */
export const EMERGENCE_AFTER_LOSS = {
  earliest: QUEEN.emerge - OLDEST_FOR_QUEEN,
  likely: 12,
  latest: QUEEN.emerge,
} as const

/** Hard limit of the same: Q+10 to Q+18 (slowest queen of an egg laid on the last day; Tofilski & Czekonska 2004). */
export const EMERGENCE_AFTER_LOSS_HARD = { earliest: 10, latest: 18 } as const

/**
 * First egg after emergence: at best 8 (5-6 days to mature, mating, 2-3 to lay), likely 12, at the latest 21.
 * Between the means measured by Szabo, Mills & Heikel 1987 (10.6 d, range 4-22) and Pérez-Sato & Ratnieks 2006 (12.9 d);
 * UK field figures are later (14-21). 12 is used: the usual figure in practice, and inside both studies' range.
 */
export const FIRST_EGG_AFTER_EMERGENCE = { earliest: 8, likely: 12, latest: 21 } as const

/** Hard limit: 4 days (Szabo et al. 1987) to 28, after which she has failed (common practice; sources say 21-28). */
export const FIRST_EGG_AFTER_EMERGENCE_HARD = { earliest: 4, latest: 28 } as const

/** Days after the brood came in (or the queen was lost) from which cells are plain to see (common practice: a frame is read from the third day). */
export const CELLS_SHOW_AFTER = 3

/** A virgin flies to mate about this many days after she emerged: 5-6 to mature, then the first calm, warm day (common practice; Winston 1987: 6-10). */
export const MATES_AFTER_EMERGENCE = 7

/** Quiet time starts this many days before the earliest emergence: cells are easily shaken loose (common practice). */
export const QUIET_BEFORE_EMERGENCE = 2

/** First egg of a queen let out of her cage: within 3 days when all is well, 10 at the latest (common practice; vendors and keepers differ, 3-10). */
export const FIRST_EGG_AFTER_RELEASE = { earliest: 1, likely: 4, latest: 10 } as const

/** First egg of the old queen after the removal, if she came along: as soon as there are cells (Quinby: "often within 24 hours" for swarms); by the first brood check's last day. */
export const OLD_QUEEN_LAYS_AGAIN = { earliest: 1, likely: 3, latest: 7 } as const

/** A ripe cell is given about day 14 of 16 (Bush: grafted larvae go to their nucleus on day 14 of the egg). */
export const RIPE_CELL_EMERGES = 2

/** A virgin is given within 4 days of her emergence (Pérez-Sato & Ratnieks 2006 compared 0-1 and 3-4 day-old virgins). */
export const VIRGIN_AGE_WHEN_GIVEN = 4

/** A test frame is ignored by colonies queenless longer than about this many days (a keepers' association; grade C). */
export const TEST_FRAME_IGNORED_AFTER = 30
