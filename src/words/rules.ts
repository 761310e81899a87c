/** The checks, the actions and the phases in the words a yard uses. */

import { addDays, type Day } from '../days.ts'
import { type Check, type CheckStatus, factsOf, OUTSIDE, type Plan, type Rule } from '../recovery/index.ts'
import { trade } from './en/trade.ts'

export const RULE_WORDS = trade.rules

/** Whether a rule's words ask something; the others say what to do. */
export const isAsked = (rule: Rule): boolean => RULE_WORDS[rule].question.includes('?')

export const ACTION_WORDS = trade.actions

/** True when the check is to be done without opening the hive. */
export function lidStaysOn(check: Check, plan: Plan): boolean {
  if (factsOf(check.rule).lid === 'on') return true
  return OUTSIDE.includes(check.rule) && plan.quiet !== null && within(plan.asOf, plan.quiet)
}

const within = (day: string, range: { from: string; to: string }): boolean =>
  day >= range.from && day <= range.to

/**
 * The first day after quiet time, for a chore at an open box whose best day falls into it; null for all else. Its window is
 * the trade's and stays as it is, but the lid stays on.
 */
export const afterQuiet = (check: Check, plan: Plan): Day | null =>
  check.rule === 'mite-wash' && plan.quiet !== null && within(check.due, plan.quiet)
    ? addDays(plan.quiet.to, 1)
    : null

/** True while the lid should stay on because of a queen who emerges, matures or mates. */
export const isQuiet = (plan: Plan): boolean => plan.quiet !== null && within(plan.asOf, plan.quiet)

const WEIGHT: Partial<Record<CheckStatus, number>> = { overdue: 0, due: 1, open: 2 }

/** Checks that may be done on the plan's day, the most pressing first. */
export function live(plan: Plan): Check[] {
  return plan.checks
    .filter((c) => WEIGHT[c.status] !== undefined)
    .sort((a, b) => (WEIGHT[a.status] ?? 9) - (WEIGHT[b.status] ?? 9) || a.closes.localeCompare(b.closes))
}

/** Checks whose window has not opened, the nearest first. */
export const coming = (plan: Plan): Check[] =>
  plan.checks.filter((c) => c.status === 'waiting').sort((a, b) => a.opens.localeCompare(b.opens))
