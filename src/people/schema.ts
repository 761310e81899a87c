/**
 * Tables of people, in the same file as the journal but apart from it. Made STRICT by hand like the others
 * (migrations/README.md). Instants are UTC ISO text.
 */
import { sql } from 'drizzle-orm'
import { check, index, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { Role } from './permissions.ts'

/** One row an account, kept for ever: its name signs entries. */
export const person = sqliteTable(
  'person',
  {
    id: text('id').primaryKey(),
    name: text('name').notNull(),
    /** The name without differences of case and form. */
    nameKey: text('name_key').notNull().unique(),
    role: text('role').$type<Role>().notNull(),
    /** Null until chosen. */
    passphrase: text('passphrase'),
    createdAt: text('created_at').notNull(),
    createdBy: text('created_by'),
    closedAt: text('closed_at'),
    /** BCP 47; null, or one that is not spoken any more: as the browser says. */
    language: text('language'),
  },
  (t) => [check('person_role', sql`${t.role} IN ('operator', 'beekeeper', 'helper')`)],
)

/** A browser that is signed in, by the digest of its token. */
export const session = sqliteTable(
  'session',
  {
    digest: text('digest').primaryKey(),
    person: text('person')
      .notNull()
      .references(() => person.id),
    createdAt: text('created_at').notNull(),
    /** To the hour, so that reading a page does not write each time. */
    seenAt: text('seen_at').notNull(),
  },
  (t) => [index('session_by_person').on(t.person)],
)

/** A link with which somebody chooses a passphrase, once, by the digest of its token. */
export const invite = sqliteTable(
  'invite',
  {
    digest: text('digest').primaryKey(),
    person: text('person')
      .notNull()
      .references(() => person.id),
    createdAt: text('created_at').notNull(),
    createdBy: text('created_by'),
    expiresAt: text('expires_at').notNull(),
    usedAt: text('used_at'),
  },
  (t) => [index('invite_by_person').on(t.person)],
)
