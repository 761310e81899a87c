/**
 * What was last said of each event in a calendar. Made STRICT by hand like the other tables (migrations/README.md).
 * Instants are UTC ISO text.
 */

import { integer, primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { ColonyId } from '../../ids.ts'
import type { Shows } from '../../people/index.ts'

/** What an event said when it last changed: its revision must rise with every change, and a cancelled one is still sent. */
export const calendarEvent = sqliteTable(
  'calendar_event',
  {
    shows: text('shows').$type<Shows>().notNull(),
    uid: text('uid').notNull(),
    colony: text('colony').$type<ColonyId>().notNull(),
    /** The event as it was last said, JSON. */
    content: text('content').notNull(),
    sequence: integer('sequence').notNull(),
    changedAt: text('changed_at').notNull(),
    cancelledAt: text('cancelled_at'),
  },
  (t) => [primaryKey({ columns: [t.shows, t.uid] })],
)
