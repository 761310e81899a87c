/** What was seen at the box. What is not tapped was not looked at, and proves nothing. */

import { FIELDS, Fields, Group, useWords } from '../../../forms/index.ts'
import { INSIDE } from '../asked.ts'
import type { EntryFieldsProps } from './common.tsx'
import { Foulbrood } from './visit-fields.tsx'

export const InspectionFields = (p: EntryFieldsProps) => {
  const { record } = useWords()
  return (
    <>
      <Fields {...p} of={FIELDS.inspection} show={['opened']} />
      <div class="inside">
        <Group legend={record.broodAndQueen}>
          <Fields {...p} of={FIELDS.inspection} show={INSIDE} />
        </Group>
      </div>
      <Group legend={record.theColony}>
        <Fields {...p} of={FIELDS.inspection} show={['lost', 'stores', 'signs']} />
        <Foulbrood />
        <Fields {...p} of={FIELDS.inspection} show={['temper', 'note', 'photos']} />
      </Group>
    </>
  )
}
