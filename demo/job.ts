/** How a removal of the invented yard is told: who called, and what each visit to its sheet added. */

import { type Day, inWordsWithYear } from '../src/days.ts'
import type { Intake } from '../src/journal/index.ts'
import { DEFAULT_TERMS, type Sheet, type Signature, termsOf, type Work } from '../src/records/index.ts'
import { MARL } from './cast.ts'

export const YARD_NAME = `${MARL} bee removals`

export interface Job {
  /** The colony that came of it, when one did. */
  tag?: string
  by: string
  job: Omit<Sheet['job'], 'calledOn' | 'plannedOn'>
  /** Days before today on which they called; days after the call for which it was planned. */
  calledAgo: number
  plannedAfter: number
  /** What each visit to the sheet added, in order. */
  steps: ((at: { planned: Day; intake: Intake | null; sheet: Sheet }) => Partial<Sheet>)[]
}

const DRAWN =
  'M38 132L52 74L70 61L92 118L108 128L131 84L150 132L190 118L214 70L226 66L238 130L262 118L300 121L352 96L371 128L430 112'

/** The agreement of the sheet, signed. */
export const signed = (sheet: Sheet, on: Day, how: Signature['how']): Signature => ({
  how,
  name: sheet.job.name ?? '',
  on,
  terms: termsOf(DEFAULT_TERMS, sheet, {
    yard: YARD_NAME,
    currency: '$',
    heat: '85 °F',
    dayWords: inWordsWithYear,
  }),
  ...(how === 'drawn' ? { path: DRAWN } : {}),
})

/** The work as the intake tells it, so that sheet and journal agree. */
export const workOf = (i: Intake | null, planned: Day, more: Work): Work => {
  if (i === null) return more
  const { removal, queen, brood, broodCare, queenCells, bees, deadBeesKg, tiedComb, temper } = i
  const known = {
    queen,
    brood,
    broodCare,
    queenCells,
    bees,
    deadBeesKg,
    tiedComb,
    temper,
    method: removal.method,
    outdoorC: removal.outdoorC,
  }
  const said = Object.fromEntries(Object.entries(known).filter(([, v]) => v !== undefined))
  return { on: removal.removedOn ?? planned, ...said, ...more }
}

/** The sheet, looked at and ticked at the place it is of. */
export function lookedHere(s: Sheet): Sheet {
  const { where, surface, type } = s.site
  const at = Object.fromEntries(
    Object.entries({ address: s.job.address, where, surface, type }).filter(([, v]) => v !== undefined),
  )
  const { doneOn } = s.check
  const on = doneOn ?? s.job.calledOn
  const seen = { ...at, ...(on === undefined ? {} : { on }) }
  return {
    ...s,
    site: { ...s.site, lookedAt: { behind: seen, hazards: seen, old: seen, bystanders: seen } },
    check: { ...s.check, ...(doneOn === undefined ? {} : { doneAt: at }) },
    ...(s.decision === undefined ? {} : { decision: { ...s.decision, ...at } }),
  }
}
