/** Letters to customers: made, opened by their secret address, taken back. The database holds no address. */

import { and, asc, desc, eq, gt, isNull, sql } from 'drizzle-orm'
import type { Day } from '../days.ts'
import type { ColonyId } from '../ids.ts'
import { customerLetter, type LetterKind } from './after-schema.ts'
import type { Connection } from './connection.ts'

export interface SentLetter {
  id: string
  colony: ColonyId
  what: LetterKind
  asOf: Day
  words: string | null
  createdAt: string
  createdBy: string
  expiresAt: string
  revokedAt: string | null
}

interface NewLetter {
  id: string
  colony: ColonyId
  /** A letter to the customer where it is left out. */
  what?: LetterKind
  /** Of the secret part of the address. */
  digest: string
  asOf: Day
  words: string | null
  createdAt: string
  createdBy: string
  expiresAt: string
}

interface KeptLetter extends NewLetter {
  what: LetterKind
  revokedAt: string | null
}

export interface Letters {
  /** Newest first; of one colony, or all. */
  list(colony?: string): SentLetter[]
  add(letter: NewLetter): void
  /** What is at an address that is still good at that instant, where it is of this kind. */
  open(digest: string, now: string, what?: LetterKind): SentLetter | null
  /** Takes an address back for good. False when there is no such letter, or it was taken back already. */
  revoke(id: string, now: string): boolean
  /** Every letter as it is kept, oldest first: what an export keeps. */
  everything(): KeptLetter[]
  /** Takes over letters as they were; those that are here already are left. */
  take(letters: readonly KeptLetter[]): void
  /** Takes all back (after a restore: those taken back since must not come alive again). */
  revokeEvery(now: string): void
}

type Row = typeof customerLetter.$inferSelect

const withoutDigest = ({ digest: _digest, ...letter }: Row): SentLetter => letter

export function lettersOf({ db }: Connection): Letters {
  const opened = db
    .select()
    .from(customerLetter)
    .where(
      and(
        eq(customerLetter.what, sql.placeholder('what')),
        eq(customerLetter.digest, sql.placeholder('digest')),
        isNull(customerLetter.revokedAt),
        gt(customerLetter.expiresAt, sql.placeholder('now')),
      ),
    )
    .prepare()
  return {
    list: (colony) =>
      db
        .select()
        .from(customerLetter)
        .where(colony === undefined ? undefined : eq(customerLetter.colony, colony))
        .orderBy(desc(customerLetter.createdAt), desc(customerLetter.id))
        .all()
        .map(withoutDigest),
    add(letter) {
      db.insert(customerLetter).values(letter).run()
    },
    open(digest, now, what = 'letter') {
      const row = opened.get({ what, digest, now })
      return row === undefined ? null : withoutDigest(row)
    },
    revoke: (id, now) =>
      db
        .update(customerLetter)
        .set({ revokedAt: now })
        .where(and(eq(customerLetter.id, id), isNull(customerLetter.revokedAt)))
        .run().changes > 0,
    everything: () =>
      db.select().from(customerLetter).orderBy(asc(customerLetter.createdAt), asc(customerLetter.id)).all(),
    take(letters) {
      for (const letter of letters) db.insert(customerLetter).values(letter).onConflictDoNothing().run()
    },
    revokeEvery(now) {
      db.update(customerLetter).set({ revokedAt: now }).where(isNull(customerLetter.revokedAt)).run()
    },
  }
}
