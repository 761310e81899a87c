/** Pages that say what went wrong and where to go from there. */
import { type Frame, Layout } from '../parts/index.ts'

const Ways = ({ frame }: { frame: Frame }) => {
  const { theYard, today } = frame.words.trouble
  return (
    <p class="buttons">
      <a class="button" href="/">
        {today}
      </a>
      <a class="button" href="/yard">
        {theYard}
      </a>
    </p>
  )
}

export const NoPagePage = ({ frame }: { frame: Frame }) => {
  const { noPage } = frame.words.trouble
  return (
    <Layout frame={frame} title={noPage.title}>
      <h1>{noPage.heading}</h1>
      <p>{noPage.why}</p>
      <Ways frame={frame} />
    </Layout>
  )
}

export const NotYoursPage = ({ frame, whose }: { frame: Frame; whose: string }) => {
  const { notYours } = frame.words.trouble
  return (
    <Layout frame={frame} title={notYours.title}>
      <h1>{notYours.heading(whose)}</h1>
      <p>{notYours.why(frame.viewer?.name ?? '')}</p>
      <Ways frame={frame} />
    </Layout>
  )
}

export const NoEntryPage = ({ frame }: { frame: Frame }) => {
  const { noEntry } = frame.words.trouble
  return (
    <Layout frame={frame} title={noEntry.title}>
      <h1>{noEntry.heading}</h1>
      <p>{noEntry.why}</p>
      <Ways frame={frame} />
    </Layout>
  )
}

interface NoColonyProps {
  frame: Frame
  asked: string
  near: { tag: string; path: string; left: boolean }[]
}

export const NoColonyPage = ({ frame, asked, near }: NoColonyProps) => {
  const { noColony } = frame.words.trouble
  return (
    <Layout frame={frame} title={noColony.title}>
      <h1>{noColony.heading(asked.slice(0, 60))}</h1>
      {near.length === 0 ? (
        <p>{noColony.nothingLike}</p>
      ) : (
        <>
          <p>{noColony.didYouMean}</p>
          <ul class="near">
            {near.map((n) => (
              <li>
                <a class="button" href={n.path}>
                  {n.tag}
                  {n.left ? noColony.left : ''}
                </a>
              </li>
            ))}
          </ul>
        </>
      )}
      <p class="buttons">
        <a class="button" href="/yard">
          {noColony.all}
        </a>
        {frame.may('log-intake') ? (
          <a class="button" href="/intake">
            {noColony.log}
          </a>
        ) : null}
      </p>
    </Layout>
  )
}

interface TooLargeProps {
  frame: Frame
  /** In what it is too much; left out: in bytes. */
  what: string | undefined
  /** What was sent is a file of a whole yard, which the command takes however large. */
  yard: boolean
}

export const TooLargePage = ({ frame, what, yard }: TooLargeProps) => {
  const { tooLarge } = frame.words.trouble
  return (
    <Layout frame={frame} title={tooLarge.title}>
      <h1>{tooLarge.heading}</h1>
      <p>
        {what ?? tooLarge.why}{' '}
        {yard ? (
          <>
            On the server’s machine, <code>resettle import FILE.jsonl</code> takes a file of any size.
          </>
        ) : (
          tooLarge.shorten
        )}
      </p>
      <Ways frame={frame} />
    </Layout>
  )
}

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

/** What a failure to read or write the database means. */
export type Trouble = 'full' | 'busy' | 'damaged' | 'bug'

interface BrokenProps {
  frame: Frame
  posted: boolean
  trouble: Trouble
}

export const BrokenPage = ({ frame, posted, trouble }: BrokenProps) => {
  const { broken } = frame.words.trouble
  return (
    <Layout frame={frame} title={broken.title}>
      <h1>{broken.heading}</h1>
      <p>{broken[trouble]}</p>
      <p>{posted ? broken.posted : broken.notMade}</p>
      <Ways frame={frame} />
    </Layout>
  )
}
