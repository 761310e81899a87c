/** The fields of the part that is open, in groups; what can wait is folded. */

import { type DrawnIn, Fields, Group, one } from '../../forms/index.ts'
import type { Sheet } from '../../records/index.ts'
import { type Choice, removalTypes } from '../../words/index.ts'
import type { Heard } from './as-known.ts'
import { CheckFields } from './check-fields.tsx'
import { NOT_A_TYPE } from './choices.ts'
import { PART_FIELDS } from './fields.ts'
import { Folded } from './folded.tsx'
import { asksPrice } from './form.ts'
import type { OtherSheet } from './other-sheets.ts'
import type { Part } from './stage.ts'
import { WorkFields } from './work-fields.tsx'

export interface PartFieldsProps extends DrawnIn {
  sheet: Sheet
  others: OtherSheet[]
  heard: Heard | null
  /** Removal types this yard added. */
  types: string[]
  currency: string
}

export const PartFields = ({ part, ...p }: PartFieldsProps & { part: Part }) => {
  switch (part) {
    case 'job':
      return <CallFields {...p} />
    case 'site':
      return <SiteFields {...p} />
    case 'agreement':
      return <AgreementFields {...p} />
    case 'check':
      return <CheckFields {...p} />
    case 'work':
      return <WorkFields {...p} />
  }
}

export const CallFields = ({ types, ...p }: Pick<PartFieldsProps, 'form' | 'frame' | 'types'>) => (
  <>
    <Fields
      {...p}
      of={PART_FIELDS.job}
      show={['what', 'since', 'access', 'sprayed', 'bystanders', 'caller']}
      with={{ what: { choices: [...removalTypes(types).map(hanging), ...NOT_A_TYPE] } }}
    />
    <p class="hint">Private: helpers see none of this.</p>
    <Fields
      {...p}
      of={PART_FIELDS.job}
      show={[
        ['name', 'phone'],
        ['address', 'heightM'],
        ['plannedOn', 'plannedAt'],
      ]}
    />
    <Folded legend="Photos, e-mail, the way in, and more" form={p.form} fields={LATER}>
      <Fields {...p} of={PART_FIELDS.job} show={LATER} />
    </Folded>
  </>
)

/** One that has gone into something is what it has gone into. */
const hanging = (c: Choice): Choice => (c.value === 'swarm' ? { ...c, hint: 'hanging free' } : c)

const LATER = ['photos', 'wayIn', 'email', 'told', 'sprayedNote', 'bystandersNote', 'calledOn'] as const

const SiteFields = (p: PartFieldsProps) => (
  <>
    <Fields
      {...p}
      of={PART_FIELDS.site}
      show={['behind', 'hazards', 'temper', 'africanized', ['surface', 'sheathingMm'], 'where']}
    />
    {asksPrice('site', p.sheet) ? (
      <Group legend="The price, when you know it">
        <PriceFields {...p} />
      </Group>
    ) : null}
    <Folded legend="The nest, entrances, photos" form={p.form} fields={NEST}>
      <Fields
        {...p}
        of={PART_FIELDS.site}
        show={[
          'foundBy',
          'foundNote',
          ['nestHighMm', 'nestWideMm', 'nestDeepMm'],
          ['entrance', 'entranceM'],
          'otherEntrances',
          'behindNote',
          'photos',
        ]}
      />
    </Folded>
  </>
)

const NEST = [
  'foundBy',
  'foundNote',
  'nestHighMm',
  'nestWideMm',
  'nestDeepMm',
  'entrance',
  'entranceM',
  'otherEntrances',
  'behindNote',
  'photos',
] as const

const PriceFields = ({ currency, ...p }: PartFieldsProps) => (
  <Fields
    {...p}
    of={PART_FIELDS.agreement}
    show={[['hourly', 'hours', 'fixed']]}
    with={{ hourly: { unit: currency }, fixed: { unit: currency } }}
  />
)

const AgreementFields = ({ currency, ...p }: PartFieldsProps) => {
  const money = { unit: currency }
  // Of two prices one is tapped, and not under a fold.
  const two = one(p.form.typed, 'hourly') !== '' && one(p.form.typed, 'fixed') !== ''
  return (
    <>
      <PriceFields {...p} currency={currency} />
      {two ? <Fields {...p} of={PART_FIELDS.agreement} show={['pricing']} /> : null}
      <Folded legend="Deposit, paid, invoice, terms of this job" form={p.form} fields={MONEY}>
        <Fields
          {...p}
          of={PART_FIELDS.agreement}
          show={[
            ...(two ? [] : (['pricing'] as const)),
            'warrantyDays',
            ['deposit', 'depositOn'],
            ['paid', 'paidOn', 'invoice'],
            'extra',
          ]}
          with={{ deposit: money, paid: money }}
        />
      </Folded>
    </>
  )
}

const MONEY = ['warrantyDays', 'deposit', 'depositOn', 'paid', 'paidOn', 'invoice', 'extra'] as const
