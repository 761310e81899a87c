/** What was tapped in the kitchen at six says nothing of the wall at three: who is within call, what is kept clear. */
import type { Sheet } from '../../records/index.ts'

/** Minutes that what was tapped is good for, and minutes before “arrived” from which it was not tapped at the place (judgement). */
const GOOD_MINUTES = 180
const BEFORE_MINUTES = 30

const minutes = (at: string): number => Number(at.slice(0, 2)) * 60 + Number(at.slice(3))

/** Whether what was seen at `at` is asked again at `now` of the same day. */
export const isTooOld = (at: string, now: string): boolean => minutes(now) - minutes(at) > GOOD_MINUTES

/** Why what was tapped today is asked again at `now` ('15:00'); null where it stands, or nobody knows when it was tapped. */
export function tickedTooEarly({ check, work }: Sheet, now: string | undefined): string | null {
  const { tickedAt, doneOn } = check
  if (tickedAt === undefined) return null
  const arrived = work.on === doneOn ? work.arrivedAt : undefined
  if (arrived !== undefined && minutes(arrived) - minutes(tickedAt) > BEFORE_MINUTES)
    return `What is tapped before the cut was tapped at ${tickedAt}, before anybody arrived (${arrived}): look around, tap it again, and decide.`
  return now !== undefined && isTooOld(tickedAt, now)
    ? `What is tapped before the cut was tapped at ${tickedAt}, more than three hours ago: look around, tap it again, and decide.`
    : null
}
