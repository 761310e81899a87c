/** What is known for certain on a day and no story can differ in: donor frames given, the cage in the box, what came along. */

export type CageKind = 'own' | 'bought' | 'virgin'

export interface Around {
  /** Days since the latest donor frame with eggs or larvae; -1: none within reach. */
  gift: number
  /** How readily a queen is raised from it: 1 a frame of eggs, less a frame of open brood. */
  giftWorth: number
  /** Days since the latest frame of capped brood given; -1: none within reach. */
  cappedGift: number
  /** Who sits in the cage, if one does; null when no cage was ever put in. */
  cage: CageKind | null
  /** Days since the cage was put in. */
  cagedFor: number
  /** The old queen's open brood can be here yet (no open brood came along: not before eggs have hatched). */
  oldOpen: boolean
  /** The same of her capped brood. */
  oldCapped: boolean
  /** How readily queens mate at this time of the year, in quarters: 1 in season, less towards its ends, 0 out of it. */
  mates: number
}

export const NOTHING_AROUND: Around = {
  gift: -1,
  giftWorth: 0,
  cappedGift: -1,
  cage: null,
  cagedFor: 0,
  oldOpen: true,
  oldCapped: true,
  mates: 1,
}

/** Brood from a frame given so many days ago is gone after this. */
export const GIFT_REACH = 22

/** A short text that is equal for days on which the same things can happen overnight. */
export const nightKey = (a: Around): string =>
  `${a.gift <= 9 ? a.gift : -1}|${a.giftWorth}|${a.cage ?? ''}|${a.cage === null ? 0 : Math.min(a.cagedFor, 5)}`
