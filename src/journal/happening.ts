/** What happened at a box, in brief: enough to know who was where and when. Says nothing of what was seen or paid. */
import type { Day } from '../days.ts'
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
