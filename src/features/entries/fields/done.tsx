/** What is done at a box beside looking: cage, ties, mite wash, something given. Used in a visit and in corrections. */

import { Choices, TextField } from '../../../forms/index.ts'
import { CAGE, type Choice, GIFT, unitOf } from '../../../words/index.ts'
import { type EntryFieldsProps, EntryNote } from './common.tsx'

/** `visit`: part of a visit, where it may be left out and the visit has its own note. */
interface DoneProps extends EntryFieldsProps {
  visit?: boolean
}

const skippable = (p: DoneProps, unsaid: string, choices: Choice[]): Choice[] =>
  p.visit ? [{ value: '', label: unsaid }, ...choices] : choices

const OwnNote = (p: DoneProps) => (p.visit ? null : <EntryNote {...p} />)

export const CageFields = (p: DoneProps) => (
  <>
    <Choices
      form={p.form}
      name={`${p.prefix ?? ''}found`}
      label="The queen’s cage"
      choices={skippable(p, 'Not looked', CAGE)}
      across={p.visit ? 3 : 2}
    />
    <OwnNote {...p} />
  </>
)

/** In a visit only: the entry itself says that they are off. */
export const TiesField = (p: EntryFieldsProps) => (
  <Choices
    form={p.form}
    name={`${p.prefix ?? ''}done`}
    label="The bands"
    choices={[
      { value: '', label: 'Left on' },
      { value: 'yes', label: 'All taken off' },
    ]}
    across={2}
  />
)

export const WashFields = (p: DoneProps) => (
  <>
    <p class="hint">About 300 bees are half a cup, taken from a brood comb. Look for the queen first.</p>
    <div class="field-row">
      <TextField
        form={p.form}
        name={`${p.prefix ?? ''}bees`}
        label="Bees in the sample"
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
    <OwnNote {...p} />
  </>
)

export const GivenFields = (p: DoneProps & { donors: string[] }) => {
  const at = p.prefix ?? ''
  const { form } = p
  return (
    <>
      <Choices
        form={form}
        name={`${at}what`}
        label="What was given"
        choices={skippable(p, 'Nothing', GIFT)}
        across={3}
      />
      <div class="field-row">
        <TextField
          form={form}
          name={`${at}frames`}
          label="How many frames"
          inputmode="decimal"
          maxlength={8}
        />
        <TextField form={form} name={`${at}donor`} label="From colony" maxlength={60} list={p.donors} />
      </div>
      <Choices
        form={form}
        name={`${at}caged`}
        label="If a queen: in a cage?"
        hint="Never introduce a bought queen while a virgin or any queen cell is in the box: look first."
        choices={[
          { value: '', label: 'No queen' },
          { value: 'yes', label: 'Caged' },
          { value: 'no', label: 'Not caged' },
        ]}
        across={3}
      />
      <div class="field-row">
        <TextField
          form={form}
          name={`${at}litres`}
          label="Syrup"
          unit={unitOf(p.frame.units, 'volume').symbol}
          inputmode="decimal"
          maxlength={8}
        />
        {p.frame.may('see-private') ? (
          <TextField form={form} name={`${at}cost`} label="Cost" inputmode="decimal" maxlength={10} />
        ) : null}
      </div>
      <TextField
        form={form}
        name={`${at}product`}
        label="Product"
        hint="Mite treatment: respirator and gloves; the label is the law."
        maxlength={120}
        wide
      />
      <TreatmentFields form={form} at={at} />
      <EntryNote {...p} />
    </>
  )
}

/** What the law asks to be kept of a mite treatment, beside its product. */
export const TreatmentFields = ({ form, at = '' }: Pick<EntryFieldsProps, 'form'> & { at?: string }) => (
  <div class="field-row">
    <TextField form={form} name={`${at}batch`} label="Batch, on its pack" maxlength={60} />
    <TextField
      form={form}
      name={`${at}withdrawalDays`}
      label="Withdrawal"
      unit="days"
      inputmode="numeric"
      maxlength={3}
    />
  </div>
)
