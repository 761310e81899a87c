/** Why, in English: the core has it, for the plan is a public format. */
import {
  deedInEnglish,
  deedOf,
  type Exposure,
  inEnglish,
  REMEDY,
  unmetInEnglish,
} from '../../recovery/index.ts'

export const reasons = {
  /** What to do about a sign, a sentence without its full stop. */
  remedy: REMEDY,
  /** The sentences of an advice, a check or a surprise, one after the other. */
  all: inEnglish,
  /** What keeps a colony here: a clause. */
  unmet: unmetInEnglish,
  /** What bound a colony to a suspected one, after "it". */
  deed: (e: Pick<Exposure, 'deed' | 'how'>): string => deedInEnglish(deedOf(e)),
}
