/** Reading the agreement and signing it: drawn on the screen, or on paper. */

import { Choices, type FormState, one, ProblemSummary, TextField } from '../../forms/index.ts'
import { type Frame, Layout } from '../../parts/index.ts'
import type { Signature } from '../../records/index.ts'
import { dayWords } from '../../words/index.ts'
import { SIGN_HOW } from './choices.ts'
import { Pad } from './pad.tsx'
import { SignatureView, Terms } from './signature.tsx'
import { HandOver } from './signed-page.tsx'
import type { Part } from './stage.ts'

export interface RemovalSignProps {
  frame: Frame
  form: FormState
  path: string
  name: string
  /** The text to be signed, or the one that was. */
  terms: string
  /** Names the text that was shown, so that nobody signs another one. */
  mark: string
  signature: Signature | null
  /** What it still lacks: nothing is signed blank. */
  blank: Missing[]
  yard: string
  email: string
}

/** Something the agreement lacks, and where it is typed in. */
export interface Missing {
  what: string
  part: Part
  field: string
}

const LABELS: Record<string, string> = {
  name: 'Name',
  on: 'Day',
  how: 'How',
  drawing: 'Drawn name',
}

export const RemovalSignPage = (p: RemovalSignProps) => (
  <Layout
    frame={p.frame}
    title="The agreement"
    ways={false}
    scripts={['islands/sign.ts', 'islands/share.ts']}
  >
    <p class="crumb">
      <a href={p.path}>‹ {p.name}</a>
    </p>
    <h1 class="unseen">The agreement</h1>
    <ProblemSummary form={p.form} labels={(field) => LABELS[field] ?? ''} />
    {p.blank.length === 0 || p.signature !== null ? null : (
      <div class="notice notice-late">
        <p>
          Nothing is signed blank. Still missing:{' '}
          {p.blank.map((b, i) => (
            <>
              {i === 0 ? '' : ', '}
              <a class="tall" href={`${p.path}/${b.part}#f-${b.field}`}>
                {b.what}
              </a>
            </>
          ))}
          .
        </p>
      </div>
    )}
    <div class="paper">
      <Terms text={p.terms} />
      {p.signature === null ? null : <SignatureView signature={p.signature} today={p.frame.today} />}
    </div>
    {p.signature !== null ? (
      <Signed {...p} signature={p.signature} />
    ) : p.blank.length > 0 ? null : (
      <SignForm {...p} />
    )}
  </Layout>
)

const SignForm = ({ form, frame, path, mark }: RemovalSignProps) => (
  <form method="post" action={`${path}/sign`} id="entry-form" class="sign-form" novalidate>
    <input type="hidden" name="mark" value={mark} />
    <details class="caution folded" open={form.problems.length > 0 || one(form.typed, 'name') === ''}>
      <summary>
        {one(form.typed, 'name') || 'Nobody yet'},{' '}
        {dayWords(one(form.typed, 'on') || frame.today, frame.today)} Somebody else, or on paper?
      </summary>
      <Choices form={form} name="how" label="How it is signed" choices={SIGN_HOW} across={2} />
      <div class="field-row">
        <TextField form={form} name="name" label="Name of who signs" maxlength={120} required />
        <TextField form={form} name="on" label="Day" type="date" max={frame.today} required />
      </div>
    </details>
    <Pad typed={form.typed} shut />
    <p class="hint" data-no-pad>
      Drawing needs JavaScript. Print the agreement and have it signed on paper.
    </p>
    <p class="hint if-paper">
      Keep the signed paper; this page notes who signed what, and when.{' '}
      <a href={`${path}/print?what=agreement`}>Print it</a>
    </p>
    <div class="save">
      <button class="button button-do" type="submit">
        Sign
      </button>
      <a class="button" href={`${path}/agreement`}>
        Change the price
      </a>
    </div>
  </form>
)

const Signed = ({ path, signature, yard, email }: RemovalSignProps & { signature: Signature }) => (
  <>
    <HandOver path={path} signature={signature} yard={yard} email={email} link={null} />
    <form method="post" action={`${path}/unsign`}>
      <button class="button button-plain" type="submit">
        Draw it up anew
      </button>
    </form>
    <p class="fine">
      Drawn up anew it has to be signed again. What was signed stays in the history of the sheet.
    </p>
  </>
)

export interface TermsProps {
  frame: Frame
  form: FormState
  saved: boolean
  blanks: { name: string; words: string }[]
  example: string
}

export const TermsPage = ({ frame, form, saved, blanks, example }: TermsProps) => (
  <Layout frame={frame} title="Text of the agreement">
    <p class="crumb">
      <a href="/removals">‹ Removals</a>
    </p>
    <h1>Text of the agreement</h1>
    <ProblemSummary form={form} labels={(f) => (f === 'currency' ? 'Sign before amounts' : 'Text')} />
    {saved ? (
      <div class="notice notice-do" role="status">
        <p>Saved. Agreements signed before keep the text that was signed.</p>
      </div>
    ) : null}
    <p>
      Yours to write: say what is included and what is not. Ours is a beginning in plain words, not legal
      advice; have yours looked over where you work.
    </p>
    <form method="post" action="/removals/terms" novalidate>
      <div class={`field${form.problems.some((x) => x.field === 'terms') ? ' has-problem' : ''}`}>
        <label for="f-terms">Text</label>
        <p class="hint" id="f-terms-hint">
          An empty line ends a paragraph. “# ” begins a heading, “- ” a point. Filled in by itself:{' '}
          {blanks.map((b, i) => (
            <>
              {i === 0 ? '' : ', '}
              <code>{`{${b.name}}`}</code> ({b.words})
            </>
          ))}
          .
        </p>
        {form.problems
          .filter((x) => x.field === 'terms')
          .map((x) => (
            <p class="problem">{x.message}</p>
          ))}
        <textarea id="f-terms" name="terms" rows={24} maxlength={12_000} aria-describedby="f-terms-hint">
          {one(form.typed, 'terms')}
        </textarea>
      </div>
      <TextField form={form} name="currency" label="Sign before amounts" maxlength={5} />
      <div class="save">
        <button class="button button-do" type="submit">
          Save
        </button>
        <button class="button" type="submit" name="default" value="1">
          Back to the text that came with the book
        </button>
      </div>
    </form>
    <details class="caution">
      <summary>As it looks, filled in for an invented job</summary>
      <div class="paper">
        <Terms text={example} />
      </div>
    </details>
  </Layout>
)
