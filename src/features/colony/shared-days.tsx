/** Says that several people looked at the box on one day. Both visits count; but one of them may not have known. */

import { addDays, type Day } from '../../days.ts'
import { useWords } from '../../forms/index.ts'
import type { History } from '../../journal/index.ts'
import { sharedDays } from './two-visits.ts'

/** Older ones are in the journal for whoever looks for them. */
const SHOWN_DAYS = 14

export const SharedDays = ({ history, today }: { history: History; today: Day }) => {
  const { colony, dates } = useWords()
  const shown = sharedDays(history).filter((d) => d.on >= addDays(today, -SHOWN_DAYS))
  return shown.length === 0 ? null : (
    <div class="notice">
      {shown.map((d) => (
        <p>
          <b>{colony.shared.looked(d.people, dates.day(d.on, today))}</b> {colony.shared.whatNow}
        </p>
      ))}
    </div>
  )
}
