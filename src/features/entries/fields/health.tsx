/** Clearing a suspected brood disease, and feed. */

import { FIELDS, Fields } from '../../../forms/index.ts'
import type { EntryFieldsProps } from './common.tsx'

export const ClearedFields = (p: EntryFieldsProps) => (
  <Fields {...p} of={FIELDS['disease-cleared']} show={['clearedBy', 'reference', 'note', 'photos']} />
)

/** Feed alone, with its amount. */
export const FeedFields = (p: EntryFieldsProps) => {
  const said = p.frame.words.health.feed
  return (
    <Fields
      {...p}
      of={FIELDS.given}
      show={['what', ['litres', 'kg'], 'syrup', 'product', 'note']}
      with={{
        what: {
          label: said.what,
          choices: [
            { value: 'syrup', label: said.syrupOrSugar },
            { value: 'pollen', label: said.pollenOrPatty },
          ],
          across: 2,
        },
        litres: {
          hint: p.frame.units.weight === 'lb' ? said.gallonUs : said.gallonLitres,
        },
        product: { label: said.product, hint: undefined },
      }}
    />
  )
}

/** A mite treatment alone, with what the law asks to be kept of it. */
export const TreatmentFields = (p: EntryFieldsProps) => (
  <Fields
    {...p}
    of={FIELDS.given}
    show={['product', ['batch', 'withdrawalDays']]}
    with={{
      product: {
        hint: p.frame.words.health.forms.productHint,
      },
    }}
  />
)
