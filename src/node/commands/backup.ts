/** `resettle backup [FOLDER]`: a proven copy of the database, now. Safe while the server runs. */

import { existsSync } from 'node:fs'
import { resolve } from 'node:path'
import { parseArgs } from 'node:util'
import { backupFolder, dataFile, openConnection, StoreError, takeBackup } from '../../store/node.ts'
import { saying } from './terminal.ts'

/** Exit code 0: taken, its path on stdout. 2: not taken. */
export const run = (args: string[]): Promise<number> =>
  saying('backup', async () => {
    const { positionals } = parseArgs({ args, allowPositionals: true })
    const [folder, ...more] = positionals
    if (more.length > 0) throw new StoreError('give one folder, or none for the one beside the database')
    const file = dataFile()
    if (!existsSync(file)) throw new StoreError(`no database at ${file}`)
    const connection = openConnection(file, { migrate: false })
    try {
      const to = folder === undefined ? backupFolder(file) : resolve(folder)
      const backup = await takeBackup(connection, to, new Date())
      process.stdout.write(`${backup.file}\n`)
      return 0
    } finally {
      connection.raw.close()
    }
  })
