/** Supplies of a whole yard in one pass: each colony's stories are followed, asked, and let go before the next. */

import { addDays, type Day } from '../days.ts'
import type { History } from '../journal/index.ts'
import { DEFAULT_DONOR_RULES, type Donor, type DonorCandidate, type DonorRules, donorsOf } from './donors.ts'
import { type KindShares, oddsToday, storyOf } from './queen-odds.ts'
import type { Model } from './story/walk.ts'
import { type ColonyNeed, needOf, type SupplyForecast, supplyForecast } from './supplies.ts'

export interface YardSupplies {
  forecast: SupplyForecast
  needs: ColonyNeed[]
  /** The odds of every colony today, by tag. */
  odds: Map<string, KindShares>
  donors: Donor[]
}

export interface YardOptions {
  /** Days ahead. */
  ahead: number
  /** Tags of colonies whose plan says to buy a queen without a frame of eggs first. */
  straightToQueen?: ReadonlySet<string>
  donorRules?: DonorRules
  /** What a colony may need, where it is known already; null where not. */
  known?: (history: History) => ColonySupplies | null
}

/** What one colony may need, and its odds today. */
export interface ColonySupplies {
  need: ColonyNeed
  odds: KindShares
}

/** One colony's part. About 1 ms with `listModelOf`. */
export function colonySupplies(
  history: History,
  today: Day,
  model: Model,
  options: { ahead: number; straightToQueen: boolean },
): ColonySupplies {
  const story = storyOf(history, today, model, addDays(today, options.ahead))
  return { need: needOf(story, options), odds: oddsToday(story) }
}

/** What the yard may need and who can give. Use `listModelOf` and keep the model: 500 colonies take about 0.3 s then. */
export function yardSupplies(
  histories: readonly History[],
  today: Day,
  model: Model,
  { ahead, straightToQueen, donorRules = DEFAULT_DONOR_RULES, known }: YardOptions,
): YardSupplies {
  const needs: ColonyNeed[] = []
  const odds = new Map<string, KindShares>()
  const candidates: DonorCandidate[] = []
  for (const history of histories) {
    // A colony that has left needs nothing and gives nothing, but what was taken from it and given to it still counts.
    if (history.outcome !== null && history.outcome.on <= today) {
      candidates.push({ history, laying: 0 })
      continue
    }
    const straight = straightToQueen?.has(history.tag) === true
    const { need, odds: now } =
      known?.(history) ?? colonySupplies(history, today, model, { ahead, straightToQueen: straight })
    odds.set(history.tag, now)
    needs.push(need)
    candidates.push({ history, laying: now.laying })
  }
  return {
    forecast: supplyForecast(needs, today, ahead),
    needs,
    odds,
    donors: donorsOf(candidates, today, donorRules),
  }
}
