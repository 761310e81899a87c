/** The frame of a form: what it is for, what is wrong, the fields, who signs, and the button. */

import type { Child } from 'hono/jsx'
import { type FormState, one, ProblemSummary } from '../forms/index.ts'
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
  /** Photos may come with it. */
  photos?: boolean
  /** Before the form. */
  intro?: Child
  /** Beside the form on a wide screen, after it on a phone. */
  beside?: Child
  children?: Child
}

export const FormPage = (p: FormPageProps) => (
  <Layout
    frame={p.frame}
    title={p.title}
    ways={false}
    scripts={p.photos ? [...(p.scripts ?? []), 'islands/photos.ts'] : (p.scripts ?? [])}
  >
    <p class="crumb">
      <a href={p.back.href}>‹ {p.back.label}</a>
    </p>
    <h1>{p.title}</h1>
    <ProblemSummary form={p.form} labels={p.labels} />
    {p.intro}
    <div class={p.beside === undefined ? 'form-alone' : 'form-with'}>
      <form
        method="post"
        action={p.action}
        id="entry-form"
        enctype={p.photos ? 'multipart/form-data' : undefined}
        novalidate
      >
        {(p.ids ?? ['id']).map((name) => (
          <input type="hidden" name={name} value={one(p.form.typed, name)} />
        ))}
        {p.children}
        <div class="save">
          <button class="button button-do" type="submit">
            {p.button}
          </button>
          <SignedBy frame={p.frame} />
        </div>
      </form>
      {p.beside}
    </div>
  </Layout>
)
