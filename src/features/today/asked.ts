/** Boxes that somebody asked to be looked at, until somebody else has been there or has answered. */
import { colonyPath } from '../../app/index.ts'
import { addDays, type Day } from '../../days.ts'
import { type History, isVisit, type Note } from '../../journal/index.ts'
import type { ColonySummary, JournalRow, Repository } from '../../store/index.ts'
import type { Words } from '../../words/index.ts'
import type { LookLine } from './hand-over.tsx'

/** A question nobody has answered for so long is no longer today's (judgement). */
const STANDS_DAYS = 30

/** Only journals with a note of these days are read. */
export function asked(store: Repository, inYard: readonly ColonySummary[], today: Day, w: Words): LookLine[] {
  const noted = new Set(store.happenings(addDays(today, -STANDS_DAYS), today, 'note').map((h) => h.colony))
  return inYard
    .filter((s) => noted.has(s.id))
    .flatMap((s) => {
      const colony = store.colony(s.id)
      const note = colony === null ? null : openAsk(colony, addDays(today, -STANDS_DAYS))
      return note === null
        ? []
        : [
            {
              tag: s.tag,
              path: colonyPath(s),
              when: w.parts.signedBy(w.dates.day(note.on, today), note.by),
              text: note.text,
            },
          ]
    })
}

interface Book {
  history: Pick<History, 'entries'>
  journal: readonly JournalRow[]
}

/**
 * The last note that asks, where nobody but who asked has been there or written since. In the order in which entries came
 * to be known: on one day, a look may come before the note that asks for it, or after.
 */
function openAsk({ history, journal }: Book, since: Day): Note | null {
  const standing = new Set(history.entries.map((e) => e.id))
  const entries = [...journal]
    .sort((a, b) => a.seq - b.seq)
    .map((r) => r.entry)
    .filter((e) => standing.has(e.id))
  const at = entries.findLastIndex((e) => e.kind === 'note' && e.asks !== undefined && e.on >= since)
  const note = entries[at]
  if (note?.kind !== 'note') return null
  const answered = entries
    .slice(at + 1)
    .some((e) => e.by !== note.by && (isVisit(e) || (e.kind === 'note' && e.asks === undefined)))
  return answered ? null : note
}
