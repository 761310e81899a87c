/**
 * Calendar addresses: a key of a person, like a token for a program. Made STRICT by hand (migrations/README.md). Instants
 * are UTC ISO text.
 */
import { sql } from 'drizzle-orm'
import { check, index, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import { person } from './schema.ts'

/** What stands in a calendar: one entry a yard and day; or each box by itself, on the best day or over its whole window. */
export const SHOWS = ['yard-day', 'best-day', 'window'] as const
export type Shows = (typeof SHOWS)[number]

/** One row an address, by the digest of the token in it; the token itself is not kept. */
export const calendarFeed = sqliteTable(
  'calendar_feed',
  {
    digest: text('digest').primaryKey(),
    person: text('person')
      .notNull()
      .references(() => person.id),
    shows: text('shows').$type<Shows>().notNull(),
    /** Null: every yard. */
    yard: text('yard'),
    createdAt: text('created_at').notNull(),
    /** When a calendar last asked for it, to the hour. */
    fetchedAt: text('fetched_at'),
    revokedAt: text('revoked_at'),
  },
  (t) => [
    index('calendar_feed_by_person').on(t.person),
    check('calendar_feed_shows', sql`${t.shows} IN ('yard-day', 'best-day', 'window')`),
  ],
)
