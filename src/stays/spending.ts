/** What was spent on a colony, and how often it was visited. Costs are what the entries say; nothing is guessed. */
import type { Gift, History } from '../journal/index.ts'

const KIND_OF: Partial<Record<Gift, 'queens' | 'feed'>> = {
  'mated-queen': 'queens',
  virgin: 'queens',
  'queen-cell': 'queens',
  syrup: 'feed',
  pollen: 'feed',
}

export interface Spending {
  /** In the yard's currency: queens, virgins and cells; syrup and pollen; all else that was given. */
  queens: number
  feed: number
  other: number
  /** Frames given without a price. */
  frames: number
  /** How many queens, and how many feeds, were given without a price. */
  unpricedQueens: number
  unpricedFeed: number
  /** Days on which somebody worked at the box: two entries of one day are one visit. */
  visits: number
}

const VISITS: ReadonlySet<string> = new Set([
  'inspection',
  'given',
  'queen-cage',
  'ties-removed',
  'mite-wash',
])

export function spendingOf({ entries }: History): Spending {
  const spent = { queens: 0, feed: 0, other: 0, frames: 0, unpricedQueens: 0, unpricedFeed: 0 }
  const days = new Set<string>()
  for (const e of entries) {
    if (VISITS.has(e.kind)) days.add(e.on)
    if (e.kind !== 'given') continue
    const kind = KIND_OF[e.what] ?? 'other'
    spent[kind] += e.cost ?? 0
    if (e.cost !== undefined) continue
    if (kind === 'queens') spent.unpricedQueens++
    else if (kind === 'feed') spent.unpricedFeed++
    else spent.frames += e.frames ?? 0
  }
  return { ...spent, visits: days.size }
}
