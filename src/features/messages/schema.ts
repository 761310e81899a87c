/** Who wants the morning digest how, and what was sent. Made STRICT by hand (migrations/README.md). */

import { sql } from 'drizzle-orm'
import { check, integer, primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import { person } from '../../people/node.ts'

/** One person's choice. */
export const messageChoice = sqliteTable(
  'message_choice',
  {
    person: text('person')
      .primaryKey()
      .references(() => person.id),
    /** E-mail address; null: no e-mail. */
    mail: text('mail'),
    /** Address of a webhook; null: none. */
    hook: text('hook'),
    /** Signs the webhook. Kept readable, because signing needs it; it opens nothing here. */
    secret: text('secret'),
    /** Hour of the yard's day, 0 to 23, from which it is sent. */
    hour: integer('hour').notNull(),
    /** First day it is sent for. */
    fromDay: text('from_day').notNull(),
    changedAt: text('changed_at').notNull(),
  },
  (t) => [check('message_choice_hour', sql`${t.hour} BETWEEN 0 AND 23`)],
)

/** One row a person, day and way: it is written before anything is sent, so nothing is sent twice. */
export const messageSent = sqliteTable(
  'message_sent',
  {
    person: text('person')
      .notNull()
      .references(() => person.id),
    day: text('day').notNull(),
    way: text('way').$type<'mail' | 'hook'>().notNull(),
    state: text('state').$type<'sending' | 'sent' | 'again' | 'given-up'>().notNull(),
    attempts: integer('attempts').notNull(),
    /** When it is tried again. */
    againAt: text('again_at'),
    /** Why it was not sent, without addresses. */
    trouble: text('trouble'),
    changedAt: text('changed_at').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.person, t.day, t.way] }),
    check('message_sent_state', sql`${t.state} IN ('sending', 'sent', 'again', 'given-up')`),
  ],
)
