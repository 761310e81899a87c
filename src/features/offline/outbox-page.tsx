/** What waits on this phone to be sent, and how to work without signal. */

import { type Frame, Layout, waitingWords } from '../../parts/index.ts'
import type { OutboxItem, SheetItem, ToldItem } from './outbox-items.ts'
import { OwnLine, TheirLine } from './outbox-lines.tsx'
import { Sheets, Told } from './outbox-sheets.tsx'

export interface OutboxProps {
  frame: Frame
  items: OutboxItem[]
  sheets?: SheetItem[]
  /** Sheets that were put together with a colleague's, and what was made of it: said here, and no more. */
  told?: ToldItem[]
  /** The session has ended. */
  signIn?: boolean
}

export const OutboxPage = ({ frame, items, sheets = [], told = [], signIn = false }: OutboxProps) => (
  <Layout frame={frame} title={frame.words.outbox.title}>
    <h1>{(frame.phone && waitingWords(frame.phone, frame.words)) ?? frame.words.outbox.nothing}</h1>
    {signIn ? <SignInFirst frame={frame} /> : null}
    {told.length === 0 ? null : <Told told={told} frame={frame} />}
    {sheets.length === 0 ? null : <Sheets sheets={sheets} frame={frame} />}
    {items.length + sheets.length === 0 ? <p>{frame.words.outbox.allIn}</p> : null}
    {items.length === 0 ? null : (
      <ol class="lines outbox">
        {items.map((item) =>
          item.state === 'theirs' ? (
            <TheirLine item={item} frame={frame} />
          ) : (
            <OwnLine item={item} frame={frame} />
          ),
        )}
      </ol>
    )}
    <div class="buttons">
      {!signIn && (items.some((i) => i.state === 'waiting') || sheets.some(goes)) ? (
        <form method="post" action="/outbox/send">
          <button class="button button-do" type="submit">
            {frame.words.outbox.sendNow}
          </button>
        </form>
      ) : null}
      {items.every((i) => i.state === 'theirs') ? null : (
        // No download attribute: the browser would ask the server for it, past the worker, which alone has it.
        <a class="button button-plain" href="/outbox/entries.json">
          {frame.words.outbox.saveCopy}
        </a>
      )}
    </div>
    <WithoutSignal frame={frame} />
  </Layout>
)

/** Of whoever is signed in, and not refused; or to be sent again. */
const goes = ({ own, stuck }: SheetItem): boolean => own !== null && !stuck

const SignInFirst = ({ frame: { words } }: { frame: Frame }) => (
  <div class="notice notice-late">
    <h2>{words.outbox.signInFirst}</h2>
    <p>{words.outbox.ended}</p>
    <a class="button button-do" href="/sign-in?to=%2Foutbox">
      {words.outbox.signIn}
    </a>
  </div>
)

const WithoutSignal = ({ frame }: { frame: Frame }) => {
  const { how } = frame.words.outbox
  return (
    <section class="section">
      <h2>{how.title}</h2>
      <p id="phone-facts" role="status" />
      <ul>
        {[how.once(frame.mayOpen('/intake')), how.waits, how.install, how.https].map((says) => (
          <li>{says}</li>
        ))}
      </ul>
    </section>
  )
}
