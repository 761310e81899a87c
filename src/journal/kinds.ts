/**
 * Every kind of entry in one table: its place within a day, whether somebody was at the box, whether the lid came off, what
 * writing it takes, and its name. Whatever else needs a list of kinds reads it here.
 */
import type { Entry, EntryKind } from './entry.ts'

/** What a person must be allowed to do to write an entry; a withdrawal is judged by what it takes back. */
type WriteRight = 'record-visit' | 'log-intake' | 'record-outcome' | 'clear-disease' | 'correct-own'

export interface KindFacts {
  /** Order within a day where no times are given: look first, then act. */
  rank: number
  /** Somebody was at the box. `leaves`: they were, and the colony left with them, so nothing is asked any more. */
  visit: 'yes' | 'no' | 'leaves'
  /** Whether the box was opened; 'says': the entry itself says so. `act`: something done, briefly. */
  lid: 'off' | 'on' | 'says' | 'act' | 'none'
  right: WriteRight
  /** Named in passing: 'the visit'. */
  name: string
}

export const KIND_TABLE: Record<EntryKind, KindFacts> = {
  intake: { rank: 0, visit: 'no', lid: 'none', right: 'log-intake', name: 'the intake' },
  move: {
    rank: 1,
    visit: 'yes',
    lid: 'none',
    right: 'record-visit',
    name: 'the move',
  },
  'queen-cage': {
    rank: 2,
    visit: 'yes',
    lid: 'act',
    right: 'record-visit',
    name: 'the look at the queen’s cage',
  },
  inspection: {
    rank: 3,
    visit: 'yes',
    lid: 'says',
    right: 'record-visit',
    name: 'the visit',
  },
  'disease-cleared': {
    rank: 4,
    visit: 'no',
    lid: 'none',
    right: 'clear-disease',
    name: 'the clearance of disease',
  },
  'mite-wash': {
    rank: 5,
    visit: 'yes',
    lid: 'act',
    right: 'record-visit',
    name: 'the mite wash',
  },
  'ties-removed': {
    rank: 6,
    visit: 'yes',
    lid: 'off',
    right: 'record-visit',
    name: 'the comb ties taken off',
  },
  given: { rank: 7, visit: 'yes', lid: 'act', right: 'record-visit', name: 'what was given' },
  note: { rank: 8, visit: 'no', lid: 'none', right: 'record-visit', name: 'the note' },
  'missed-visit': {
    rank: 9,
    visit: 'no',
    lid: 'none',
    right: 'record-visit',
    name: 'the missed visit',
  },
  outcome: {
    rank: 10,
    visit: 'leaves',
    lid: 'none',
    right: 'record-outcome',
    name: 'the leaving',
  },
  withdrawal: {
    rank: 11,
    visit: 'no',
    lid: 'none',
    right: 'correct-own',
    name: 'the withdrawal',
  },
}

/** One value of every kind. */
export const eachKind = <T>(value: (f: KindFacts) => T): Record<EntryKind, T> =>
  Object.fromEntries(Object.entries(KIND_TABLE).map(([kind, f]) => [kind, value(f)])) as Record<EntryKind, T>

/** Somebody was at the box. How it left counts too. */
export const wasThere = (e: Pick<Entry, 'kind'>): boolean => KIND_TABLE[e.kind].visit !== 'no'

/** A visit that leaves the colony where it is: what it asks for next counts from it. */
export const isVisit = (e: Pick<Entry, 'kind'>): boolean => KIND_TABLE[e.kind].visit === 'yes'

/** For the end of a switch over kinds (or other unions): the compiler names the case that was forgotten. */
export function never(x: never): never {
  throw new Error(`not a case that is known: ${JSON.stringify(x)}`)
}
