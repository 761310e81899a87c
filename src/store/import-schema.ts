/**
 * Colonies taken in from spreadsheets: which entries came with which file, so that a whole import can be taken back. The
 * entries themselves are in the journal like any others. Made STRICT by hand (migrations/README.md).
 */

import { index, integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { EntryId } from '../ids.ts'
import { entry } from './schema.ts'

export const colonyImport = sqliteTable('colony_import', {
  id: text('id').primaryKey(),
  /** UTC, ISO. */
  takenAt: text('taken_at').notNull(),
  takenBy: text('taken_by').notNull(),
  /** The file's name, or how it came. */
  source: text('source').notNull(),
  colonies: integer('colonies').notNull(),
})

/** The entries of an import. */
export const colonyImportEntry = sqliteTable(
  'colony_import_entry',
  {
    entry: text('entry')
      .$type<EntryId>()
      .primaryKey()
      .references(() => entry.id),
    import: text('import')
      .notNull()
      .references(() => colonyImport.id),
  },
  (t) => [index('colony_import_entry_by_import').on(t.import)],
)
