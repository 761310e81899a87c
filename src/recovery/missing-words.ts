/** What a look left out: the same in the advice, the live panel and on every page. */
import type { Sought } from './says/advice.ts'
import { inEnglish, type Reason } from './says/said.ts'

/** As data; nothing where nothing is missing. */
export const leftOutReason = (missing: readonly Sought[]): Reason[] =>
  missing.length === 0 ? [] : [{ code: 'left-out', what: [...new Set(missing)] }]

/** 'You have not said whether there are queen cells: that decides it.'; '' where nothing is missing. */
export const missingWords = (missing: readonly Sought[]): string => inEnglish(leftOutReason(missing))
