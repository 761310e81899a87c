/**
 * Tables of the calendar feed: who has an address, and what was last said of each event. Made STRICT by hand like the
 * others (migrations/README.md). Instants are UTC ISO text.
 */
import { sql } from 'drizzle-orm'
import { check, index, integer, primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import { person } from '../people/schema.ts'

/** How a check stands in a calendar: on its best day, or over its whole window. */
export const SHOWS = ['best-day', 'window'] as const
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
    check('calendar_feed_shows', sql`${t.shows} IN ('best-day', 'window')`),
  ],
)

/** What an event said when it last changed: its revision must rise with every change, and a cancelled one is told on. */
export const calendarEvent = sqliteTable(
  'calendar_event',
  {
    shows: text('shows').$type<Shows>().notNull(),
    uid: text('uid').notNull(),
    colony: text('colony').notNull(),
    /** The event as it was last said, JSON. */
    content: text('content').notNull(),
    sequence: integer('sequence').notNull(),
    changedAt: text('changed_at').notNull(),
    cancelledAt: text('cancelled_at'),
  },
  (t) => [primaryKey({ columns: [t.shows, t.uid] })],
)
