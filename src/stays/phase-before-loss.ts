/** Where in the plan a colony was when it was lost. */
import { addDays, type Day } from '../days.ts'
import type { History } from '../journal/index.ts'
import { type Phase, type Protocol, planOf } from '../recovery/index.ts'
import { historyUntil } from './history-until.ts'

export type LossPhase = Exclude<Phase, 'closed'>

/**
 * The phase of a colony on the day before it was found lost (on the day of intake where that was it): what was found on
 * the day of the loss is part of the loss. Null for a colony that was not lost, or on a day nobody wrote down.
 */
export function phaseBeforeLoss(history: History, protocol: Protocol): LossPhase | null {
  const { outcome, intake } = history
  if (outcome === null || (outcome.what !== 'died' && outcome.what !== 'absconded')) return null
  if (outcome.dayUnknown === true) return null
  const before: Day = addDays(outcome.on, -1)
  const day = before < intake.on ? intake.on : before
  const { phase } = planOf({ ...historyUntil(history, day), outcome: null }, day, protocol)
  return phase === 'closed' ? null : phase
}
