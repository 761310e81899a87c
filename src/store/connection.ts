/** One connection to the database file, set up the same way everywhere. */
import Database from 'better-sqlite3'
import { getTableColumns, type Placeholder, type SQL, sql } from 'drizzle-orm'
import { type BetterSQLite3Database, drizzle } from 'drizzle-orm/better-sqlite3'
import type { SQLiteTable } from 'drizzle-orm/sqlite-core'
import * as schema from './schema.ts'

export interface Connection {
  raw: Database.Database
  db: BetterSQLite3Database<typeof schema>
  /** Runs in one transaction that takes the write lock at once; joins the one under way, if any. */
  write<T>(work: () => T): T
  /** Runs on one snapshot, which writers do not disturb. */
  read<T>(work: () => T): T
}

/** Milliseconds to wait for another process that is writing (a command beside the server). */
const PATIENCE_MS = 5000

/**
 * Opens the file, or makes it. ':memory:' for a database that lives as long as the connection. `asIs`: the file must be
 * there and its journal mode, which is written into it, is left alone (a backup that is only looked at). `contents`: of a
 * database in memory, what it begins with.
 */
export function connect(file: string, options: { asIs?: boolean; contents?: Buffer } = {}): Connection {
  const asIs = options.asIs ?? false
  const raw = new Database(options.contents ?? file, {
    fileMustExist: asIs && file !== ':memory:',
    timeout: PATIENCE_MS,
  })
  if (!asIs) raw.pragma('journal_mode = WAL')
  // FULL: an acknowledged entry survives a power cut. WAL's default here, NORMAL, may lose the last ones.
  raw.pragma('synchronous = FULL')
  raw.pragma('foreign_keys = ON')
  // So that INSERT OR REPLACE fires delete triggers too.
  raw.pragma('recursive_triggers = ON')
  raw.pragma('trusted_schema = OFF')
  // 4 MB; what else is read again and again the system keeps.
  raw.pragma('cache_size = -4000')
  // What is erased is overwritten: names of customers do not lie on in free pages.
  raw.pragma('secure_delete = ON')
  return {
    raw,
    db: drizzle(raw, { schema }),
    write: (work) => (raw.inTransaction ? work() : raw.transaction(work).immediate()),
    read: (work) => (raw.inTransaction ? work() : raw.transaction(work).deferred()),
  }
}

/** A placeholder for every column, named as the column's key: for statements that are prepared once. */
export function placeholders<T extends SQLiteTable>(table: T): Record<keyof T['_']['columns'], Placeholder> {
  const keys = Object.keys(getTableColumns(table))
  return Object.fromEntries(keys.map((key) => [key, sql.placeholder(key)])) as Record<
    keyof T['_']['columns'],
    Placeholder
  >
}

/** On conflict, every column but `key` takes the value that was to be inserted. */
export function excluded<T extends SQLiteTable>(table: T, key: keyof T['_']['columns']): Record<string, SQL> {
  return Object.fromEntries(
    Object.entries(getTableColumns(table))
      .filter(([name]) => name !== key)
      .map(([name, column]) => [name, sql.raw(`excluded."${column.name}"`)]),
  )
}
