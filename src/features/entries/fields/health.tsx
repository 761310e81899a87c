/** Clearing a suspected brood disease, and feed. */

import { FIELDS, Fields } from '../../../forms/index.ts'
import type { EntryFieldsProps } from './common.tsx'

export const ClearedFields = (p: EntryFieldsProps) => (
  <Fields {...p} of={FIELDS['disease-cleared']} show={['clearedBy', 'reference', 'note', 'photos']} />
)

/** Feed alone, with its amount. */
export const FeedFields = (p: EntryFieldsProps) => (
  <Fields
    {...p}
    of={FIELDS.given}
    show={['what', ['litres', 'kg'], 'syrup', 'product', 'note']}
    with={{
      what: {
        label: 'What',
        choices: [
          { value: 'syrup', label: 'Syrup or sugar' },
          { value: 'pollen', label: 'Pollen or patty' },
        ],
        across: 2,
      },
      litres: {
        hint: p.frame.units.weight === 'lb' ? 'A gallon is 4 quarts.' : 'A US quart is 0.95, a gallon 3.8.',
      },
      product: { label: 'Product (may stay empty)', hint: undefined },
    }}
  />
)

/** A mite treatment alone, with what the law asks to be kept of it. */
export const TreatmentFields = (p: EntryFieldsProps) => (
  <Fields
    {...p}
    of={FIELDS.given}
    show={['product', ['batch', 'withdrawalDays']]}
    with={{
      product: {
        hint: 'As its label calls it, with the registration number where the law asks for it.',
      },
    }}
  />
)
