/** The short forms of a colony: it left, another stand, a note, taking an entry back. */

import type { Child } from 'hono/jsx'
import { type FormState, hasPhotos, labelOf } from '../../forms/index.ts'
import type { EntryKind } from '../../journal/index.ts'
import { FormPage, type Frame } from '../../parts/index.ts'
import type { ColonySummary } from '../../store/index.ts'

/** What a form of one colony is given. */
export interface EntryFormView {
  frame: Frame
  form: FormState
  summary: ColonySummary
  /** Path of the colony's page. */
  path: string
}

const entryLabel =
  (kind: EntryKind, words: Frame['words']) =>
  (field: string): string =>
    field === 'by'
      ? words.record.yourName
      : field === 'colony'
        ? words.record.tag
        : labelOf(kind, field, words)

interface SmallFormProps {
  frame: Frame
  form: FormState
  kind: EntryKind
  title: string
  action: string
  back: { href: string; label: string }
  button: string
  intro?: Child
  children?: Child
}

export const SmallFormPage = (p: SmallFormProps) => (
  <FormPage
    frame={p.frame}
    title={p.title}
    form={p.form}
    action={p.action}
    back={p.back}
    button={p.button}
    labels={entryLabel(p.kind, p.frame.words)}
    intro={p.intro}
    photos={hasPhotos(p.kind)}
  >
    {p.children}
  </FormPage>
)
