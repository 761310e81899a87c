/** Finding entries by words that people wrote in them. */
import { desc, eq, getTableColumns, or, sql } from 'drizzle-orm'
import { folded } from '../folded.ts'
import type { Connection } from './connection.ts'
import { readable } from './journal.ts'
import { entry, siteContact } from './schema.ts'
import type { JournalRow } from './types.ts'
import { WRITTEN } from './written.ts'

/** At most so many are looked through (judgement): whoever gets more types another word. */
const MOST = 300

/** The newest entries that hold the word. It is looked for once a search, over the rows that have any words at all. */
export function mentionsOf({ raw, db }: Connection): (word: string) => JournalRow[] {
  raw.function('folded', { deterministic: true }, (text: unknown) => folded(String(text ?? '')))
  const value = sql.placeholder
  const like = sql`'%' || ${value('word')} || '%'`
  const written = sql.join(
    WRITTEN.map(
      (name) => sql`folded(json_extract(${entry.payload}, ${`$.${name}`})) LIKE ${like} ESCAPE '\\'`,
    ),
    sql` OR `,
  )
  const found = db
    .select({ ...getTableColumns(entry), site: siteContact.site })
    .from(entry)
    .leftJoin(siteContact, eq(siteContact.entry, entry.id))
    .where(or(sql`(${written})`, sql`folded(${siteContact.site}) LIKE ${like} ESCAPE '\\'`))
    .orderBy(desc(entry.seq))
    .limit(MOST)
    .prepare()
  return (word) => readable(found.all({ word: folded(word).replaceAll(/[\\%_]/g, '\\$&') }))
}
