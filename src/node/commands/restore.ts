/** `resettle restore FILE [--replace]`: goes back to a backup. The database that was there is kept beside it. */

import { existsSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { addDays, dayIn } from '../../days.ts'
import { choicesOn } from '../../features/messages/node.ts'
import { goesFall } from '../../features/removal/node.ts'
import type { CameBack } from '../../people/index.ts'
import { accountsIn, heldAgainst, keysOn, peopleOn } from '../../people/node.ts'
import { dataFile, lettersOf, removalsOf, restore, StoreError, settingsOf } from '../../store/node.ts'
import { machineZone } from '../services.ts'
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
    const former = existsSync(file) ? accountsIn(file) : []
    let cameBack: CameBack | null = null
    const { kept, entries, colonies } = restore(backup, file, {
      replace: values.replace,
      now,
      prepare: (connection) => {
        // Browsers and links that were good back then must not come alive again.
        const people = peopleOn(connection, { clock: () => now })
        people.sessions.closeEvery()
        people.invites.voidEvery()
        keysOn(connection, () => now).revokeEvery()
        if (former !== null) cameBack = heldAgainst(connection, former)
        // So must no letter that was taken back since. The day's messages may have gone out already.
        lettersOf(connection).revokeEvery(now.toISOString())
        const settings = settingsOf(connection, () => {})
        const zone = settings.get('timeZone') ?? machineZone()
        settings.set('setBack', now.toISOString())
        goesFall(removalsOf(connection), { zone, now })
        choicesOn(connection).notBefore(addDays(dayIn(zone, now), 1))
      },
    })
    process.stdout.write(`restored: ${entries} entries, ${colonies} colonies, in ${file}\n`)
    if (kept !== null) process.stderr.write(`What was there is kept: ${kept}\n`)
    process.stderr.write(
      'Everybody has to sign in again; tokens of programs, calendar addresses and addresses of letters are to be made anew.\n',
    )
    for (const line of inWords(cameBack)) process.stderr.write(`${line}\n`)
    return 0
  })

/** What is to be looked at among the accounts, a line each. Null: the replaced database could not be asked. */
function inWords(told: CameBack | null): string[] {
  if (told === null)
    return [
      'The database that was replaced could not be read: accounts closed since this backup are open again, so look through "resettle person list".',
    ]
  const line = (what: string, names: string[]): string[] =>
    names.length === 0 ? [] : [`${what}: ${names.join(', ')}`]
  return [
    ...line('Closed since this backup, and closed again', told.closed),
    ...line('Back in an older role', told.olderRole),
    ...line('Back with an older passphrase', told.olderPassphrase),
    ...(told.noOperator
      ? ['No operator can sign in: make one with "resettle person add NAME --role operator".']
      : []),
  ]
}
