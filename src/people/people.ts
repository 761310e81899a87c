/** Everything about people put together: signing in and out, setting up, inviting. One sentence for every refusal. */

import { type Result, refused } from '../result.ts'
import type { Connection } from '../store/index.ts'
import { type Accounts, accountsOn, done, type Outcome, wrong } from './accounts.ts'
import { type Invitation, type Invites, invitesOn } from './invites.ts'
import { type Keys, keysOn } from './keys.ts'
import { type Limits, limitsOf } from './limits.ts'
import type { Person } from './names.ts'
import { COST, type Cost, hashed, matches, outdated, passphraseProblem } from './passphrase.ts'
import type { Role } from './permissions.ts'
import { Busy, queueOf } from './queue.ts'
import { type Sessions, sessionsOn } from './sessions.ts'

export interface PeopleOptions {
  clock: () => Date
  /** How hard hashing is; less only in tests. */
  cost?: Cost
  limits?: Limits
  /** What the yards here are called: no passphrase is to be made of it. */
  yardNames?: () => readonly string[]
}

/** `wrong`: the name or the passphrase, never said which. `wait`: too many attempts. */
type Proof = Result<{ person: Person }, { why: 'wrong' } | { why: 'wait'; seconds: number }>
type SignIn = Result<{ token: string; person: Person }, { why: 'wrong' } | { why: 'wait'; seconds: number }>

export interface People {
  accounts: Accounts
  sessions: Sessions
  invites: Invites
  /** What works without signing in: signing out does not end it. */
  keys: Keys
  limits: Limits
  /** The first operator, signed in. Refused once anybody can sign in. */
  setUp(name: string, passphrase: string): Promise<Outcome<{ person: Person; token: string }>>
  signIn(name: string, passphrase: string, address: string): Promise<SignIn>
  /** Whether it is their passphrase, counted like signing in; nobody is signed in by it. */
  prove(name: string, passphrase: string, address: string): Promise<Proof>
  /** At the terminal: an account that can sign in at once. */
  make(account: { name: string; role: Role; passphrase: string }): Promise<Outcome<Person>>
  /** An account without a passphrase, and the link with which its owner chooses one. */
  invite(account: {
    name: string
    role: Role
    by: string | null
  }): Outcome<{ person: Person; link: Invitation }>
  /** Chooses the passphrase with a link, and signs in. Ends every other session of that person. */
  accept(token: string, passphrase: string): Promise<Outcome<{ person: Person; token: string }>>
  /** Changes a passphrase, knowing the old one. Ends every session but this one. */
  changePassphrase(person: Person, old: string, next: string, session: string): Promise<Outcome<Person>>
  /** At the terminal: sets a passphrase and ends every session. */
  putPassphrase(id: string, passphrase: string): Promise<Outcome<Person>>
  setRole(id: string, role: Role): Outcome<Person>
  /** Ends every session and, if asked, takes back every key. Returns how many of each. */
  signOut(id: string, options: { keys: boolean }): { sessions: number; keys: number }
  /** Shuts somebody out: sessions, links and keys are gone for good, and do not come back with the account. */
  close(id: string): Outcome<Person>
  reopen(id: string): Outcome<Person>
}

/** What a passphrase is compared with when there is none, so that it takes as long as when there is. */
const NOBODY = 'nobody has this passphrase'

const CROWDED = refused([
  {
    field: '',
    message: 'Too many people are at the door just now: try again in a moment.',
    busy: true as const,
  },
])

/** The same work, where a crowd that is too great for hashing is an answer and no bug. */
const unlessCrowded =
  <A extends unknown[], T>(work: (...args: A) => Promise<Outcome<T>>) =>
  async (...args: A): Promise<Outcome<T>> => {
    try {
      return await work(...args)
    } catch (error) {
      if (error instanceof Busy) return CROWDED
      throw error
    }
  }

export function peopleOn(connection: Connection, options: PeopleOptions): People {
  const { clock, cost = COST, limits = limitsOf(), yardNames = () => [] } = options
  const accounts = accountsOn(connection, clock)
  const sessions = sessionsOn(connection, clock)
  const invites = invitesOn(connection, clock)
  const keys = keysOn(connection, clock)
  const inTurn = queueOf(2, 32)
  const hash = (passphrase: string): Promise<string> => inTurn(() => hashed(passphrase, cost))
  let dummy: Promise<string> | undefined
  /** Made once; but when the crowd was too great for the first try, it is tried again. */
  const nobodysHash = (): Promise<string> => {
    dummy ??= hash(NOBODY).catch((error: unknown) => {
      dummy = undefined
      throw error
    })
    return dummy
  }

  /** The passphrase as it is kept, or what is wrong with it. */
  const choose = async (
    person: Pick<Person, 'id' | 'name'>,
    passphrase: string,
  ): Promise<Outcome<string>> => {
    const problem = passphraseProblem(passphrase, [person.name, ...yardNames()])
    return problem === null ? done(await hash(passphrase)) : wrong('passphrase', problem)
  }
  const put = (id: string, secret: string, but?: string): void =>
    connection.write(() => {
      accounts.setPassphrase(id, secret)
      sessions.closeAll(id, but)
    })

  const prove: People['prove'] = async (name, passphrase, address) => {
    const seconds = await limits.attempt(name, address)
    if (seconds > 0) return { ok: false, why: 'wait', seconds }
    const known = accounts.secretOf(name)
    const usable = known?.person.state === 'active' ? known.passphrase : null
    try {
      const nobodys = nobodysHash()
      // Whoever has a passphrase does not wait for it, so nobody would see its failure.
      nobodys.catch(() => undefined)
      const stored = usable ?? (await nobodys)
      const right = await inTurn(() => matches(passphrase.slice(0, 1000), stored))
      if (!right || usable === null || known === null) return { ok: false, why: 'wrong' }
      if (outdated(usable, cost)) accounts.setPassphrase(known.person.id, await hash(passphrase))
    } catch (error) {
      if (error instanceof Busy) return { ok: false, why: 'wait', seconds: 5 }
      throw error
    }
    await limits.right(name, address)
    return { ok: true, person: known.person }
  }

  return {
    accounts,
    sessions,
    invites,
    keys,
    limits,

    setUp: unlessCrowded(async (name: string, passphrase: string) => {
      const secret = await choose({ id: '', name }, passphrase)
      if (!secret.ok) return secret
      return connection.write(() => {
        if (!accounts.none()) return wrong('', 'this yard has been set up already: sign in')
        const made = accounts.make({ name, role: 'operator', by: null, passphrase: secret.value })
        return made.ok ? done({ person: made.value, token: sessions.open(made.value.id) }) : made
      })
    }),

    async make({ name, role, passphrase }) {
      const secret = await choose({ id: '', name }, passphrase)
      return secret.ok ? accounts.make({ name, role, by: null, passphrase: secret.value }) : secret
    },

    prove,
    async signIn(name, passphrase, address) {
      const proof = await prove(name, passphrase, address)
      return proof.ok ? { ...proof, token: sessions.open(proof.person.id) } : proof
    },

    invite: ({ name, role, by }) =>
      connection.write(() => {
        const made = accounts.make({ name, role, by })
        return made.ok ? done({ person: made.value, link: invites.make(made.value.id, by) }) : made
      }),

    accept: unlessCrowded(async (token: string, passphrase: string) => {
      const holder = invites.holder(token)
      if (holder === null) return wrong('', 'this link no longer works')
      const secret = await choose(holder, passphrase)
      if (!secret.ok) return secret
      return connection.write(() => {
        if (!invites.use(token)) return wrong('', 'this link no longer works')
        put(holder.id, secret.value)
        const person = accounts.byId(holder.id)
        return person === null
          ? wrong('', 'this link no longer works')
          : done({ person, token: sessions.open(person.id) })
      })
    }),

    changePassphrase: unlessCrowded(async (person: Person, old: string, next: string, session: string) => {
      const stored = accounts.secretOf(person.name)?.passphrase
      const wait = await limits.attempt(person.name, `session of ${person.id}`)
      if (wait > 0) return wrong('old', `was tried too often: wait ${Math.ceil(wait / 60)} minutes`)
      if (typeof stored !== 'string' || !(await inTurn(() => matches(old.slice(0, 1000), stored))))
        return wrong('old', 'is not your passphrase')
      const secret = await choose(person, next)
      if (!secret.ok) return secret
      await limits.right(person.name, `session of ${person.id}`)
      put(person.id, secret.value, session)
      return done(person)
    }),

    async putPassphrase(id, passphrase) {
      const person = accounts.byId(id)
      if (person === null) return wrong('person', 'there is no such account')
      const secret = await choose(person, passphrase)
      if (!secret.ok) return secret
      put(id, secret.value)
      invites.void(id)
      return done(person)
    },

    setRole: (id, role) => accounts.setRole(id, role),
    signOut: (id, options) =>
      connection.write(() => ({
        sessions: sessions.closeAll(id),
        keys: options.keys ? keys.revokeAll(id) : 0,
      })),
    close: (id) =>
      connection.write(() => {
        const closed = accounts.close(id)
        if (closed.ok) {
          sessions.closeAll(id)
          invites.void(id)
          keys.revokeAll(id)
        }
        return closed
      }),
    reopen: (id) =>
      connection.write(() => {
        // Of an account that an earlier version closed, which left them alone.
        if (accounts.byId(id)?.state === 'closed') keys.revokeAll(id)
        return accounts.reopen(id)
      }),
  }
}
