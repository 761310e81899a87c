/**
 * Backups: whole copies of the database, taken while it is in use (SQLite's online backup), each proved good before it
 * gets its name. A file that is called a backup is one.
 */

import {
  chmodSync,
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
} from 'node:fs'
import { open } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import Database from 'better-sqlite3'
import { copyPhotos, photoFolder } from '../photos/node.ts'
import { chainProblems, hasChain } from './chain.ts'
import type { Connection } from './connection.ts'
import { appliedStamps, pendingMigrations, StoreError } from './migrate.ts'

export interface Backup {
  /** Whole path. */
  file: string
  name: string
  /** When it was taken, UTC ISO. */
  at: string
  bytes: number
}

/** Beside the database. */
export const backupFolder = (database: string): string => join(dirname(database), 'backups')

const NAME = /^resettle-(\d{4}-\d\d-\d\d)T(\d\d)-(\d\d)-(\d\d)\.(\d{3})Z(?:-\d+)?\.sqlite$/

/** Of a backup or a photo. */
const PART = /^(resettle-.+\.sqlite|[0-9a-f]{64}\.jpg\.[0-9a-f]{8})\.part(-wal|-shm|-journal)?$/

const nameAt = (at: Date): string => `resettle-${at.toISOString().replaceAll(':', '-')}`

/** Backups in the folder, newest first. Files that are called otherwise are none of ours. */
export function listBackups(folder: string): Backup[] {
  if (!existsSync(folder) || !statSync(folder).isDirectory()) return []
  return readdirSync(folder)
    .flatMap((name) => {
      const parts = NAME.exec(name)
      if (parts === null) return []
      const [, day, h, m, s, ms] = parts
      const file = join(folder, name)
      return [{ file, name, at: `${day}T${h}:${m}:${s}.${ms}Z`, bytes: statSync(file).size }]
    })
    .sort((a, b) => (a.at === b.at ? (a.name < b.name ? 1 : -1) : a.at < b.at ? 1 : -1))
}

/**
 * Takes a backup now, with the photos beside it that are not there yet. Rejects, leaving no backup behind, when the copy
 * or a photo cannot be written or the copy is not whole.
 */
export async function takeBackup(
  connection: Connection,
  folder: string,
  at: Date,
  prove: Prove = backupProblem,
): Promise<Backup> {
  mkdirSync(folder, { recursive: true, mode: 0o700 })
  const photos = [photoFolder(connection.raw.name), photoFolder(join(folder, 'any'))]
  for (const left of [folder, ...photos]) clearParts(left, at)
  const file = freeName(folder, at)
  const part = `${file}.part`
  try {
    await connection.raw.backup(part)
    await synced(part)
    chmodSync(part, 0o600)
    settle(part)
    const problem = await prove(part)
    if (problem !== null) throw new StoreError(`the copy is not whole (${problem})`)
    await synced(part)
    // Before it has its name: a backup without its photos would count as the day's, and they would wait until tomorrow.
    copyPhotos(photoFolder(connection.raw.name), photoFolder(file))
    renameSync(part, file)
    sync(folder)
  } catch (error) {
    for (const end of ['', '-wal', '-shm', '-journal']) rmSync(part + end, { force: true })
    throw error
  }
  return { file, name: file.slice(folder.length + 1), at: at.toISOString(), bytes: statSync(file).size }
}

/** Milliseconds without a byte written after which a part belongs to nobody any more. */
const ABANDONED_MS = 3_600_000

/** Clears away what killed backups left: copies half made, which would fill the disk one after the other. */
function clearParts(folder: string, now: Date): void {
  if (!existsSync(folder)) return
  for (const name of readdirSync(folder)) {
    const file = join(folder, name)
    if (PART.test(name) && now.getTime() - statSync(file).mtimeMs > ABANDONED_MS)
      rmSync(file, { force: true })
  }
}

function freeName(folder: string, at: Date): string {
  const name = (n: number): string => join(folder, `${nameAt(at)}${n === 0 ? '' : `-${n}`}.sqlite`)
  let n = 0
  while (existsSync(name(n))) n++
  return name(n)
}

/** One file instead of a file with a log beside it, so that it can be copied by anything. */
function settle(file: string): void {
  const copy = new Database(file, { fileMustExist: true })
  try {
    copy.pragma('journal_mode = DELETE')
  } finally {
    copy.close()
  }
}

/** Onto the disk, not only into its cache. */
export function sync(path: string): void {
  const handle = openSync(path, 'r')
  try {
    fsyncSync(handle)
  } finally {
    closeSync(handle)
  }
}

/** The same of a large file, which may take seconds: meanwhile others are answered. */
async function synced(path: string): Promise<void> {
  const handle = await open(path, 'r')
  try {
    await handle.sync()
  } finally {
    await handle.close()
  }
}

/** Why a file cannot serve as a backup, or null; wherever that is found out. */
export type Prove = (file: string) => string | null | Promise<string | null>

/** Why a file cannot serve as a backup, or null. Reads it through; changes nothing. */
export function backupProblem(file: string): string | null {
  let copy: Database.Database | undefined
  try {
    copy = new Database(file, { readonly: true, fileMustExist: true })
    const found = copy.prepare('PRAGMA integrity_check(1)').pluck().get()
    if (found !== 'ok') return `integrity check: ${found}`
    if ((copy.pragma('foreign_key_check') as unknown[]).length > 0) return 'rows without their parent'
    pendingMigrations(copy)
    copy.prepare('SELECT count(*) FROM entry').get()
    return hasChain(copy) ? (chainProblems(copy)[0] ?? null) : null
  } catch (error) {
    return error instanceof Error ? error.message : String(error)
  } finally {
    copy?.close()
  }
}

/** Whether the backup was made by the schema this database has now. */
export function sameSchema(backup: Backup, connection: Connection): boolean {
  let copy: Database.Database | undefined
  try {
    copy = new Database(backup.file, { readonly: true, fileMustExist: true })
    const newest = (database: Database.Database): number => Math.max(0, ...appliedStamps(database))
    return newest(copy) === newest(connection.raw)
  } catch {
    return false
  } finally {
    copy?.close()
  }
}
