/** What is done at a box beside looking: cage, ties, mite wash, something given. Used in a visit and in corrections. */

import { Choices, FIELDS, Fields, type FormState } from '../../../forms/index.ts'
import { CAGE, GIFT } from '../../../words/index.ts'
import type { EntryFieldsProps } from './common.tsx'

/** `visit`: part of a visit, where it may be left out and the visit has its own note. */
interface DoneProps extends EntryFieldsProps {
  visit?: boolean
}

export const CageFields = ({ visit, ...p }: DoneProps) => (
  <Fields
    {...p}
    of={FIELDS['queen-cage']}
    show={visit ? ['found'] : ['found', 'note']}
    with={visit ? { found: { choices: [{ value: '', label: 'Not looked' }, ...CAGE], across: 3 } } : {}}
  />
)

/** In a visit only: the entry itself says that they are off. */
export const TiesField = (p: { form: FormState; prefix: string }) => (
  <Choices
    form={p.form}
    name={`${p.prefix}done`}
    label="The bands"
    choices={[
      { value: '', label: 'Left on' },
      { value: 'yes', label: 'All taken off' },
    ]}
    across={2}
  />
)

export const WashFields = ({ visit, ...p }: DoneProps) => (
  <>
    <p class="hint">About 300 bees are half a cup, taken from a brood comb. Look for the queen first.</p>
    <Fields
      {...p}
      of={FIELDS['mite-wash']}
      show={[['bees', 'mites'], ...(visit ? [] : (['note', 'photos'] as const))]}
    />
  </>
)

/** On a visit feed is noted in short; a correction shows all that an entry can hold, or it would be lost. */
export const GivenFields = ({ visit, donors, ...p }: DoneProps & { donors: string[] }) => (
  <Fields
    {...p}
    of={FIELDS.given}
    show={[
      'what',
      ['frames', 'donor'],
      'caged',
      ['litres', ...(visit ? [] : ['kg' as const]), ...(p.frame.may('see-private') ? ['cost' as const] : [])],
      ...(visit ? [] : ['syrup' as const]),
      'product',
      ['batch', 'withdrawalDays'],
      'note',
    ]}
    with={{
      donor: { list: donors },
      ...(visit ? { what: { choices: [{ value: '', label: 'Nothing' }, ...GIFT] } } : {}),
    }}
  />
)
