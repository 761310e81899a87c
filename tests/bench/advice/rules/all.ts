/** Every rule by name, in the order of the report. */
import { ADVICE, ADVICE_AND_MORE } from './advice.ts'
import { FIXED } from './fixed.ts'
import type { Rule } from './rule.ts'
import { KNOWS_THE_TRUTH } from './truth.ts'

export const RULES: readonly Rule[] = [ADVICE, ...ADVICE_AND_MORE, ...FIXED, KNOWS_THE_TRUTH]
