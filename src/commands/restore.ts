/** `resettle restore FILE [--replace]`: goes back to a backup. The database that was there is kept beside it. */
import { parseArgs } from 'node:util'
import { peopleOn } from '../people/index.ts'
import { dataFile, StoreError } from '../store/index.ts'
import { restore } from '../store/restore.ts'
import { saying } from './terminal.ts'

/** Exit code 0: restored. 2: not, and nothing was changed. */
export const run = (args: string[]): Promise<number> =>
  saying('restore', () => {
    const { values, positionals } = parseArgs({
      args,
      options: { replace: { type: 'boolean', default: false } },
      allowPositionals: true,
    })
    const [backup, ...more] = positionals
    if (backup === undefined || more.length > 0) throw new StoreError('name one backup file')
    const now = new Date()
    const file = dataFile({ make: true })
    const { kept, entries, colonies } = restore(backup, file, {
      replace: values.replace,
      now,
      prepare: (connection) => {
        // Browsers and links that were good back then must not come alive again.
        const people = peopleOn(connection, { clock: () => now })
        people.sessions.closeEvery()
        people.invites.voidEvery()
      },
    })
    process.stdout.write(`restored: ${entries} entries, ${colonies} colonies, in ${file}\n`)
    if (kept !== null) process.stderr.write(`What was there is kept: ${kept}\n`)
    process.stderr.write('Everybody has to sign in again.\n')
    return 0
  })
