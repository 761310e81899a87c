/** What stands on a colony's line: what to do, how pressing it is, until when it can wait. */

import { addDays, type Day, daysBetween } from '../days.ts'
import { type Action, type Check, missingWords, type Plan, rulesWhere } from '../recovery/index.ts'
import { dayWords } from './dates.ts'
import { ACTION_WORDS, coming, isQuiet, lidStaysOn, live, PHASE_WORDS, RULE_WORDS } from './rules.ts'
import { type Act, actOf } from './steps.ts'

/** Actions that only say "look": the check's own name says more. */
const LOOKING: Action[] = ['none', 'leave-alone', 'outside-look', 'open-and-look']

/** Some checks are the action itself. */
const DOES: Partial<Record<Action, Check['rule'][]>> = {
  'release-queen': ['queen-release'],
  'give-egg-frame': ['egg-frame'],
  'buy-queen': ['buy-queen'],
  unite: ['unite-or-boost', 'laying-workers'],
  'move-out': ['move-out'],
}

const LID_STAYS_ON: Action[] = ['outside-look', 'feed']

const RUNGS: Check['rule'][] = ['egg-frame', 'buy-queen', 'unite-or-boost', 'laying-workers']

/** What was found, on a line of the round; what to do about it is the reason. */
const SIGN_TITLES: Record<NonNullable<Plan['advice']['sign']>, string> = {
  robbing: 'Stop the robbing',
  beetles: 'See to the hive beetles',
  moths: 'See to the wax moths',
  'deformed-wings': 'Deformed wings: wash for mites',
}

export interface ToDo {
  action: Action
  /** What to do, in a few words. */
  title: string
  /** Its steps; null where it has none of its own. */
  act: Act | null
  /** What to find out, where it is a look. */
  question: string | null
  why: string
  /** The check that leads, null when the advice stands alone. */
  check: Check | null
  /** Everything else that may be done on the same visit. */
  also: Check[]
  /** Nothing here asks for the lid to come off. */
  lidOn: boolean
  /** A window in which somebody could have gone there as the plan asks has closed unanswered. "Late" has no other meaning anywhere. */
  late: boolean
}

/** The one word for a box today: late, due, or it may be done. What no check asks is due: the plan asks for it on its day. */
export function howPressing({ late, check }: Pick<ToDo, 'late' | 'check'>): 'overdue' | 'due' | 'open' {
  if (late) return 'overdue'
  return check?.status === 'open' ? 'open' : 'due'
}

/** How many days a box is late: since the first day after the earliest window that closed on it unanswered. 0: not late. */
export function lateDays({ check, also, late }: Pick<ToDo, 'check' | 'also' | 'late'>, today: Day): number {
  if (!late) return 0
  const closed = [...(check === null ? [] : [check]), ...also]
    .filter((c) => c.status === 'overdue')
    .map((c) => daysBetween(c.closes, today))
  return Math.max(1, ...closed)
}

/** The reason alone: the question it opens with stands on the line already. */
function withoutQuestion(why: string): string {
  const rest = why.replace(/^[^.?]*\?\s+/, '')
  return rest === '' ? why : rest
}

/** What the plan asks for on its day, put for one line of the round. Null when the colony can wait. */
export function toDoOf(plan: Plan): ToDo | null {
  const { action, why, rule, sign } = plan.advice
  if (action === 'leave-alone' || action === 'none') return null
  // An open box feeds the robbers.
  const lidOn = LID_STAYS_ON.includes(action) || sign === 'robbing'
  const checks = live(plan).filter((c) => !lidOn || lidStaysOn(c, plan))
  // A look at all the brood of a box bound to a suspected one is no check of the ladder.
  const tracing = plan.exposed !== null && action === 'open-and-look' && rule === undefined
  const looks = LOOKING.includes(action) && !tracing
  const leads = (c: Check): boolean => c.rule === rule
  const check = checks.find(leads) ?? (looks ? checks[0] : undefined) ?? null
  return {
    action,
    title: tracing
      ? 'Look at every frame of brood'
      : looks && check !== null
        ? RULE_WORDS[check.rule].name
        : sign === undefined
          ? ACTION_WORDS[action]
          : SIGN_TITLES[sign],
    act: tracing ? null : actOf(plan.advice, check?.rule),
    question: looks && check !== null ? RULE_WORDS[check.rule].question : null,
    why: looks && check !== null ? withoutQuestion(why) : why,
    check,
    // One rung of the ladder at a time: what else could be done about the queen waits for this one.
    // A box held for brood disease is not opened for anything else.
    also:
      action === 'call-inspector'
        ? []
        : checks.filter((c) => c !== check && !(RUNGS.includes(c.rule) && DOES[action] !== undefined)),
    lidOn,
    late: checks.some((c) => c.status === 'overdue'),
  }
}

/** 'You have not said whether there are queen cells: that decides it.'; null where no look left out what decides. */
export const leftOutWords = (plan: Plan): string | null =>
  missingWords(plan.missing.map((m) => m.what)) || null

/** The same where `said` does not say it already. */
export function leftOutBeside(plan: Plan, said: string): string | null {
  const words = leftOutWords(plan)
  return words === null || said.includes(words) ? null : words
}

/** Until which day a colony with nothing to do today can wait, as the plan has it; null when nothing is planned. */
export const waitsUntil = (plan: Plan): Day | null => plan.until

/** Not a reason to take the lid off. */
const FROM_OUTSIDE = rulesWhere((f) => f.lid !== 'off')

/**
 * The day before which nothing asks for the lid to come off: the first window of a look inside, or the day after quiet
 * time. Null where the lid may come off today, or nothing is planned inside.
 */
export function lidShutUntil(plan: Plan): Day | null {
  if (isQuiet(plan) && plan.quiet !== null) return addDays(plan.quiet.to, 1)
  const inside = (c: Check): boolean => !FROM_OUTSIDE.includes(c.rule)
  return live(plan).some(inside) ? null : (coming(plan).find(inside)?.opens ?? null)
}

const FOUND = { 'no-bees': 'Found without bees', dead: 'Found dead', gone: 'Found gone' } as const

/** 'Found dead on Tue 12 May, signed Juno'; null for a box that is not lost. */
export function lostWords({ lost, asOf }: Plan): string | null {
  return lost === null ? null : `${FOUND[lost.how]} on ${dayWords(lost.on, asOf)}, signed ${lost.by}`
}

/** What comes next when there is nothing to do today: 'can wait until Sun 10 May'. */
export function waitWords(plan: Plan): string {
  if (plan.lost !== null) return `${FOUND[plan.lost.how].toLowerCase()}, to be confirmed`
  const until = waitsUntil(plan)
  return until === null ? 'nothing planned' : `can wait until ${dayWords(until, plan.asOf)}`
}

const LEFT: Record<string, string> = {
  'moved-out': 'Moved out',
  united: 'United with another colony',
  died: 'Died',
  absconded: 'Absconded',
  other: 'Left the yard',
  unknown: 'Gone, not known how',
}

/** How a colony left, in words. */
export const leftWords = (outcome: string): string => LEFT[outcome] ?? 'Left the yard'

const LID_SHUT: Action[] = ['none', 'leave-alone', ...LID_STAYS_ON]

/** Whether anybody is sent to the box today, lid on or off. */
const asks = ({ advice: { action } }: Plan): boolean => action !== 'leave-alone' && action !== 'none'

/** 'Raising a queen; leave the lid on, it can wait until Sun 24 May'. */
export function headline(plan: Plan, outcome: string | null): string {
  if (outcome !== null) return leftWords(outcome)
  if (plan.lost !== null) return `${FOUND[plan.lost.how]}, to be confirmed`
  const phase = PHASE_WORDS[plan.phase]
  if (isQuiet(plan) && plan.quiet !== null && LID_SHUT.includes(plan.advice.action))
    return `${phase}; leave the lid on${plan.until === null || asks(plan) ? '' : `, it can wait until ${dayWords(plan.until, plan.asOf)}`}`
  if (plan.advice.action === 'none' || plan.advice.action === 'leave-alone') {
    const until = waitsUntil(plan)
    return until === null ? phase : `${phase}; it can wait until ${dayWords(until, plan.asOf)}`
  }
  const does = toDoOf(plan)?.title ?? ACTION_WORDS[plan.advice.action]
  return `${phase}; ${does.charAt(0).toLowerCase()}${does.slice(1)}`
}
