/** Before serving: is the file whole? A book that is damaged is not opened; what is still good is named instead. */
import { existsSync, statSync } from 'node:fs'
import { backupFolder, newestGood } from './backup.ts'
import type { Connection } from './connection.ts'
import { DamagedError } from './migrate.ts'

/** Throws DamagedError when the file, though it can be opened, is not whole. Reads it through. */
export function assertIntact({ raw }: Connection): void {
  const found = raw.prepare('PRAGMA integrity_check(1)').pluck().get()
  if (found !== 'ok')
    throw new DamagedError(`${raw.name} is damaged (${String(found).replaceAll('\n', ' ')}).`)
}

/**
 * Throws DamagedError when there is nothing in the file although there are backups: starting an empty book now would hide
 * that the full one is gone.
 */
export function assertNotLost(file: string): void {
  const lost = !existsSync(file) ? 'is not there' : statSync(file).size === 0 ? 'is empty' : null
  const good = lost === null ? null : newestGood(backupFolder(file))
  if (good !== null) throw new DamagedError(`${file} ${lost}, but there are backups.`)
}

/** What can be done about a damaged database: the newest good backup and how to restore it. */
export function wayOut(file: string): string {
  const good = newestGood(backupFolder(file))
  return good === null
    ? 'There is no good backup beside it. If copies are kept on another machine, restore one: resettle restore FILE --replace'
    : `The newest good backup is ${good.file}, of ${good.at}. To go back to it: resettle restore ${good.file} --replace (the damaged file is kept).`
}
