/**
 * A “go” is of the sheet as it was read. Whatever is said, tapped, taken off or merged after it, in whatever field and language,
 * takes its ground away until work has begun on it; once open, only what can kill does.
 */
import { type Decision, lastDayOf, type Sheet, visitBegun } from '../../records/index.ts'
import { canonical } from '../../store/index.ts'
import { HEAT_AT_START } from './heat.ts'

/** What a reader could take into account, as one string: not pictures, how somebody is reached, or when a tap was saved. */
export function asRead({ job, site, agreement, check, work }: Sheet): string {
  const { photos: _a, name: _b, phone: _c, email: _d, ...called } = job
  const { photos: _e, noted: _f, lookedAt: _g, ...found } = site
  const { tickedAt: _h, doneAt: _i, clearances = [], seconds = [], ...asked } = check
  return canonical({
    called,
    found,
    extra: agreement.extra,
    // Before anything is opened a note is of the place.
    seen: [work.note, work.temper],
    asked,
    // Signed after the “go”, for what is asked when work starts.
    seconds: seconds.filter((x) => x.item !== HEAT_AT_START).map((x) => ({ item: x.item, by: x.by })),
    clearances: clearances.map(({ hazard, who, licence }) => ({ hazard, who, licence })),
  })
}

/** Whether that is another sheet than the one on which “go” was said, and nothing has begun on it yet. */
export const isOtherwise = (read: Sheet, now: Sheet): boolean =>
  !begunOn(read, now.decision) && !begunOn(now, now.decision) && asRead(read) !== asRead(now)

/** It was begun, or gone on with, on the day of that decision, and not left before it. */
const begunOn = (s: Sheet, { on = lastDayOf(s), at = '' }: Partial<Decision> = {}): boolean =>
  visitBegun(s) && (lastDayOf(s) ?? on) === on && (s.work.leftAt ?? '24') >= at
