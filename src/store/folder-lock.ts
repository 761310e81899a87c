/**
 * One server on a folder. The lock is SQLite's own, on a file beside the database: the system lets go of it however the
 * process ends, so one that was killed leaves nothing to clear away. A number in a file would.
 */
import { existsSync } from 'node:fs'
import { dirname, join } from 'node:path'
import Database from 'better-sqlite3'
import { StoreError } from './migrate.ts'

const NAME = 'server.lock'

/** Milliseconds to wait for a server that is just ending, as when it is started again. */
const PATIENCE_MS = 3000

/** Kept, because a connection that nothing refers to is closed, and the lock goes with it. */
const held = new Set<Database.Database>()

/** Takes the folder of a database for this process; returns what lets go of it. Throws StoreError when another has it. */
export function lockFolder(file: string): () => void {
  const folder = dirname(file)
  const lock = new Database(join(folder, NAME), { timeout: PATIENCE_MS })
  try {
    lock.exec('BEGIN EXCLUSIVE')
  } catch (error) {
    lock.close()
    if (!(error instanceof Database.SqliteError) || !error.code.startsWith('SQLITE_BUSY')) throw error
    throw new StoreError(
      `Another Resettle server is running on ${folder}. Stop it first, or set RESETTLE_DATA to another folder.`,
    )
  }
  held.add(lock)
  return () => {
    held.delete(lock)
    lock.close()
  }
}

/** Whether a server has the folder of a database just now. */
export function isServed(file: string): boolean {
  const name = join(dirname(file), NAME)
  if (!existsSync(name)) return false
  const lock = new Database(name, { timeout: 0 })
  try {
    lock.exec('BEGIN EXCLUSIVE')
    return false
  } catch {
    return true
  } finally {
    lock.close()
  }
}
