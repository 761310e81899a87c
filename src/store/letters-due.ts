/** Customers who would hear now how their bees are. */
import { addDays, type Day, daysBetween } from '../days.ts'
import type { ColonySummary, Repository, Store } from './types.ts'

/** The letter is about day 30: offered from then on, or from the day the colony left before it. */
const LETTER_DAY = 30
/** Days in which it is offered: later it answers no question any more (judgement). */
const OFFERED_DAYS = 30
/** Days in which Today says so: whoever lets them pass has decided (judgement). The list of letters says it still. */
const SAID_DAYS = 7

type Book = Pick<Store, 'colonies' | 'colony'> & { after: Pick<Store['after'], 'letters'> }

/**
 * Colonies that came from somebody, whose day has come, and about whom no letter was made since, by tag. None for a phone,
 * which holds no letters, and none for whoever may not see customers.
 */
export function lettersDue(
  store: Pick<Repository, 'colonies' | 'colony'> | Book,
  today: Day,
): ColonySummary[] {
  if (!('after' in store)) return []
  const due = store.colonies().filter((s) => {
    const day = dueOn(s)
    return today >= day && today <= addDays(day, OFFERED_DAYS) && cameFromSomebody(store, s)
  })
  if (due.length === 0) return []
  const written = new Map<string, Day>()
  for (const l of store.after.letters.list())
    if (l.what === 'letter' && (written.get(l.colony) ?? '') < l.asOf) written.set(l.colony, l.asOf)
  return due
    .filter((s) => (written.get(s.id) ?? '') < addDays(dueOn(s), -2))
    .sort((a, b) => (a.tag < b.tag ? -1 : 1))
}

/** Those whose day came only lately. */
export const lettersDueLately = (store: Parameters<typeof lettersDue>[0], today: Day): ColonySummary[] =>
  lettersDue(store, today).filter((s) => daysBetween(dueOn(s), today) < SAID_DAYS)

/** Day 30, or the day it left where that was before. */
const dueOn = (s: ColonySummary): Day => {
  const day = addDays(s.intakeOn, LETTER_DAY)
  return s.closedOn !== null && s.closedOn < day ? s.closedOn : day
}

const cameFromSomebody = (store: Pick<Store, 'colony'>, s: ColonySummary): boolean =>
  store.colony(s.id)?.history.intake.removal.site !== undefined
