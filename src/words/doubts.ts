/** Looks that contradict each other or the calendar, and what one does about it. */
import type { Plan } from '../recovery/index.ts'
import { type Words, wordsIn } from './catalogue.ts'

/** 'Look once more Thu 14 to Sun 17 May; or if an entry is wrong, correct it in its journal.' */
export function doubtWays(plan: Plan, mayCorrect: boolean, w: Words = wordsIn('en')): string {
  const { correct, ifWrong, lookAgain, tell } = w.visit.doubt
  const again = plan.checks.find(
    (c) => c.rule === 'look-again' && c.status !== 'answered' && c.status !== 'void',
  )
  const way = mayCorrect ? correct : tell
  return again === undefined
    ? ifWrong(way)
    : lookAgain(w.dates.fromTo(again.opens, again.closes, plan.asOf), way)
}

/** Whether a look that is to settle which was right is still awaited. */
export const isInDoubt = (plan: Plan): boolean =>
  plan.checks.some((c) => c.rule === 'look-again' && c.status !== 'answered' && c.status !== 'void')
