/** What waits on this phone to be sent, and how to work without signal. */

import { type Frame, Layout } from '../../parts/index.ts'
import type { OutboxItem, SheetItem } from './outbox-items.ts'
import { OwnLine, TheirLine } from './outbox-lines.tsx'
import { Sheets } from './outbox-sheets.tsx'

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
