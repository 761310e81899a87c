/** The head of a sheet's page: how far it is, what was decided, what came of it. */

import { dayIn, daysBetween } from '../../days.ts'
import { Reach } from '../../parts/index.ts'
import type { Noted } from '../../records/index.ts'
import { timeIn } from '../../time-of-day.ts'
import { dayWords, instantWords } from '../../words/index.ts'
import { type ClosingId, leftToClose } from './closing.ts'
import { sharing } from './other-sheets.ts'
import type { RemovalProps } from './page.tsx'
import { placeOf, samePlace } from './place.ts'
import { isOnGo, isOver } from './stage.ts'
import { beganWithoutGo, withoutGoWords } from './without-go.ts'
import { CLOSING_WORDS, DECIDE, decidedWords, GRAVE_WORDS, noGo, plannedWords, stageWords } from './words.ts'

export const Head = (p: RemovalProps) => {
  const { job } = p.sheet
  return (
    <header class="removal-head">
      <h1>{p.name}</h1>
      <p class="soft">
        <b>
          {isOnGo(p.stage, p.sheet) && (!p.goes || p.late !== null || p.older !== null)
            ? noGo(p.sheet, p.late, p.frame.today)
            : stageWords(p.stage, p.sheet)}
        </b>
        {job.address === undefined || job.address === p.name ? '' : ` · ${job.address}`}
        {job.plannedOn === undefined
          ? ''
          : ` · ${plannedWords(job.plannedOn, p.frame.today, isOver(p.stage))}${job.plannedAt === undefined ? '' : `, ${job.plannedAt}`}`}
        {p.saved ? <span role="status"> · saved</span> : null}
      </p>
      <Reach phone={job.phone} email={job.email} address={job.address} />
      {job.bees === 'wasps' && p.stage === 'called' ? (
        <p>
          <b>Not honey bees</b>: name somebody who takes wasps, and{' '}
          <a href={`${p.path}/end`}>end the sheet</a>.
        </p>
      ) : null}
      <AsKnown {...p} />
      <OpenAsKnown {...p} />
      <Others {...p} />
      {p.toClose.map(({ item, found: n }) => (
        <p class="notice notice-late">
          <b>
            This was found{n === undefined ? '' : ` (${n.by}, ${dayWords(n.on, p.frame.today)} ${n.at})`}:
          </b>{' '}
          {item.why}
        </p>
      ))}
      {p.warms === null ? null : (
        <p class="notice notice-late">
          <b>{p.warms}.</b> Read the thermometer and type it under “Opening”; water and shade, or stop.
        </p>
      )}
      <Decided {...p} />
      {beganWithoutGo(p.sheet, p.colonies.length) ? (
        <p class="notice notice-late">
          <b>Begun without a “go”</b>. {withoutGoWords(p.sheet) ?? 'Nobody has said why.'}
        </p>
      ) : null}
      {p.newSigners === null ? null : <p>Second person with a new account: {p.newSigners}.</p>}
      <UnmetThen unmet={p.sheet.work.withoutGo?.unmet ?? []} />
      {p.stage === 'boxed' && p.callBacks.length > 0 ? (
        <p class="notice notice-late">
          <b>They called again.</b> {p.callBacks.at(-1)}.
        </p>
      ) : null}
      <Came {...p} />
    </header>
  )
}

/** A phone that made this page itself knows what it was told last: a colleague may have found gas since. */
const AsKnown = ({ heard, goes, late, stage, sheet, path }: RemovalProps) => {
  if (heard === null || isOver(stage)) return null
  if (heard.signIn)
    return (
      <p class="notice notice-late">
        <b>Your sign-in is over.</b> What others found since {heard.words} is not here, and nothing of yours
        reaches them: <a href={`/sign-in?to=${encodeURIComponent(path)}`}>sign in again</a>, or call.
      </p>
    )
  if (sheet.work.openedAt !== undefined) return null
  if (stage === 'go' && goes && late === null)
    return (
      <p class="notice">
        <b>Go, as this phone knows it</b>, of {heard.words}. What others found since is not here until there
        is signal: open this page once more before the cut, or call.
      </p>
    )
  return heard.deaf ? (
    <p class="notice notice-late">
      <b>Heard nothing since {heard.words}.</b> What others found since is not here: open this page where
      there is a signal. Without, it is asked beside “Go”.
    </p>
  ) : null
}

/** Opened without signal, and nothing heard since the “go”: what a colleague finds now does not come here by itself. */
const OpenAsKnown = ({ heard, stage, sheet: { work, decision } }: RemovalProps) =>
  heard === null ||
  heard.signIn ||
  stage !== 'go' ||
  work.openedAt === undefined ||
  decision?.heard?.of !== heard.of ? null : (
    <p class="notice">
      <b>Open, as this phone knows it</b>, of {heard.words}. What others found since is not here: open this
      page where there is a signal, or call.
    </p>
  )

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
 * A “go” of a phone is of what it had heard: ', as the phone knew it, of 07:00; Odalys …'. Once it is on the server it was held to all that
 * is known there; what stood for hours without signal is said ever after.
 */
function heardWords({ sheet, frame: { zone, today }, versions }: RemovalProps): string {
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
  return `, as the phone knew it, of ${of}${read}${unknownThen(sheet)}`
}

/** Another sheet says more. */
const Others = ({ others }: Pick<RemovalProps, 'others'>) => (
  <>
    {others.map((o) => (
      <p class="notice notice-late">
        <b>Another sheet {sharing(o)}:</b>{' '}
        <a class="tall" href={o.path}>
          {o.name}
        </a>
        .
        {o.what.length === 0 ? null : (
          <>
            {' '}
            On it, and not on this one: <b>{o.what.map((g) => GRAVE_WORDS[g].toLowerCase()).join(', ')}</b>.
          </>
        )}
        {o.what.length > 0 || o.stopped !== undefined
          ? null
          : ` It says: ${o.notes.map((words) => `“${words}”`).join(', ')}.`}
        {o.stopped === undefined
          ? null
          : ` It was stopped. ${typeof o.stopped === 'string' ? o.stopped : decidedWords(o.stopped)}.`}
      </p>
    ))}
  </>
)

/** What was unmet when it was begun: it does not go away with the bees. */
const UnmetThen = ({ unmet }: { unmet: readonly string[] }) =>
  unmet.length === 0 ? null : (
    <details class="caution">
      <summary>What was unmet then: {unmet.length}</summary>
      <ul class="unmet">
        {unmet.map((words) => (
          <li>{words}</li>
        ))}
      </ul>
    </details>
  )

const Came = ({ colonies, path, sheet, stage, frame }: RemovalProps) => {
  if (colonies.length === 0) return null
  return (
    <>
      <p>
        Came to the yard as{' '}
        {colonies.map((c, i) => (
          <>
            {i === 0 ? '' : ', '}
            <a class="tag tall" href={c.path}>
              {c.tag}
            </a>
          </>
        ))}
        . <a href={`${path}/intake`}>Log another box from this job</a>
      </p>
      <LetterOffer colonies={colonies} sheet={sheet} today={frame.today} />
      {stage === 'boxed' ? <LeftToClose left={leftToClose(sheet)} path={path} /> : null}
    </>
  )
}

/** Days from the removal on which the customer's letter is offered here (src/features/letters/due.ts says to whom it is due). */
const LETTER_DAYS = { from: 30, to: 60 }

const LetterOffer = ({
  colonies,
  sheet,
  today,
}: Pick<RemovalProps, 'colonies' | 'sheet'> & { today: string }) => {
  const on = sheet.work.on ?? sheet.job.plannedOn
  const days = on === undefined ? 0 : daysBetween(on, today)
  if (days < LETTER_DAYS.from || days > LETTER_DAYS.to) return null
  return (
    <p>
      Day {days}: tell the customer how they are.{' '}
      {colonies.map((c) => (
        <a class="tall" href={`${c.path}/letter`}>
          Letter about {c.tag}
        </a>
      ))}
    </p>
  )
}

const LeftToClose = ({ left, path }: { left: ClosingId[]; path: string }) => (
  <p>
    <b>Not finished:</b> {left.map((id) => CLOSING_WORDS[id]).join(', ')}.{' '}
    <a href={`${path}/work#now`}>Close up</a>
  </p>
)

/** Why a “go” is none any more. */
function endedIt({ sheet, late, frame, others, start, changed }: RemovalProps): string {
  const { decision, ended, site } = sheet
  const fell = decision?.fell
  if (ended !== undefined) return 'the job ended'
  if (fell?.setBack === true)
    return `the book went back to an earlier copy (${fell.on} ${fell.at}): what was found since may not be here, so look at the whole list again`
  if (fell?.because === 'import')
    return 'it came in with a file, as did what was looked at, cleared and signed: look at the whole list again'
  if (fell?.because === 'time-zone')
    return 'the time zone of the yard was changed: look at the whole list again'
  if (fell?.because === 'clock')
    return 'it came from a phone whose clock was wrong: tap again what is so now, and decide'
  if (fell?.because === 'account') return 'the account of whoever decided was closed, or decides no more'
  if (late !== null) return 'its hour was over'
  if (decision === undefined || (fell === undefined && decision.on !== frame.today)) return 'its day was over'
  const { on, at = '' } = decision
  // What was said at the call, a minute before “go”, is no news.
  const found = (site.noted ?? []).filter(
    (n): n is Noted =>
      n.is === 'found' && n.on === on && (n.at > at || (n.at === at && fell?.at === at && n.what !== 'nest')),
  )
  if (found.length > 0) return `this was found: ${whoFound(found)}`
  if (!samePlace(decision, placeOf(sheet))) return 'the place was changed'
  if (start.state === 'unmet') return `it was too hot: ${start.why.replace(/\.$/, '')}`
  if (fell === undefined)
    return others[0] === undefined ? 'something changed' : `another sheet ${sharing(others[0])} said more`
  // Its own phone let it fall in that minute: it was not accepted, and nobody changed anything.
  if (changed.length === 0 && [fell.by, fell.on, fell.at].join() === [decision.by, on, at].join())
    return 'the yard accepted it'
  return `${fell.by} changed${changed.length === 0 ? ' something' : `: ${changed.join(', ')}`}`
}

const Decided = (p: RemovalProps) => {
  const { sheet, frame, goes, late, stage, colonies, older, aside } = p
  const { decision: d, ended } = sheet
  const past =
    d?.is === 'go' &&
    (older !== null ||
      (isOnGo(stage, sheet) && !goes) ||
      d.fell !== undefined ||
      ended !== undefined ||
      (beganWithoutGo(sheet, colonies.length) && !goes))
  const waits = d?.is === 'go' && stage === 'go' && late !== null
  return (
    <>
      {d === undefined ? null : (
        <p>
          {past ? 'It was go' : waits ? 'Go' : <b>{DECIDE.find((c) => c.value === d.is)?.label}</b>}, decided
          by {d.by}, {dayWords(d.on, frame.today)}
          {d.at === undefined ? '' : ` ${d.at}`}
          {past
            ? `, before ${endedIt(p)}`
            : waits
              ? ', and nothing is begun on it now'
              : `, with ${[...(d.unmet.length === 0 ? [] : [`${d.unmet.length} unmet or not filled in`]), ...aside].join(', ') || 'nothing on the list unmet'}`}
          {heardWords(p)}
          {d.reason === undefined ? '.' : `. Reason: ${d.reason}`}
        </p>
      )}
      {d?.over === undefined ? null : (
        <p>
          <b>{d.over.wait === true ? 'Over a “Wait”.' : 'Over a refusal.'}</b>{' '}
          {decidedWords({ ...d.over, is: d.over.wait === true ? 'wait' : 'refuse' })}.
        </p>
      )}
      {ended === undefined ? null : (
        <p>
          <b>Ended without a removal</b>, {dayWords(ended.on, frame.today)}: {ended.why}
        </p>
      )}
    </>
  )
}
