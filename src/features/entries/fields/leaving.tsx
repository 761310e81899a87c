/** Moving to another stand, leaving the yard, a box that was not reached. */

import { FIELDS, Fields, one } from '../../../forms/index.ts'
import { DayField, type EntryFieldsProps } from './common.tsx'
import { YardField } from './yard.tsx'

export const MoveFields = ({ yards, ...p }: EntryFieldsProps & { yards: string[] }) => (
  <>
    <div class="field-row">
      <YardField {...p} yards={yards} />
      <Fields {...p} of={FIELDS.move} show={['stand', 'distanceKm']} />
    </div>
    <DayField {...p} kind="move" />
    <Fields {...p} of={FIELDS.move} show={['note']} />
  </>
)

export const OutcomeFields = ({ others, ...p }: EntryFieldsProps & { others: string[] }) => (
  <>
    <Fields {...p} of={FIELDS.outcome} show={['what']} />
    <DayField {...p} kind="outcome" />
    <div class="of-united">
      <Fields {...p} of={FIELDS.outcome} show={['into']} with={{ into: { list: others } }} />
    </div>
    <div class="of-moved">
      <Fields {...p} of={FIELDS.outcome} show={['destination']} />
    </div>
    <div class="of-lost">
      <Fields {...p} of={FIELDS.outcome} show={['cause']} />
    </div>
    <Fields {...p} of={FIELDS.outcome} show={['note']} />
  </>
)

export const NoteFields = ({ decides, ...p }: EntryFieldsProps & { decides?: boolean }) => (
  <>
    <Fields {...p} of={FIELDS.note} show={['text', 'asks']} />
    <DayField {...p} kind="note" />
    <Fields
      {...p}
      of={FIELDS.note}
      show={decides || one(p.form.typed, 'settles') !== '' ? ['settles', 'photos'] : ['photos']}
    />
  </>
)

export const MissedFields = (p: EntryFieldsProps) => (
  <>
    <Fields {...p} of={FIELDS['missed-visit']} show={['reason']} />
    <DayField {...p} kind="missed-visit" />
    <Fields {...p} of={FIELDS['missed-visit']} show={['again', 'note']} />
  </>
)
