/**
 * Notes in anybody's words, of any language: read once more before anything is opened, by one tap that is of exactly these words.
 * Lists of words (written.ts) name what they know; a house "of 1962", little ones or a hook-up they do not.
 */
import { isUnderWay, type Sheet } from '../../records/index.ts'
import { fingerprint } from '../../store/index.ts'
import { tickedHere } from './place.ts'
import { isPlainName, isPlainNumber, isPlainPlace } from './plain-place.ts'
import { isSaidHere } from './without-go.ts'

const defined = (texts: readonly (string | undefined)[]): string[] =>
  texts.filter((text) => text !== undefined)

const namesOf = ({ job, agreement }: Sheet): string[] =>
  defined([job.name, job.address, agreement.signature?.name])
const numbersOf = ({ job, agreement }: Sheet): string[] => defined([job.phone, job.email, agreement.invoice])
export const placeTexts = ({ site }: Sheet): string[] => defined([site.where, site.surface])

/** All short fields, as far as they are filled. */
export const shortTexts = (s: Sheet): string[] => [...namesOf(s), ...placeTexts(s), ...numbersOf(s)]

/** Short fields that say more than a plain place, an address, a name or a number. */
const moreThanPlain = (s: Sheet): string[] => [
  ...namesOf(s).filter((text) => !isPlainName(text)),
  ...placeTexts(s).filter((text) => !isPlainPlace(text)),
  ...numbersOf(s).filter((text) => !isPlainNumber(text)),
]

/** What is typed into the fields of a form: of it alone nothing goes unread. */
export const typedNotes = (s: Sheet): string[] => {
  const { job, site, agreement, work, callBacks = [] } = s
  const notes = [
    job.told,
    job.wayIn,
    site.sprayedNote,
    site.bystandersNote,
    site.foundNote,
    site.behindNote,
    site.entrance,
    site.otherEntrances,
    agreement.extra,
    work.withoutGo && isSaidHere(work.withoutGo) ? undefined : work.withoutGo?.words,
    ...(work.withoutGo?.more ?? []),
    work.left,
    work.note,
    ...callBacks.map((b) => b.note),
  ]
  return [...moreThanPlain(s), ...defined(notes)]
}

/** Words that were taken out unread, and stand nowhere. */
const wentUnread = ({ site: { noted = [] } }: Sheet, texts: readonly string[]): string[] =>
  noted.flatMap(({ what, words = '' }) =>
    what !== 'note' || texts.some((text) => text.includes(words)) ? [] : [`Was written: ${words}`],
  )

/**
 * Every free text of a sheet but plain names, places and numbers: a test holds it against the schema. The reason of a decision, and of
 * what it went over, is one but on the day on which it is a “go” that stands: whoever decided that has read it. `day`: that day; the one of the “go” where it is left out, and '' for none.
 */
export function notesOf(s: Sheet, day = s.decision?.on): string[] {
  const { check, decision: d } = s
  const typed = typedNotes(s)
  const decided = d?.is === 'go' && d.fell === undefined && d.on === day ? [] : [d?.reason, d?.over?.reason]
  const signed = [check.clearedBy, ...(check.seconds ?? []).map((x) => x.reason), ...decided]
  return [...typed, ...defined(signed), ...wentUnread(s, typed)]
}

/** As somebody taps it before the cut. 'read:4f1k2m9a': other words, another tap. */
export const readNotes = (s: Sheet, day?: string): string =>
  `read:${fingerprint(notesOf(s, day)).toString(36)}`

/** Once it is open, what else is noted that day ("bigger than we thought") is no reason to stop by itself; on the next day it is read. */
export const readsNotes = (s: Sheet, today: string): boolean =>
  s.work.boxedAt === undefined && !isUnderWay(s, today)

export const isRead = (s: Sheet, today: string): boolean =>
  tickedHere(s, today) && s.check.done?.includes(readNotes(s, today)) === true

export const notesUnread = (s: Sheet, today: string): boolean =>
  readsNotes(s, today) && notesOf(s, today).length > 0 && !isRead(s, today)

/** Whoever has read all of it has read what a “go” leaves of it: it answers the reason of the decision before it. */
export function stillRead(before: Sheet, after: Sheet, today: string): Sheet {
  const left = notesOf(after, today).length === 0 ? [] : [readNotes(after, today)]
  const done = after.check.done?.flatMap((d) => (d === readNotes(before, today) ? left : [d]))
  return done === undefined ? after : { ...after, check: { ...after.check, done } }
}
