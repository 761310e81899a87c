/** Why something may not be done today: a code with its parameters. */
import { type SaidOf, wordsOf } from './says/catalogue.ts'
import { GUARDS } from './says/guards.ts'

export type Reason = SaidOf<typeof GUARDS>

/** The sentence in English, without its full stop. */
export const reasonWords = (r: Reason): string => wordsOf(GUARDS, r)
