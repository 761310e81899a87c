/** Tokens with which a person's own programs ask the HTTP API. Made STRICT by hand (migrations/README.md). */
import { index, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import { person } from './schema.ts'

export const apiToken = sqliteTable(
  'api_token',
  {
    id: text('id').primaryKey(),
    digest: text('digest').notNull().unique(),
    person: text('person')
      .notNull()
      .references(() => person.id),
    /** What it is for, in its owner's words. */
    name: text('name').notNull(),
    /** Scopes, a space between them. */
    scopes: text('scopes').notNull(),
    createdAt: text('created_at').notNull(),
    /** To the hour, so that asking does not write each time. */
    usedAt: text('used_at'),
    expiresAt: text('expires_at').notNull(),
    revokedAt: text('revoked_at'),
  },
  (t) => [index('api_token_by_person').on(t.person)],
)
