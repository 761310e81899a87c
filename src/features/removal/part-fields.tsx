/** The fields of each part of a removal sheet. */

import { Choices, type FormState, NoteField, TextField, Ticks } from '../../forms/index.ts'
import type { Frame } from '../../parts/index.ts'
import { removalTypes, TEMPER, unitOf } from '../../words/index.ts'
import { CheckFields } from './check-fields.tsx'
import type { Part } from './stage.ts'
import { BEHIND_IT, BYSTANDER, FOUND, HAZARD, PRICING, WAY_UP, YES_NO } from './words.ts'
import { WorkFields } from './work-fields.tsx'

export interface PartFieldsProps {
  form: FormState
  frame: Frame
  /** Removal types this yard added. */
  types: string[]
  currency: string
}

export const PartFields = ({ part, ...p }: PartFieldsProps & { part: Part }) => {
  switch (part) {
    case 'job':
      return <JobFields {...p} />
    case 'site':
      return <SiteFields {...p} />
    case 'agreement':
      return <AgreementFields {...p} />
    case 'check':
      return <CheckFields {...p} />
    case 'work':
      return <WorkFields {...p} />
  }
}

const JobFields = ({ form }: PartFieldsProps) => (
  <>
    <fieldset class="group">
      <legend>Who called</legend>
      <p class="hint">
        Private: only beekeepers and operators see this. The name and the address go into the colony’s intake,
        as where it came from; helpers see neither. Nothing else of it goes into the journal.
      </p>
      <div class="field-row">
        <TextField form={form} name="name" label="Name" maxlength={120} />
        <TextField form={form} name="phone" label="Telephone" maxlength={60} />
        <TextField form={form} name="email" label="E-mail" maxlength={200} />
      </div>
      <TextField form={form} name="address" label="Address of the bees" maxlength={300} wide />
      <NoteField
        form={form}
        name="wayIn"
        label="The way in"
        hint="Gate, parking, key, dog."
        maxlength={500}
        rows={2}
      />
    </fieldset>
    <fieldset class="group">
      <legend>The call</legend>
      <TextField form={form} name="calledOn" label="Day of the call" type="date" />
      <NoteField
        form={form}
        name="told"
        label="What they see, and since when"
        hint="Where do they go in and out? How many? Has anybody sprayed?"
        maxlength={1000}
      />
      <div class="field-row">
        <TextField form={form} name="plannedOn" label="Day planned" type="date" />
        <TextField form={form} name="plannedAt" label="Time" type="time" />
      </div>
    </fieldset>
  </>
)

const SiteFields = ({ form, frame, types }: PartFieldsProps) => (
  <>
    <fieldset class="group">
      <legend>Where the bees are</legend>
      <Choices
        form={form}
        name="type"
        label="Kind of removal"
        choices={removalTypes(types)}
        across={3}
        other={{ label: 'Another kind', inputmode: 'text', maxlength: 40 }}
      />
      <TextField
        form={form}
        name="where"
        label="Where, in words"
        hint="In the wall left of the porch, above the window."
        maxlength={300}
        wide
      />
      <Ticks form={form} name="foundBy" label="How that was found" choices={FOUND} across={3} />
      <TextField form={form} name="foundNote" label="How large, how far it reaches" maxlength={500} wide />
    </fieldset>
    <fieldset class="group">
      <legend>Getting there</legend>
      <Choices form={form} name="access" label="How one gets there" choices={WAY_UP} across={3} />
      <TextField
        form={form}
        name="heightM"
        label="Height"
        unit={unitOf(frame.units, 'height').symbol}
        inputmode="decimal"
        maxlength={8}
      />
      <Ticks form={form} name="bystanders" label="Who is about" choices={BYSTANDER} across={3} />
      <TextField form={form} name="bystandersNote" label="More about them" maxlength={300} wide />
    </fieldset>
    <fieldset class="group">
      <legend>What is behind it</legend>
      <div class="field-row">
        <TextField
          form={form}
          name="surface"
          label="What is cut"
          hint="Siding, plaster, boards."
          maxlength={120}
        />
        <TextField
          form={form}
          name="sheathingMm"
          label="Thickness of the sheathing"
          hint="Measured at an edge or a drilled hole."
          unit={unitOf(frame.units, 'length').symbol}
          inputmode="text"
          maxlength={10}
        />
      </div>
      <Ticks
        form={form}
        name="behind"
        label="What runs behind it"
        hint="Ask, trace from outlets and taps, use a detector. Wires, gas and flues: the licensed trade first."
        choices={BEHIND_IT}
        across={3}
      />
      <Choices form={form} name="old" label="Built before 1980?" choices={YES_NO} across={4} />
      <Ticks
        form={form}
        name="hazards"
        label="Hazards"
        hint="Asbestos or lead paint suspected: nothing is cut, broken or swept until a licensed contractor has tested it."
        choices={HAZARD}
        across={3}
      />
      <TextField form={form} name="behindNote" label="More about it" maxlength={500} wide />
    </fieldset>
    <fieldset class="group">
      <legend>The bees</legend>
      <Choices
        form={form}
        name="sprayed"
        label="Have they been sprayed or foamed?"
        choices={YES_NO}
        across={4}
      />
      <TextField form={form} name="sprayedNote" label="With what, and when" maxlength={300} wide />
      <Choices form={form} name="temper" label="Temper" choices={TEMPER} across={3} />
      <Choices
        form={form}
        name="africanized"
        label="Are Africanized bees established here?"
        hint="Local rules decide what may be moved and where to."
        choices={YES_NO}
        across={4}
      />
    </fieldset>
  </>
)

const AgreementFields = ({ form, currency }: PartFieldsProps) => (
  <fieldset class="group">
    <legend>The price</legend>
    <Choices form={form} name="pricing" label="How it is priced" choices={PRICING} across={3} />
    <div class="field-row">
      <TextField
        form={form}
        name="hourly"
        label="By the hour"
        unit={currency}
        inputmode="decimal"
        maxlength={10}
      />
      <TextField form={form} name="hours" label="Hours expected" inputmode="decimal" maxlength={8} />
      <TextField
        form={form}
        name="fixed"
        label="Fixed price"
        unit={currency}
        inputmode="decimal"
        maxlength={10}
      />
    </div>
    <NoteField
      form={form}
      name="extra"
      label="Agreed for this job"
      hint="Stands at the end of the agreement."
      maxlength={2000}
    />
  </fieldset>
)
