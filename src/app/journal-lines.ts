/** A colony's journal as a page shows it: in order of what happened, with what became of each entry. */

import { dayIn } from '../days.ts'
import { replacements } from '../journal/index.ts'
import type { Frame, JournalLine } from '../parts/index.ts'
import type { JournalRow } from '../store/index.ts'

/** Oldest day first; on one day, in the order in which entries came to be known. */
export function journalLines(
  rows: readonly JournalRow[],
  frame: Pick<Frame, 'today' | 'zone'>,
): JournalLine[] {
  const replaced = replacements(rows.map((r) => r.entry))
  const byId = new Map(rows.map((r) => [r.entry.id, r]))
  return [...rows]
    .sort((a, b) => a.entry.on.localeCompare(b.entry.on) || a.seq - b.seq)
    .map(({ entry, recordedBy, recordedAt }) => {
      const by = byId.get(replaced.get(entry.id)?.id ?? '')
      const recordedOn = dayIn(frame.zone, new Date(recordedAt))
      return { entry, recordedBy, recordedOn, superseded: by === undefined ? null : superseded(by, frame) }
    })
}

/** What one form wrote: the entry of that id first, then what it wrote of the same colony at the same moment. */
export function savedTogether(rows: readonly JournalRow[], id: string | undefined): JournalRow[] {
  const first = rows.find((r) => r.entry.id === id)
  if (first === undefined) return []
  const { on, kind } = first.entry
  // What is corrected or moved stands alone; of a visit, everything that was done there belongs together.
  const others =
    kind === 'inspection' && first.entry.replaces === undefined
      ? rows.filter(
          (r) =>
            r !== first &&
            r.recordedAt === first.recordedAt &&
            r.entry.on === on &&
            r.entry.replaces === undefined,
        )
      : []
  return [first, ...others]
}

function superseded(
  by: JournalRow,
  frame: Pick<Frame, 'today' | 'zone'>,
): NonNullable<JournalLine['superseded']> {
  return {
    by: by.recordedBy,
    on: dayIn(frame.zone, new Date(by.recordedAt)),
    withdrawn: by.entry.kind === 'withdrawal',
    reason: by.entry.kind === 'withdrawal' ? by.entry.reason : null,
  }
}
