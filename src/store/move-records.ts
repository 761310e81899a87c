/** Move-out records: every save is a new version with who and when, the last one stands; a record can be erased. */

import { desc, eq, sql } from 'drizzle-orm'
import type { ColonyId } from '../ids.ts'
import { problemsOf } from '../journal/index.ts'
import { type MoveRecord, moveRecord as recordSchema } from '../records/index.ts'
import { type Problems, type Result, refused } from '../result.ts'
import { moveRecord } from './after-schema.ts'
import type { Connection } from './connection.ts'
import { canonical } from './fold.ts'
import { readPayload } from './payload.ts'
import type { Versioned } from './types.ts'

interface RecordVersion {
  /** The colony's id. */
  colony: ColonyId
  version: number
  savedAt: string
  savedBy: string
  record: MoveRecord
}

interface RecordStamp {
  /** UTC, ISO. */
  savedAt: string
  savedBy: string
}

export interface MoveRecords {
  /** Every version, newest first; empty when there is none. */
  of(colony: ColonyId): RecordVersion[]
  /** The last version of every colony's, by colony. */
  all(): Map<ColonyId, MoveRecord>
  /** Every version of every colony's: what an export keeps. */
  everything(): RecordVersion[]
  /** Takes over versions as they were; those that are here already are left. */
  take(versions: readonly RecordVersion[]): void
  /** `base`: the version that was shown when it was changed, 0 for none. Saving the same again is harmless. */
  save(colony: ColonyId, base: number, content: unknown, stamp: RecordStamp): Versioned<RecordVersion>
  /** Takes out every version. Returns how many there were. */
  erase(colony: ColonyId): number
}

type Row = typeof moveRecord.$inferSelect

/** The version in a row, or why it cannot be read. */
function readRecord(row: Row): Result<{ made: RecordVersion }, Problems<string>> {
  const read = readPayload(recordSchema, row.payload)
  if (!read.ok) return read
  const { colony, version, savedAt, savedBy } = row
  return { ok: true, made: { colony, version, savedAt, savedBy, record: read.made } }
}

/** Versions that cannot be read, a sentence each: for `verify`. */
export const recordProblems = ({ db }: Connection): string[] =>
  db
    .select()
    .from(moveRecord)
    .all()
    .flatMap((row) => {
      const read = readRecord(row)
      return read.ok
        ? []
        : read.problems.map(
            (p) => `version ${row.version} of the move-out record of colony ${row.colony} ${p}`,
          )
    })

const whole = (rows: readonly Row[]): RecordVersion[] =>
  rows.map(readRecord).flatMap((read) => (read.ok ? [read.made] : []))

export function moveRecordsOf(connection: Connection): MoveRecords {
  const { db } = connection
  const versions = db
    .select()
    .from(moveRecord)
    .where(eq(moveRecord.colony, sql.placeholder('colony')))
    .orderBy(desc(moveRecord.version))
    .prepare()
  const of = (colony: ColonyId): RecordVersion[] => whole(versions.all({ colony }))

  const write = (
    colony: ColonyId,
    base: number,
    content: MoveRecord,
    stamp: RecordStamp,
  ): Versioned<RecordVersion> => {
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
      if (!parsed.success) return refused(problemsOf(parsed.error, content))
      return connection.write(() => write(colony, base, parsed.data, stamp))
    },
    erase: (colony) => db.delete(moveRecord).where(eq(moveRecord.colony, colony)).run().changes,
  }
}
