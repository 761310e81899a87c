/** Models of rates, kept: making one takes as long as some plans, and the values reckoned ahead are kept by it. */
import { listModelOf, type Model, type Rates } from '../forecast/index.ts'
import type { Protocol } from '../recovery/index.ts'

/** A yard has one set of rates, and another for a while when somebody tries other rules. */
const MOST = 6

const kept = new Map<string, Model>()

/** The model of those rates, where queens mate in those months. */
export function modelFor(rates: Rates, { matingMonths }: Pick<Protocol, 'matingMonths'>): Model {
  const key = `${matingMonths.join()} ${JSON.stringify(rates)}`
  const known = kept.get(key)
  if (known !== undefined) return known
  const made = listModelOf(rates, matingMonths)
  if (kept.size >= MOST) kept.clear()
  kept.set(key, made)
  return made
}
