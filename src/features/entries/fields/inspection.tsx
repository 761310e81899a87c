/** What was seen at the box. What is not tapped was not looked at, and proves nothing. */

import { FIELDS, Fields, Group } from '../../../forms/index.ts'
import type { EntryFieldsProps } from './common.tsx'

export const InspectionFields = (p: EntryFieldsProps) => (
  <>
    <Fields {...p} of={FIELDS.inspection} show={['opened']} />
    <div class="inside">
      <Group legend="Brood and queen">
        <Fields
          {...p}
          of={FIELDS.inspection}
          show={[
            'eggs',
            'open',
            'capped',
            'onFreshComb',
            'cells',
            'cellCount',
            'queen',
            'searched',
            'framesOfBees',
            'framesOfBrood',
          ]}
        />
      </Group>
    </div>
    <Group legend="The colony">
      <Fields {...p} of={FIELDS.inspection} show={['lost', 'stores', 'signs']} />
      <p class="hint">
        Sunken or ropy brood, or a foul smell: close up, do not move or unite this colony, clean tools and
        gloves, and call the apiary inspector.
      </p>
      <Fields {...p} of={FIELDS.inspection} show={['temper', 'note', 'photos']} />
    </Group>
  </>
)
