/** When it was read how hot it is: a temperature of the moment is of the moment at which it is opened. */
import type { AppContext, PageDeps } from '../../app/index.ts'
import { dayIn } from '../../days.ts'
import type { Sheet } from '../../records/index.ts'
import type { SavedSheet } from '../../store/index.ts'
import { minutesFrom, timeIn } from '../../time-of-day.ts'

/** Minutes for which a reading is of the moment (judgement). */
const MOMENT_MINUTES = 60

/** Whether what was read at that hour is none of the moment at `now`; of no hour, nobody knows. */
export const isPast = (read: string | undefined, now: string): boolean =>
  read !== undefined && minutesFrom(read, now) > MOMENT_MINUTES

/** The hour at which today's temperature of the sheet was first saved, as far as its versions are here; undefined where it was not today. */
export function heatSince(
  c: AppContext,
  deps: PageDeps,
  id: string,
  saved: Pick<SavedSheet, 'versions'> | null,
  { work: { on, outdoorC } }: Sheet,
): string | undefined {
  const { zone, today } = c.var.frame
  const newest = (saved?.versions ?? []).toSorted((a, b) => b.version - a.version)
  const other = newest.findIndex(({ version }) => {
    const then = deps.store.removals.version(id, version)?.sheet.work
    return then?.outdoorC !== outdoorC || then?.on !== on
  })
  const first = newest.at(other === -1 ? -1 : other - 1)
  if (outdoorC === undefined || other === 0 || first === undefined) return undefined
  const at = new Date(first.savedAt)
  return dayIn(zone, at) === today ? timeIn(zone, at) : undefined
}
