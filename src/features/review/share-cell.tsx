/** A share with its limits, as a cell. */
import { Share as ShareOf } from '../../parts/index.ts'
import type { Share } from './outcomes.ts'

export const ShareCell = ({ share: { share, lower, upper } }: { share: Share }) => (
  <td>
    <ShareOf of={{ survival: share, lower, upper }} />
  </td>
)
