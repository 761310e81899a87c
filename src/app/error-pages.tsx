/** Pages that say what went wrong and where to go from there. */
import { type Frame, Layout } from '../parts/index.ts'

const Ways = ({ frame: { words } }: { frame: Frame }) => (
  <p class="buttons">
    <a class="button" href="/">
      {words.ways['/']}
    </a>
    <a class="button" href="/yard">
      {words.errors.theYard}
    </a>
  </p>
)

export const NoPagePage = ({ frame }: { frame: Frame }) => (
  <Layout frame={frame} title={frame.words.errors.noPage.title}>
    <h1>{frame.words.errors.noPage.heading}</h1>
    <p>{frame.words.errors.noPage.says}</p>
    <Ways frame={frame} />
  </Layout>
)

export const NotYoursPage = ({ frame, whose }: { frame: Frame; whose: string }) => (
  <Layout frame={frame} title={frame.words.errors.notYours.title}>
    <h1>{frame.words.errors.notYours.heading(whose)}</h1>
    <p>{frame.words.errors.notYours.says(frame.viewer?.name ?? '')}</p>
    <Ways frame={frame} />
  </Layout>
)

export const NoEntryPage = ({ frame }: { frame: Frame }) => (
  <Layout frame={frame} title={frame.words.errors.noEntry.title}>
    <h1>{frame.words.errors.noEntry.heading}</h1>
    <p>{frame.words.errors.noEntry.says}</p>
    <Ways frame={frame} />
  </Layout>
)

interface NoColonyProps {
  frame: Frame
  asked: string
  near: { tag: string; path: string; left: boolean }[]
}

export const NoColonyPage = ({ frame, asked, near }: NoColonyProps) => (
  <Layout frame={frame} title={frame.words.errors.noColony.title}>
    <h1>{frame.words.errors.noColony.heading(asked.slice(0, 60))}</h1>
    {near.length === 0 ? (
      <p>{frame.words.errors.noColony.nothingLike}</p>
    ) : (
      <>
        <p>{frame.words.errors.noColony.didYouMean}</p>
        <ul class="near">
          {near.map((n) => (
            <li>
              <a class="button" href={n.path}>
                {n.tag}
                {n.left ? ` ${frame.words.errors.noColony.left}` : ''}
              </a>
            </li>
          ))}
        </ul>
      </>
    )}
    <p class="buttons">
      <a class="button" href="/yard">
        {frame.words.errors.noColony.all}
      </a>
      {frame.may('log-intake') ? (
        <a class="button" href="/intake">
          {frame.words.errors.noColony.logIntake}
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
  <Layout frame={frame} title={frame.words.errors.tooLarge.title}>
    <h1>{frame.words.errors.tooLarge.heading}</h1>
    <p>
      {what ?? frame.words.errors.tooLarge.says}{' '}
      {yard ? (
        <>
          On the server’s machine, <code>resettle import FILE.jsonl</code> takes a file of any size.
        </>
      ) : (
        frame.words.errors.tooLarge.shorten
      )}
    </p>
    <Ways frame={frame} />
  </Layout>
)

/** `wait`: a sentence. */
export const TooManyTriesPage = ({ frame, wait }: { frame: Frame; wait: string }) => (
  <Layout frame={frame} title={frame.words.errors.tooMany.title} ways={false}>
    <h1>{frame.words.errors.tooMany.title}</h1>
    <p>{frame.words.errors.tooMany.says(wait)}</p>
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
export const ElsewherePage = ({ frame, address, known }: ElsewhereProps) => {
  const { elsewhere } = frame.words.errors
  const [before, after] = elsewhere.says
  return (
    <Layout frame={frame} title={elsewhere.title} ways={false}>
      <h1>{elsewhere.heading}</h1>
      <p>
        {before}
        <b>{address}</b>
        {after}
      </p>
      {known ? null : <p>{elsewhere.proxy}</p>}
      <p class="buttons">
        <a class="button button-do" href={address}>
          {elsewhere.open(address)}
        </a>
      </p>
    </Layout>
  )
}

interface BrokenProps {
  frame: Frame
  posted: boolean
  /** What kind of trouble, and what to do. */
  trouble: string
}

export const BrokenPage = ({ frame, posted, trouble }: BrokenProps) => (
  <Layout frame={frame} title={frame.words.errors.broken.title}>
    <h1>{frame.words.errors.broken.heading}</h1>
    <p>{trouble}</p>
    <p>{posted ? frame.words.errors.broken.posted : frame.words.errors.broken.notMade}</p>
    <Ways frame={frame} />
  </Layout>
)
