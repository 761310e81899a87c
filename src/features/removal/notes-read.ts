/**
 * Notes in anybody's words, of any language: read once more before anything is opened, by one tap that is of exactly these words.
 * Lists of words (written.ts) name what they know; a house "of 1962", little ones or a hook-up they do not.
 */
import { hasBegun, type Sheet } from '../../records/index.ts'
import { fingerprint } from '../../store/index.ts'
import { tickedHere } from './place.ts'

/** What was told and noted of the place, the bees and the people; not where it is and what is cut, which stand in the head. */
export const notesOf = ({ job, site }: Sheet): string[] =>
  [
    job.told,
    site.sprayedNote,
    site.bystandersNote,
    site.foundNote,
    site.behindNote,
    site.otherEntrances,
  ].filter((text) => text !== undefined)

/** As somebody taps it before the cut. 'read:4f1k2m9a': other words, another tap. */
export const readNotes = (s: Sheet): string => `read:${fingerprint(notesOf(s)).toString(36)}`

/** Once it is open, what else is noted ("bigger than we thought") is no reason to stop by itself. */
export const notesUnread = (s: Sheet, today: string): boolean =>
  !hasBegun(s) &&
  notesOf(s).length > 0 &&
  !(tickedHere(s, today) && s.check.done?.includes(readNotes(s)) === true)
