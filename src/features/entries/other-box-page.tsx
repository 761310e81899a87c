/** It was another box: which one, and what goes along. */
import { type FormState, TextField, Ticks } from '../../forms/index.ts'
import { FormPage, type Frame } from '../../parts/index.ts'
import { capital, dayWords, entryWords, KIND_WORDS } from '../../words/index.ts'
import type { Movable } from './other-box.ts'

interface OtherBoxProps {
  frame: Frame
  form: FormState
  /** The one that was found to be wrong, then what was written down with it. */
  entries: readonly Movable[]
  tag: string
  path: string
  /** Tags of the boxes in the yard. */
  tags: readonly string[]
  ids: string[]
}

const LABELS: Record<string, string> = { to: 'The right box', along: 'What goes along' }

export const OtherBoxPage = ({ frame, form, entries, tag, path, tags, ids }: OtherBoxProps) => {
  const [entry] = entries
  if (entry === undefined) return null
  const label = (e: Movable): string => {
    const { title, facts } = entryWords(e, frame.units, frame.today, frame.may('see-private'))
    return [title, ...facts].join(', ')
  }
  return (
    <FormPage
      frame={frame}
      title={`${capital(KIND_WORDS[entry.kind])} of ${dayWords(entry.on, frame.today)} was at another box`}
      form={form}
      action={`/entry/${entry.id}/other-box`}
      back={{ href: path, label: tag }}
      button="Move it there"
      labels={(field) => LABELS[field] ?? ''}
      ids={ids}
      intro={
        <p class="soft">
          Taken back at {tag}, where it stays in the journal struck out, and written down at the right box.
          Both plans are made again.
        </p>
      }
    >
      <TextField
        form={form}
        name="to"
        label={LABELS.to ?? ''}
        hint="Its tag"
        list={tags.filter((t) => t !== tag)}
        required
      />
      <Ticks
        form={form}
        name="along"
        label={LABELS.along ?? ''}
        choices={entries.map((e) => ({ value: e.id, label: label(e) }))}
      />
    </FormPage>
  )
}
