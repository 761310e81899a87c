/**
 * A “go” has an hour: what was tapped in the kitchen at six says nothing of the wall at three. Whatever is begun rests on
 * a “go”, and on ticks, of the last three hours; what was opened on one goes on for the day.
 */
import { type Sheet, visitsOf } from '../../records/index.ts'
import { isTooOld, minutesFrom } from '../../time-of-day.ts'
import { forecastOver } from './forecast.ts'
import { TICKED } from './item.ts'

/** Minutes before “arrived” from which what was tapped was not tapped at the place (judgement). */
const BEFORE_MINUTES = 30

/** The last hour of that kind on the day of the ticks, at whatever visit. */
const lastOf = (s: Sheet, hour: 'arrivedAt' | 'leftAt'): string | undefined =>
  visitsOf(s)
    .flatMap(({ on = s.check.doneOn, [hour]: at }) => (at !== undefined && on === s.check.doneOn ? [at] : []))
    .sort()
    .at(-1)

/** When somebody arrived on the day of the ticks, if what was tapped was tapped long before that. */
function arrivedAfter(s: Sheet, tickedAt: string): string | undefined {
  const arrived = lastOf(s, 'arrivedAt')
  return arrived !== undefined && minutesFrom(tickedAt, arrived) > BEFORE_MINUTES ? arrived : undefined
}

/** When whoever was there left again on that day, with nothing in a box: what was tapped before that is of another visit. */
function leftSince(s: Sheet, tickedAt: string): string | undefined {
  const left = s.work.boxedAt === undefined ? lastOf(s, 'leftAt') : undefined
  return left !== undefined && left >= tickedAt ? left : undefined
}

/** Whether what was tapped before the cut on the day of its ticks is asked again at `now` ('15:00'). */
export function tickedTooEarly(s: Sheet, now: string): boolean {
  // Ticks that came without an hour are no younger than what was decided on them.
  const tickedAt = s.check.tickedAt ?? s.decision?.at
  return (
    tickedAt !== undefined &&
    (arrivedAfter(s, tickedAt) !== undefined ||
      leftSince(s, tickedAt) !== undefined ||
      isTooOld(tickedAt, now))
  )
}

/** When a second person signed, on the day of the ticks, for what is not ticked: each item's last time. */
const signedAt = ({ check: { done, doneOn, seconds } }: Sheet): (string | undefined)[] =>
  TICKED.filter((id) => done?.includes(id) !== true).map(
    (id) => seconds?.findLast((x) => x.item === id && x.on === doneOn)?.at,
  )

/**
 * Why nothing is begun at `at` of the day of its “go”; null where it may, or nobody knows when it was decided. `before`: the sheet before it
 * was begun.
 */
export function ranOut(s: Sheet, at: string, before: Sheet = s): string | null {
  const decided = s.decision?.at
  if (decided !== undefined && at < decided) return `The go of ${decided} came only afterwards`
  const [rests] = [decided, s.check.tickedAt, ...signedAt(s)].filter((x) => x !== undefined).sort()
  if (rests === undefined) return null
  const arrived = arrivedAfter(s, rests)
  if (arrived !== undefined)
    return `The go of ${rests} is of before anybody arrived (${arrived}): look again before you begin`
  const left = leftSince(before, rests)
  if (left !== undefined && left <= at)
    return `Left at ${left}, and the go of ${rests} is of before: look again before you begin`
  if (isTooOld(rests, at)) return `The go of ${rests} has run out: look again before you begin`
  return forecastOver(s, s.decision?.on ?? s.check.doneOn ?? '', at)
}
