/** What the office of the invented yard keeps: its name, its inspector, and removal sheets at every stage. */

import { addDays, type Day } from '../src/days.ts'
import { EMPTY_SHEET, type Sheet } from '../src/records/index.ts'
import type { Store } from '../src/store/index.ts'
import { PERPETUA } from './cast.ts'
import { idMadeAt } from './ids.ts'
import { type Job, lookedHere, YARD_NAME } from './job.ts'
import { JOBS } from './jobs.ts'
import { fillPrices } from './prices.ts'

type Office = Pick<Store, 'removals' | 'settings' | 'colony' | 'colonies' | 'after'>

/** Fills what is not in the journal: through the same functions as people. `now` (UTC ISO) is the latest moment of any save. */
export function fillOffice(store: Office, today: Day, now: string): { sheets: number } {
  store.settings.set('yardName', YARD_NAME)
  store.settings.set('inspector', 'County apiary inspector, Hollis Vane, 555 0111')
  for (const [n, told] of JOBS.entries()) fillJob(store, told, today, now, n)
  return { sheets: JOBS.length + fillPrices(store, now) }
}

function fillJob(store: Office, told: Job, today: Day, now: string, n: number): void {
  const colony = told.tag === undefined ? null : store.colony(told.tag)
  const called = addDays(today, -told.calledAgo)
  const planned = addDays(called, told.plannedAfter)
  // The colony that came of it was logged under the sheet's own id.
  const id = colony?.summary.id ?? idMadeAt(called, '09:00', `sheet ${n}`)
  let sheet: Sheet = {
    ...EMPTY_SHEET,
    job: { ...told.job, calledOn: called, ...(told.calledAgo === 0 ? {} : { plannedOn: planned }) },
  }
  const save = (step: number): void => {
    const at = new Date(Date.parse(`${called}T09:10:00Z`) + step * 86_400_000).toISOString()
    const stamp = { savedAt: at < now ? at : now, savedBy: step === 0 ? PERPETUA : told.by }
    const result = store.removals.save(id, step, sheet, stamp)
    if (!result.ok) throw new Error(`demo, removal sheet ${n}: ${JSON.stringify(result)}`)
  }
  save(0)
  told.steps.forEach((step, i) => {
    sheet = lookedHere({ ...sheet, ...step({ planned, intake: colony?.history.intake ?? null, sheet }) })
    save(i + 1)
  })
}
