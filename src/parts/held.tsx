/** Said before somebody fills in a form that would be refused: the colony is held for a suspected brood disease. */

import { exposureWords } from '../recovery/index.ts'
import type { ColonySummary } from '../store/index.ts'

export const HeldNotice = ({ summary: s }: { summary: ColonySummary }) => {
  if (s.outcome !== null) return null
  if (s.action === 'call-inspector')
    return (
      <div class="notice notice-late">
        <h2>Held: brood disease suspected</h2>
        <p>
          {s.actionWhy} Until it is recorded who cleared it, a move, moving out and uniting are refused here.
        </p>
      </div>
    )
  const { exposed } = s.plan
  return exposed === null ? null : (
    <div class="notice notice-late">
      <h2>Held: bound to {exposed.from}</h2>
      <p>{exposureWords(exposed)} Until then a move, moving out and uniting are refused here.</p>
    </div>
  )
}
