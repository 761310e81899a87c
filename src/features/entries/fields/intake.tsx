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
  /** See {@link IntakeFields}. */
  told?: boolean
}

const SELDOM = ['queenVirgin', 'queenMarked', 'queenClipped', 'broodState'] as const
const HOW = [
  'removal.site',
  'removal.removedOn',
  'removal.method',
  'removal.outdoorC',
  'removal.hoursOpenToBoxed',
] as const
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
  <Later {...p} summary={p.frame.words.corrections.intake.seldom} names={SELDOM}>
    <Fields {...p} of={FIELDS.intake} show={SELDOM} />
  </Later>
)

/** `told`: a removal sheet has said the rest already, so it is folded; only the place of the box is asked. */
export const IntakeFields = ({ yards, types, told = false, ...p }: IntakeFieldsProps) => {
  const { problems } = p.form
  const said = p.frame.words.corrections.intake
  const place = (
    <div class="field-row">
      <TextField form={p.form} name="colony" label={said.tag} maxlength={40} required />
      <Fields {...p} of={FIELDS.intake} show={['stand']} />
      <YardField {...p} yards={yards} />
      <DayField {...p} kind="intake" />
    </div>
  )
  if (!told)
    return (
      <>
        <Group legend={`1. ${said.whereFrom}`}>
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
        <summary>{said.fromSheet}</summary>
        <Group legend={said.whereFrom}>
          <WhereFrom {...p} types={types} />
        </Group>
        <Rest {...p} />
      </details>
    </>
  )
}

const PLACE = new Set(['', 'colony', 'stand', 'yard', 'on'])

const WhereFrom = ({ types, ...p }: EntryFieldsProps & { types: string[] }) => (
  <>
    <Fields
      {...p}
      of={FIELDS.intake}
      show={['removal.type', 'removal.sprayed']}
      with={{ 'removal.type': { choices: removalTypes(types, p.frame.words.choiceWords) } }}
    />
    <Later {...p} summary={p.frame.words.corrections.intake.howTaken} names={HOW}>
      <Fields
        {...p}
        of={FIELDS.intake}
        show={[
          'removal.site',
          'removal.removedOn',
          'removal.method',
          ['removal.outdoorC', 'removal.hoursOpenToBoxed'],
        ]}
      />
    </Later>
  </>
)

const Rest = ({ numbered = false, ...p }: EntryFieldsProps & { numbered?: boolean }) => {
  const said = p.frame.words.corrections.intake
  return (
    <>
      <Group legend={`${numbered ? '2. ' : ''}${said.queenAndBrood}`}>
        <Fields {...p} of={FIELDS.intake} show={['queen']} />
        <BroodAlong {...p} />
        <Seldom {...p} />
      </Group>
      <Group legend={`${numbered ? '3. ' : ''}${said.theBox}`}>
        <Fields {...p} of={FIELDS.intake} show={['bees.frames']} />
        <Later {...p} summary={said.weights} names={BOX}>
          <Fields {...p} of={FIELDS.intake} show={[['bees.kg', 'deadBeesKg'], 'tiedComb', 'temper']} />
        </Later>
        <Later {...p} summary={said.noteAndPhotos} names={['note', 'photos']}>
          <Fields {...p} of={FIELDS.intake} show={['note', 'photos']} />
        </Later>
      </Group>
    </>
  )
}
