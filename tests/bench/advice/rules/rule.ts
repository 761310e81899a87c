/** What a rule is: one decision a visit, from what the keeper has seen and written. */
import type { Asker } from '../ask.ts'
import type { Costs, Keeper } from '../keeper.ts'

export interface Rule {
  name: string
  /** `fixed` rules are what the advice is held against; an `unproven` one moves boxes out without the proofs that all others need. */
  family: 'fixed' | 'unproven' | 'advice' | 'truth'
  /** Made anew for each colony: what is done on a day on which the keeper is at the yard. */
  begin(settings: RuleSettings): (keeper: Keeper) => void | Promise<void>
}

export interface RuleSettings {
  asker: Asker
  costs: Costs
}

/** Days a colony stays at least: the same for every rule. */
export const HOLD = 30
export const MIN_FRAMES = 3
