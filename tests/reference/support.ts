/** Colonies told in a line, for checks against published examples. */
import type { DaysBefore } from '../../src/biology/sightings.ts'
import { addDays, type Day } from '../../src/days.ts'
import { type Entry, entry } from '../../src/journal/entry.ts'
import { historyOf } from '../../src/journal/history.ts'
import { planOf } from '../../src/recovery/plan.ts'
import type { DayRange, Plan } from '../../src/recovery/plan-types.ts'

let serial = 0
const id = (): string => `019707a0-0000-7000-8000-${(++serial).toString(16).padStart(12, '0')}`

const make = (on: Day, fields: object): Entry =>
  entry.parse({ id: id(), colony: 'W-1', on, by: 'ada', ...fields })

/** An intake with young brood along. */
export const intake = (on: Day, queen: 'caged' | 'loose' | 'unseen' | 'lost', more: object = {}): Entry =>
  make(on, {
    kind: 'intake',
    removal: { type: 'wall' },
    yard: 'North',
    queen,
    brood: { eggs: 1, open: 1, capped: 2 },
    ...more,
  })

export const look = (on: Day, seen: object): Entry => make(on, { kind: 'inspection', opened: true, ...seen })
export const gave = (on: Day, what: string, more: object = {}): Entry =>
  make(on, { kind: 'given', what, ...more })
export const cage = (on: Day, found: string): Entry => make(on, { kind: 'queen-cage', found })

export function plan(today: Day, ...entries: Entry[]): Plan {
  const history = historyOf('W-1', entries)
  if (history === null) throw new Error('no intake')
  return planOf(history, today)
}

/** The check of that rule; the last one asked when there are several. */
export function check(p: Plan, rule: string) {
  const found = p.checks.findLast((c) => c.rule === rule)
  if (found === undefined) throw new Error(`no check ${rule}`)
  return found
}

/** The days on which the egg was laid of what is seen on a day. */
export const laidWhen = (seenOn: Day, before: DaysBefore): DayRange => ({
  from: addDays(seenOn, -before.first),
  to: addDays(seenOn, -before.last),
})
