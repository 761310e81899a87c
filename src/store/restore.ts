/** Going back to a backup. What is replaced is kept. */

import { chmodSync, copyFileSync, existsSync, renameSync, rmSync } from 'node:fs'
import { dirname } from 'node:path'
import Database from 'better-sqlite3'
import { copyPhotos, photoFolder } from '../photos/node.ts'
import { backupFolder, backupProblem, sync } from './backup.ts'
import type { Connection } from './connection.ts'
import { giveUp } from './loss.ts'
import { StoreError } from './migrate.ts'
import { openConnection, storeOn } from './open.ts'

export interface RestoreOptions {
  /** A database that is there may be replaced. */
  replace: boolean
  now: Date
  /** Run on the restored copy before it takes its place. */
  prepare: (connection: Connection) => void
}

export interface Restored {
  /** Where the replaced database is kept; null when there was none. */
  kept: string | null
  entries: number
  colonies: number
}

const ENDS = ['', '-wal', '-shm'] as const

/**
 * Puts a copy of `backup` in the place of `file`, and the photos beside it with those that are there, brought up to date and verified first. Throws StoreError, having
 * changed nothing, when the backup is not whole, when there is a database and `replace` was not said, or when something
 * has it open.
 */
export function restore(backup: string, file: string, options: RestoreOptions): Restored {
  if (!existsSync(backup)) throw new StoreError(`there is no file ${backup}`)
  const problem = backupProblem(backup)
  if (problem !== null) throw new StoreError(`${backup} is not whole (${problem}); nothing was changed`)
  const there = existsSync(file)
  if (there && !options.replace)
    throw new StoreError(
      `${file} is there already: say --replace to put the backup in its place (it is kept beside it)`,
    )
  if (there) assertUnused(file)

  const part = `${file}.restoring`
  for (const end of ENDS) rmSync(part + end, { force: true })
  const counts = whole(part, () => {
    copyFileSync(backup, part)
    chmodSync(part, 0o600)
    const found = prepared(part, options.prepare)
    // Photos only ever join others, so a disk that is too full for them leaves the database as it was.
    copyPhotos(photoFolder(backup), photoFolder(file))
    return found
  })
  const kept = there ? setAside(file, options.now) : null
  renameSync(part, file)
  // What the backups hold beyond this one is given up on purpose.
  giveUp(backupFolder(file))
  sync(dirname(file))
  return { kept, ...counts }
}

/** Runs what makes the part file; where that fails nothing of it is left on what may be a full disk. */
function whole<T>(part: string, make: () => T): T {
  try {
    return make()
  } catch (error) {
    for (const end of ENDS) rmSync(part + end, { force: true })
    if (error instanceof Error && 'code' in error && error.code === 'ENOSPC')
      throw new StoreError('the disk is full; nothing was changed')
    throw error
  }
}

/** Migrates the copy, lets the caller prepare it, and proves it whole, as one file without a log beside it. */
function prepared(part: string, prepare: RestoreOptions['prepare']): { entries: number; colonies: number } {
  const connection = openConnection(part, { before: () => undefined })
  try {
    const store = storeOn(connection)
    prepare(connection)
    const report = store.verify()
    if (!report.ok)
      throw new StoreError(`the backup does not hold together: ${report.problems[0]}; nothing was changed`)
    connection.raw.pragma('journal_mode = DELETE')
    return { entries: report.entries, colonies: report.colonies }
  } finally {
    connection.raw.close()
    for (const end of ['-wal', '-shm']) rmSync(part + end, { force: true })
    sync(part)
  }
}

/**
 * Leaving WAL mode needs the file for oneself, so it fails while a server has it open; when it works, the log is folded
 * into the file. A file too damaged to be asked can only be moved.
 */
function assertUnused(file: string): void {
  let old: Database.Database | undefined
  try {
    old = new Database(file, { fileMustExist: true, timeout: 1000 })
    old.pragma('journal_mode = DELETE')
  } catch (error) {
    if (error instanceof Database.SqliteError && /^SQLITE_(BUSY|LOCKED)/.test(error.code))
      throw new StoreError(`${file} is in use: stop the server first. Nothing was changed.`)
  } finally {
    old?.close()
  }
}

function setAside(file: string, now: Date): string {
  const stamp = now.toISOString().replaceAll(':', '-')
  let kept = `${file}.before-restore-${stamp}`
  for (let n = 1; existsSync(kept); n++) kept = `${file}.before-restore-${stamp}-${n}`
  for (const end of ENDS) if (existsSync(file + end)) renameSync(file + end, kept + end)
  return kept
}
