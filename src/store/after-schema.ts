/**
 * What is kept of a colony for after the hold, apart from the journal: letters to customers by the digest of their
 * address, and move-out records, which name buyers and can be erased. Made STRICT by hand (migrations/README.md).
 */

import { sql } from 'drizzle-orm'
import { check, index, integer, primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { ColonyId } from '../ids.ts'

/** What an address opens. */
export type LetterKind = 'letter' | 'keeper'

/** A letter that can be opened without an account by whoever has its address. */
export const customerLetter = sqliteTable(
  'customer_letter',
  {
    id: text('id').primaryKey(),
    /** The colony's id. */
    colony: text('colony').$type<ColonyId>().notNull(),
    /** Of the secret part of the address. */
    digest: text('digest').notNull().unique(),
    /** The letter covers the journal up to this day. */
    asOf: text('as_of').notNull(),
    /** A few words of the writer's own, above the rest. */
    words: text('words'),
    createdAt: text('created_at').notNull(),
    createdBy: text('created_by').notNull(),
    expiresAt: text('expires_at').notNull(),
    revokedAt: text('revoked_at'),
    /** 'letter' to the customer, or 'keeper': the sheet for the new keeper. */
    what: text('what').$type<LetterKind>().notNull().default('letter'),
  },
  (t) => [index('customer_letter_by_colony').on(t.colony)],
)

/** Every save of a move-out record is a row of its own: the last version stands, the others say who changed what. */
export const moveRecord = sqliteTable(
  'move_record',
  {
    /** The colony's id. */
    colony: text('colony').$type<ColonyId>().notNull(),
    /** From 1, rising by one. */
    version: integer('version').notNull(),
    savedAt: text('saved_at').notNull(),
    savedBy: text('saved_by').notNull(),
    /** The whole record as JSON (src/records/move-out-record.ts), keys sorted. */
    payload: text('payload').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.colony, t.version] }),
    check('move_record_payload', sql`json_valid(${t.payload})`),
  ],
)
