/** Money and hours for each colony kept: what the lost ones cost is borne by those that were kept. */
import type { Gift, History } from '../../journal/index.ts'

export const KIND_OF: Partial<Record<Gift, 'queens' | 'feed'>> = {
  'mated-queen': 'queens',
  virgin: 'queens',
  'queen-cell': 'queens',
  syrup: 'feed',
  pollen: 'feed',
}

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

/** Adds up the colonies whose stay is over. Costs are what the entries say; nothing is guessed. */
export function moneyOf(histories: readonly History[]): MoneyReview {
  const total: Spent = { queens: 0, feed: 0, other: 0, hours: 0 }
  const unpriced = { queens: 0, feed: 0, hours: 0 }
  const ended = histories.filter((h) => h.outcome !== null)
  for (const h of ended) {
    const hours = h.intake.removal.hoursOpenToBoxed
    if (hours === undefined) unpriced.hours++
    total.hours += hours ?? 0
    for (const e of h.entries) {
      if (e.kind !== 'given') continue
      const kind = KIND_OF[e.what] ?? 'other'
      total[kind] += e.cost ?? 0
      if (e.cost === undefined && kind !== 'other') unpriced[kind]++
    }
  }
  const kept = ended.filter((h) => h.outcome?.what === 'moved-out').length
  const perKept: Spent = {
    queens: total.queens / kept,
    feed: total.feed / kept,
    other: total.other / kept,
    hours: total.hours / kept,
  }
  return { ended: ended.length, kept, total, perKept: kept === 0 ? null : perKept, unpriced }
}

/** A figure of `Spent` as it is shown: '$9.55', or '6.5' hours. `currency`: the sign of the yard's. */
export const amount = (what: keyof Spent, n: number, currency: string): string =>
  what === 'hours' ? n.toFixed(1) : `${currency}${n.toFixed(2)}`
