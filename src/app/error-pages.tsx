/** Pages that say what went wrong and where to go from there. */
import { type Frame, Layout } from '../parts/index.ts'

const Ways = () => (
  <p class="buttons">
    <a class="button" href="/">
      Today
    </a>
    <a class="button" href="/yard">
      The yard
    </a>
  </p>
)

export const NoPagePage = ({ frame }: { frame: Frame }) => (
  <Layout frame={frame} title="No such page">
    <h1>There is no such page</h1>
    <p>The address may be mistyped or from an older version.</p>
    <Ways />
  </Layout>
)

export const NotYoursPage = ({ frame, whose }: { frame: Frame; whose: string }) => (
  <Layout frame={frame} title="Not yours to open">
    <h1>This page is {whose}</h1>
    <p>You are signed in as {frame.viewer?.name}. Ask an operator of this yard if you need it.</p>
    <Ways />
  </Layout>
)

export const NoEntryPage = ({ frame }: { frame: Frame }) => (
  <Layout frame={frame} title="No such entry">
    <h1>There is no such entry in the journal</h1>
    <p>
      Entries are never deleted, so the address must be wrong. Find the colony, and the entry in its journal.
    </p>
    <Ways />
  </Layout>
)

interface NoColonyProps {
  frame: Frame
  asked: string
  near: { tag: string; path: string; left: boolean }[]
}

export const NoColonyPage = ({ frame, asked, near }: NoColonyProps) => (
  <Layout frame={frame} title="No such colony">
    <h1>No colony has the tag “{asked.slice(0, 60)}”</h1>
    {near.length === 0 ? (
      <p>
        No tag in this book looks like it. Check what is painted on the box, or log its intake if it has none
        yet.
      </p>
    ) : (
      <>
        <p>Did you mean one of these?</p>
        <ul class="near">
          {near.map((n) => (
            <li>
              <a class="button" href={n.path}>
                {n.tag}
                {n.left ? ' (left the yard)' : ''}
              </a>
            </li>
          ))}
        </ul>
      </>
    )}
    <p class="buttons">
      <a class="button" href="/yard">
        All colonies
      </a>
      {frame.may('log-intake') ? (
        <a class="button" href="/intake">
          Log an intake
        </a>
      ) : null}
    </p>
  </Layout>
)

interface TooLargeProps {
  frame: Frame
  /** In what it is too much; left out: in bytes. */
  what: string | undefined
  /** What was sent is a file of a whole yard, which the command takes however large. */
  yard: boolean
}

export const TooLargePage = ({ frame, what, yard }: TooLargeProps) => (
  <Layout frame={frame} title="Too much at once">
    <h1>That is too much at once</h1>
    <p>
      {what ?? 'What was sent is larger than this server takes from a browser. Nothing was saved.'}{' '}
      {yard ? (
        <>
          On the server’s machine, <code>resettle import FILE.jsonl</code> takes a file of any size.
        </>
      ) : (
        'Shorten the note, and save again.'
      )}
    </p>
    <Ways />
  </Layout>
)

/** `wait`: a sentence. */
export const TooManyTriesPage = ({ frame, wait }: { frame: Frame; wait: string }) => (
  <Layout frame={frame} title="Too many tries" ways={false}>
    <h1>Too many tries</h1>
    <p>
      Many links that do not work were opened from your network, so this one was not looked for. {wait}A link
      that works opens in any case: check that all of it was copied.
    </p>
  </Layout>
)

interface ElsewhereProps {
  frame: Frame
  /** The yard's own address. */
  address: string
  /** Whether somebody set it; else it is what this request was sent to. */
  known: boolean
}

/** A form came from a page at another address than the yard's. Never repeats that address: a stranger chose it. */
export const ElsewherePage = ({ frame, address, known }: ElsewhereProps) => (
  <Layout frame={frame} title="Open the yard’s own address" ways={false}>
    <h1>This was sent from another address</h1>
    <p>
      Nothing was saved. This yard takes what is typed only from its own pages, at <b>{address}</b>. Open that
      address, and do it again there.
    </p>
    {known ? null : (
      <p>
        If that is not the address people use, there is a proxy between: whoever runs this server sets
        RESETTLE_URL to the address people use, and starts it again.
      </p>
    )}
    <p class="buttons">
      <a class="button button-do" href={address}>
        Open {address}
      </a>
    </p>
  </Layout>
)

interface BrokenProps {
  frame: Frame
  posted: boolean
  /** What kind of trouble, and what to do. */
  trouble: string
}

export const BrokenPage = ({ frame, posted, trouble }: BrokenProps) => (
  <Layout frame={frame} title="Something broke">
    <h1>Something broke on our side</h1>
    <p>{trouble}</p>
    <p>
      {posted
        ? 'What you sent was not saved. Go back: the form still holds what you typed, and saving it again cannot make it double.'
        : 'The page could not be made. The journal is not touched by this.'}
    </p>
    <Ways />
  </Layout>
)
