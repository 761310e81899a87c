/** What stands on a colony's line: what to do, how pressing it is, until when it can wait. */

import { addDays, type Day, daysBetween } from '../days.ts'
import { type Action, type Check, leftOutReason, type Plan, rulesWhere } from '../recovery/index.ts'
import type { Act } from './acts.ts'
import { type Words, wordsIn } from './catalogue.ts'
import { coming, isQuiet, lidStaysOn, live } from './rules.ts'
import { actOf } from './steps.ts'

const ENGLISH = wordsIn('en')

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
export function toDoOf(plan: Plan, w: Words = ENGLISH): ToDo | null {
  const { action, reasons, rule, sign } = plan.advice
  const why = w.reasons.all(reasons)
  const { rules, actions, signs } = w.trade
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
      ? w.trade.everyBroodFrame
      : looks && check !== null
        ? rules[check.rule].name
        : sign === undefined
          ? actions[action]
          : signs[sign],
    act: tracing ? null : actOf(plan.advice, check?.rule),
    question: looks && check !== null ? rules[check.rule].question : null,
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
export const leftOutWords = (plan: Plan, w: Words = ENGLISH): string | null =>
  w.reasons.all(leftOutReason(plan.missing.map((m) => m.what))) || null

/** The same where `said` does not say it already. */
export function leftOutBeside(plan: Plan, said: string, w: Words = ENGLISH): string | null {
  const words = leftOutWords(plan, w)
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

/** 'Found dead on Tue 12 May, signed Juno'; null for a box that is not lost. */
export function lostWords({ lost, asOf }: Plan, w: Words = ENGLISH): string | null {
  const { found, foundOn } = w.trade
  return lost === null ? null : foundOn(found[lost.how], w.dates.day(lost.on, asOf), lost.by)
}

/** What comes next when there is nothing to do today: 'can wait until Sun 10 May'. */
export function waitWords(plan: Plan, w: Words = ENGLISH): string {
  const { canWait, found, nothingPlanned, toConfirm } = w.trade
  if (plan.lost !== null) return toConfirm(found[plan.lost.how].toLowerCase())
  const until = waitsUntil(plan)
  return until === null ? nothingPlanned : canWait(w.dates.day(until, plan.asOf))
}

/** How a colony left, in words. */
export const leftWords = (outcome: string, w: Words = ENGLISH): string =>
  w.trade.left[outcome] ?? w.trade.phases.closed

const LID_SHUT: Action[] = ['none', 'leave-alone', ...LID_STAYS_ON]

/** Whether anybody is sent to the box today, lid on or off. */
const asks = ({ advice: { action } }: Plan): boolean => action !== 'leave-alone' && action !== 'none'

/** 'Raising a queen; leave the lid on, it can wait until Sun 24 May'. */
export function headline(plan: Plan, outcome: string | null, w: Words = ENGLISH): string {
  const { actions, found, itCanWait, lidOnInQuiet, phases, toConfirm } = w.trade
  if (outcome !== null) return leftWords(outcome, w)
  if (plan.lost !== null) return toConfirm(found[plan.lost.how])
  const phase = phases[plan.phase]
  const wait = (until: Day): string => itCanWait(w.dates.day(until, plan.asOf))
  if (isQuiet(plan) && plan.quiet !== null && LID_SHUT.includes(plan.advice.action))
    return `${phase}; ${lidOnInQuiet}${plan.until === null || asks(plan) ? '' : `, ${wait(plan.until)}`}`
  if (plan.advice.action === 'none' || plan.advice.action === 'leave-alone') {
    const until = waitsUntil(plan)
    return until === null ? phase : `${phase}; ${wait(until)}`
  }
  return `${phase}; ${lower(toDoOf(plan, w)?.title ?? actions[plan.advice.action])}`
}

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1)
