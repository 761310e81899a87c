/** A note on a colony. */
import type { Frame } from '../../parts/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import { NoteFields } from './fields/leaving.tsx'
import { type EntryFormView, SmallFormPage } from './small-forms.tsx'

/** Where leaving hangs on somebody's decision, it is asked for; whoever may say how a colony left takes it. */
const mayDecide = (frame: Frame, { plan }: ColonySummary): boolean =>
  frame.may('record-outcome') &&
  plan.readiness.unmet.some((u) => ['temper', 'sprayed'].includes(u.reason.code))

export const NotePage = ({ frame, form, summary, path }: EntryFormView) => (
  <SmallFormPage
    frame={frame}
    form={form}
    kind="note"
    title={frame.words.record.noteOn(summary.tag)}
    action={`${path}/note`}
    back={{ href: path, label: summary.tag }}
    button={frame.words.record.saveNote}
  >
    <NoteFields form={form} frame={frame} decides={mayDecide(frame, summary)} />
  </SmallFormPage>
)
