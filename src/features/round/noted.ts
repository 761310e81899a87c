/** What was noted at the boxes with its time, for reckoning minutes. */
import { type Happening, KIND_TABLE, never } from '../../journal/index.ts'
import type { Noted, StopKind } from './pace.ts'

/** Given in passing, lid on or nearly so. */
const IN_PASSING = ['syrup', 'pollen']

/** What was done at the box, by the lid; null where nothing was that takes minutes. */
function stopKind({ kind, opened, what }: Happening): StopKind | null {
  const { lid } = KIND_TABLE[kind]
  switch (lid) {
    case 'says':
      return opened === true ? 'open' : 'outside'
    case 'off':
      return 'open'
    case 'on':
      return 'outside'
    case 'act':
      return what !== null && IN_PASSING.includes(what) ? 'outside' : 'act'
    case 'none':
      return null
    default:
      return never(lid)
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
