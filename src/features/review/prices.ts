/** What customers paid, what colonies brought and how they fared later, from sheets and records, each read once. Private. */

import type { ColonyId } from '../../ids.ts'
import type { MovedOut, Sheet } from '../../records/index.ts'
import type { Store } from '../../store/index.ts'
import { type CallBackCount, callBacksByType } from '../removal/index.ts'
import type { Prices } from './view.ts'

/** What a job brought: what was paid, else what was agreed. Null: neither was written down. */
function jobPrice({ agreement: a }: Pick<Sheet, 'agreement'>): number | null {
  if (a.paid !== undefined) return a.paid
  if (a.pricing === 'fixed') return a.fixed ?? null
  return a.pricing === 'hourly' && a.hourly !== undefined && a.hours !== undefined ? a.hourly * a.hours : null
}

export interface PrivateFacts {
  /** Where several boxes came of a job, each has its part of the price. */
  prices: (id: ColonyId) => Prices
  /** What was told of a colony after it moved out. */
  told: (id: ColonyId) => MovedOut['followUps']
  callBacks: CallBackCount[]
}

export function privateFacts({ removals, after }: Pick<Store, 'removals' | 'after'>): PrivateFacts {
  const sheets = removals.list()
  const records = after.records.all()
  const jobs = new Map<ColonyId, number>()
  for (const { sheet, colonies } of sheets) {
    const price = jobPrice(sheet)
    if (price !== null) for (const id of colonies) jobs.set(id, price / colonies.length)
  }
  return {
    prices: (id) => ({ job: jobs.get(id) ?? null, colony: records.get(id)?.price ?? null }),
    told: (id) => records.get(id)?.followUps ?? [],
    callBacks: callBacksByType(sheets),
  }
}
