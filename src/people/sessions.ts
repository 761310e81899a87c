/** Browsers that are signed in. The browser holds a random token, the database its digest; closing is deleting. */

import { and, eq, ne, sql } from 'drizzle-orm'
import { languageOf } from '../languages.ts'
import type { Connection } from '../store/index.ts'
import type { Person } from './names.ts'
import { person, session } from './schema.ts'
import { digestOf, newToken } from './tokens.ts'

const HOUR = 3_600_000
const DAY = 24 * HOUR

/** Signed out after so long without a visit: a phone left in the truck over the month of a hold is still signed in. */
const IDLE_DAYS = 30
/** Signed out after so long whatever happens. */
export const ABSOLUTE_DAYS = 90

export interface Sessions {
  /** A new session; the token is given this once. */
  open(personId: string): string
  /** Who holds the token; null when it is unknown, too old, or the account was closed. */
  holder(token: string): Person | null
  close(token: string): void
  /** Ends every session of a person, but the one with that token. Returns how many. */
  closeAll(personId: string, but?: string): number
  /** Those that still open anything; one that ran out lies there until its browser comes back. */
  count(personId: string): number
  /** Ends every session there is (after a restore: those of back then must not come alive again). */
  closeEvery(): void
}

export function sessionsOn({ db }: Connection, clock: () => Date): Sessions {
  const find = db
    .select({ session, person })
    .from(session)
    .innerJoin(person, eq(person.id, session.person))
    .where(eq(session.digest, sql.placeholder('digest')))
    .prepare()
  const touch = db
    .update(session)
    .set({ seenAt: sql`${sql.placeholder('seenAt')}` })
    .where(eq(session.digest, sql.placeholder('digest')))
    .prepare()
  const drop = db
    .delete(session)
    .where(eq(session.digest, sql.placeholder('digest')))
    .prepare()

  return {
    open(personId) {
      const token = newToken()
      const now = clock().toISOString()
      db.insert(session)
        .values({ digest: digestOf(token), person: personId, createdAt: now, seenAt: now })
        .run()
      return token
    },
    holder(token) {
      const digest = digestOf(token)
      const found = find.get({ digest })
      if (found === undefined || found.person.closedAt !== null || found.person.passphrase === null)
        return null
      const now = clock().getTime()
      if (tooOld(found.session, now)) {
        tryTo(() => drop.run({ digest }))
        return null
      }
      // A clock set back makes `seen` lie in the future: that counts as just seen.
      if (now - Date.parse(found.session.seenAt) > HOUR)
        tryTo(() => touch.run({ digest, seenAt: new Date(now).toISOString() }))
      const { id, name, role, createdAt, createdBy } = found.person
      const language = languageOf(found.person.language)
      return { id, name, role, state: 'active', language, createdAt, createdBy }
    },
    close: (token) => {
      drop.run({ digest: digestOf(token) })
    },
    closeAll(personId, but) {
      const kept = but === undefined ? undefined : ne(session.digest, digestOf(but))
      return db
        .delete(session)
        .where(and(eq(session.person, personId), kept))
        .run().changes
    },
    count(personId) {
      const now = clock().getTime()
      return db
        .select()
        .from(session)
        .where(eq(session.person, personId))
        .all()
        .filter((s) => !tooOld(s, now)).length
    },
    closeEvery: () => {
      db.delete(session).run()
    },
  }
}

const tooOld = (s: { createdAt: string; seenAt: string }, now: number): boolean =>
  now - Date.parse(s.seenAt) > IDLE_DAYS * DAY || now - Date.parse(s.createdAt) > ABSOLUTE_DAYS * DAY

/** Book-keeping of sessions must not stop anybody from reading while the disk is full. */
function tryTo(work: () => unknown): void {
  try {
    work()
  } catch {
    // The session is judged again at the next request.
  }
}
