/** Accounts: made, changed, closed; never deleted, because their names sign entries. */

import { asc, eq, sql } from 'drizzle-orm'
import { v7 } from 'uuid'
import { type Language, languageOf } from '../languages.ts'
import { type FieldProblem, type Problems, type Result, refused } from '../result.ts'
import type { Connection } from '../store/index.ts'
import { nameKey, nameProblem, nameTyped, type Person } from './names.ts'
import type { Role } from './permissions.ts'
import { person } from './schema.ts'

type Row = typeof person.$inferSelect

/** `busy`: nothing is wrong, there were only too many at once. */
export type Refusal = FieldProblem & { busy?: true }
export type Outcome<T> = Result<{ value: T }, Problems<Refusal>>

export const done = <T>(value: T): Outcome<T> => ({ ok: true, value })
export const wrong = (field: string, message: string): Outcome<never> => refused([{ field, message }])

export interface Accounts {
  list(): Person[]
  byId(id: string): Person | null
  byName(name: string): Person | null
  /** The hashed passphrase of a name, with the account it belongs to; null for a name nobody has. */
  secretOf(name: string): { person: Person; passphrase: string | null } | null
  /** Whether nobody could sign in yet, so that the set-up page must be shown. */
  none(): boolean
  make(account: { name: string; role: Role; by: string | null; passphrase?: string }): Outcome<Person>
  setPassphrase(id: string, hash: string): void
  setRole(id: string, role: Role): Outcome<Person>
  /** Null: as the browser says. */
  setLanguage(id: string, language: Language | null): void
  close(id: string): Outcome<Person>
  reopen(id: string): Outcome<Person>
}

const personOf = (row: Row): Person => ({
  id: row.id,
  name: row.name,
  role: row.role,
  language: languageOf(row.language),
  state: row.closedAt !== null ? 'closed' : row.passphrase === null ? 'invited' : 'active',
  createdAt: row.createdAt,
  createdBy: row.createdBy,
})

const LAST = 'is the last operator who can sign in: make another one first'
const UNKNOWN = wrong('person', 'there is no such account')

export function accountsOn(connection: Connection, clock: () => Date): Accounts {
  const { db, write } = connection
  const value = sql.placeholder
  const every = db.select().from(person).orderBy(asc(person.createdAt), asc(person.id)).prepare()
  const one = db
    .select()
    .from(person)
    .where(eq(person.id, value('id')))
    .prepare()
  const named = db
    .select()
    .from(person)
    .where(eq(person.nameKey, value('key')))
    .prepare()
  const byId = (id: string): Person | null => {
    const row = one.get({ id })
    return row === undefined ? null : personOf(row)
  }
  const isLastOperator = (id: string): boolean =>
    every
      .all()
      .map(personOf)
      .filter((p) => p.role === 'operator' && p.state === 'active')
      .every((p) => p.id === id) && byId(id)?.role === 'operator'
  const change = (id: string, values: Partial<Row>): Outcome<Person> => {
    db.update(person).set(values).where(eq(person.id, id)).run()
    const changed = byId(id)
    return changed === null ? UNKNOWN : done(changed)
  }

  return {
    list: () => every.all().map(personOf),
    byId,
    byName(name) {
      const row = named.get({ key: nameKey(name) })
      return row === undefined ? null : personOf(row)
    },
    secretOf(name) {
      const row = named.get({ key: nameKey(name) })
      return row === undefined ? null : { person: personOf(row), passphrase: row.passphrase }
    },
    none: () => !every.all().some((row) => row.passphrase !== null),
    make: ({ name, role, by, passphrase }) =>
      write(() => {
        const kept = nameTyped(name)
        const problem = nameProblem(kept)
        if (problem !== null) return wrong('name', problem)
        if (named.get({ key: nameKey(kept) }) !== undefined)
          return wrong('name', 'is taken: names sign entries, so each belongs to one person for good')
        const id = v7()
        const createdAt = clock().toISOString()
        db.insert(person)
          .values({
            id,
            name: kept,
            nameKey: nameKey(kept),
            role,
            passphrase: passphrase ?? null,
            createdAt,
            createdBy: by,
          })
          .run()
        const made = byId(id)
        return made === null ? UNKNOWN : done(made)
      }),
    setPassphrase: (id, hash) => {
      change(id, { passphrase: hash })
    },
    setRole: (id, role) =>
      write(() => (role !== 'operator' && isLastOperator(id) ? wrong('role', LAST) : change(id, { role }))),
    setLanguage: (id, language) => {
      change(id, { language })
    },
    close: (id) =>
      write(() =>
        isLastOperator(id) ? wrong('person', LAST) : change(id, { closedAt: clock().toISOString() }),
      ),
    reopen: (id) => change(id, { closedAt: null }),
  }
}
