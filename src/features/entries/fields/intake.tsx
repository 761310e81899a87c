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
  /** See {@link IntakeFields}. */
  told?: boolean
}

const SELDOM = ['queenVirgin', 'queenMarked', 'queenClipped', 'broodState'] as const

/** What is rarely known on the truck, and decides much where it is. */
const Seldom = (p: EntryFieldsProps) => (
  <details class="also" open={SELDOM.some((name) => one(p.form.typed, name) !== '')}>
    <summary>A virgin, marked or clipped; brood chilled or dead</summary>
    <Fields {...p} of={FIELDS.intake} show={SELDOM} />
  </details>
)

/** `told`: a removal sheet has said the rest already, so it is folded; only the place of the box is asked. */
export const IntakeFields = ({ yards, types, told = false, ...p }: IntakeFieldsProps) => {
  const { problems } = p.form
  const place = (
    <div class="field-row">
      <TextField form={p.form} name="colony" label="Tag on the box" maxlength={40} required />
      <Fields {...p} of={FIELDS.intake} show={['stand']} />
      <YardField {...p} yards={yards} />
      <DayField {...p} kind="intake" />
    </div>
  )
  if (!told)
    return (
      <>
        <Group legend="1. Where from">
          {place}
          <WhereFrom {...p} types={types} />
        </Group>
        <Rest {...p} numbered />
      </>
    )
  return (
    <>
      {place}
      <details class="also" open={problems.some((x) => !PLACE.has(x.field))}>
        <summary>What the removal sheet says of it: look it over, or add to it</summary>
        <Group legend="Where from">
          <WhereFrom {...p} types={types} />
        </Group>
        <Rest {...p} />
      </details>
    </>
  )
}

const PLACE = new Set(['', 'colony', 'stand', 'yard', 'on'])

const WhereFrom = ({ types, ...p }: EntryFieldsProps & { types: string[] }) => (
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
)

const Rest = ({ numbered = false, ...p }: EntryFieldsProps & { numbered?: boolean }) => (
  <>
    <Group legend={numbered ? '2. Queen and brood' : 'Queen and brood'}>
      <Fields {...p} of={FIELDS.intake} show={['queen']} />
      <BroodAlong {...p} />
      <Seldom {...p} />
    </Group>
    <Group legend={numbered ? '3. The box' : 'The box'}>
      <BeesAndBox {...p} />
      <Fields {...p} of={FIELDS.intake} show={['note', 'photos']} />
    </Group>
  </>
)
