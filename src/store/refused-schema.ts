/**
 * Entries that a phone sent and the journal would not have: kept until somebody has settled them, so that what was seen at
 * a box is never on one phone alone. Made STRICT by hand (migrations/README.md). Instants are UTC ISO text.
 */
import { sql } from 'drizzle-orm'
import { check, index, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { EntryId } from '../ids.ts'

export const refusedEntry = sqliteTable(
  'refused_entry',
  {
    /** The entry's own id: sent again it is the same row. */
    id: text('id').$type<EntryId>().primaryKey(),
    /** Whose entry it is: the person to ask. */
    person: text('person').notNull(),
    /** Who was signed in on the phone that handed it over; the same person, unless their account was closed. */
    sentBy: text('sent_by').notNull(),
    receivedAt: text('received_at').notNull(),
    /** What its box was called there. */
    tag: text('tag').notNull(),
    /** The entry as it came, JSON. */
    payload: text('payload').notNull(),
    /** Why it was refused, JSON; [] for one that nobody could send. */
    problems: text('problems').notNull(),
    settledAt: text('settled_at'),
    settledBy: text('settled_by'),
  },
  (t) => [
    index('refused_entry_open').on(t.receivedAt).where(sql`settled_at IS NULL`),
    check('refused_entry_payload', sql`json_valid(${t.payload}) AND json_valid(${t.problems})`),
  ],
)
