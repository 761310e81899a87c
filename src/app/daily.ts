/** The plans of a new day, made once for all who ask meanwhile, and in slices. */
import type { Day } from '../days.ts'
import type { Store } from '../store/index.ts'
import { inSlices } from './slices.ts'

/** Null where the plans are of that day already; else when they are. */
export type Daily = (today: Day) => Promise<void> | null

export function dailyOf(store: Pick<Store, 'refreshing'>): Daily {
  let day: Day | null = null
  let making: Promise<void> | null = null
  return (today) => {
    if (day === today) return making
    day = today
    const mine = inSlices(store.refreshing(today)).then(
      () => {
        if (making === mine) making = null
      },
      (error) => {
        // Asked again by the next request.
        if (making === mine) [day, making] = [null, null]
        throw error
      },
    )
    // Whoever waits for it hears what went wrong; an entry does not wait.
    mine.catch(() => undefined)
    making = mine
    return mine
  }
}
