/** What every adviser is handed. */
import type { Day } from '../../days.ts'
import type { Advised, DayRange, Readiness } from '../plan-types.ts'
import type { Rule } from '../rules.ts'
import type { Ask, State } from '../state.ts'
import type { Exposure } from '../tracing.ts'

/** What is at hand in the yard; left out: nobody said. */
export interface Supplies {
  queensInHand?: number | undefined
  daysUntilQueens?: number | undefined
  eggFrames?: number | undefined
}

export interface Context {
  s: State
  today: Day
  quiet: DayRange | null
  readiness: Readiness
  supplies: Supplies
  exposure: Exposure | null
  /** The question of that rule, if it is open on the day. */
  asked: (rule: Rule) => Ask | undefined
}

/** Says what to do today, or null: the next adviser is asked. */
export type Adviser = (c: Context) => Advised | null
