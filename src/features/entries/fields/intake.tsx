/** An intake in three short groups: where from, queen and brood, box. */

import { FIELDS, Fields, Group, TextField } from '../../../forms/index.ts'
import { removalTypes } from '../../../words/index.ts'
import { BeesAndBox, BroodAlong } from './along.tsx'
import { DayField, type EntryFieldsProps } from './common.tsx'
import { YardField } from './yard.tsx'

export interface IntakeFieldsProps extends EntryFieldsProps {
  yards: string[]
  /** Removal types this yard added. */
  types: string[]
}

export const IntakeFields = ({ yards, types, ...p }: IntakeFieldsProps) => (
  <>
    <Group legend="1. Where from">
      <div class="field-row">
        <TextField form={p.form} name="colony" label="Tag on the box" maxlength={40} required />
        <Fields {...p} of={FIELDS.intake} show={['stand']} />
        <YardField {...p} yards={yards} />
        <DayField {...p} kind="intake" />
      </div>
      <Fields
        {...p}
        of={FIELDS.intake}
        show={[
          'removal.type',
          'removal.removedOn',
          'removal.method',
          ['removal.outdoorC', 'removal.hoursOpenToBoxed'],
          'removal.sprayed',
          'removal.site',
        ]}
        with={{ 'removal.type': { choices: removalTypes(types) } }}
      />
    </Group>
    <Group legend="2. Queen and brood">
      <Fields {...p} of={FIELDS.intake} show={['queen']} />
      <BroodAlong {...p} />
    </Group>
    <Group legend="3. The box">
      <BeesAndBox {...p} />
      <Fields {...p} of={FIELDS.intake} show={['note', 'photos']} />
    </Group>
  </>
)
