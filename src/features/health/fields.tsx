/** Feed and mite treatments as forms. */
import { type DrawnIn, FIELDS, Fields } from '../../forms/index.ts'
import type { Frame } from '../../parts/index.ts'

type FieldsProps = DrawnIn & { frame: Frame }

/** Feed alone, with its amount. */
export const FeedFields = (p: FieldsProps) => {
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
export const TreatmentFields = (p: FieldsProps) => (
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
