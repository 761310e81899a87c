/** What is done at a box beside looking: cage, ties, mite wash, something given. Used in a visit and in corrections. */
import { CAGE, GIFT, SYRUP, TIED } from '../../words/choices.ts'
import { unitOf } from '../../words/units.ts'
import { Choices, TextField } from '../field.tsx'
import { type EntryFieldsProps, EntryNote } from './common.tsx'

export const CageFields = (p: EntryFieldsProps & { skippable?: boolean }) => (
  <>
    <Choices
      form={p.form}
      name={`${p.prefix ?? ''}found`}
      label="The queen’s cage"
      choices={p.skippable ? [{ value: '', label: 'Not looked' }, ...CAGE] : CAGE}
      across={3}
    />
    <EntryNote {...p} />
  </>
)

export const TiesFields = (p: EntryFieldsProps) => (
  <>
    <Choices
      form={p.form}
      name={`${p.prefix ?? ''}done`}
      label="Were all bands taken off?"
      choices={TIED.filter((c) => c.value !== 'no').map((c) => (c.value === '' ? { ...c, label: 'No' } : c))}
      across={2}
    />
    <EntryNote {...p} />
  </>
)

export const WashFields = (p: EntryFieldsProps) => (
  <>
    <div class="field-row">
      <TextField
        form={p.form}
        name={`${p.prefix ?? ''}bees`}
        label="Bees in the sample"
        hint="about 300 is half a cup"
        inputmode="numeric"
        maxlength={6}
      />
      <TextField
        form={p.form}
        name={`${p.prefix ?? ''}mites`}
        label="Mites counted"
        inputmode="numeric"
        maxlength={6}
      />
    </div>
    <EntryNote {...p} />
  </>
)

export const GivenFields = (p: EntryFieldsProps & { skippable?: boolean; donors: string[] }) => {
  const at = p.prefix ?? ''
  return (
    <>
      <Choices
        form={p.form}
        name={`${at}what`}
        label="What was given"
        choices={p.skippable ? [{ value: '', label: 'Nothing' }, ...GIFT] : GIFT}
        across={3}
      />
      <div class="field-row">
        <TextField
          form={p.form}
          name={`${at}frames`}
          label="Frames"
          hint="of brood or comb"
          inputmode="decimal"
          maxlength={8}
        />
        <TextField
          form={p.form}
          name={`${at}donor`}
          label="From colony"
          hint="donor of frames or bees"
          maxlength={60}
          list={p.donors}
        />
      </div>
      <Choices
        form={p.form}
        name={`${at}caged`}
        label="A queen: in a cage?"
        choices={[
          { value: '', label: 'No queen' },
          { value: 'yes', label: 'Caged' },
          { value: 'no', label: 'Not caged' },
        ]}
        across={3}
      />
      <p class="hint">
        Never introduce a bought queen while a virgin or any queen cell is in the box: look first, and cut the
        cells out.
      </p>
      <div class="field-row">
        <TextField
          form={p.form}
          name={`${at}litres`}
          label="Syrup"
          unit="litres"
          inputmode="decimal"
          maxlength={8}
        />
        <TextField
          form={p.form}
          name={`${at}kg`}
          label="Feed by weight"
          hint="pollen patty, fondant, sugar"
          unit={unitOf(p.frame.units, 'weight').symbol}
          inputmode="decimal"
          maxlength={8}
        />
        <TextField
          form={p.form}
          name={`${at}product`}
          label="Product"
          hint="Mite treatment: respirator, gloves; the label is the law."
          maxlength={120}
        />
        <TextField form={p.form} name={`${at}cost`} label="Cost" inputmode="decimal" maxlength={10} />
      </div>
      <Choices
        form={p.form}
        name={`${at}syrup`}
        label="Syrup: sugar to water, by weight"
        choices={SYRUP}
        across={3}
      />
      <EntryNote {...p} />
    </>
  )
}
