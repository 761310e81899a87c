/**
 * The chain over the journal: every row holds a digest of itself and of the row before it. A row that was changed, lost or
 * slipped in makes its place known, and two journals that agree in one digest agree in everything before it. It guards
 * against disks and accidents, not against somebody who can write the file: they can write the digests too.
 */
import { createHash } from 'node:crypto'
import type Database from 'better-sqlite3'

/** What a digest is made of, besides the one before. */
export interface ChainedRow {
  id: string
  colony: string
  kind: string
  onDay: string
  replaces: string | null
  recordedAt: string
  recordedBy: string
  payload: string
}

/** Bytes of SHA-256 that are kept: an accident hits the same 16 bytes once in 2^128. */
const KEPT_BYTES = 16

/** The digest of a row. `before`: that of the row before it, '' for the first. */
export function linkOf(before: string, row: ChainedRow): string {
  const { id, colony, kind, onDay, replaces, recordedAt, recordedBy, payload } = row
  return createHash('sha256')
    .update(JSON.stringify([before, id, colony, kind, onDay, replaces, recordedAt, recordedBy, payload]))
    .digest()
    .subarray(0, KEPT_BYTES)
    .toString('base64url')
}

const COLUMNS = `seq, id, colony, kind, on_day AS onDay, replaces, recorded_at AS recordedAt,
  recorded_by AS recordedBy, payload, digest`

type Linked = ChainedRow & { seq: number; digest: string | null }

/** Rows looked at between two pauses: a few milliseconds. */
const SLICE = 300

/**
 * Goes along the chain, a slice at a time, and says where it does not hold; null after each slice without a fault. Every
 * slice is read by itself, so others can write between them: rows only ever come behind.
 */
export function* chainFaults(database: Database.Database): Generator<string | null> {
  const rows = database.prepare(`SELECT ${COLUMNS} FROM entry WHERE seq > ? ORDER BY seq LIMIT ${SLICE}`)
  let [last, before] = [0, '']
  for (;;) {
    const slice = rows.all(last) as Linked[]
    for (const row of slice) {
      const fault = faultOf(row, before)
      if (fault !== null) yield fault
      before = row.digest ?? before
    }
    const end = slice.at(-1)
    if (end === undefined) return
    last = end.seq
    yield null
  }
}

const faultOf = (row: Linked, before: string): string | null =>
  row.digest === null
    ? `entry ${row.seq} (${row.id}) has no digest: something else than this program wrote it`
    : row.digest === linkOf(before, row)
      ? null
      : `entry ${row.seq} (${row.id}) is not as it was written, or one before it is missing: its digest does not match`

/** The faults alone, the whole chain in one go. */
export const chainProblems = (database: Database.Database): string[] =>
  [...chainFaults(database)].filter((fault) => fault !== null)

/** Whether the journal has a chain: one of an earlier schema has none. */
export const hasChain = (database: Database.Database): boolean =>
  (database.pragma('table_info(entry)') as { name: string }[]).some((column) => column.name === 'digest')

const NO_UPDATE = 'entry_no_update'

/** Gives every row its digest, when a migration has just brought the column. Inside its transaction. */
export function chainUp(database: Database.Database): void {
  const guard = database.prepare("SELECT sql FROM sqlite_master WHERE type = 'trigger' AND name = ?").pluck()
  const sql = guard.get(NO_UPDATE)
  if (typeof sql === 'string') database.exec(`DROP TRIGGER ${NO_UPDATE}`)
  const put = database.prepare('UPDATE entry SET digest = ? WHERE seq = ?')
  let before = ''
  const rows = database.prepare(`SELECT ${COLUMNS} FROM entry ORDER BY seq`).all() as Linked[]
  for (const row of rows) {
    before = linkOf(before, row)
    put.run(before, row.seq)
  }
  if (typeof sql === 'string') database.exec(sql)
}
