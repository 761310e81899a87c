/**
 * `resettle person …`: accounts from the terminal, for the first operator and for one who is locked out.
 *
 *     list                          everybody
 *     add NAME --role ROLE          an account with a passphrase, asked for (or the first line of standard input)
 *     invite NAME --role ROLE       an account, and the link with which its owner chooses a passphrase
 *     link NAME                     a link to choose a new passphrase
 *     passphrase NAME [--keys]      a new passphrase, asked for
 *     role NAME ROLE                another role
 *     sign-out NAME [--keys]        ends every session
 *     close NAME | reopen NAME
 *
 * With --keys tokens and calendar addresses are taken back too; close always does that.
 */

import { existsSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { outsideFrom } from '../../app/node.ts'
import { goFallsOf } from '../../features/removal/node.ts'
import { type Outcome, type People, type Person, ROLES, type Role } from '../../people/index.ts'
import { peopleOn } from '../../people/node.ts'
import { dataFile, openConnection, removalsOf, StoreError, settingsOf } from '../../store/node.ts'
import { keysWords } from '../../words/index.ts'
import { machineZone } from '../services.ts'
import { portOf } from './serve.ts'
import { saying, secretLine } from './terminal.ts'

const USAGE =
  'usage: resettle person list | add NAME --role ROLE | invite NAME --role ROLE | link NAME | passphrase NAME [--keys] | role NAME ROLE | sign-out NAME [--keys] | close NAME | reopen NAME'

/** Exit code 0: done. 2: not, and nothing was changed. */
export const run = (args: string[]): Promise<number> =>
  saying('person', async () => {
    const { values, positionals } = parseArgs({
      args,
      options: { role: { type: 'string' }, keys: { type: 'boolean', default: false } },
      allowPositionals: true,
    })
    const [what = '', name = '', ...rest] = positionals
    const act = Object.hasOwn(ACTS, what) ? ACTS[what] : undefined
    if (act === undefined || (what !== 'list' && name === '')) throw new StoreError(USAGE)
    const file = dataFile({ make: true })
    if (what === 'list' && !existsSync(file)) throw new StoreError(`no database at ${file}`)
    const connection = openConnection(file)
    try {
      const people = peopleOn(connection, { clock: () => new Date() })
      const said = await act(people, name, { role: values.role ?? rest[0], keys: values.keys })
      if (what !== 'list' && isNoMore(people, name)) takeGo(connection, known(people, name).name)
      process.stdout.write(`${said}\n`)
      return 0
    } finally {
      connection.raw.close()
    }
  })

/** Decides nothing: closed, or a helper. */
function isNoMore(people: People, name: string): boolean {
  const person = people.accounts.byName(name)
  return person !== null && (person.state === 'closed' || person.role === 'helper')
}

/** Nothing is opened today on the word of somebody who decides no more. */
function takeGo(connection: ReturnType<typeof openConnection>, name: string): void {
  const zone = settingsOf(connection, () => {}).get('timeZone') ?? machineZone()
  goFallsOf(removalsOf(connection), { zone, now: new Date() }, { name, by: 'The command line' })
}

interface Asked {
  role: string | undefined
  /** Tokens and calendar addresses too. */
  keys: boolean
}

type Act = (people: People, name: string, asked: Asked) => string | Promise<string>

const ACTS: Record<string, Act> = {
  list: (people) =>
    people.accounts
      .list()
      .map((p) => [p.name, p.role, p.state, `${people.sessions.count(p.id)} signed in`].join('\t'))
      .join('\n') || 'nobody yet',
  add: async (people, name, { role }) => {
    const wanted = roleOf(role)
    const passphrase = await secretLine(`Passphrase for ${name}: `)
    const made = value(await people.make({ name, role: wanted, passphrase }))
    return `${made.name} can sign in as ${made.role}`
  },
  invite: (people, name, { role }) => {
    const { link } = value(people.invite({ name, role: roleOf(role), by: null }))
    return linkOf(link)
  },
  link: (people, name) => linkOf(people.invites.make(known(people, name).id, null)),
  passphrase: async (people, name, { keys }) => {
    const person = known(people, name)
    value(await people.putPassphrase(person.id, await secretLine(`New passphrase for ${person.name}: `)))
    const taken = keys ? people.keys.revokeAll(person.id) : 0
    return `${person.name} has a new passphrase and is signed out everywhere${keysSaid(people, person, taken)}`
  },
  role: (people, name, { role }) => {
    const changed = value(people.setRole(known(people, name).id, roleOf(role)))
    return `${changed.name} is ${changed.role} now`
  },
  'sign-out': (people, name, { keys }) => {
    const person = known(people, name)
    const ended = people.signOut(person.id, { keys })
    return `ended ${ended.sessions} sessions${keysSaid(people, person, ended.keys)}`
  },
  close: (people, name) => {
    const person = known(people, name)
    const taken = people.keys.count(person.id)
    return `${value(people.close(person.id)).name} is closed${keysSaid(people, person, taken)}`
  },
  reopen: (people, name) => `${value(people.reopen(known(people, name).id)).name} is open again`,
}

/** What became of tokens and calendar addresses, which end with no session and no passphrase. */
function keysSaid(people: People, person: Person, taken: number): string {
  if (taken > 0) return `; took back ${keysWords(taken)}`
  const left = people.keys.count(person.id)
  return left === 0 ? '' : `; ${keysWords(left)} not taken back: say --keys for that`
}

function roleOf(text: string | undefined): Role {
  const role = ROLES.find((r) => r === text)
  if (role === undefined) throw new StoreError(`give a role: ${ROLES.join(', ')}`)
  return role
}

function known(people: People, name: string): Person {
  const person = people.accounts.byName(name)
  if (person === null) throw new StoreError(`there is no account "${name}"`)
  return person
}

function value<T>(outcome: Outcome<T>): T {
  if (!outcome.ok)
    throw new StoreError(outcome.problems.map((p) => `${p.field} ${p.message}`.trim()).join('; '))
  return outcome.value
}

function linkOf(link: { token: string; expiresAt: string }): string {
  const base = outsideFrom(process.env).url ?? `http://127.0.0.1:${portOf(process.env.RESETTLE_PORT)}`
  return `${base}/invite/${link.token}\nworks once, until ${link.expiresAt}`
}
