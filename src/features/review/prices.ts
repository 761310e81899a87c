/** What customers paid, what colonies brought and how they fared later, from sheets and records. Private. */

import type { ColonyId } from '../../ids.ts'
import type { MovedOut, Sheet } from '../../records/index.ts'
import type { Store } from '../../store/index.ts'
import type { Prices } from './view.ts'

/** What a job brought: what was paid, else what was agreed. Null: neither was written down. */
function jobPrice({ agreement: a }: Pick<Sheet, 'agreement'>): number | null {
  if (a.paid !== undefined) return a.paid
  if (a.pricing === 'fixed') return a.fixed ?? null
  return a.pricing === 'hourly' && a.hourly !== undefined && a.hours !== undefined ? a.hourly * a.hours : null
}

/** Prices by colony; where several boxes came of a job, each has its part of the price. */
export function pricesIn({ removals, after }: Pick<Store, 'removals' | 'after'>): (id: ColonyId) => Prices {
  const jobs = new Map<ColonyId, number>()
  for (const { sheet, colonies } of removals.list()) {
    const price = jobPrice(sheet)
    if (price !== null) for (const id of colonies) jobs.set(id, price / colonies.length)
  }
  const records = after.records.all()
  return (id) => ({ job: jobs.get(id) ?? null, colony: records.get(id)?.price ?? null })
}

/** What was told of colonies after they moved out. */
export function toldIn({ after }: Pick<Store, 'after'>): (id: ColonyId) => MovedOut['followUps'] {
  const records = after.records.all()
  return (id) => records.get(id)?.followUps ?? []
}
