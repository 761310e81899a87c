/**
 * Accounts after going back to a backup: who was shut out since must not come back in, and whoever came back with an older
 * role or passphrase is named, because only an operator knows why it had been changed.
 */

import Database from 'better-sqlite3'
import { eq } from 'drizzle-orm'
import type { Connection } from '../store/index.ts'
import { person } from './schema.ts'

type Row = typeof person.$inferSelect
/** An account as it stood in the database that is being replaced. */
export type Former = Pick<Row, 'id' | 'name' | 'nameKey' | 'role' | 'passphrase' | 'closedAt'>

/** Names, as they are kept. */
export interface CameBack {
  /** Closed again, because they were closed in the database that was replaced. */
  closed: string[]
  olderRole: string[]
  olderPassphrase: string[]
  /** Nobody can sign in as an operator any more: the terminal has to make one. */
  noOperator: boolean
}

/** The accounts in a database file of any schema; none before there were any. Null when it cannot be read. */
export function accountsIn(file: string): Former[] | null {
  let database: Database.Database | undefined
  try {
    database = new Database(file, { readonly: true, fileMustExist: true })
    const known = database
      .prepare("SELECT 1 FROM sqlite_master WHERE type = 'table' AND name = 'person'")
      .get()
    if (known === undefined) return []
    return database
      .prepare(
        'SELECT id, name, name_key AS nameKey, role, passphrase, closed_at AS closedAt FROM person ORDER BY id',
      )
      .all() as Former[]
  } catch {
    return null
  } finally {
    database?.close()
  }
}

/** Holds the accounts of a restored database against those it replaces: closes what was closed, and reports the rest. */
export function heldAgainst({ db, write }: Connection, former: readonly Former[]): CameBack {
  return write(() => {
    const told: CameBack = { closed: [], olderRole: [], olderPassphrase: [], noOperator: false }
    for (const now of db.select().from(person).orderBy(person.id).all()) {
      // A name is one person's for good, so an account made anew under it is still theirs.
      const then = former.find((f) => f.id === now.id) ?? former.find((f) => f.nameKey === now.nameKey)
      if (then === undefined || now.closedAt !== null) continue
      if (then.closedAt !== null) {
        db.update(person).set({ closedAt: then.closedAt }).where(eq(person.id, now.id)).run()
        told.closed.push(now.name)
        continue
      }
      if (then.role !== now.role) told.olderRole.push(now.name)
      if (then.passphrase !== now.passphrase) told.olderPassphrase.push(now.name)
    }
    const after = db.select().from(person).all()
    told.noOperator =
      after.some((p) => p.passphrase !== null) &&
      !after.some((p) => p.role === 'operator' && p.closedAt === null && p.passphrase !== null)
    return told
  })
}
