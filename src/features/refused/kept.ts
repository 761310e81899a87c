/** What is kept of entries that could not be written. */
import { validate } from 'uuid'
import type { Problem } from '../../journal/index.ts'
import type { RefusedEntry } from '../../store/index.ts'

const LONGEST_TAG = 60

interface Sent {
  /** Whose entries they are. */
  person: string
  sentBy: string
  receivedAt: string
}

/** Those that can be named again by their id. `problems` number the entries from 1. */
export const keptOf = (
  entries: readonly unknown[],
  problems: readonly Problem[],
  sent: Sent,
): RefusedEntry[] =>
  entries.flatMap((entry, i): RefusedEntry[] => {
    if (typeof entry !== 'object' || entry === null) return []
    const { id, colony, tag } = entry as { id?: unknown; colony?: unknown; tag?: unknown }
    if (typeof id !== 'string' || !validate(id)) return []
    const name = typeof tag === 'string' ? tag : typeof colony === 'string' ? colony : '?'
    return [
      {
        id,
        ...sent,
        tag: name.slice(0, LONGEST_TAG),
        entry,
        problems: problems
          .filter((p) => (p.entry ?? 1) === i + 1)
          .map(({ field, message }) => ({ field, message })),
      },
    ]
  })
