/** What a look left out: the same in the advice, the live panel and on every page. */
import type { Sought } from './says/advice.ts'
import type { Reason } from './says/said.ts'

/** As data; nothing where nothing is missing. */
export const leftOutReason = (missing: readonly Sought[]): Reason[] =>
  missing.length === 0 ? [] : [{ code: 'left-out', what: [...new Set(missing)] }]
