/** What waits on this phone to be sent, and how to work without signal. */

import type { Child } from 'hono/jsx'
import { type Day, inWords } from '../../days.ts'
import { type FormState, labelOf, sentenceOf } from '../../forms/index.ts'
import type { Entry } from '../../journal/index.ts'
import { type ClockOff, type Frame, Layout } from '../../parts/index.ts'
import { dayWords, entryWords, instantWords, KIND_WORDS, problemWords } from '../../words/index.ts'

interface Kept {
  /** Its number in the outbox. */
  n: number
  id: string
  tag: string
  on: Day
  /** Name of whoever wrote it. */
  owner: string
}

/** An entry of whoever is signed in. */
export interface OwnItem extends Kept {
  entry: Entry
  keptAt: string
  /** waiting: goes next. resting: after another one that does not go. day: its day is to be looked at first. */
  state: 'waiting' | 'resting' | 'refused' | 'day'
  /** The phone’s day and the yard’s, where they were not the same. */
  clock: ClockOff | null
  /** Why the server would not have it. */
  problems: FormState['problems']
  /** Where it is changed; null where it can only be taken out. */
  change: string | null
  /** Whether it can be taken out as if it had never been. */
  removable: boolean
  /** Where it is taken back like any entry, because the server may have it; null where it cannot. */
  back: string | null
}

/** Of another person: it goes when they sign in again. What it says is not here, for it may be more than one may see. */
interface TheirItem extends Kept {
  kind: Entry['kind']
  state: 'theirs'
}

export type OutboxItem = OwnItem | TheirItem

/** A removal sheet that waits. */
export interface SheetItem {
  id: string
  owner: string
  keptAt: string
  /** Null where it is another person's: it names a customer. */
  own: { name: string; problems: FormState['problems'] } | null
}

export interface OutboxProps {
  frame: Frame
  items: OutboxItem[]
  sheets?: SheetItem[]
  /** The session has ended. */
  signIn?: boolean
}

export const OutboxPage = ({ frame, items, sheets = [], signIn = false }: OutboxProps) => (
  <Layout frame={frame} title="Without signal">
    <h1>{items.length + sheets.length === 0 ? 'Nothing waits to be sent' : title(items, sheets)}</h1>
    {signIn ? <SignInFirst /> : null}
    {sheets.length === 0 ? null : <Sheets sheets={sheets} frame={frame} />}
    {items.length === 0 && sheets.length > 0 ? (
      <SendNow signIn={signIn} />
    ) : items.length === 0 ? (
      <p>Everything written down in this browser is in the yard’s book.</p>
    ) : (
      <>
        <ol class="lines outbox">
          {items.map((item) =>
            item.state === 'theirs' ? (
              <TheirLine item={item} frame={frame} />
            ) : (
              <OwnLine item={item} frame={frame} />
            ),
          )}
        </ol>
        <div class="buttons">
          {items.every((i) => i.state !== 'waiting') && sheets.length === 0 ? null : (
            <SendNow signIn={signIn} />
          )}
          {items.every((i) => i.state === 'theirs') ? null : (
            // No download attribute: the browser would ask the server for it, past the worker, which alone has it.
            <a class="button button-plain" href="/outbox/entries.json">
              Save a copy as a file
            </a>
          )}
        </div>
      </>
    )}
    <WithoutSignal frame={frame} />
  </Layout>
)

const SendNow = ({ signIn }: { signIn: boolean }) =>
  signIn ? null : (
    <form method="post" action="/outbox/send">
      <button class="button button-do" type="submit">
        Send now
      </button>
    </form>
  )

const Sheets = ({ sheets, frame }: { sheets: SheetItem[]; frame: Frame }) => (
  <ol class="lines outbox">
    {sheets.map((s) => (
      <li>
        {s.own === null ? (
          <p>
            A removal sheet of {s.owner}. <span class="soft">It goes when {s.owner} signs in again.</span>
          </p>
        ) : (
          <>
            <p>
              <a class="tall" href={`/removals/${s.id}`}>
                <b>{s.own.name}</b>
              </a>
              , removal sheet.{' '}
              <span class="soft">Kept {instantWords(s.keptAt, frame.zone, frame.today)}.</span>
            </p>
            {s.own.problems.length === 0 ? null : (
              <>
                <p class="problem">
                  Not accepted: {s.own.problems.map((p) => sentenceOf('', p.message)).join(' ')}.
                </p>
                <div class="buttons">
                  <form method="post" action={`/outbox/sheet/${s.id}/over`}>
                    <button class="button" type="submit">
                      Put mine over theirs
                    </button>
                  </form>
                  <form method="post" action={`/outbox/sheet/${s.id}/take-out`}>
                    <button class="button button-late" type="submit">
                      Take mine out
                    </button>
                  </form>
                </div>
              </>
            )}
          </>
        )}
      </li>
    ))}
  </ol>
)

function title(items: OutboxItem[], sheets: SheetItem[]): string {
  const refused =
    items.filter((i) => i.state === 'refused').length + sheets.filter((s) => s.own?.problems.length).length
  const waiting = items.length + sheets.length - refused
  if (refused === 0) return `${waiting} waiting to be sent`
  return waiting === 0 ? `${refused} not accepted` : `${waiting} waiting to be sent, ${refused} not accepted`
}

const SignInFirst = () => (
  <div class="notice notice-late">
    <h2>Sign in, and they go</h2>
    <p>Your session has ended. Nothing is lost: it waits here until you have signed in.</p>
    <a class="button button-do" href="/sign-in?to=%2Foutbox">
      Sign in
    </a>
  </div>
)

interface LineProps<Item extends OutboxItem> {
  frame: Frame
  item: Item
}

const Line = ({ item, frame, children }: LineProps<OutboxItem> & { children: Child }) => (
  <li class={item.state === 'refused' ? 'line line-late' : 'line'} id={`o-${item.id}`}>
    <div class="line-margin">
      <span class="tag">{item.tag}</span>
      <span class="stand">{dayWords(item.on, frame.today)}</span>
    </div>
    <div class="line-body">{children}</div>
  </li>
)

const TheirLine = ({ item, frame }: LineProps<TheirItem>) => {
  const kind = KIND_WORDS[item.kind]
  return (
    <Line item={item} frame={frame}>
      <p class="line-what">
        <strong>{kind.charAt(0).toUpperCase() + kind.slice(1)}</strong>
      </p>
      <p class="fine">Goes when {item.owner} signs in on this phone.</p>
    </Line>
  )
}

const OwnLine = ({ item, frame }: LineProps<OwnItem>) => {
  const { entry: e } = item
  const words = wordsOf(item, frame)
  return (
    <Line item={item} frame={frame}>
      <p class="line-what">
        <strong>{words.title}</strong>
        {words.facts.length === 0 ? null : <>: {words.facts.join('; ')}</>}
      </p>
      {words.note === null ? null : <p class="entry-note">{words.note}</p>}
      <DayInDoubt item={item} frame={frame} />
      {item.state === 'refused' ? (
        <div class="outbox-refused">
          <p>
            <b>Not accepted.</b>
          </p>
          <ul>
            {item.problems.map((p) => (
              <li>
                {sentenceOf(
                  p.field === '' ? 'It' : fieldName(e, p.field),
                  problemWords(p.message, frame.today),
                )}
              </li>
            ))}
          </ul>
        </div>
      ) : null}
      <p class="fine">
        Kept {instantWords(item.keptAt, frame.zone, frame.today)}, signed {e.by}.{' '}
        {item.state === 'resting' ? 'Goes after the one it rests on has been mended.' : null}
      </p>
      <Ways item={item} />
    </Line>
  )
}

/** Kept on a phone whose clock was off: nothing goes before somebody has looked at its day. */
const DayInDoubt = ({ item, frame }: LineProps<OwnItem>) =>
  item.state !== 'day' || item.clock === null ? null : (
    <div class="outbox-refused">
      <p>
        <b>Was it {inWords(item.on)}?</b> This phone said {inWords(item.clock.phone)} when it was{' '}
        {inWords(item.clock.yard)} in the yard. It goes once you have said so.
      </p>
      <form method="post" action={`/outbox/${item.n}/day-right`}>
        <button class="button button-do" type="submit">
          Yes, {dayWords(item.on, frame.today)}
          <span class="unseen">, of {item.tag}</span>
        </button>
      </form>
    </div>
  )

/** Even one's own: a beekeeper who is a helper by now is shown what helpers are. */
const wordsOf = ({ entry }: OwnItem, frame: Frame) =>
  entryWords(entry, frame.units, frame.today, frame.may('see-private'))

const fieldName = (e: Entry, field: string): string =>
  field === 'colony' ? (e.kind === 'intake' ? 'Tag' : 'Colony') : labelOf(e.kind, field) || 'It'

const Ways = ({ item }: { item: OwnItem }) => (
  <div class="buttons">
    {item.change === null ? null : (
      <a class={item.state === 'refused' ? 'button button-do' : 'button'} href={item.change}>
        {item.state === 'refused' ? 'Mend it' : 'Change it'}
        <span class="unseen">
          {' '}
          ({item.tag}, {item.entry.kind})
        </span>
      </a>
    )}
    {item.state === 'refused' ? (
      <form method="post" action={`/outbox/${item.n}/again`}>
        <button class="button" type="submit">
          Send as it is
        </button>
      </form>
    ) : null}
    {item.removable ? (
      <a class="button button-plain" href={`/outbox/${item.n}/take-out`}>
        Take it out
      </a>
    ) : null}
    {item.back === null ? null : (
      <a class="button button-plain" href={item.back}>
        Take it back
      </a>
    )}
  </div>
)

export const TakeOutPage = ({ frame, item }: LineProps<OwnItem>) => {
  const words = wordsOf(item, frame)
  return (
    <Layout frame={frame} title="Take it out" ways={false}>
      <p class="crumb">
        <a href="/outbox">‹ Waiting to be sent</a>
      </p>
      <h1>Take it out unsent?</h1>
      <p>
        <b>
          {item.tag}, {dayWords(item.on, frame.today)}: {words.title}
        </b>
        {words.facts.length === 0 ? '' : `: ${words.facts.join('; ')}`}
      </p>
      <p>Nobody but this phone knows of it. Once it is taken out it cannot be got back.</p>
      <div class="buttons">
        <form method="post" action={`/outbox/${item.n}/take-out`}>
          <button class="button button-late" type="submit">
            Take it out
          </button>
        </form>
        <a class="button" href="/outbox">
          Leave it
        </a>
      </div>
    </Layout>
  )
}

/** Before signing out while something waits. */
export const SignOutPage = ({ frame, waiting, one }: { frame: Frame; waiting: string; one: boolean }) => (
  <Layout frame={frame} title="Sign out?" ways={false}>
    <h1 id="sign-out-warning">{waiting}</h1>
    <p>
      {one
        ? 'If you sign out now it stays on this phone. It is sent when you sign in on it again, and only then: nobody else can send it for you.'
        : 'If you sign out now they stay on this phone. They are sent when you sign in on it again, and only then: nobody else can send them for you.'}
    </p>
    <div class="buttons">
      <a class="button button-do" href="/outbox">
        Send them first
      </a>
      <form method="post" action={frame.path}>
        <input type="hidden" name="anyway" value="yes" />
        <button class="button" type="submit">
          Sign out all the same
        </button>
      </form>
    </div>
  </Layout>
)

/** While the phone does not know who is signed in: how much waits, and nothing of what it says. */
export const UnlistedPage = ({ frame, waiting }: { frame: Frame; waiting: string }) => (
  <Layout frame={frame} title="Without signal" ways={false}>
    <h1>{waiting}</h1>
    <p>What waits is listed here, and goes, as soon as the yard has told this phone who is signed in.</p>
    <div class="buttons">
      <a class="button button-do" href="/outbox">
        Look again
      </a>
      <a class="button" href="/sign-in?to=%2Foutbox">
        Sign in
      </a>
    </div>
  </Layout>
)

const WithoutSignal = ({ frame }: { frame: Frame }) => (
  <section class="section">
    <h2>Working without signal</h2>
    <p id="phone-facts" role="status" />
    <ul>
      <li>
        Open Today once with signal. From then on the round works without: Today, the boxes, recording
        {frame.mayOpen('/intake') ? ', intakes' : ''}. The plan is made anew on the phone every day.
      </li>
      <li>
        What you write down waits here and is sent when the signal is back. It waits as long as it takes.
      </li>
      <li>
        Put Resettle on the home screen (“Install” or “Add to Home Screen” in the browser’s menu). A browser
        may clear out what a mere page keeps after some days without a visit.
      </li>
      <li>
        It needs an address that begins with https:// . On a plain http:// address of the local network
        browsers keep nothing, and everything needs signal.
      </li>
    </ul>
  </section>
)
