/** What was done and found. Asked once: the intake takes it over. */

import { Choices, NoteField, TextField } from '../../forms/index.ts'
import { METHOD, QUEEN, unitOf } from '../../words/index.ts'
import { BeesAndBox, BroodAlong } from '../entries/index.ts'
import type { PartFieldsProps } from './part-fields.tsx'
import { CLEAN, SEAL } from './words.ts'

export const WorkFields = ({ form, frame }: Omit<PartFieldsProps, 'types' | 'currency'>) => (
  <>
    <fieldset class="group">
      <legend>Time on site</legend>
      <TextField form={form} name="on" label="Day of the removal" type="date" max={frame.today} />
      <div class="field-row clock-row">
        <TextField form={form} name="arrivedAt" label="Arrived" type="time" />
        <TextField form={form} name="openedAt" label="Opened" type="time" />
        <TextField form={form} name="boxedAt" label="Boxed" type="time" />
        <TextField form={form} name="leftAt" label="Left" type="time" />
      </div>
      <TextField
        form={form}
        name="outdoorC"
        label="Outdoor temperature"
        unit={unitOf(frame.units, 'temperature').symbol}
        inputmode="decimal"
        maxlength={8}
      />
      <Choices form={form} name="method" label="How the bees came off" choices={METHOD} across={3} />
    </fieldset>
    <fieldset class="group">
      <legend>Queen and brood</legend>
      <Choices form={form} name="queen" label="The queen" choices={QUEEN} across={2} />
      <TextField form={form} name="queenFoundAt" label="Found at" type="time" />
      <BroodAlong form={form} />
    </fieldset>
    <fieldset class="group">
      <legend>The box</legend>
      <BeesAndBox form={form} frame={frame} />
    </fieldset>
    <fieldset class="group">
      <legend>The hole</legend>
      <Choices form={form} name="sealed" label="The entrance" choices={SEAL} across={2} />
      <Choices form={form} name="cleaned" label="The comb taken out" choices={CLEAN} across={4} />
      <TextField
        form={form}
        name="left"
        label="Left to the owner"
        hint="Closing up, repair: said to whom."
        maxlength={500}
        wide
      />
      <NoteField
        form={form}
        name="note"
        label="Note about the bees"
        hint="Goes into the colony’s journal, which everybody in the yard reads: nothing about the customer."
        maxlength={1500}
      />
    </fieldset>
  </>
)
