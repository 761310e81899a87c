/** Money and hours for each colony kept: what the lost ones cost is borne by those that were kept. */
import type { Day } from '../../days.ts'
import type { ColonyFacts, Spending } from '../../stays/index.ts'

export interface Spent {
  /** In the yard's currency: queens, virgins and cells; syrup and pollen; all else that was given. */
  queens: number
  feed: number
  other: number
  /** From opening to boxed. */
  hours: number
}

export interface MoneyReview {
  /** Colonies whose stay is over; those still in the yard cost and count later. */
  ended: number
  /** Of these, moved out. */
  kept: number
  total: Spent
  /** Total over colonies kept; null when none was. */
  perKept: Spent | null
  /** Queens and feed given without a price, and removals without hours: the true figures are higher. */
  unpriced: { queens: number; feed: number; hours: number }
}

/** Adds up the colonies whose stay was over by a day. */
export function moneyOf(
  stays: readonly { facts: ColonyFacts; spending: Spending }[],
  asOf: Day,
): MoneyReview {
  const total: Spent = { queens: 0, feed: 0, other: 0, hours: 0 }
  const unpriced = { queens: 0, feed: 0, hours: 0 }
  let [ended, kept] = [0, 0]
  for (const { facts, spending } of stays) {
    const { outcome, hoursOpenToBoxed: hours } = facts
    // One that left on a day nobody wrote down is over all the same.
    if (outcome === null || (outcome.on !== null && outcome.on > asOf)) continue
    ended++
    if (outcome.what === 'moved-out') kept++
    if (hours === null) unpriced.hours++
    total.hours += hours ?? 0
    for (const kind of ['queens', 'feed', 'other'] as const) total[kind] += spending[kind]
    unpriced.queens += spending.unpricedQueens
    unpriced.feed += spending.unpricedFeed
  }
  const perKept: Spent = {
    queens: total.queens / kept,
    feed: total.feed / kept,
    other: total.other / kept,
    hours: total.hours / kept,
  }
  return { ended, kept, total, perKept: kept === 0 ? null : perKept, unpriced }
}

/** A figure of `Spent` as it is shown: '$9.55', or '6.5' hours. `currency`: the sign of the yard's. */
export const amount = (what: keyof Spent, n: number, currency: string): string =>
  what === 'hours' ? n.toFixed(1) : `${currency}${n.toFixed(2)}`
