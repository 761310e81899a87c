/** What came along in the box, asked alike where the removal is written up and where the intake is logged. */

import { Choices, TextField } from '../../../forms/index.ts'
import {
  BEES_TAPPED,
  BROOD_CARE,
  CELLS_AT_REMOVAL,
  FRAMES_TAPPED,
  TEMPER,
  TIED,
  unitOf,
} from '../../../words/index.ts'
import type { EntryFieldsProps } from './common.tsx'

export const BroodAlong = ({ form }: Pick<EntryFieldsProps, 'form'>) => (
  <>
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
    <Choices
      form={form}
      name="queenCells"
      label="Queen cells at the removal"
      choices={CELLS_AT_REMOVAL}
      across={4}
    />
  </>
)

export const BeesAndBox = ({ form, frame }: Pick<EntryFieldsProps, 'form' | 'frame'>) => (
  <>
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
  </>
)
