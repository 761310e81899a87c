/**
 * How pressing a box is: a closing biological window before an action rung of the ladder, before late, due and open
 * questions. Within one rank, the nearer end first.
 */

import { addDays, type Day } from '../../days.ts'
import { type Action, type Check, factsOf, OUTSIDE, type Plan, rulesWhere } from '../../recovery/index.ts'

export const RANKS = ['closing-window', 'action', 'overdue', 'due', 'open'] as const
type Rank = (typeof RANKS)[number]

/** A window of the bees' own, which no plan can move. */
export interface ClosingWindow {
  /**
   * cells: young brood at hand can still be made a queen; laying-workers: the risk is on, or about to be;
   * has-laying-workers: they are there, and the colony dwindles.
   */
  of: 'cells' | 'laying-workers' | 'has-laying-workers'
  /** cells: the last day; otherwise the first day of the risk. */
  day: Day
}

export interface Urgency {
  rank: Rank
  window: ClosingWindow | null
  /** The check that presses most, null when the advice stands alone. */
  check: Check | null
  /** Last day on which going there still does what it is meant to; null when nothing closes. */
  until: Day | null
}

/** Rungs of the ladder, a queen in a cage, and suspected disease: things to do, not to look at. */
const ACTS: readonly Action[] = ['release-queen', 'give-egg-frame', 'buy-queen', 'unite', 'call-inspector']

/** The checks whose answer decides whether young brood at hand gets to become a queen. */
const ABOUT_CELLS = rulesWhere((f) => f.decidesCells === true)

/** The risk of laying workers counts as closing from this many days before it begins (judgement: one round earlier). */
const RISK_AHEAD = 2

const within = (day: Day, range: { from: Day; to: Day } | null): boolean =>
  range !== null && day >= range.from && day <= range.to

/** Checks that going there today can answer. In quiet time the lid stays on, and only looks from outside count. */
export function answerable(plan: Plan): Check[] {
  const quiet = within(plan.asOf, plan.quiet)
  return plan.checks.filter(
    (c) =>
      (c.status === 'overdue' || c.status === 'due' || c.status === 'open') &&
      (!quiet || OUTSIDE.includes(c.rule)),
  )
}

/** The bees' own window that is closing on the plan's day, if going there today can still do something about it. */
export function closingWindow(plan: Plan): ClosingWindow | null {
  const { cellsPossibleUntil, layingWorkerRisk } = plan.spans
  const checks = answerable(plan)
  if (
    cellsPossibleUntil !== undefined &&
    plan.asOf <= cellsPossibleUntil &&
    checks.some((c) => ABOUT_CELLS.includes(c.rule))
  )
    return { of: 'cells', day: cellsPossibleUntil }
  if (layingWorkerRisk === undefined) return null
  if (plan.phase === 'laying-workers' && plan.asOf >= addDays(layingWorkerRisk.earliest, -RISK_AHEAD))
    return { of: 'has-laying-workers', day: layingWorkerRisk.earliest }
  if (plan.phase !== 'queenless' && plan.phase !== 'queen-unknown') return null
  return plan.asOf >= addDays(layingWorkerRisk.earliest, -RISK_AHEAD)
    ? { of: 'laying-workers', day: layingWorkerRisk.earliest }
    : null
}

const BY_STATUS = { overdue: 2, due: 3, open: 4 } as const
const weight = (c: Check): number => BY_STATUS[c.status as keyof typeof BY_STATUS]

/** How pressing the box is on the plan's day. Meant for plans that ask something (`asks`). */
export function urgencyOf(plan: Plan): Urgency {
  const { action } = plan.advice
  const checks = answerable(plan).sort((a, b) => weight(a) - weight(b) || (a.closes < b.closes ? -1 : 1))
  const window = closingWindow(plan)
  const acts = ACTS.includes(action)
  const check =
    (acts ? checks.find((c) => factsOf(c.rule).deeds?.includes(action)) : checks[0]) ?? checks[0] ?? null
  const until = window?.of === 'cells' ? window.day : (check?.closes ?? null)
  if (window !== null) return { rank: 'closing-window', window, check, until }
  if (acts) return { rank: 'action', window, check, until }
  return { rank: check === null ? 'due' : (RANKS[weight(check)] ?? 'due'), window, check, until }
}

/** Negative when `a` is more pressing than `b`. */
export function morePressing(a: Urgency, b: Urgency): number {
  const rank = RANKS.indexOf(a.rank) - RANKS.indexOf(b.rank)
  if (rank !== 0) return rank
  const [x, y] = [a.until ?? '9', b.until ?? '9']
  return x === y ? 0 : x < y ? -1 : 1
}
