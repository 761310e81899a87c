/** Values of plans, kept: worked out once for a strength, a season and a time that queens take, for all colonies of a yard. */
import { type Ahead, type AheadOptions, aheadOf } from './ahead.ts'
import { seasonKey } from './ground.ts'

export type Library = (options: AheadOptions) => Ahead

/** Tables kept at most; a yard needs a dozen at a time, and some hundred in a year. */
const MOST = 200

export function libraryOf(): Library {
  const byModel = new WeakMap<AheadOptions['model'], Map<string, Ahead>>()
  return (o) => {
    const kept = byModel.get(o.model) ?? new Map<string, Ahead>()
    byModel.set(o.model, kept)
    const c = o.costs
    const key = `${o.strength} ${seasonKey(o.season)} ${o.lead} ${c.worth} ${c.queen} ${c.frame} ${c.opening} ${c.day} ${c.unitedFrame}`
    const known = kept.get(key)
    if (known !== undefined) return known
    const made = aheadOf(o)
    if (kept.size >= MOST) kept.clear()
    kept.set(key, made)
    return made
  }
}
