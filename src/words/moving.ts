/** What moving and treating do to a colony as it stands now. One line each. */

import { addDays, type Day } from '../days.ts'
import type { Plan } from '../recovery/index.ts'
import { type Words, wordsIn } from './catalogue.ts'
import { isQuiet } from './rules.ts'
import { distance, type Units } from './units.ts'

/** Foragers fly back to an old stand nearer than this, km (common practice: 3 km, 2 miles). */
const FORAGERS_RETURN_KM = 3

const YOUNG_QUEEN: readonly Plan['phase'][] = ['rearing', 'awaiting-new-queen']

/** A virgin is in it, or soon will be. */
const hasVirgin = (plan: Plan): boolean => YOUNG_QUEEN.includes(plan.phase) || isQuiet(plan)

/** How it is done, what becomes of foragers, and of a young queen. */
export function moveWords(plan: Plan, units: Units, w: Words = wordsIn('en')): string[] {
  const { foragers, youngQueen } = w.visit.moving
  const { quiet } = plan
  return [
    foragers(distance(FORAGERS_RETURN_KM, units, w)),
    ...(hasVirgin(plan)
      ? [youngQueen(quiet === null ? null : w.dates.fromTo(quiet.from, quiet.to, plan.asOf))]
      : []),
  ]
}

/** Whom a treatment can cost; null where no such queen is known. */
export function treatmentRisk(plan: Plan, w: Words = wordsIn('en')): string | null {
  const { treatingCaged, treatingYoung } = w.visit.moving
  if (plan.phase === 'awaiting-release') return treatingCaged
  return hasVirgin(plan) ? treatingYoung : null
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
  w: Words = wordsIn('en'),
): string {
  const { noWithdrawal, treated, washAgain, withdrawal } = w.visit.moving
  const { day, fromTo } = w.dates
  const until = withdrawalDays === undefined ? null : addDays(on, withdrawalDays)
  return [
    treated(day(on, today), product),
    washed ? '' : washAgain(fromTo(addDays(on, WASH_AGAIN.from), addDays(on, WASH_AGAIN.to), today)),
    until === null ? noWithdrawal : until < today ? '' : withdrawal(day(until, today)),
  ]
    .filter(Boolean)
    .join(' ')
}
