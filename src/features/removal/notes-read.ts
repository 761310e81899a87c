/**
 * Notes in anybody's words, of any language: read once more before anything is opened, by one tap that is of exactly these words.
 * Lists of words (written.ts) name what they know; a house "of 1962", little ones or a hook-up they do not.
 */
import type { Sheet } from '../../records/index.ts'
import { fingerprint } from '../../store/index.ts'
import { tickedHere } from './place.ts'
import { isUnderWay } from './ticked-when.ts'

/**
 * Every free text of a sheet but names, how somebody is reached, and where it is and what is cut, which stand above “Go”: a test
 * holds it against the schema. Why somebody refused or had it wait stays a note until the next “go” has answered it.
 */
export const notesOf = ({
  job,
  site,
  agreement,
  check,
  decision: d,
  work,
  callBacks = [],
}: Sheet): string[] =>
  [
    job.told,
    job.wayIn,
    site.sprayedNote,
    site.bystandersNote,
    site.foundNote,
    site.behindNote,
    site.entrance,
    site.otherEntrances,
    agreement.extra,
    check.clearedBy,
    ...(check.seconds ?? []).map((x) => x.reason),
    d?.is === 'go' ? undefined : d?.reason,
    d?.is === 'go' && d.fell === undefined ? undefined : d?.over?.reason,
    work.left,
    work.note,
    ...callBacks.map((b) => b.note),
  ].filter((text) => text !== undefined)

/** As somebody taps it before the cut. 'read:4f1k2m9a': other words, another tap. */
export const readNotes = (s: Sheet): string => `read:${fingerprint(notesOf(s)).toString(36)}`

/** Once it is open, what else is noted that day ("bigger than we thought") is no reason to stop by itself; on the next day it is read. */
export const readsNotes = (s: Sheet, today: string): boolean =>
  s.work.boxedAt === undefined && !isUnderWay(s, today)

export const notesUnread = (s: Sheet, today: string): boolean =>
  readsNotes(s, today) &&
  notesOf(s).length > 0 &&
  !(tickedHere(s, today) && s.check.done?.includes(readNotes(s)) === true)

/** Whoever has read all of it has read what a “go” leaves of it: it answers the reason of the decision before it. */
export function stillRead(before: Sheet, after: Sheet): Sheet {
  const left = notesOf(after).length === 0 ? [] : [readNotes(after)]
  const done = after.check.done?.flatMap((d) => (d === readNotes(before) ? left : [d]))
  return done === undefined ? after : { ...after, check: { ...after.check, done } }
}
