import type { Day } from '../days.ts'
import type { History } from '../journal/index.ts'
import type { Protocol } from '../recovery/index.ts'
import { historyUntil } from './history-until.ts'
import { type LossPhase, phaseBeforeLoss } from './phase-before-loss.ts'
import { type Recovery, recoveryOf } from './recovery-path.ts'
import { type Spending, spendingOf } from './spending.ts'

/** What is counted of a stay beside its facts. */
export interface Stay {
  recovery: Recovery
  spending: Spending
  /** Null where it was not lost, or on a day nobody wrote down. */
  phaseBeforeLoss: LossPhase | null
}

/** A stay as it was known at the end of a day; of a colony that left by then the same on every later day. */
export function stayOf(history: History, asOf: Day, protocol: Protocol): Stay {
  const { outcome } = history
  // What is written of a colony after it has left is no part of its stay.
  const end = outcome !== null && outcome.on < asOf ? outcome.on : asOf
  const known = historyUntil(history, end)
  return {
    recovery: recoveryOf(known, asOf, protocol),
    spending: spendingOf(known),
    phaseBeforeLoss: phaseBeforeLoss(known, protocol),
  }
}
