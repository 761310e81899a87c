/** Before serving: is the file whole? A book that is damaged is not opened; what is still good is named instead. */
import { existsSync, statSync } from 'node:fs'
import { type Backup, backupFolder, backupProblem, listBackups } from './backup.ts'
import type { Connection } from './connection.ts'
import { fullestFirst, type Loss, lossAgainst } from './loss.ts'
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
  const good = lost === null ? null : bestGood(backupFolder(file))
  if (good !== null) throw new DamagedError(`${file} ${lost}, but there are backups.`)
}

/** Throws DamagedError when a backup holds entries that are not in the file any more. */
export function assertComplete({ raw }: Connection): void {
  const loss = lossAgainst(raw, backupFolder(raw.name))
  if (loss !== null) throw new DamagedError(`${raw.name} is not complete: ${lossWords(loss)}`)
}

/** Example: '31 entries of the backup resettle-….sqlite are not in it.' */
export const lossWords = ({ backup, missing }: Loss): string =>
  `${missing === 1 ? 'one entry' : `${missing} entries`} of the backup ${backup.name} ${missing === 1 ? 'is' : 'are'} not in it.`

/**
 * The backup to go back to: of those that are whole, the one with most of the journal. Not the one with the latest name: a
 * clock that ran ahead, or a database that had lost its entries already, gives those. Null when there is none.
 */
export const bestGood = (folder: string): Backup | null =>
  fullestFirst(listBackups(folder)).find((b) => backupProblem(b.file) === null) ?? null

/** What can be done about a damaged database: the fullest good backup, how to restore it, and how to bring along what only the damaged file has. */
export function wayOut(file: string): string {
  const good = bestGood(backupFolder(file))
  return good === null
    ? 'There is no good backup beside it. If copies are kept on another machine, restore one: resettle restore FILE --replace. Else what can be read goes into a new book: resettle export all.jsonl, then, with RESETTLE_DATA set to an empty folder, resettle import all.jsonl'
    : `The good backup with most entries is ${good.file}, of ${good.at}. To go back to it: resettle restore ${good.file} --replace (the damaged file is kept). Entries that only the damaged file has come back with: resettle export --from KEPT-FILE rest.jsonl, then resettle import rest.jsonl.`
}
