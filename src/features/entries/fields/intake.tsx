/** An intake in three short groups: where from, queen and brood, box. */

import { FIELDS, Fields, Group, one, TextField } from '../../../forms/index.ts'
import { removalTypes } from '../../../words/index.ts'
import { BeesAndBox, BroodAlong } from './along.tsx'
import { DayField, type EntryFieldsProps } from './common.tsx'
import { YardField } from './yard.tsx'

export interface IntakeFieldsProps extends EntryFieldsProps {
  yards: string[]
  /** Removal types this yard added. */
  types: string[]
}

const SELDOM = ['queenVirgin', 'queenMarked', 'queenClipped', 'broodState'] as const

/** What is rarely known on the truck, and decides much where it is. */
const Seldom = (p: EntryFieldsProps) => (
  <details class="also" open={SELDOM.some((name) => one(p.form.typed, name) !== '')}>
    <summary>A virgin, marked or clipped; brood chilled or dead</summary>
    <Fields {...p} of={FIELDS.intake} show={SELDOM} />
  </details>
)

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
      <Seldom {...p} />
    </Group>
    <Group legend="3. The box">
      <BeesAndBox {...p} />
      <Fields {...p} of={FIELDS.intake} show={['note', 'photos']} />
    </Group>
  </>
)
