/** Papers of a move in words, and those that are no good on a day. */
import type { Permit } from './move-out-record.ts'

/** Those that ended before that day. A paper without an end is not judged: whoever issued it says how long it holds. */
export const papersEnded = (permits: readonly Permit[], day: string): Permit[] =>
  permits.filter((p) => p.until !== undefined && p.until < day)

/** Those that are not good yet on that day. */
export const papersNotYet = (permits: readonly Permit[], day: string): Permit[] =>
  permits.filter((p) => p.on !== undefined && p.on > day)

/** 'transport permit 47-B' */
export const permitWords = (p: Permit): string => [p.what, p.number].filter(Boolean).join(' ')
