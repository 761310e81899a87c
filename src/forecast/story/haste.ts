/**
 * A look in haste. Its "none" are of one piece: who did not hold the frame to the light missed the eggs and the cells alike.
 * So a look is weighed as a whole, once as made with care and once as made in haste, and the two are mixed.
 */
import type { Inspection } from '../../journal/index.ts'
import type { Rates } from '../rates.ts'

/** Chance that a look was made in haste. Example: 0.1 where nothing was said, 0.75 where haste was. */
export function hasteOf({ searched }: Pick<Inspection, 'searched'>, rates: Rates): number {
  if (searched === 'in-haste') return rates.carelessGlance
  return searched === 'thoroughly' ? rates.carelessSearched : rates.careless
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
