/** Which colonies are in doubt now: looks that disagree and are not settled, or something said of late that cannot be. */
import { addDays, type Day } from '../../days.ts'
import type { History } from '../../journal/index.ts'
import { type Plan, type Protocol, planOf } from '../../recovery/index.ts'
import { isInDoubt, type Words, wordsIn } from '../../words/index.ts'

/** What does not fit stays on Today for so many days, where no look is asked that would settle it (judgement). */
const SHOWN_DAYS = 5

/** The last thing that does not fit, if it is still worth a beekeeper's minute; null otherwise. */
export function doubtOf(
  plan: Plan,
  history: () => History | null,
  protocol: Protocol,
  w: Words = wordsIn('en'),
): string | null {
  const last = plan.surprises.at(-1)
  const said = w.reasons.all(plan.surprised.slice(-1))
  if (last === undefined || plan.lost !== null) return null
  if (isInDoubt(plan)) return said
  const all = history()
  return all === null || knownBefore(all, addDays(plan.asOf, -SHOWN_DAYS), protocol).includes(last)
    ? null
    : said
}

/** What did not fit by that day already; everything where the colony came after it. */
function knownBefore(history: History, day: Day, protocol: Protocol): string[] {
  if (history.intake.on > day) return []
  const then = { ...history, entries: history.entries.filter((e) => e.on <= day), outcome: null }
  return planOf(then, day, protocol).surprises
}
