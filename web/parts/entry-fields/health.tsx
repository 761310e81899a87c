/** Clearing a suspected brood disease. */
import { CLEARED } from '../../words/choices.ts'
import { Choices, TextField } from '../field.tsx'
import { type EntryFieldsProps, EntryNote } from './common.tsx'

export const ClearedFields = (p: EntryFieldsProps) => (
  <>
    <Choices form={p.form} name="clearedBy" label="Who found it clear" choices={CLEARED} across={2} />
    <TextField
      form={p.form}
      name="reference"
      label="Report or sample number"
      hint="So that it can be shown later."
      maxlength={120}
      wide
    />
    <EntryNote {...p} hint="What was looked at, and how." />
  </>
)
