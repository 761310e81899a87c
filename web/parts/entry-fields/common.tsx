/** The day of an entry, and its time where somebody cares to note it. */
import { type FormState, NoteField, TextField } from '../field.tsx'
import type { Frame } from '../layout.tsx'

export interface EntryFieldsProps {
  form: FormState
  frame: Frame
  /** What the names of its fields begin with. */
  prefix?: string
}

export const DayFields = ({ form, frame, label = 'Day' }: EntryFieldsProps & { label?: string }) => (
  <div class="field-row">
    <TextField form={form} name="on" label={label} type="date" max={frame.today} required />
    <TextField form={form} name="at" label="Time, if it matters" type="time" />
  </div>
)

export const EntryNote = ({
  form,
  prefix = '',
  label = 'Note',
  hint,
}: EntryFieldsProps & { label?: string; hint?: string }) => (
  <NoteField form={form} name={`${prefix}note`} label={label} hint={hint} />
)
