/** An intake in three short groups: where from, queen and brood, box. */

import type { Child } from 'hono/jsx'
import { FIELDS, Fields, Group, one, TextField } from '../../../forms/index.ts'
import { removalTypes } from '../../../words/index.ts'
import { BroodAlong } from './along.tsx'
import { DayField, type EntryFieldsProps } from './common.tsx'
import { YardField } from './yard.tsx'

export interface IntakeFieldsProps extends EntryFieldsProps {
  yards: string[]
  /** Removal types this yard added. */
  types: string[]
}

const SELDOM = ['queenVirgin', 'queenMarked', 'queenClipped', 'broodState'] as const
const HOW = ['removal.removedOn', 'removal.method', 'removal.outdoorC', 'removal.hoursOpenToBoxed'] as const
const BOX = ['bees.kg', 'deadBeesKg', 'tiedComb', 'temper'] as const

interface LaterProps extends EntryFieldsProps {
  summary: string
  names: readonly string[]
  children?: Child
}

/** What can wait until the truck is unloaded; open where something in it was said already, or is wrong. */
const Later = ({ summary, names, form, children }: LaterProps) => (
  <details
    class="also"
    open={names.some((n) => one(form.typed, n) !== '' || form.problems.some((x) => x.field.startsWith(n)))}
  >
    <summary>{summary}</summary>
    {children}
  </details>
)

/** What is rarely known on the truck, and decides much where it is. */
const Seldom = (p: EntryFieldsProps) => (
  <Later {...p} summary="A virgin, marked or clipped; brood chilled or dead" names={SELDOM}>
    <Fields {...p} of={FIELDS.intake} show={SELDOM} />
  </Later>
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
        show={['removal.type', 'removal.sprayed']}
        with={{ 'removal.type': { choices: removalTypes(types) } }}
      />
      <Later {...p} summary="How it was taken, and when if earlier" names={HOW}>
        <Fields
          {...p}
          of={FIELDS.intake}
          show={['removal.removedOn', 'removal.method', ['removal.outdoorC', 'removal.hoursOpenToBoxed']]}
        />
      </Later>
      <Later {...p} summary="Address or customer" names={['removal.site']}>
        <Fields {...p} of={FIELDS.intake} show={['removal.site']} />
      </Later>
    </Group>
    <Group legend="2. Queen and brood">
      <Fields {...p} of={FIELDS.intake} show={['queen']} />
      <BroodAlong {...p} />
      <Seldom {...p} />
    </Group>
    <Group legend="3. The box">
      <Fields {...p} of={FIELDS.intake} show={['bees.frames']} />
      <Later {...p} summary="Weight, dead bees, tied comb, temper" names={BOX}>
        <Fields {...p} of={FIELDS.intake} show={[['bees.kg', 'deadBeesKg'], 'tiedComb', 'temper']} />
      </Later>
      <Later {...p} summary="Note and photos" names={['note', 'photos']}>
        <Fields {...p} of={FIELDS.intake} show={['note', 'photos']} />
      </Later>
    </Group>
  </>
)
