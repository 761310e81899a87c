/**
 * The morning digest: which boxes ask for something today, what, and until when. Nothing else: it travels through mail
 * servers and programs that are not ours, so no yard, stand, person, customer, cost, note or reason is in it. Pure.
 */

import type { Day } from '../../days.ts'
import type { Action, Plan, Rule } from '../../recovery/index.ts'
import { coming, toDoOf, waitsUntil } from '../../words/index.ts'

export interface DigestItem {
  tag: string
  action: Action
  /** The check that leads; null when the advice stands alone. */
  rule: Rule | null
  late: boolean
  /** Nothing there asks for the lid to come off. */
  lidOn: boolean
  opens: Day | null
  due: Day | null
  closes: Day | null
}

export interface Digest {
  day: Day
  /** Late ones first, else in walking order. */
  items: DigestItem[]
  /** When nothing asks today: the next box to ask for something. */
  next: { tag: string; rule: Rule | null; on: Day } | null
}

interface Planned {
  tag: string
  plan: Plan
}

/** `toDo`: colonies that ask for something on the day, in walking order; `all`: every colony in the yard. */
export function digestOf(toDo: readonly Planned[], all: readonly Planned[], day: Day): Digest {
  const items = toDo.flatMap(({ tag, plan }) => itemOf(tag, plan) ?? [])
  return {
    day,
    items: [...items.filter((i) => i.late), ...items.filter((i) => !i.late)],
    next: items.length > 0 ? null : nextOf(all),
  }
}

function itemOf(tag: string, plan: Plan): DigestItem | null {
  const toDo = toDoOf(plan)
  if (toDo === null) return null
  const { action, check, late, lidOn } = toDo
  return {
    tag,
    action,
    rule: check?.rule ?? null,
    late,
    lidOn,
    opens: check?.opens ?? null,
    due: check?.due ?? null,
    closes: check?.closes ?? null,
  }
}

function nextOf(all: readonly Planned[]): Digest['next'] {
  const waiting = all.flatMap(({ tag, plan }) => {
    const on = waitsUntil(plan)
    return on === null ? [] : [{ tag, rule: coming(plan).find((c) => c.opens === on)?.rule ?? null, on }]
  })
  return waiting.sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0))[0] ?? null
}
