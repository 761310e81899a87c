/**
 * What was last said of each event in a calendar. Made STRICT by hand like the other tables (migrations/README.md).
 * Instants are UTC ISO text.
 */

import { integer, primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { ColonyId } from '../../ids.ts'
import type { Language } from '../../languages.ts'
import type { Shows } from '../../people/index.ts'

/** What a calendar shows, and in which language where it is not the first. Example: 'window es'. */
export type ToldAs = Shows | `${Shows} ${Language}`

/** What an event said when it last changed: its revision must rise with every change, and a cancelled one is still sent. */
export const calendarEvent = sqliteTable(
  'calendar_event',
  {
    shows: text('shows').$type<ToldAs>().notNull(),
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
