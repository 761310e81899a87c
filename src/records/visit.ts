/**
 * A job is done in visits. The last one stands on the sheet; whoever comes back to what was left open, on another day or after “Left”,
 * begins one of their own, and those before stay in `earlier`.
 */
import { daysBetween } from '../days.ts'
import { minutesFrom } from '../time-of-day.ts'
import type { Sheet, Visit } from './removal-sheet.ts'

/** What is said of who came, looked and left, of how they came off in the plan, and of “go” and reason. */
const BEGINS_NOTHING = 'on arrivedAt leftAt outdoorC water method temper note withoutGo underGo knew'.split(
  ' ',
)

/** Something was opened, boxed or taken, boards left to the owner, a photo of it closed: whatever else a sheet tells of the work. */
export const hasBegun = ({ work }: Sheet): boolean =>
  Object.entries(work).some(([said, value]) => value !== undefined && !BEGINS_NOTHING.includes(said))

/** The last day on which it was begun or gone on with, as far as the sheet says. */
export const lastDayOf = ({ work: { on, underGo, withoutGo } }: Sheet): string | undefined =>
  [on, underGo?.on, withoutGo?.on]
    .filter((day) => day !== undefined)
    .sort()
    .at(-1)

/** What is said of one visit, and never of the one before it. */
export const OF_VISIT = ['arrivedAt', 'openedAt', 'leftAt', 'outdoorC', 'water'] as const

/** The last visit, as far as it is said. */
export const lastVisit = ({ work }: Sheet): Visit =>
  Object.fromEntries(
    (['on', ...OF_VISIT, 'underGo'] as const).flatMap((key) =>
      work[key] === undefined ? [] : [[key, work[key]]],
    ),
  )

/** All visits, the first one first. */
export const visitsOf = (s: Sheet): Visit[] => [...(s.work.earlier ?? []), lastVisit(s)]

/** At the last visit something was begun or gone on with; of the only one whatever the sheet tells says so. */
export const visitBegun = (s: Sheet): boolean =>
  s.work.earlier === undefined
    ? hasBegun(s)
    : [s.work.openedAt, s.work.boxedAt, s.work.underGo].some((said) => said !== undefined)

/** Left again on that day, with nothing in a box, after it was opened: whoever comes back looks again. */
export function leftOpen({ work: w }: Sheet, day: string): boolean {
  const { leftAt, underGo, on = day } = w
  const begun = w.openedAt ?? (underGo?.on === day ? underGo.at : '')
  return leftAt !== undefined && on === day && w.boxedAt === undefined && begun <= leftAt
}

/** Begun, or gone on with, on that day, and not left open since: its “go” is not asked for its hour again. */
export const isUnderWay = (s: Sheet, day: string): boolean =>
  visitBegun(s) && (lastDayOf(s) ?? day) === day && !leftOpen(s, day)

const DAY_HOURS = 24

/** Hours from the first opening to the box, over all days; undefined where either is not said. */
export function openToBoxed(s: Sheet): number | undefined {
  const { boxedAt, on } = s.work
  const first = visitsOf(s).find(({ openedAt }) => openedAt !== undefined)
  if (first?.openedAt === undefined || boxedAt === undefined) return undefined
  const days = first.on === undefined || on === undefined ? 0 : daysBetween(first.on, on)
  const hours = days * DAY_HOURS + minutesFrom(first.openedAt, boxedAt) / 60
  // Over midnight, in one visit.
  return Math.round((hours < 0 ? hours + DAY_HOURS : hours) * 100) / 100
}
