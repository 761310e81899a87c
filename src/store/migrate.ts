/**
 * Brings a database to this version's schema, all or nothing, and proves afterwards that no entry was lost.
 *
 * drizzle-kit writes the migrations and drizzle-orm reads them; applying them is ours because drizzle's own migrator
 * (0.45) leaves foreign keys on while a table is rebuilt, which silently deletes child rows, never runs a migration
 * stamped earlier than the last one applied, and commits before anybody can look.
 */
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type Database from 'better-sqlite3'
import { type MigrationMeta, readMigrationFiles } from 'drizzle-orm/migrator'
import { chainUp, hasChain } from './chain.ts'

export const MIGRATIONS_FOLDER = fileURLToPath(new URL('../../migrations', import.meta.url))

/** The database cannot be used as it is; the message says why and what to do. */
export class StoreError extends Error {
  override name = 'StoreError'
}

/** The database is of an earlier schema, and was not to be changed. */
export class OlderError extends StoreError {
  override name = 'OlderError'
}

/** The file itself is broken: nothing but a backup helps. */
export class DamagedError extends StoreError {
  override name = 'DamagedError'
}

export interface MigrateOptions {
  folder?: string
  /** Called before a database that holds entries is changed. By default a copy is put beside it, in backups/. */
  before?: (database: Database.Database) => void
}

/** The triggers without which the journal is not append-only. */
const GUARDS = ['entry_no_delete', 'entry_no_overwrite', 'entry_no_update'] as const

const LEDGER = '__drizzle_migrations'

/** How many migrations have yet to be applied. Throws StoreError when a newer program made this database. */
export function pendingMigrations(database: Database.Database, folder = MIGRATIONS_FOLDER): MigrationMeta[] {
  const known = readMigrationFiles({ migrationsFolder: folder })
  const applied = appliedStamps(database)
  const stamps = new Set(known.map((m) => m.folderMillis))
  if ([...applied].some((stamp) => !stamps.has(stamp)))
    throw new StoreError(
      'this database was made by a newer version of Resettle. Install that version, or restore an older backup.',
    )
  return known.filter((m) => !applied.has(m.folderMillis))
}

export function appliedStamps(database: Database.Database): Set<number> {
  if (!hasTable(database, LEDGER)) return new Set()
  const rows = database.prepare(`SELECT created_at FROM ${LEDGER}`).pluck().all() as (number | string)[]
  return new Set(rows.map(Number))
}

const hasTable = (database: Database.Database, name: string): boolean =>
  database.prepare("SELECT 1 FROM sqlite_master WHERE type = 'table' AND name = ?").get(name) !== undefined

/** Applies what is pending; returns how many migrations that was. Throws StoreError and changes nothing when one fails. */
export function migrate(database: Database.Database, options: MigrateOptions = {}): number {
  const { folder = MIGRATIONS_FOLDER, before = copyBeside } = options
  if (pendingMigrations(database, folder).length === 0) return 0
  if (hasTable(database, 'entry')) before(database)
  // Has no effect inside a transaction, so it is set here, on the connection.
  database.pragma('foreign_keys = OFF')
  try {
    return database.transaction(() => apply(database, folder)).immediate()
  } finally {
    database.pragma('foreign_keys = ON')
  }
}

/** Read again inside the transaction: another process may just have done the work. */
function apply(database: Database.Database, folder: string): number {
  const pending = pendingMigrations(database, folder)
  const journal = digest(database)
  const chained = hasTable(database, 'entry') && hasChain(database)
  database.exec(
    `CREATE TABLE IF NOT EXISTS ${LEDGER} (id SERIAL PRIMARY KEY, hash text NOT NULL, created_at numeric)`,
  )
  const note = database.prepare(`INSERT INTO ${LEDGER} (hash, created_at) VALUES (?, ?)`)
  for (const migration of pending) {
    for (const statement of migration.sql) database.exec(statement)
    note.run(migration.hash, migration.folderMillis)
  }
  if (!chained && hasChain(database)) chainUp(database)
  assertWhole(database, journal)
  return pending.length
}

/** Throwing here rolls everything back. */
function assertWhole(database: Database.Database, before: string | null): void {
  const fault = (what: string): never => {
    throw new StoreError(`a migration ${what}; nothing was changed`)
  }
  if ((database.pragma('foreign_key_check') as unknown[]).length > 0)
    fault('leaves rows without their parent')
  if (before !== null && digest(database) !== before) fault('changes or loses entries of the journal')
  const missing = missingGuards(database)
  // A rebuilt table comes without its triggers: the migration has to make them again.
  if (missing.length > 0) fault(`leaves the journal without its guard ${missing.join(', ')}`)
}

/** Which of the append-only triggers are not there. */
export function missingGuards(database: Database.Database): string[] {
  const there = database
    .prepare("SELECT name FROM sqlite_master WHERE type = 'trigger' AND tbl_name = 'entry'")
    .pluck()
    .all()
  return GUARDS.filter((name) => !there.includes(name))
}

/** One hash over every entry, in order. Null when there is no journal yet. */
function digest(database: Database.Database): string | null {
  if (!hasTable(database, 'entry')) return null
  const hash = createHash('sha256')
  const rows = database
    .prepare('SELECT seq, id, colony, recorded_at, recorded_by, payload FROM entry ORDER BY seq')
    .raw()
  for (const row of rows.iterate()) hash.update(JSON.stringify(row))
  return hash.digest('hex')
}

/** A consistent copy, made in one go, named after the last migration in it. Never overwrites an earlier copy. */
function copyBeside(database: Database.Database): void {
  if (database.memory) return
  const folder = join(dirname(database.name), 'backups')
  mkdirSync(folder, { recursive: true })
  const stamp = Math.max(0, ...appliedStamps(database))
  const name = (n: number): string =>
    join(folder, `before-migration-${stamp}${n === 0 ? '' : `-${n}`}.sqlite`)
  let n = 0
  while (existsSync(name(n))) n++
  database.prepare('VACUUM INTO ?').run(name(n))
}
