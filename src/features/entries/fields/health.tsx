/** Clearing a suspected brood disease, and feed. */

import { Choices, TextField } from '../../../forms/index.ts'
import { type Choice, CLEARED, SYRUP, unitOf } from '../../../words/index.ts'
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

const FEED: Choice[] = [
  { value: 'syrup', label: 'Syrup or sugar' },
  { value: 'pollen', label: 'Pollen or patty' },
]

/** Feed alone, with its amount. */
export const FeedFields = ({ form, frame }: EntryFieldsProps) => (
  <>
    <Choices form={form} name="what" label="What" choices={FEED} across={2} />
    <div class="field-row">
      <TextField
        form={form}
        name="litres"
        label="Syrup"
        hint={frame.units.weight === 'lb' ? 'A gallon is 4 quarts.' : 'A US quart is 0.95, a gallon 3.8.'}
        unit={unitOf(frame.units, 'volume').symbol}
        inputmode="decimal"
        maxlength={8}
      />
      <TextField
        form={form}
        name="kg"
        label="Feed by weight"
        hint="Sugar, fondant, patty."
        unit={unitOf(frame.units, 'weight').symbol}
        inputmode="decimal"
        maxlength={8}
      />
    </div>
    <Choices form={form} name="syrup" label="Sugar to water, by weight" choices={SYRUP} across={3} />
    <TextField form={form} name="product" label="Product (may stay empty)" maxlength={120} wide />
    <EntryNote form={form} frame={frame} />
  </>
)
