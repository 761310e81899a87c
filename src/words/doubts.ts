/** Looks that contradict each other or the calendar, and what one does about it. */
import type { Plan } from '../recovery/index.ts'
import { fromTo } from './dates.ts'

/** 'Look once more Thu 14 to Sun 17 May, or correct the entry that is wrong in its journal.' */
export function doubtWays(plan: Plan, mayCorrect: boolean): string {
  const again = plan.checks.find(
    (c) => c.rule === 'look-again' && c.status !== 'answered' && c.status !== 'void',
  )
  const look = again === undefined ? '' : `Look once more ${fromTo(again.opens, again.closes, plan.asOf)}`
  const correct = mayCorrect
    ? 'correct the entry that is wrong in its journal'
    : 'tell a beekeeper if an entry is wrong'
  const said = [look, correct].filter(Boolean).join(', or ')
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}.`
}

/** Whether a look that is to settle which was right is still awaited. */
export const isInDoubt = (plan: Plan): boolean =>
  plan.checks.some((c) => c.rule === 'look-again' && c.status !== 'answered' && c.status !== 'void')
