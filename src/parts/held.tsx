/** Said before somebody fills in a form that would be refused: the colony is held for a suspected brood disease. */
import type { ColonySummary } from '../store/index.ts'

export const HeldNotice = ({ summary: s }: { summary: ColonySummary }) =>
  s.outcome !== null || s.action !== 'call-inspector' ? null : (
    <div class="notice notice-late">
      <h2>Held: brood disease suspected</h2>
      <p>
        {s.actionWhy} Until it is recorded who cleared it, a move, moving out and uniting are refused here.
      </p>
    </div>
  )
