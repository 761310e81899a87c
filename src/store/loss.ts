/**
 * Is everything here that the backups hold? A journal only ever grows, so an entry that is in a backup and not in the
 * database was lost: with a log that was not copied along, on a disk that forgot, by a file put in the place of another.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { type Backup, listBackups } from './backup.ts'
import { hasChain } from './chain.ts'

export interface Loss {
  backup: Backup
  /** Entries of the backup that are not in the database, or read otherwise there. */
  missing: number
}

/** Backups that somebody went back behind, by name: what was entered after that is given up on purpose. */
const GIVEN_UP = 'given-up.json'

/** Notes, when a database is restored, that the backups there are now say nothing about what must be in it. */
export function giveUp(folder: string): void {
  if (!existsSync(folder)) return
  const names = new Set([...givenUp(folder), ...listBackups(folder).map((b) => b.name)])
  writeFileSync(join(folder, GIVEN_UP), JSON.stringify([...names]), { mode: 0o600 })
}

function givenUp(folder: string): string[] {
  try {
    const names: unknown = JSON.parse(readFileSync(join(folder, GIVEN_UP), 'utf8'))
    return Array.isArray(names) ? names.filter((n) => typeof n === 'string') : []
  } catch {
    return []
  }
}

/** Entries in a file, 0 when it cannot be read. */
const entriesIn = (file: string): number =>
  reading(file, (copy) => copy.prepare('SELECT count(*) FROM entry').pluck().get() as number) ?? 0

/** Backups with the most entries first; of as many, the newest. */
export const fullestFirst = (backups: readonly Backup[]): Backup[] =>
  backups
    .map((backup) => ({ backup, entries: entriesIn(backup.file) }))
    .sort((a, b) => b.entries - a.entries)
    .map(({ backup }) => backup)

/**
 * What the newest and the fullest backup hold and the database does not; null when all of it is there. A backup that cannot
 * be read says nothing.
 */
export function lossAgainst(database: Database.Database, folder: string): Loss | null {
  const gone = new Set(givenUp(folder))
  const backups = listBackups(folder).filter((b) => !gone.has(b.name))
  const [newest, fullest] = [backups[0], fullestFirst(backups)[0]]
  for (const backup of new Set([fullest, newest])) {
    const missing = backup === undefined ? 0 : missingFrom(database, backup.file)
    if (backup !== undefined && missing > 0) return { backup, missing }
  }
  return null
}

/** How many entries of a file are not in the database as they are in the file. */
const missingFrom = (database: Database.Database, file: string): number =>
  reading(file, (copy) => (sameUpTo(database, copy) ? 0 : countMissing(database, copy))) ?? 0

/** Whether the file's last digest is in the database, in its place: then everything before it is the same. */
function sameUpTo(database: Database.Database, copy: Database.Database): boolean {
  if (!hasChain(copy) || !hasChain(database)) return false
  const last = copy.prepare('SELECT seq, digest FROM entry ORDER BY seq DESC LIMIT 1').get() as
    | { seq: number; digest: string | null }
    | undefined
  if (last === undefined) return true
  const here = database.prepare('SELECT digest FROM entry WHERE seq = ?').pluck().get(last.seq)
  return last.digest !== null && here === last.digest
}

function countMissing(database: Database.Database, copy: Database.Database): number {
  const here = database.prepare('SELECT payload FROM entry WHERE id = ?').pluck()
  const rows = copy.prepare('SELECT id, payload FROM entry').iterate() as IterableIterator<{
    id: string
    payload: string
  }>
  let missing = 0
  for (const { id, payload } of rows) if (here.get(id) !== payload) missing++
  return missing
}

/** Looks into a file; null when it cannot be read. */
function reading<T>(file: string, look: (copy: Database.Database) => T): T | null {
  let copy: Database.Database | undefined
  try {
    copy = new Database(file, { readonly: true, fileMustExist: true })
    return look(copy)
  } catch {
    return null
  } finally {
    copy?.close()
  }
}
