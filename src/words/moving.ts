/** What moving and treating do to a colony as it stands now. One line each. */

import { addDays, type Day } from '../days.ts'
import type { Plan } from '../recovery/index.ts'
import { dayWords, fromTo } from './dates.ts'
import { isQuiet } from './rules.ts'
import { distance, type Units } from './units.ts'

/** Foragers fly back to an old stand nearer than this, km (common practice: 3 km, 2 miles). */
const FORAGERS_RETURN_KM = 3

const YOUNG_QUEEN: readonly Plan['phase'][] = ['rearing', 'awaiting-new-queen']

/** A virgin is in it, or soon will be. */
const hasVirgin = (plan: Plan): boolean => YOUNG_QUEEN.includes(plan.phase) || isQuiet(plan)

/** How it is done, what becomes of foragers, and of a young queen. */
export function moveWords(plan: Plan, units: Units): string[] {
  return [
    `Under about ${distance(FORAGERS_RETURN_KM, units)} foragers fly back to the old stand and are lost. Move in the evening, closed, and lean branches before the entrance, so that they learn the place anew.`,
    ...(hasVirgin(plan)
      ? [
          `A young queen who has learnt the old place may not come home from her flight: ${plan.quiet === null ? 'move before she flies, or wait until she lays' : `not ${fromTo(plan.quiet.from, plan.quiet.to, plan.asOf)}, if it can wait`}.`,
        ]
      : []),
  ]
}

/** Whom a treatment can cost; null where no such queen is known. */
export function treatmentRisk(plan: Plan): string | null {
  if (plan.phase === 'awaiting-release')
    return 'A queen is in a cage in there: formic acid, thymol and the like can kill her. See to her first.'
  return hasVirgin(plan)
    ? 'A young queen may be in there: formic acid, thymol and the like can cost her. Wait until she lays, unless the mites cannot wait.'
    : null
}

/** Days after a treatment on which it is washed again (common practice). */
const WASH_AGAIN = { from: 10, to: 14 }

export interface LastTreatment {
  on: Day
  product?: string | undefined
  withdrawalDays?: number | undefined
}

/** 'Treated Tue 5 May (thymol). Wash again Fri 15 to Tue 19 May. Withdrawal until Thu 4 Jun.' */
export function treatedWords(
  { on, product, withdrawalDays }: LastTreatment,
  washed: boolean,
  today: Day,
): string {
  const until = withdrawalDays === undefined ? null : addDays(on, withdrawalDays)
  return [
    `Treated ${dayWords(on, today)}${product === undefined ? '' : ` (${product})`}.`,
    washed ? '' : `Wash again ${fromTo(addDays(on, WASH_AGAIN.from), addDays(on, WASH_AGAIN.to), today)}.`,
    until === null
      ? 'No withdrawal is noted: the label says it.'
      : until < today
        ? ''
        : `Withdrawal until ${dayWords(until, today)}.`,
  ]
    .filter(Boolean)
    .join(' ')
}
