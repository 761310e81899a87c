/**
 * What the projections hold of a colony: a pure function of its history, the day and the yard's choices, so that a rebuild gives
 * the same bytes, and the phone without signal the same plan. Site and costs stay out: helpers read these.
 */

import type { Day } from '../days.ts'
import type { ColonyId } from '../ids.ts'
import type { History } from '../journal/index.ts'
import { type Check, type CheckStatus, type Exposure, type Plan, RULES } from '../recovery/index.ts'
import type { Planner } from './planner.ts'
import type { colony, plannedCheck } from './schema.ts'

export type ColonyRow = typeof colony.$inferSelect
type CheckRow = typeof plannedCheck.$inferSelect
export interface Projected {
  row: ColonyRow
  checks: CheckRow[]
}

/** Most urgent first. Answered and void ones are no longer asked. */
const URGENCY: readonly CheckStatus[] = ['overdue', 'due', 'open', 'waiting']

const asked = (check: Check): boolean => URGENCY.includes(check.status)

/** The check to think of next: late ones before due ones before open ones before coming ones. */
function nextCheck(plan: Plan): Check | null {
  const rank = (c: Check): string => {
    const day = c.status === 'waiting' ? c.opens : c.closes
    return `${URGENCY.indexOf(c.status)} ${day} ${String(RULES.indexOf(c.rule)).padStart(2, '0')}`
  }
  return plan.checks.filter(asked).reduce<Check | null>((best, c) => {
    return best === null || rank(c) < rank(best) ? c : best
  }, null)
}

/** Whether the plan asks for something on its day. */
const asksForSomething = (plan: Plan): boolean =>
  (plan.advice.action !== 'none' && plan.advice.action !== 'leave-alone') ||
  plan.checks.some((c) => asked(c) && c.status !== 'waiting')

/** Without what is dated later: notes on a colony that left, or anything while a clock is set back. */
const asKnownOn = (history: History, day: Day): History => ({
  ...history,
  entries: history.entries.filter((e) => e.on <= day || e === history.intake),
})

/** What the projections hold of a colony as of a day; of one that left, as of the day it left. */
export function project(
  id: ColonyId,
  history: History,
  today: Day,
  planner: Planner,
  exposure: Exposure | null = null,
): Projected {
  const { intake, outcome, tag } = history
  const asOf = outcome?.on ?? today
  const plan = planner(asKnownOn(history, asOf), asOf, exposure)
  const open = outcome === null
  const next = open ? nextCheck(plan) : null
  const place = history.entries.findLast((e) => e.kind === 'move') ?? intake
  return {
    row: {
      id,
      tag,
      yard: place.yard,
      stand: place.stand ?? null,
      removalType: intake.removal.type,
      queenAtIntake: intake.queen,
      intakeOn: intake.on,
      removedOn: history.removedOn,
      phase: plan.phase,
      outcome: outcome?.what ?? null,
      closedOn: outcome?.on ?? null,
      asOf,
      day: plan.day,
      nextRule: next?.rule ?? null,
      nextOpens: next?.opens ?? null,
      nextDue: next?.due ?? null,
      nextCloses: next?.closes ?? null,
      action: plan.advice.action,
      actionWhy: plan.advice.why,
      toDo: open && asksForSomething(plan) ? 1 : 0,
      plan: JSON.stringify(plan),
    },
    checks: open
      ? plan.checks.filter(asked).map(({ rule, opens, due, closes, why }, place) => ({
          colony: id,
          place,
          rule,
          opens,
          due,
          closes,
          why,
        }))
      : [],
  }
}
