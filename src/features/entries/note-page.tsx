/** A note on a colony. */
import { NoteFields } from './fields/leaving.tsx'
import { type EntryFormView, SmallFormPage } from './small-forms.tsx'

export const NotePage = ({ frame, form, summary, path }: EntryFormView) => (
  <SmallFormPage
    frame={frame}
    form={form}
    kind="note"
    title={`Note on ${summary.tag}`}
    action={`${path}/note`}
    back={{ href: path, label: summary.tag }}
    button="Save the note"
  >
    <NoteFields form={form} frame={frame} />
  </SmallFormPage>
)
