/** The day of an entry, and its time where somebody may care to note it. */

import { COMMON, type DrawnIn, Fields, one, useWords } from '../../../forms/index.ts'
import type { EntryKind } from '../../../journal/index.ts'
import type { Frame } from '../../../parts/index.ts'

export interface EntryFieldsProps extends DrawnIn {
  frame: Frame
}

type DayProps = Omit<DrawnIn, 'prefix'> & { kind: EntryKind }

/** The day; a time only where one was noted before, or is wrong. */
export const DayField = ({ kind, ...p }: DayProps) => (
  <Fields
    {...p}
    of={COMMON}
    show={one(p.form.typed, 'at') === '' ? ['on'] : ['on', 'at']}
    with={{ on: { label: useWords().fields.days[kind] } }}
  />
)

export const DayAndTime = ({ kind, ...p }: DayProps) => (
  <Fields
    {...p}
    of={COMMON}
    show={[['on', 'at']]}
    with={{ on: { label: useWords().fields.days[kind] }, at: { label: useWords().record.timeOptional } }}
  />
)
