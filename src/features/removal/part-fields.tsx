/** The fields of each part of a removal sheet, in groups. */

import { type DrawnIn, Fields, Group } from '../../forms/index.ts'
import { removalTypes } from '../../words/index.ts'
import { CheckFields } from './check-fields.tsx'
import { PART_FIELDS } from './fields.ts'
import type { Part } from './stage.ts'
import { WorkFields } from './work-fields.tsx'

export interface PartFieldsProps extends DrawnIn {
  /** Removal types this yard added. */
  types: string[]
  currency: string
}

export const PartFields = ({ part, ...p }: PartFieldsProps & { part: Part }) => {
  switch (part) {
    case 'job':
      return <JobFields {...p} />
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

const JobFields = (p: DrawnIn) => (
  <>
    <Group legend="Who called">
      <p class="hint">
        Private: only beekeepers and operators see this. The name and the address go into the colony’s intake,
        as where it came from; helpers see neither. Nothing else of it goes into the journal.
      </p>
      <Fields {...p} of={PART_FIELDS.job} show={[['name', 'phone', 'email'], 'address', 'wayIn']} />
    </Group>
    <Group legend="The call">
      <Fields {...p} of={PART_FIELDS.job} show={['calledOn', 'told', ['plannedOn', 'plannedAt']]} />
    </Group>
  </>
)

const SiteFields = ({ types, ...p }: PartFieldsProps) => (
  <>
    <Group legend="Where the bees are">
      <Fields
        {...p}
        of={PART_FIELDS.site}
        show={['type', 'where', 'foundBy', 'foundNote']}
        with={{ type: { choices: removalTypes(types) } }}
      />
    </Group>
    <Group legend="Getting there">
      <Fields {...p} of={PART_FIELDS.site} show={['access', 'heightM', 'bystanders', 'bystandersNote']} />
    </Group>
    <Group legend="What is behind it">
      <Fields
        {...p}
        of={PART_FIELDS.site}
        show={[['surface', 'sheathingMm'], 'behind', 'old', 'hazards', 'behindNote']}
      />
    </Group>
    <Group legend="The bees">
      <Fields {...p} of={PART_FIELDS.site} show={['sprayed', 'sprayedNote', 'temper', 'africanized']} />
    </Group>
  </>
)

const AgreementFields = ({ currency, ...p }: PartFieldsProps) => (
  <Group legend="The price">
    <Fields
      {...p}
      of={PART_FIELDS.agreement}
      show={['pricing', ['hourly', 'hours', 'fixed'], 'extra']}
      with={{ hourly: { unit: currency }, fixed: { unit: currency } }}
    />
  </Group>
)
