/** `resettle verify`: proves the database whole, changing nothing. Safe while the server runs. */

import { existsSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { photoFolder, photoNow, shelfIn } from '../../photos/node.ts'
import { refused } from '../../result.ts'
import type { Store } from '../../store/index.ts'
import {
  backupFolder,
  dataFile,
  lossAgainst,
  lossWords,
  OlderError,
  openConnection,
  openStore,
  StoreError,
  wayOut,
  withOlderCopy,
} from '../../store/node.ts'
import { saying } from './terminal.ts'

/** Exit code 0: whole. 1: problems, one line each on stderr. 2: it cannot be opened. */
export const run = (args: string[]): Promise<number> =>
  saying('verify', async () => {
    const { positionals } = parseArgs({ args, allowPositionals: true })
    const [named, ...more] = positionals
    if (more.length > 0) throw new StoreError('give one database file, or none for the yard’s own')
    const file = named ?? dataFile()
    if (!existsSync(file)) throw new StoreError(`no database at ${file}`)
    try {
      const store = openStore(file, { migrate: false })
      try {
        return said(store, file)
      } finally {
        store.close()
      }
    } catch (error) {
      // The yard's own is brought up to date by the next start; a backup never is.
      if (named === undefined || !(error instanceof OlderError)) throw error
      process.stderr.write(
        `${file} is of an earlier version: a copy of it, brought up to date, is verified.\n`,
      )
      return await withOlderCopy(file, (store) => said(store, file))
    }
  })

/** Verifies and says what was found; gives the exit code. */
function said(store: Store, file: string): number {
  const { problems, compared, colonies, entries } = store.verify()
  problems.push(...missingPhotos(store, file), ...lostTo(file))
  for (const problem of problems) process.stderr.write(`${problem}\n`)
  if (problems.length > 0) {
    if (file === dataFile() && problems.some(isLoss)) process.stderr.write(`${wayOut(file)}\n`)
    return 1
  }
  if (!compared)
    process.stderr.write(
      'The plans in it were not compared: today’s rules have not made them. That is no fault; the next start makes them again.\n',
    )
  process.stdout.write(`whole: ${entries} entries, ${colonies} colonies\n`)
  return 0
}

/** Whether only a backup helps: plans are made again from the journal, and photos are files of their own. */
const isLoss = (problem: string): boolean =>
  /^(integrity check|the file|the journal is not complete)|digest/.test(problem)

/** Entries that only a backup has. A backup itself is held against none. */
function lostTo(file: string): string[] {
  if (file !== dataFile()) return []
  const connection = openConnection(file, { migrate: false })
  try {
    const loss = lossAgainst(connection.raw, backupFolder(file))
    return loss === null ? [] : [`the journal is not complete: ${lossWords(loss)}`]
  } finally {
    connection.raw.close()
  }
}

/** Photos that entries name and that are not beside the database, or are not what their name says. */
function missingPhotos(store: Store, file: string): string[] {
  const shelf = shelfIn(photoFolder(file))
  return [...store.journal()].flatMap(({ entry }) =>
    ('photos' in entry ? (entry.photos ?? []) : []).flatMap((id) => {
      const bytes = shelf.readNow(id)
      const read = bytes === null ? refused(['is missing']) : photoNow(id, bytes)
      return read.ok ? [] : read.problems.map((p) => `entry ${entry.id}: its photo ${id}.jpg ${p}`)
    }),
  )
}
