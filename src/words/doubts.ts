/** Looks that contradict each other or the calendar, and what one does about it. */
import type { Plan } from '../recovery/index.ts'
import { fromTo } from './dates.ts'

/** 'Look once more Thu 14 to Sun 17 May; or if an entry is wrong, correct it in its journal.' */
export function doubtWays(plan: Plan, mayCorrect: boolean): string {
  const again = plan.checks.find(
    (c) => c.rule === 'look-again' && c.status !== 'answered' && c.status !== 'void',
  )
  const correct = mayCorrect ? 'correct it in its journal' : 'tell a beekeeper'
  if (again === undefined) return `If an entry is wrong, ${correct}.`
  return `Look once more ${fromTo(again.opens, again.closes, plan.asOf)}; or if an entry is wrong, ${correct}.`
}

/** Whether a look that is to settle which was right is still awaited. */
export const isInDoubt = (plan: Plan): boolean =>
  plan.checks.some((c) => c.rule === 'look-again' && c.status !== 'answered' && c.status !== 'void')
