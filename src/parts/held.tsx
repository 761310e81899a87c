/** Said before somebody fills in a form that would be refused: the colony is held for a suspected brood disease. */

import { useWords } from '../forms/index.ts'
import { boundTo } from '../recovery/index.ts'
import type { ColonySummary } from '../store/index.ts'

export const HeldNotice = ({ summary: s }: { summary: ColonySummary }) => {
  const { colony, reasons } = useWords()
  const said = colony.held
  if (s.outcome !== null) return null
  if (s.action === 'call-inspector')
    return (
      <div class="notice notice-late">
        <h2>{said.suspected}</h2>
        <p>
          {reasons.all(s.plan.advice.reasons)} {said.untilCleared}
        </p>
      </div>
    )
  const { exposed } = s.plan
  return exposed === null ? null : (
    <div class="notice notice-late">
      <h2>{said.bound(exposed.from)}</h2>
      <p>
        {reasons.all([boundTo(exposed)])} {said.untilThen}
      </p>
    </div>
  )
}
