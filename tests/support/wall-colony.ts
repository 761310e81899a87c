/** Small invented colonies for the tests of pages. */

import { planOf } from '../../src/decision/index.ts'
import type { Entry } from '../../src/journal/entry.ts'
import { type History, historyOf } from '../../src/journal/history.ts'
import type { Plan } from '../../src/recovery/plan-types.ts'

type Loose = Record<string, unknown> & { kind: Entry['kind']; on: string }

/** An id that sorts by `n`. */
const idNo = (n: number): string => `01900000-0000-7000-8000-${String(n).padStart(12, '0')}`

/** Entries of one colony as written: id, colony and signature are filled in. */
export const written = (entries: Loose[], tag = 'A-1'): Entry[] =>
  entries.map((e, i) => ({ id: idNo(i + 1), colony: tag, by: 'Ines', ...e }) as Entry)

/** A wall removal on 1 May 2026, the queen not seen, all stages of brood along. */
export const WALL: Loose = {
  kind: 'intake',
  on: '2026-05-01',
  removal: { type: 'wall', outdoorC: 24, sprayed: 'no', method: 'vacuum' },
  yard: 'North field',
  stand: '1',
  queen: 'unseen',
  brood: { eggs: 0.5, open: 1, capped: 1.5 },
  broodCare: 'closed-chest',
  bees: { frames: 5 },
  tiedComb: true,
}

export const look = (on: string, seen: Record<string, unknown> = {}): Loose => ({
  kind: 'inspection',
  on,
  opened: true,
  ...seen,
})

export function historyFrom(entries: Loose[], tag = 'A-1'): History {
  const history = historyOf(tag, written(entries, tag))
  if (history === null) throw new Error('the test needs an intake')
  return history
}

export const planFrom = (entries: Loose[], today: string): Plan => planOf(historyFrom(entries), today)
