/** A colony's journal as a page shows it: in order of what happened, with what became of each entry. */
import type { JournalLine } from '../../web/parts/journal.tsx'
import { dayWords } from '../../web/words/dates.ts'
import type { Day } from '../days.ts'
import { replacements } from '../journal/history.ts'
import type { JournalRow } from '../store/index.ts'

/** Oldest day first; on one day, in the order in which entries came to be known. */
export function journalLines(rows: readonly JournalRow[], today: Day): JournalLine[] {
  const replaced = replacements(rows.map((r) => r.entry))
  const byId = new Map(rows.map((r) => [r.entry.id, r]))
  return [...rows]
    .sort((a, b) => a.entry.on.localeCompare(b.entry.on) || a.seq - b.seq)
    .map(({ entry, recordedAt, recordedBy }) => {
      const by = replaced.get(entry.id)
      const row = by === undefined ? undefined : byId.get(by.id)
      return {
        entry,
        recordedAt,
        recordedBy,
        superseded:
          by === undefined
            ? null
            : {
                by: row?.recordedBy ?? by.by,
                on: dayWords((row?.recordedAt || by.on).slice(0, 10), today),
                withdrawn: by.kind === 'withdrawal',
                reason: by.kind === 'withdrawal' ? by.reason : null,
              },
      }
    })
}
