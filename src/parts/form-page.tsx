/** The frame of a form: what it is for, what is wrong, the fields, who signs, and the button. */

import type { Child } from 'hono/jsx'
import { type FormState, one, ProblemSummary } from '../forms/index.ts'
import { Crumb } from './crumb.tsx'
import { type Frame, Layout } from './layout.tsx'
import { SignedBy } from './sign.tsx'

export interface FormPageProps {
  frame: Frame
  title: string
  form: FormState
  /** Where it is posted. */
  action: string
  /** Where one came from, and its name. */
  back: { href: string; label: string }
  button: string
  /** Labels of fields, for the summary of problems. */
  labels: (field: string) => string
  /** Names of the hidden ids. */
  ids?: string[]
  scripts?: string[]
  /** What a draft of it is kept under in the browser, where the same address takes forms of many things. */
  draft?: string | undefined
  /** Names of what is so on one day only: no draft of another day brings it back. */
  ofDay?: string
  /** Photos may come with it. */
  photos?: boolean
  /** Before the form. */
  intro?: Child
  /** Beside the form on a wide screen, after it on a phone. */
  beside?: Child
  /** Beside the form on a wide screen; on a phone in the bar with Save, at the thumb. */
  advice?: Child
  children?: Child
}

export const FormPage = (p: FormPageProps) => (
  <Layout
    frame={p.frame}
    title={p.title}
    ways={false}
    scripts={p.photos ? [...(p.scripts ?? []), 'islands/photos.ts'] : (p.scripts ?? [])}
  >
    <Crumb to={p.back.href}>{p.back.label}</Crumb>
    <h1>{p.title}</h1>
    <ProblemSummary form={p.form} labels={p.labels} />
    {p.intro}
    <div class={p.beside !== undefined ? 'form-with' : p.advice === undefined ? 'form-alone' : undefined}>
      <form
        method="post"
        action={p.action}
        id="entry-form"
        class={p.advice === undefined ? undefined : 'form-advised'}
        enctype={p.photos ? 'multipart/form-data' : undefined}
        novalidate
        data-draft={p.draft}
        data-of-day={p.ofDay}
      >
        {(p.ids ?? ['id']).map((name) => (
          <input type="hidden" name={name} value={one(p.form.typed, name)} />
        ))}
        <div class="form-in">
          {p.children}
          <SignedBy frame={p.frame} />
        </div>
        <div class="act-bar">
          {p.advice}
          <button class="button button-do act-save" type="submit">
            {p.button}
          </button>
        </div>
      </form>
      {p.beside}
    </div>
  </Layout>
)
