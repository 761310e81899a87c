/** Colonies that count as still here although the book, not the yard, is behind. */

import { type Day, daysBetween } from '../../days.ts'
import type { ColonyFacts } from '../../stays/index.ts'

/** A holding yard's colonies are looked at every one or two weeks (common practice); the number is our choice. */
export const UNSEEN_DAYS = 60
/** One entered late counts as seen on the day it was entered, so an old book's gaps show by how long ago they came (our choice). */
const LONG_STAY = 365

export const isLongUnseen = ({ outcome, lastSeen, intakeOn }: ColonyFacts, today: Day): boolean =>
  outcome === null &&
  (daysBetween(intakeOn, today) > LONG_STAY ||
    (lastSeen !== null && daysBetween(lastSeen, today) > UNSEEN_DAYS))

/** Example: '2 that count as still here came more than a year ago, or were not seen for 60 days.' '' for none. */
export const longUnseenReading = (n: number): string =>
  n === 0
    ? ''
    : `${n === 1 ? 'One that counts' : `${n} that count`} as still here came more than a year ago, or ${n === 1 ? 'was' : 'were'} not seen for ${UNSEEN_DAYS} days.`
