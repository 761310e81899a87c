/** What was noted at the boxes with its time, for reckoning minutes. */
import type { Happening } from '../../journal/index.ts'
import type { Noted, StopKind } from './pace.ts'

/** Given in passing, lid on or nearly so. */
const IN_PASSING = ['syrup', 'pollen']

function stopKind({ kind, opened, what }: Happening): StopKind | null {
  switch (kind) {
    case 'inspection':
      return opened === true ? 'open' : 'outside'
    case 'given':
      return what !== null && IN_PASSING.includes(what) ? 'outside' : 'act'
    case 'queen-cage':
    case 'mite-wash':
      return 'act'
    case 'ties-removed':
      return 'open'
    default:
      return null
  }
}

/** What was noted with its time, for reckoning minutes. */
export const notedOf = (happenings: readonly Happening[]): Noted[] =>
  happenings.flatMap((h) => {
    const kind = stopKind(h)
    return kind === null || h.at === null
      ? []
      : [{ colony: h.colony, yard: h.yard, on: h.on, at: h.at, by: h.by, kind }]
  })
