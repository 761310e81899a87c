/** What was done and found. Asked once: the intake takes it over. */
import {
  BEES_TAPPED,
  BROOD_CARE,
  CELLS_AT_REMOVAL,
  FRAMES_TAPPED,
  METHOD,
  QUEEN,
  TEMPER,
  TIED,
} from '../../words/choices.ts'
import { CLEAN, SEAL } from '../../words/removal.ts'
import { unitOf } from '../../words/units.ts'
import { Choices, NoteField, TextField } from '../field.tsx'
import type { PartFieldsProps } from './part-fields.tsx'

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
      <p class="hint">Brood comb that came along, in frames. Not counted is not the same as none.</p>
      {(
        [
          ['brood.eggs', 'With eggs'],
          ['brood.open', 'With open brood'],
          ['brood.capped', 'With capped brood'],
        ] as const
      ).map(([name, label]) => (
        <Choices
          form={form}
          name={name}
          label={label}
          choices={FRAMES_TAPPED}
          across={4}
          other={{ label: 'or type' }}
        />
      ))}
      <Choices form={form} name="broodCare" label="How the brood travelled" choices={BROOD_CARE} across={3} />
      <Choices form={form} name="queenCells" label="Queen cells" choices={CELLS_AT_REMOVAL} across={4} />
    </fieldset>
    <fieldset class="group">
      <legend>The box</legend>
      <Choices
        form={form}
        name="bees.frames"
        label="Frames covered with bees"
        choices={BEES_TAPPED}
        across={4}
        other={{ label: 'or type' }}
      />
      <div class="field-row">
        <TextField
          form={form}
          name="bees.kg"
          label="or their weight"
          unit={unitOf(frame.units, 'weight').symbol}
          inputmode="decimal"
          maxlength={8}
        />
        <TextField
          form={form}
          name="deadBeesKg"
          label="Dead bees in the box"
          unit={unitOf(frame.units, 'weight').symbol}
          inputmode="decimal"
          maxlength={8}
        />
      </div>
      <Choices form={form} name="tiedComb" label="Comb tied in with bands" choices={TIED} across={3} />
      <Choices form={form} name="temper" label="Temper" choices={TEMPER} across={3} />
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
