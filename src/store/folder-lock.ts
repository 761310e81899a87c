/**
 * One server on a folder. The lock is SQLite's own, on a file beside the database: the system lets go of it however the
 * process ends, so one that was killed leaves nothing to clear away. A number in a file would.
 */
import { dirname, join } from 'node:path'
import Database from 'better-sqlite3'
import { StoreError } from './migrate.ts'

const NAME = 'server.lock'

/** Takes the folder of a database for this process; returns what lets go of it. Throws StoreError when another has it. */
export function lockFolder(file: string): () => void {
  const folder = dirname(file)
  const lock = new Database(join(folder, NAME), { timeout: 0 })
  try {
    lock.exec('BEGIN EXCLUSIVE')
  } catch (error) {
    lock.close()
    if (!(error instanceof Database.SqliteError) || !error.code.startsWith('SQLITE_BUSY')) throw error
    throw new StoreError(
      `Another Resettle server is running on ${folder}. Stop it first, or set RESETTLE_DATA to another folder.`,
    )
  }
  return () => lock.close()
}
