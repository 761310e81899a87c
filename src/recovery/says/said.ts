/** Everything a plan can say, as data: codes with parameters. Its English is here too, for the plan is a public format. */
import { ADVICE } from './advice.ts'
import { ASKS } from './asks.ts'
import { type SaidOf, wordsOf } from './catalogue.ts'
import { GUARDS } from './guards.ts'
import { NEEDS } from './needs.ts'
import { SURPRISES } from './surprises.ts'
import { UNMET } from './unmet.ts'
import { WEIGHED } from './weighed.ts'

/** English sentences, by code. Every language has the same codes and parameters (src/words). */
export const SENTENCES = { ...GUARDS, ...ASKS, ...SURPRISES, ...ADVICE, ...NEEDS, ...WEIGHED }

/** Why: one sentence as data. */
export type Reason = SaidOf<typeof SENTENCES>

/** What keeps a colony here: a clause as data. */
export type UnmetReason = SaidOf<typeof UNMET>

/** The English sentences, one after the other. */
export const inEnglish = (reasons: readonly Reason[]): string =>
  reasons.map((r) => wordsOf(SENTENCES, r)).join(' ')

export const unmetInEnglish = (r: UnmetReason): string => wordsOf(UNMET, r)
