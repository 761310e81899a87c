/**
 * What a change of the protocol would move: every colony's plan by the rules before and by the rules after, side by side.
 * Pure; the caller hands the plans over colony by colony, so that a large yard can be read in slices.
 */

import type { Day } from '../days.ts'
import type { Action, Check, Plan, Rule } from './plan-types.ts'

interface Moved {
  rule: Rule
  before: Check
  after: Check
}

/** When a colony may leave: now, about a day, or no day can be named (null). */
export type Leaving = Day | 'now' | null

/** What changes for one colony. */
export interface ColonyChange {
  tag: string
  /** Checks still asked whose window moves. */
  moved: Moved[]
  /** Checks asked only by the new rules, or only by the old ones. */
  added: Check[]
  dropped: Check[]
  becomesLate: Rule[]
  noLongerLate: Rule[]
  action: { before: Action; after: Action } | null
  /** It may leave by the new rules and not by the old, or the other way round. */
  ready: { before: boolean; after: boolean } | null
  /** When it may leave, where that moves. */
  expected: { before: Leaving; after: Leaving } | null
}

export interface PreviewTotals {
  colonies: number
  changed: number
  /** Colonies with a check whose window moves, comes or goes. */
  checksMove: number
  becomeLate: number
  noLongerLate: number
  otherAdvice: number
  readiness: number
}

const asked = (plan: Plan): Check[] =>
  plan.checks.filter((c) => c.status !== 'answered' && c.status !== 'void' && c.rule !== 'move-out')

const sameWindow = (a: Check, b: Check): boolean =>
  a.opens === b.opens && a.due === b.due && a.closes === b.closes

/** What changes for a colony, null when nothing does. Move-out is judged by readiness and its expected day. */
export function changeFor(was: Plan, will: Plan): ColonyChange | null {
  const [old, fresh] = [asked(was), asked(will)]
  // A rule is asked once at a time, so the rule pairs the checks.
  const pairs = old.flatMap((b) => {
    const a = fresh.find((c) => c.rule === b.rule)
    return a === undefined ? [] : [{ rule: b.rule, before: b, after: a }]
  })
  const late = (checks: Check[]): Rule[] => checks.filter((c) => c.status === 'overdue').map((c) => c.rule)
  const [lateOld, lateNew] = [late(old), late(fresh)]
  // A colony that is ready has no expected day any more: its day is now.
  const likely = (p: Plan): Leaving => (p.readiness.ready ? 'now' : (p.readiness.expected?.likely ?? null))
  const change: ColonyChange = {
    tag: was.tag,
    moved: pairs.filter((p) => !sameWindow(p.before, p.after)),
    added: fresh.filter((a) => !old.some((b) => b.rule === a.rule)),
    dropped: old.filter((b) => !fresh.some((a) => a.rule === b.rule)),
    becomesLate: lateNew.filter((r) => !lateOld.includes(r)),
    noLongerLate: lateOld.filter((r) => !lateNew.includes(r)),
    action:
      was.advice.action === will.advice.action
        ? null
        : { before: was.advice.action, after: will.advice.action },
    ready:
      was.readiness.ready === will.readiness.ready
        ? null
        : { before: was.readiness.ready, after: will.readiness.ready },
    expected: likely(was) === likely(will) ? null : { before: likely(was), after: likely(will) },
  }
  return isNothing(change) ? null : change
}

const isNothing = (c: ColonyChange): boolean =>
  [c.moved, c.added, c.dropped, c.becomesLate, c.noLongerLate].every((l) => l.length === 0) &&
  c.action === null &&
  c.ready === null &&
  c.expected === null

export function totalsOf(colonies: number, changes: readonly ColonyChange[]): PreviewTotals {
  const count = (has: (c: ColonyChange) => boolean): number => changes.filter(has).length
  return {
    colonies,
    changed: changes.length,
    checksMove: count((c) => c.moved.length + c.added.length + c.dropped.length > 0),
    becomeLate: count((c) => c.becomesLate.length > 0),
    noLongerLate: count((c) => c.noLongerLate.length > 0),
    otherAdvice: count((c) => c.action !== null),
    readiness: count((c) => c.ready !== null || c.expected !== null),
  }
}
