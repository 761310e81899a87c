/**
 * Words that were written since it was opened, or gone on with. They are no reason to stop by themselves, and are shown to whoever stands
 * there, and to whoever goes back to close up.
 */
import { beginsIn, type Sheet } from '../../records/index.ts'
import { fingerprint } from '../../store/index.ts'
import { notesOf } from './notes-read.ts'

/** All words of a sheet; what customers said when they called again is said by itself. */
const wordsOn = ({ callBacks: _, ...s }: Sheet): string[] => notesOf(s, '')

const known = (text: string): string => fingerprint(text).toString(36)

/** As many as a sheet takes. */
const MOST = 300

/** The sheet with what stood on it in words when it was begun, or gone on with: a phone keeps no version to compare it with. */
export const withKnown = (before: Sheet, after: Sheet): Sheet =>
  beginsIn(before, after)
    ? {
        ...after,
        work: { ...after.work, knew: [...new Set(wordsOn(after).map(known))].slice(0, MOST) },
      }
    : after

/** What is new of them; nothing where nobody knows what stood there then. */
export function wordsSince(s: Sheet): string[] {
  const { knew } = s.work
  return knew === undefined ? [] : [...new Set(wordsOn(s))].filter((text) => !knew.includes(known(text)))
}

/** Whether these words stand on a sheet. */
export const isSaidOn = (s: Sheet, text: string): boolean => wordsOn(s).includes(text)
