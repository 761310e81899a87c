/** The day of an entry, and its time where somebody may care to note it. */

import { type FormState, NoteField, one, TextField } from '../../../forms/index.ts'
import type { Frame } from '../../../parts/index.ts'

export interface EntryFieldsProps {
  form: FormState
  frame: Frame
  /** What the names of its fields begin with. */
  prefix?: string
}

type DayProps = EntryFieldsProps & { label?: string }

/** The day; a time only where one was noted before, or is wrong. */
export const DayField = ({ form, frame, label = 'Day' }: DayProps) => (
  <>
    <TextField form={form} name="on" label={label} type="date" max={frame.today} required />
    {one(form.typed, 'at') === '' ? null : <TextField form={form} name="at" label="Time" type="time" />}
  </>
)

export const DayAndTime = ({ form, frame, label = 'Day' }: DayProps) => (
  <div class="field-row">
    <TextField form={form} name="on" label={label} type="date" max={frame.today} required />
    <TextField form={form} name="at" label="Time (optional)" type="time" />
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
