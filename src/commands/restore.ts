/** `resettle restore FILE [--replace]`: goes back to a backup. The database that was there is kept beside it. */
import { parseArgs } from 'node:util'
import { addDays, dayIn } from '../days.ts'
import { choicesOn } from '../messages/choices.ts'
import { apiTokensOn } from '../people/api-tokens.ts'
import { peopleOn } from '../people/index.ts'
import { machineZone } from '../server/house.ts'
import { dataFile, StoreError } from '../store/index.ts'
import { lettersOf } from '../store/letters.ts'
import { restore } from '../store/restore.ts'
import { settingsOf } from '../store/settings.ts'
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
        apiTokensOn(connection, () => now).revokeEvery()
        // So must no letter that was taken back since. The day's messages may have gone out already.
        lettersOf(connection).revokeEvery(now.toISOString())
        const zone = settingsOf(connection, () => {}).get('timeZone') ?? machineZone()
        choicesOn(connection).notBefore(addDays(dayIn(zone, now), 1))
      },
    })
    process.stdout.write(`restored: ${entries} entries, ${colonies} colonies, in ${file}\n`)
    if (kept !== null) process.stderr.write(`What was there is kept: ${kept}\n`)
    process.stderr.write(
      'Everybody has to sign in again; tokens of programs and addresses of letters are to be made anew.\n',
    )
    return 0
  })
