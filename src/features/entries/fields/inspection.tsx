/** What was seen at the box. What is not tapped was not looked at, and proves nothing. */

import { Choices, PhotoField, TextField, Ticks } from '../../../forms/index.ts'
import {
  BEES_TAPPED,
  CAPPED_BROOD,
  CELLS,
  EGGS,
  FRAMES_TAPPED,
  FRESH_COMB,
  LID,
  OPEN_BROOD,
  QUEEN_SEEN,
  SIGN,
  STORES,
  TEMPER,
} from '../../../words/index.ts'
import { type EntryFieldsProps, EntryNote } from './common.tsx'

export const InspectionFields = (p: EntryFieldsProps) => (
  <>
    <Choices form={p.form} name="opened" label="The lid" choices={LID} across={2} />
    <div class="inside">
      <Inside {...p} />
    </div>
    <fieldset class="group">
      <legend>The colony</legend>
      <Choices form={p.form} name="stores" label="Stores" choices={STORES} across={4} />
      <Ticks
        form={p.form}
        name="signs"
        label="Signs of trouble"
        hint="Tap all you saw."
        choices={SIGN}
        across={3}
      />
      <DiseaseCaution />
      <Choices form={p.form} name="temper" label="Temper" choices={TEMPER} across={3} />
      <EntryNote {...p} />
      <PhotoField form={p.form} />
    </fieldset>
  </>
)

const Inside = ({ form }: EntryFieldsProps) => (
  <fieldset class="group">
    <legend>Brood and queen</legend>
    <Choices form={form} name="eggs" label="Eggs" choices={EGGS} across={4} />
    <Choices form={form} name="open" label="Open brood" choices={OPEN_BROOD} across={4} />
    <Choices form={form} name="capped" label="Capped brood" choices={CAPPED_BROOD} across={4} />
    <Choices form={form} name="onFreshComb" label="Where is that brood?" choices={FRESH_COMB} across={3} />
    <Choices form={form} name="cells" label="Queen cells" choices={CELLS} across={4} />
    <TextField form={form} name="cellCount" label="How many cells" inputmode="numeric" maxlength={4} />
    <Choices form={form} name="queen" label="The queen" choices={QUEEN_SEEN} across={3} />
    <Choices
      form={form}
      name="framesOfBees"
      label="Frames covered with bees"
      choices={BEES_TAPPED}
      across={4}
      other={{ label: 'or type' }}
    />
    <Choices
      form={form}
      name="framesOfBrood"
      label="Frames with brood"
      choices={FRAMES_TAPPED}
      across={4}
      other={{ label: 'or type' }}
    />
  </fieldset>
)

const DiseaseCaution = () => (
  <p class="hint">
    Sunken or ropy brood, or a foul smell: close up, do not move or unite this colony, clean tools and gloves,
    and call the apiary inspector.
  </p>
)
