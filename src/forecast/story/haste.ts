/**
 * A look in haste. Its "none" are of one piece: who did not hold the frame to the light missed the eggs and the cells alike.
 * So a look is weighed as a whole, once as made with care and once as made in haste, and the two are mixed.
 */
import type { Inspection } from '../../journal/entry.ts'
import type { Rates } from '../rates.ts'

/** How thoroughly a box was gone through, where it was said. */
export type Search = 'glance' | 'searched'

/** Chance that a look was made in haste. Example: 0.1 where nothing was said, 0.75 for a glance. */
export function hasteOf(look: Inspection & { search?: Search | undefined }, rates: Rates): number {
  if (look.search === 'glance') return rates.carelessGlance
  return look.search === 'searched' ? rates.carelessSearched : rates.careless
}

/** Words are mistaken more often in haste, times this. Judgement. */
const MISREAD_IN_HASTE = 5

/** The same rates as they are for a look in haste. */
export const inHaste = (r: Rates): Rates => ({
  ...r,
  seesEggs: r.seesEggs * r.hasteEggs,
  seesOpen: r.seesOpen * r.hasteOpen,
  seesCapped: r.seesCapped * r.hasteCapped,
  seesCells: r.seesCells * r.hasteCells,
  seesQueen: r.seesQueen * r.hasteQueen,
  seesVirgin: r.seesVirgin * r.hasteQueen,
  misread: Math.min(1, r.misread * MISREAD_IN_HASTE),
})

/** What an ordinary look sees, care and haste taken together; for what is asked of one thing at a time. */
export function onAverage(r: Rates): Rates {
  const hasty = inHaste(r)
  const mix = (name: 'seesEggs' | 'seesOpen' | 'seesCapped' | 'seesCells' | 'seesQueen' | 'seesVirgin') =>
    (1 - r.careless) * r[name] + r.careless * hasty[name]
  return {
    ...r,
    seesEggs: mix('seesEggs'),
    seesOpen: mix('seesOpen'),
    seesCapped: mix('seesCapped'),
    seesCells: mix('seesCells'),
    seesQueen: mix('seesQueen'),
    seesVirgin: mix('seesVirgin'),
  }
}
