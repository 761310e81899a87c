/** Why, in Spanish: every sentence a plan can say. */
import {
  deedOf,
  type SENTENCES as English,
  type Exposure,
  type Reason,
  type UnmetReason,
  wordsOf,
} from '../../../recovery/index.ts'
import type { Words } from '../../catalogue.ts'
import { ADVICE, REMEDY } from './advice.ts'
import { ASKS } from './asks.ts'
import { deedWords } from './days.ts'
import { GUARDS } from './guards.ts'
import { NEEDS } from './needs.ts'
import { SURPRISES } from './surprises.ts'
import { UNMET } from './unmet.ts'
import { WEIGHED } from './weighed.ts'

const SENTENCES: typeof English = {
  ...GUARDS,
  ...ASKS,
  ...SURPRISES,
  ...ADVICE,
  ...NEEDS,
  ...WEIGHED,
}

export const reasons: Words['reasons'] = {
  remedy: REMEDY,
  all: (said: readonly Reason[]) => said.map((r) => wordsOf(SENTENCES, r)).join(' '),
  unmet: (reason: UnmetReason) => wordsOf(UNMET, reason),
  deed: (e: Pick<Exposure, 'deed' | 'how'>) => deedWords(deedOf(e)),
}
