/** Clauses within sentences: why there is no queen, what bound two colonies. */
import { type SaidOf, wordsOf } from './catalogue.ts'
import { CAUSES, DEEDS } from './causes.ts'

/** One clause as data. */
export type Cause = SaidOf<typeof CAUSES>
export type Deed = SaidOf<typeof DEEDS>

/** 'the queen was lost at the removal, and no queen cells on Wed 6 May' */
export const causeInEnglish = (causes: readonly Cause[]): string =>
  causes.map((c) => wordsOf(CAUSES, c)).join('')

/** 'got a frame of eggs from W-7' */
export const deedInEnglish = (d: Deed): string => wordsOf(DEEDS, d)

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
