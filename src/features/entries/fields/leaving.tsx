/** Moving to another stand, leaving the yard, a box that was not reached. */

import { Choices, dayLabel, NoteField, PhotoField, TextField } from '../../../forms/index.ts'
import { MISSED, OUTCOME } from '../../../words/index.ts'
import { DayField, type EntryFieldsProps, EntryNote } from './common.tsx'
import { YardField } from './yard.tsx'

export const MoveFields = (p: EntryFieldsProps & { yards: string[] }) => (
  <>
    <div class="field-row">
      <YardField form={p.form} yards={p.yards} />
      <TextField form={p.form} name="stand" label="Stand" maxlength={20} />
    </div>
    <DayField {...p} label={dayLabel('move')} />
    <EntryNote {...p} />
  </>
)

export const OutcomeFields = (p: EntryFieldsProps & { others: string[] }) => (
  <>
    <Choices form={p.form} name="what" label="What became of it" choices={OUTCOME} across={2} />
    <DayField {...p} label={dayLabel('outcome')} />
    <TextField
      form={p.form}
      name="into"
      label="United into"
      hint="Tag of the colony that took it in."
      maxlength={60}
      list={p.others}
    />
    <TextField
      form={p.form}
      name="destination"
      label="Where to"
      hint="Yard, or who took it."
      maxlength={200}
      wide
    />
    <TextField
      form={p.form}
      name="cause"
      label="Cause"
      hint="If it died or left: what you think it was."
      maxlength={200}
      wide
    />
    <EntryNote {...p} />
  </>
)

export const NoteFields = (p: EntryFieldsProps) => (
  <>
    <NoteField form={p.form} name="text" label="Note" rows={5} />
    <DayField {...p} />
    <PhotoField form={p.form} />
  </>
)

export const MissedFields = (p: EntryFieldsProps) => (
  <>
    <Choices form={p.form} name="reason" label="Why not" choices={MISSED} across={3} />
    <DayField {...p} label={dayLabel('missed-visit')} />
    <TextField form={p.form} name="again" label="Try again on" hint="Empty: the day after." type="date" />
    <EntryNote {...p} />
  </>
)
