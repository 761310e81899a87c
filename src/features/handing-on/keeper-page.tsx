/** The sheet for the new keeper: looked at, shared, printed, given an address; and as it is opened there. */
import { inWordsWithYear } from '../../days.ts'
import { type DrawnIn, Fields, type FormState } from '../../forms/index.ts'
import { BarePage, BeforeItLeaves, Crumb, type Frame, HandOut, Layout } from '../../parts/index.ts'
import { FOLLOW_UP } from './follow-up-form.ts'
import { type KeeperSheet, keeperText } from './keeper-sheet.ts'

type Built = Frame['built']

/** The sheet itself. */
const SheetArticle = ({ sheet, yard, level }: { sheet: KeeperSheet; yard: string; level: 1 | 2 }) => (
  <article class="letter keeper-sheet">
    {level === 1 ? <h1>{sheet.title}</h1> : <h2 class="letter-title">{sheet.title}</h2>}
    <p class="soft">
      {yard === '' ? '' : `From ${yard}, `}
      <time datetime={sheet.asOf}>{inWordsWithYear(sheet.asOf)}</time>
    </p>
    {sheet.parts.map((p) => (
      <section>
        {level === 1 ? <h2>{p.title}</h2> : <h3>{p.title}</h3>}
        {p.list ? (
          <ul>
            {p.sentences.map((s) => (
              <li>{s}</li>
            ))}
          </ul>
        ) : (
          p.sentences.map((s) => <p>{s}</p>)
        )}
      </section>
    ))}
  </article>
)

interface KeeperProps {
  frame: Frame
  tag: string
  path: string
  sheet: KeeperSheet
  yard: string
  before: readonly string[]
  /** Until when addresses of it can be opened, in words, with what takes each back. */
  addresses: { id: string; until: string }[]
}

export const KeeperSheetPage = (p: KeeperProps) => (
  <Layout
    frame={p.frame}
    title={`For the new keeper, ${p.tag}`}
    scripts={['islands/print.ts', 'islands/share.ts']}
  >
    <div class="no-print">
      <Crumb to={p.path}>{p.tag}</Crumb>
      <h1>For the new keeper</h1>
      <p>
        Made of what the book knows today. It names no customer, no price and nobody who worked on it; what
        goes along and the papers come from the <a href={`${p.path}/move-record`}>move-out record</a>.
      </p>
      <BeforeItLeaves said={p.before} />
      <div class="buttons">
        <HandOut title={p.sheet.title} text={keeperText(p.sheet, p.yard)} main />
        <button class="button" type="button" id="print" hidden>
          Print it
        </button>
        <form method="post" action={`${p.path}/keeper-sheet`}>
          <button class="button" type="submit">
            Make an address for it
          </button>
        </form>
      </div>
      {p.addresses.length === 0 ? null : (
        <details class="caution">
          <summary>Addresses of it: {p.addresses.length}</summary>
          {p.addresses.map((a) => (
            <form method="post" action={`/letters/${a.id}/revoke`}>
              <p>Can be opened until {a.until}.</p>
              <input type="hidden" name="back" value={`${p.path}/keeper-sheet`} />
              <button class="button button-late" type="submit">
                Take the address back
              </button>
            </form>
          ))}
        </details>
      )}
    </div>
    <SheetArticle sheet={p.sheet} yard={p.yard} level={2} />
  </Layout>
)

/** As the new keeper opens it, without an account. */
export const KeeperOpenPage = ({
  sheet,
  yard,
  built,
  answer,
}: {
  sheet: KeeperSheet
  yard: string
  built: Built
  /** Null while it is in the yard: then there is nothing to tell yet. */
  answer: KeeperAnswer | null
}) => (
  <BarePage title={sheet.title} built={built}>
    <SheetArticle sheet={sheet} yard={yard} level={1} />
    {answer === null ? null : <Answer {...answer} />}
    <p class="letter-print">
      <button class="button" type="button" id="print" hidden>
        Print
      </button>
    </p>
  </BarePage>
)

export interface KeeperAnswer {
  form: FormState
  frame: DrawnIn['frame']
  thanks: boolean
}

/** The new keeper tells how it is, whenever they like. */
const Answer = ({ form, frame, thanks }: KeeperAnswer) => (
  <section class="no-print" id="answer">
    <h2>How is it now?</h2>
    {thanks ? (
      <p role="status">Thank you. The yard that cared for it has your answer.</p>
    ) : (
      <form method="post" action="#answer">
        <p>The people who cared for it would like to know, once, after a season. One tap is enough.</p>
        {form.problems.map((x) => (
          <p role="alert">{x.message}</p>
        ))}
        <Fields form={form} frame={frame} of={FOLLOW_UP} show={['found', 'queenright']} />
        <button class="button button-do" type="submit">
          Tell them
        </button>
      </form>
    )}
  </section>
)
