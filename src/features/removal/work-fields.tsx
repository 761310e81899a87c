/** What was done and found. Asked once: the intake takes it over. */

import { type DrawnIn, Fields, Group } from '../../forms/index.ts'
import { BeesAndBox, BroodAlong } from '../entries/index.ts'
import { PART_FIELDS } from './fields.ts'

export const WorkFields = (p: DrawnIn) => (
  <>
    <Group legend="Time on site">
      <Fields {...p} of={PART_FIELDS.work} show={['on']} />
      <div class="field-row clock-row">
        <Fields {...p} of={PART_FIELDS.work} show={['arrivedAt', 'openedAt', 'boxedAt', 'leftAt']} />
      </div>
      <Fields {...p} of={PART_FIELDS.work} show={['outdoorC', 'method']} />
    </Group>
    <Group legend="Queen and brood">
      <Fields {...p} of={PART_FIELDS.work} show={['queen', 'queenFoundAt']} />
      <BroodAlong {...p} />
    </Group>
    <Group legend="The box">
      <BeesAndBox {...p} />
    </Group>
    <Group legend="The hole">
      <Fields {...p} of={PART_FIELDS.work} show={['sealed', 'cleaned', 'left', 'note']} />
    </Group>
  </>
)
