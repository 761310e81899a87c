/** Laying workers: when they come, in days without a queen since the last young brood. */

/**
 * Onset: 21-28 days after the last young brood (trade rule). Published: about 14 (Collison), about 21 (Oliver 2021),
 * 23-30 (Winston 1987, from memory). The rule is kept; 14 is the earliest at which a sighting may be called theirs.
 */
export const LAYING_WORKER_RISK = { earliest: 21, likely: 25, latest: 28 } as const

/** Not before this day can workers lay (Collison: "approximately two weeks"). */
export const LAYING_WORKERS_POSSIBLE_FROM = 14

/** A new queen may lay doubles at cell bottoms for about a week after her first egg (common practice). */
export const NEW_QUEEN_DOUBLES_DAYS = 7

/** Look again after this many days when several eggs a cell may still be a new queen's (common practice). */
export const LOOK_AGAIN_AT_DOUBLES = 5
