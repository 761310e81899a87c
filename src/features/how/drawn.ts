/** Which drawings stand beside the steps of an act: what one looks for while doing it. */
import type { DrawingName } from '../../drawings/index.ts'
import type { Act } from '../../words/index.ts'

export const DRAWN: Partial<Record<Act, readonly DrawingName[]>> = {
  'first-brood-check': ['egg', 'larva', 'flat-caps', 'cup', 'open-cell', 'capped-cell'],
  'caged-queen': ['open-cell', 'capped-cell', 'queen'],
  'test-frame': ['egg', 'larva'],
  introduce: ['virgin', 'open-cell', 'capped-cell'],
  unite: ['sunken-caps', 'queen', 'capped-cell'],
  boost: ['flat-caps', 'queen'],
  'mite-wash': ['queen'],
  'close-up': ['sunken-caps', 'chalkbrood'],
  'take-out-queen': ['queen', 'virgin', 'drone'],
  'move-out': ['sunken-caps'],
}
