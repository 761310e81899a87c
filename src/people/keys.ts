/**
 * Keys: what opens something without anybody signing in, which is tokens of programs and calendar addresses. Signing out
 * does not end them, so they are taken back together here.
 */

import { and, eq, gt, isNull, type SQL } from 'drizzle-orm'
import type { Connection } from '../store/index.ts'
import { apiToken } from './api-token-schema.ts'
import { calendarFeed } from './calendar-address-schema.ts'

export interface Keys {
  /** Keys of a person that still work. */
  count(personId: string): number
  /** Takes back every key of a person, for good. Returns how many that was. */
  revokeAll(personId: string): number
  /** Takes back every key there is (after a restore: those of back then must not come alive again). */
  revokeEvery(): void
}

const TABLES = [apiToken, calendarFeed] as const
type Table = (typeof TABLES)[number]

const ofPerson = (table: Table, personId: string): SQL | undefined =>
  and(eq(table.person, personId), isNull(table.revokedAt))

export function keysOn({ db, write }: Connection, clock: () => Date): Keys {
  const now = (): string => clock().toISOString()
  const revoke = (which: (table: Table) => SQL | undefined): number =>
    write(() =>
      TABLES.map((t) => db.update(t).set({ revokedAt: now() }).where(which(t)).run().changes).reduce(
        (all, n) => all + n,
        0,
      ),
    )
  return {
    count(personId) {
      const running = and(ofPerson(apiToken, personId), gt(apiToken.expiresAt, now()))
      return (
        db.select().from(apiToken).where(running).all().length +
        db.select().from(calendarFeed).where(ofPerson(calendarFeed, personId)).all().length
      )
    },
    revokeAll: (personId) => revoke((t) => ofPerson(t, personId)),
    revokeEvery: () => {
      revoke((t) => isNull(t.revokedAt))
    },
  }
}
