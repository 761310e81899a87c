/** The checks, the actions and the phases in the words a yard uses. */

import { addDays, type Day } from '../days.ts'
import {
  type Action,
  type Check,
  type CheckStatus,
  factsOf,
  OUTSIDE,
  type Phase,
  type Plan,
  type Rule,
} from '../recovery/index.ts'

interface RuleWords {
  /** What one says on the way to the box. */
  name: string
  /** What the visit is to find out, or what is to be done. */
  question: string
}

export const RULE_WORDS: Record<Rule, RuleWords> = {
  'outside-look': { name: 'First look from outside', question: 'Flying? Feed? Dead bees? Still there?' },
  'queen-release': { name: 'Look to the queen’s cage', question: 'Is she out of the cage, and accepted?' },
  'telling-visit': { name: 'The first brood check', question: 'Eggs? Queen cells? Neither?' },
  'egg-frame': { name: 'Give a frame of eggs', question: 'Give a frame of eggs from a donor.' },
  'cells-on-egg-frame': { name: 'Read the frame of eggs', question: 'Queen cells on the frame you gave?' },
  'recheck-eggs': { name: 'Look for eggs again', question: 'Eggs that cannot be the donor’s?' },
  'new-queen-eggs': { name: 'Look for the new queen’s eggs', question: 'Eggs yet?' },
  'buy-queen': {
    name: 'Introduce a mated queen',
    question: 'No virgin, no cells? Then introduce a mated queen.',
  },
  'eggs-after-introduction': { name: 'Look for the bought queen’s eggs', question: 'Is she laying?' },
  'worker-brood': {
    name: 'Look for capped worker brood',
    question: 'Flat worker caps, not raised drone caps?',
  },
  'cells-beside': { name: 'Look to the queen cells', question: 'What became of the queen cells?' },
  'look-again': { name: 'Look again', question: 'Which look was right?' },
  'comb-ties': { name: 'Take off the comb ties', question: 'Combs attached? Take the bands off.' },
  'mite-wash': { name: 'Mite wash', question: 'How many mites on 100 bees?' },
  welfare: { name: 'Welfare look', question: 'Stores, robbing, beetles, moths, strength?' },
  'unite-or-boost': { name: 'Unite or boost', question: 'Unite it, or add capped brood.' },
  'laying-workers': { name: 'Deal with laying workers', question: 'Unite with a strong queenright colony.' },
  'move-out': { name: 'Move out', question: 'Last look for disease, and go.' },
}

/** Whether a rule's words ask something; the others say what to do. */
export const isAsked = (rule: Rule): boolean => RULE_WORDS[rule].question.includes('?')

export const ACTION_WORDS: Record<Action, string> = {
  none: 'Nothing to do',
  'leave-alone': 'Leave the lid on',
  'outside-look': 'Look from outside, lid on',
  'open-and-look': 'Open it and look',
  'release-queen': 'See to the queen’s cage',
  'give-egg-frame': 'Give a frame of eggs',
  'buy-queen': 'Introduce a mated queen',
  unite: 'Unite it',
  'move-out': 'Move it out',
  'call-inspector': 'Close it up and call the apiary inspector',
  boost: 'Add a frame of capped brood',
  'order-queen': 'Order a mated queen',
  feed: 'Feed it',
  wash: 'Wash bees for mites',
  'see-to-signs': 'See to what was found',
  'take-out-queen': 'Find the queen and take her out',
}

export const PHASE_WORDS: Record<Phase, string> = {
  'awaiting-release': 'Queen still in her cage',
  'awaiting-eggs': 'Queen in, waiting for her eggs',
  'queen-unknown': 'Not known yet if there is a queen',
  rearing: 'Raising a queen',
  'awaiting-new-queen': 'New queen maturing and mating',
  laying: 'Eggs of its own, not yet proven worker brood',
  queenright: 'Queenright',
  queenless: 'Queenless',
  'laying-workers': 'Laying workers',
  closed: 'Left the yard',
}

export const STATUS_WORDS: Record<CheckStatus, string> = {
  waiting: 'can wait',
  open: 'may be done',
  due: 'due',
  overdue: 'late',
  answered: 'answered',
  void: 'no longer asked',
}

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
