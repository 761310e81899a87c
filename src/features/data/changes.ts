/** The history of changes: who entered, corrected, withdrew what and when; and the same as CSV. */

import { stringify } from 'csv-stringify/sync'
import type { Entry } from '../../journal/index.ts'
import type { TaggedRow } from '../../store/index.ts'

type Did = 'entered' | 'corrected' | 'withdrew'

export interface Change {
  seq: number
  at: string
  by: string
  did: Did
  tag: string
  entry: Entry
  /** The entry corrected or withdrawn, when it can be read. */
  before: Entry | null
  /** Fields that a correction changed, as dotted paths with the old and the new value. */
  fields: { path: string; from: unknown; to: unknown }[]
}

const did = (e: Entry): Did =>
  e.replaces === undefined ? 'entered' : e.kind === 'withdrawal' ? 'withdrew' : 'corrected'

/** `find` gives the row of an entry. */
export function changeOf(row: TaggedRow, find: (id: string) => TaggedRow | null): Change {
  const { entry } = row
  const before = entry.replaces === undefined ? null : (find(entry.replaces)?.entry ?? null)
  return {
    seq: row.seq,
    at: row.recordedAt,
    by: row.recordedBy,
    did: did(entry),
    tag: row.tag,
    entry,
    before,
    fields: before === null || entry.kind === 'withdrawal' ? [] : differences(before, entry),
  }
}

/** Fields that say what, not who or which. */
const ASIDE = new Set(['id', 'replaces', 'by', 'colony', 'kind'])

function differences(a: Entry, b: Entry): Change['fields'] {
  const [from, to] = [leaves(a), leaves(b)]
  return [...new Set([...from.keys(), ...to.keys()])]
    .filter((path) => !ASIDE.has(path) && JSON.stringify(from.get(path)) !== JSON.stringify(to.get(path)))
    .map((path) => ({ path, from: from.get(path), to: to.get(path) }))
}

/** Every value by its dotted path; lists whole. */
function leaves(value: object, prefix = ''): Map<string, unknown> {
  return new Map(
    Object.entries(value).flatMap(([key, v]) =>
      v !== null && typeof v === 'object' && !Array.isArray(v)
        ? [...leaves(v as object, `${prefix}${key}.`)]
        : [[`${prefix}${key}`, v] as const],
    ),
  )
}

export const CHANGE_COLUMNS = [
  'seq',
  'recorded_at',
  'recorded_by',
  'did',
  'colony',
  'kind',
  'on',
  'signed_by',
  'entry_id',
  'replaces',
  'changed',
  'content',
] as const

/** The header line of the CSV. */
export const changesHeader = (): string => csv([...CHANGE_COLUMNS])

/** One change as a CSV line. Cells that a spreadsheet would take for a formula get an apostrophe in front. */
export function changeLine(c: Change): string {
  const { id, colony: _colony, kind, on, by, replaces, ...content } = c.entry
  const changed = c.fields
    .map((f) => `${f.path}: ${JSON.stringify(f.from) ?? 'nothing'} -> ${JSON.stringify(f.to) ?? 'nothing'}`)
    .join('; ')
  return csv([
    c.seq,
    c.at,
    c.by,
    c.did,
    c.tag,
    kind,
    on,
    by,
    id,
    replaces ?? '',
    changed,
    JSON.stringify(content),
  ])
}

const csv = (cells: (string | number)[]): string =>
  stringify([cells], { record_delimiter: '\r\n', escape_formulas: true })
