/** It was another box: which one, and what goes along. */
import { type FormState, TextField, Ticks } from '../../forms/index.ts'
import { FormPage, type Frame } from '../../parts/index.ts'
import { capital, entryWords } from '../../words/index.ts'
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

export const OtherBoxPage = ({ frame, form, entries, tag, path, tags, ids }: OtherBoxProps) => {
  const [entry] = entries
  const { words } = frame
  const said = words.corrections.otherBox
  const labels: Record<string, string> = { to: said.to, along: said.along }
  if (entry === undefined) return null
  const label = (e: Movable): string => {
    const { title, facts } = entryWords(e, frame.units, frame.today, frame.may('see-private'), words)
    return [title, ...facts].join(', ')
  }
  return (
    <FormPage
      frame={frame}
      title={said.title(capital(words.entries.kinds[entry.kind]), words.dates.day(entry.on, frame.today))}
      form={form}
      action={`/entry/${entry.id}/other-box`}
      back={{ href: path, label: tag }}
      button={said.button}
      labels={(field) => labels[field] ?? ''}
      ids={ids}
      intro={<p class="soft">{said.says(tag)}</p>}
    >
      <TextField
        form={form}
        name="to"
        label={said.to}
        hint={said.toHint}
        list={tags.filter((t) => t !== tag)}
        required
      />
      <Ticks
        form={form}
        name="along"
        label={said.along}
        choices={entries.map((e) => ({ value: e.id, label: label(e) }))}
      />
    </FormPage>
  )
}
