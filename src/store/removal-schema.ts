/**
 * Removal sheets, apart from the journal: they hold customers' names, addresses and signatures, can be erased, and only
 * beekeepers and operators may read them. Made STRICT by hand (migrations/README.md). Instants are UTC ISO text.
 */

import { sql } from 'drizzle-orm'
import { check, index, integer, primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { ColonyId } from '../ids.ts'

/** Every save of a sheet is a row of its own: the last version stands, the others say who changed what. */
export const removalSheet = sqliteTable(
  'removal_sheet',
  {
    sheet: text('sheet').notNull(),
    /** From 1, rising by one. */
    version: integer('version').notNull(),
    savedAt: text('saved_at').notNull(),
    savedBy: text('saved_by').notNull(),
    /** The whole sheet as JSON (src/removal/sheet.ts), keys sorted. */
    payload: text('payload').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.sheet, t.version] }),
    check('removal_sheet_payload', sql`json_valid(${t.payload})`),
  ],
)

/** Which colonies came of which removal. */
export const removalColony = sqliteTable(
  'removal_colony',
  {
    /** The colony's id. */
    colony: text('colony').$type<ColonyId>().primaryKey(),
    sheet: text('sheet').notNull(),
    linkedAt: text('linked_at').notNull(),
    linkedBy: text('linked_by').notNull(),
  },
  (t) => [index('removal_colony_by_sheet').on(t.sheet)],
)
