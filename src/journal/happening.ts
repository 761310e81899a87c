/** What happened at a box, in brief: enough to know who was where and when. Says nothing of what was seen or paid. */
import type { Day } from '../days.ts'
import type { Noted, StopKind } from '../features/round/pace.ts'
import type { Entry, EntryKind } from './entry.ts'

export interface Happening {
  /** The colony's id. */
  colony: string
  /** Where the colony stands now. */
  yard: string
  kind: EntryKind
  on: Day
  /** 'HH:MM', where it was noted. */
  at: string | null
  by: string
  /** Of an inspection: whether the lid came off. */
  opened: boolean | null
  /** Of something given: what. */
  what: string | null
  /** Of a colony that left: the one it was united into, as it was named. */
  into: string | null
}

/** An entry in brief. */
export const happeningOf = (e: Entry, yard: string): Happening => ({
  colony: e.colony,
  yard,
  kind: e.kind,
  on: e.on,
  at: e.at ?? null,
  by: e.by,
  opened: e.kind === 'inspection' ? e.opened : null,
  what: e.kind === 'given' ? e.what : null,
  into: e.kind === 'outcome' ? (e.into ?? null) : null,
})

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
