/** An intake in three short groups: where from, queen and brood, box. */

import { Choices, dayLabel, PhotoField, TextField } from '../../../forms/index.ts'
import { METHOD, QUEEN, removalTypes, SPRAYED, unitOf } from '../../../words/index.ts'
import { BeesAndBox, BroodAlong } from './along.tsx'
import { DayField, type EntryFieldsProps, EntryNote } from './common.tsx'
import { YardField } from './yard.tsx'

export interface IntakeFieldsProps extends EntryFieldsProps {
  yards: string[]
  /** Removal types this yard added. */
  types: string[]
}

export const IntakeFields = (p: IntakeFieldsProps) => (
  <>
    <WhereFrom {...p} />
    <QueenAndBrood {...p} />
    <Box {...p} />
  </>
)

const WhereFrom = ({ form, frame, yards, types }: IntakeFieldsProps) => (
  <fieldset class="group">
    <legend>1. Where from</legend>
    <div class="field-row">
      <TextField form={form} name="colony" label="Tag on the box" maxlength={40} required />
      <TextField form={form} name="stand" label="Stand" maxlength={20} />
      <YardField form={form} yards={yards} />
      <DayField form={form} frame={frame} label={dayLabel('intake')} />
    </div>
    <Choices
      form={form}
      name="removal.type"
      label="Kind of removal"
      choices={removalTypes(types)}
      across={3}
      other={{ label: 'or type', inputmode: 'text', maxlength: 40 }}
    />
    <TextField
      form={form}
      name="removal.removedOn"
      label="Day of the removal, if earlier"
      hint="Her last day on this comb. Everything is counted from it."
      type="date"
      max={frame.today}
    />
    <Choices form={form} name="removal.method" label="How the bees came off" choices={METHOD} across={3} />
    <div class="field-row">
      <TextField
        form={form}
        name="removal.outdoorC"
        label="Outdoor temperature"
        unit={unitOf(frame.units, 'temperature').symbol}
        inputmode="decimal"
        maxlength={8}
      />
      <TextField
        form={form}
        name="removal.hoursOpenToBoxed"
        label="From opening to boxed"
        unit="hours"
        inputmode="decimal"
        maxlength={8}
      />
    </div>
    <Choices
      form={form}
      name="removal.sprayed"
      label="Was the colony sprayed?"
      hint="Sprayed: keep no comb and no honey, and feed none of it."
      choices={SPRAYED}
      across={3}
      standing="unknown"
    />
    <TextField
      form={form}
      name="removal.site"
      label="Address or customer"
      hint="Private: stays out of lists and exports."
      maxlength={300}
      wide
    />
  </fieldset>
)

const QueenAndBrood = ({ form }: IntakeFieldsProps) => (
  <fieldset class="group">
    <legend>2. Queen and brood</legend>
    <Choices form={form} name="queen" label="The queen" choices={QUEEN} across={2} />
    <BroodAlong form={form} />
  </fieldset>
)

const Box = ({ form, frame }: IntakeFieldsProps) => (
  <fieldset class="group">
    <legend>3. The box</legend>
    <BeesAndBox form={form} frame={frame} />
    <EntryNote form={form} frame={frame} />
    <PhotoField form={form} />
  </fieldset>
)
