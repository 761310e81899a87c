/** Why a “go” is none any more, and what it did not know, in words. */
import { dayIn } from '../../days.ts'
import { type Decision, leftOpen, type Noted } from '../../records/index.ts'
import { timeIn } from '../../time-of-day.ts'
import { instantWords } from '../../words/index.ts'
import { GRAVE_WORDS } from './hazard-words.ts'
import { sharing } from './other-sheets.ts'
import type { RemovalProps } from './page.tsx'
import { placeOf, samePlace } from './place.ts'

/** What others had found by then, and the phone had not heard: '; not known then: gas pipe (Bram, 07:00)' */
function unknownThen({ decision: d, site }: RemovalProps['sheet']): string {
  const of = d?.heard?.of
  const found = (site.noted ?? []).filter(
    (n): n is Noted =>
      n.is === 'found' &&
      n.by !== d?.by &&
      of !== undefined &&
      n.writtenAt > of &&
      `${n.on} ${n.at}` < `${d?.on} ${d?.at}`,
  )
  return found.length === 0 ? '' : `; not known then: ${whoFound(found)}`
}

/** 'gas pipe (Bram, 07:00), flue or duct (Bram, 07:05)' */
const whoFound = (found: readonly Noted[]): string =>
  found.map((n) => `${GRAVE_WORDS[n.what].toLowerCase()} (${n.by}, ${n.at})`).join(', ')

/**
 * A “go” of a phone is of what it had heard: '; the phone had last heard at 07:00; Odalys …'. Once it is on the server it was held to all that
 * is known there; what stood for hours without signal is said ever after.
 */
export function heardWords({ sheet, frame: { zone, today }, versions }: RemovalProps): string {
  const { decision } = sheet
  const heard = decision?.heard
  const isHere = versions.some(({ version }) => !Number.isInteger(version))
  if (heard === undefined || !(isHere || heard.looked || heard.by !== undefined)) return unknownThen(sheet)
  const then = new Date(heard.of)
  const of = dayIn(zone, then) === decision?.on ? timeIn(zone, then) : instantWords(heard.of, zone, today)
  const read =
    heard.by === undefined
      ? heard.looked
        ? `; ${decision?.by} looked at all of it`
        : ''
      : `; ${heard.by} read the list at ${heard.at}: ${heard.news === 'none' ? 'nothing new' : 'what was new is tapped'}`
  return `; the phone had last heard at ${of}${read}${unknownThen(sheet)}`
}

const BECAUSE: Record<NonNullable<NonNullable<Decision['fell']>['because']>, string> = {
  import:
    'it came in with a file, as did what was looked at, cleared and signed: look at the whole list again',
  'time-zone': 'the time zone of the yard was changed: look at the whole list again',
  clock: 'it came from a phone whose clock was wrong: tap again what is so now, and decide',
  account: 'the account of whoever decided was closed, or decides no more',
}

/** Why a “go” is none any more. */
export function endedIt({ sheet, late, frame, others, start, changed }: RemovalProps): string {
  const { decision, ended, site } = sheet
  const fell = decision?.fell
  if (ended !== undefined) return 'the job ended'
  if (fell?.setBack === true)
    return `the book went back to an earlier copy (${fell.on} ${fell.at}): what was found since may not be here, so look at the whole list again`
  if (fell?.because !== undefined) return BECAUSE[fell.because]
  if (fell === undefined && leftOpen(sheet, frame.today)) return `it was left open at ${sheet.work.leftAt}`
  if (late !== null) return 'its hour was over'
  if (decision === undefined || (fell === undefined && decision.on !== frame.today)) return 'its day was over'
  const { on, at = '' } = decision
  // What was said at the call, a minute before “go”, is no news; nor is a nest where “go” was of one.
  const ofNest = decision.type !== undefined && decision.type !== 'swarm'
  const found = (site.noted ?? []).filter(
    (n): n is Noted =>
      n.is === 'found' &&
      n.on === on &&
      (n.at > at || (n.at === at && fell?.at === at)) &&
      (n.what !== 'nest' || !ofNest),
  )
  if (found.length > 0) return `this was found: ${whoFound(found)}`
  if (!samePlace(decision, placeOf(sheet))) return 'the place was changed'
  if (start.state === 'unmet') return `it was too hot: ${start.why.replace(/\.$/, '')}`
  const elsewhere = others[0] && `another sheet ${sharing(others[0])} said more`
  if (fell === undefined) return elsewhere ?? 'something changed'
  // Its own phone let it fall in that minute: it was not accepted, and nobody changed anything.
  if (changed.length === 0 && [fell.by, fell.on, fell.at].join() === [decision.by, on, at].join())
    return 'all on the list was met'
  if (changed.length > 0) return `${fell.by} changed: ${changed.join(', ')}`
  return elsewhere === undefined
    ? `${fell.by} changed something`
    : `${fell.by} changed something, or ${elsewhere}`
}
