/** Customers who would hear now how their bees are. Pure over the book. */
import { addDays, type Day } from '../../days.ts'
import type { ColonySummary, Store } from '../../store/index.ts'

/** The letter is about day 30: offered from then on, or from the day the colony left before it. */
const LETTER_DAY = 30
/** Days in which it is offered: later it answers no question any more (judgement). */
const OFFERED_DAYS = 30

/** Colonies that came from somebody, whose day has come, and about whom no letter was made since. By tag. */
export function lettersDue(
  store: Pick<Store, 'colonies' | 'colony'> & { after: Pick<Store['after'], 'letters'> },
  today: Day,
): ColonySummary[] {
  const written = new Map<string, Day>()
  for (const l of store.after.letters.list())
    if (l.what === 'letter' && (written.get(l.colony) ?? '') < l.asOf) written.set(l.colony, l.asOf)
  return store
    .colonies({ intakeFrom: addDays(today, -(LETTER_DAY + OFFERED_DAYS)) })
    .filter((s) => {
      const day = dueOn(s)
      if (today < day || today > addDays(day, OFFERED_DAYS)) return false
      const last = written.get(s.id)
      return (last === undefined || last < addDays(day, -2)) && cameFromSomebody(store, s)
    })
    .sort((a, b) => (a.tag < b.tag ? -1 : 1))
}

/** Day 30, or the day it left where that was before. */
const dueOn = (s: ColonySummary): Day => {
  const day = addDays(s.intakeOn, LETTER_DAY)
  return s.closedOn !== null && s.closedOn < day ? s.closedOn : day
}

const cameFromSomebody = (store: Pick<Store, 'colony'>, s: ColonySummary): boolean =>
  store.colony(s.id)?.history.intake.removal.site !== undefined

/** How many, counted anew only when the day, the journal or the letters have changed: Today asks on every view. */
export function countingLetters(
  store: Parameters<typeof lettersDue>[0] & Pick<Store, 'changes'>,
): (today: Day) => number {
  let kept = { key: '', count: 0 }
  return (today) => {
    const key = `${today} ${store.changes({ limit: 1 })[0]?.seq} ${store.after.letters.list().length}`
    if (kept.key !== key) kept = { key, count: lettersDue(store, today).length }
    return kept.count
  }
}
