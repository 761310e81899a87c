/** Move-out records: every save is a new version with who and when, the last one stands; a record can be erased. */

import { desc, eq, sql } from 'drizzle-orm'
import { type Problem, problemsOf } from '../journal/index.ts'
import { type MoveRecord, moveRecord as recordSchema } from '../records/index.ts'
import { moveRecord } from './after-schema.ts'
import type { Connection } from './connection.ts'
import { canonical } from './fold.ts'

export interface RecordVersion {
  /** The colony's id. */
  colony: string
  version: number
  savedAt: string
  savedBy: string
  record: MoveRecord
}

export interface RecordStamp {
  /** UTC, ISO. */
  savedAt: string
  savedBy: string
}

export type RecordResult =
  | { ok: true; version: number }
  /** Somebody saved it since version `base` was shown. Nothing was written. */
  | { ok: false; newer: RecordVersion }
  | { ok: false; problems: Problem[] }

export interface MoveRecords {
  /** Every version, newest first; empty when there is none. */
  of(colony: string): RecordVersion[]
  /** The last version of every colony's, by colony. */
  all(): Map<string, MoveRecord>
  /** Every version of every colony's: what an export keeps. */
  everything(): RecordVersion[]
  /** Takes over versions as they were; those that are here already are left. */
  take(versions: readonly RecordVersion[]): void
  /** `base`: the version that was shown when it was changed, 0 for none. Saving the same again is harmless. */
  save(colony: string, base: number, content: unknown, stamp: RecordStamp): RecordResult
  /** Takes out every version. Returns how many there were. */
  erase(colony: string): number
}

type Row = typeof moveRecord.$inferSelect

/** The version in a row, or a sentence saying why it cannot be read. */
function readRecord(row: Row): RecordVersion | string {
  let payload: unknown
  try {
    payload = JSON.parse(row.payload)
  } catch {
    return 'is not JSON'
  }
  const parsed = recordSchema.safeParse(payload)
  const { colony, version, savedAt, savedBy } = row
  return parsed.success
    ? { colony, version, savedAt, savedBy, record: parsed.data }
    : 'does not fit the schema'
}

/** Versions that cannot be read, a sentence each: for `verify`. */
export const recordProblems = ({ db }: Connection): string[] =>
  db
    .select()
    .from(moveRecord)
    .all()
    .flatMap((row) => {
      const read = readRecord(row)
      return typeof read === 'string'
        ? [`version ${row.version} of the move-out record of colony ${row.colony} ${read}`]
        : []
    })

const whole = (rows: readonly Row[]): RecordVersion[] =>
  rows.map(readRecord).filter((r): r is RecordVersion => typeof r !== 'string')

export function moveRecordsOf(connection: Connection): MoveRecords {
  const { db } = connection
  const versions = db
    .select()
    .from(moveRecord)
    .where(eq(moveRecord.colony, sql.placeholder('colony')))
    .orderBy(desc(moveRecord.version))
    .prepare()
  const of = (colony: string): RecordVersion[] => whole(versions.all({ colony }))

  const write = (colony: string, base: number, content: MoveRecord, stamp: RecordStamp): RecordResult => {
    const [last] = of(colony)
    const payload = canonical(content)
    if (last !== undefined && canonical(last.record) === payload) return { ok: true, version: last.version }
    if (last !== undefined && last.version !== base) return { ok: false, newer: last }
    const version = (versions.get({ colony })?.version ?? 0) + 1
    db.insert(moveRecord)
      .values({ colony, version, ...stamp, payload })
      .run()
    return { ok: true, version }
  }

  const everything = (): RecordVersion[] =>
    whole(db.select().from(moveRecord).orderBy(moveRecord.colony, moveRecord.version).all())

  return {
    of,
    // The last version of a colony is the one that stays.
    all: () => new Map(everything().map((v) => [v.colony, v.record])),
    everything,
    take(taken) {
      for (const { record, ...version } of taken)
        db.insert(moveRecord)
          .values({ ...version, payload: canonical(record) })
          .onConflictDoNothing()
          .run()
    },
    save(colony, base, content, stamp) {
      const parsed = recordSchema.safeParse(content)
      if (!parsed.success) return { ok: false, problems: problemsOf(parsed.error, content) }
      return connection.write(() => write(colony, base, parsed.data, stamp))
    },
    erase: (colony) => db.delete(moveRecord).where(eq(moveRecord.colony, colony)).run().changes,
  }
}
