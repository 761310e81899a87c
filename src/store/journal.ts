/** Reading and writing rows of the journal. Nothing here decides whether an entry is right. */

import { and, asc, desc, eq, getTableColumns, lt, sql } from 'drizzle-orm'
import type { ColonyId, EntryId } from '../ids.ts'
import { type Entry, entry as entrySchema } from '../journal/index.ts'
import type { Problems, Result } from '../result.ts'
import { linkOf } from './chain.ts'
import type { Connection } from './connection.ts'
import { canonical } from './fold.ts'
import { readPayload } from './payload.ts'
import { entry, siteContact } from './schema.ts'
import { apart, together } from './site.ts'
import type { JournalRow } from './types.ts'

/** A row of the journal with what is kept beside it. Its kind is looked at before it is believed. */
export type EntryRow = Omit<typeof entry.$inferSelect, 'kind' | 'digest'> & {
  kind: string
  site?: string | null
}

/**
 * The entry in a row, or why it cannot be read. The one place where entries come out of the
 * database, so the one place to bring an old shape up to date.
 */
export function readRow(row: EntryRow): Result<{ made: JournalRow }, Problems<string>> {
  const read = readPayload(entrySchema, row.payload)
  if (!read.ok) return read
  const { seq, recordedAt, recordedBy } = row
  const entry = { ...together(read.made, row.site), colony: row.colony }
  return { ok: true, made: { entry, seq, recordedAt, recordedBy, written: read.made.colony } }
}

/** Rows that can be read; `verify` names the others. */
export const readable = (rows: readonly EntryRow[]): JournalRow[] =>
  rows.map(readRow).flatMap((read) => (read.ok ? [read.made] : []))

export interface Journal {
  ofColony(id: ColonyId): JournalRow[]
  byId(id: EntryId): JournalRow | null
  insert(written: Entry, row: { colony: ColonyId; recordedAt: string; recordedBy: string }): number
  /** Newest first. */
  page(page: { before: number; limit: number; colony: ColonyId | null }): JournalRow[]
  all(): Iterable<JournalRow>
  /** Every colony id, in order of first mention. */
  colonyIds(): string[]
  count(): number
}

const PAGE = 500

/** The journal's statements, prepared once. */
export function journalOf({ db }: Connection): Journal {
  const value = sql.placeholder
  const { digest: _digest, ...columns } = getTableColumns(entry)
  const rows = () =>
    db
      .select({ ...columns, site: siteContact.site })
      .from(entry)
      .leftJoin(siteContact, eq(siteContact.entry, entry.id))
  const ofColony = rows()
    .where(eq(entry.colony, value('colony')))
    .orderBy(asc(entry.seq))
    .prepare()
  const byId = rows()
    .where(eq(entry.id, value('id')))
    .prepare()
  const newest = rows()
    .where(lt(entry.seq, value('before')))
    .orderBy(desc(entry.seq))
    .limit(value('limit'))
    .prepare()
  const newestOf = rows()
    .where(and(eq(entry.colony, value('colony')), lt(entry.seq, value('before'))))
    .orderBy(desc(entry.seq))
    .limit(value('limit'))
    .prepare()
  const oldest = rows()
    .where(sql`${entry.seq} > ${value('after')}`)
    .orderBy(asc(entry.seq))
    .limit(PAGE)
    .prepare()
  const ids = db
    .select({ colony: entry.colony })
    .from(entry)
    .groupBy(entry.colony)
    .orderBy(sql`min(${entry.seq})`)
    .prepare()
  const count = db.select({ n: sql<number>`count(*)` }).from(entry).prepare()
  const addSite = db
    .insert(siteContact)
    .values({ entry: value('entry'), site: value('site') })
    .prepare()
  const last = db.select({ digest: entry.digest }).from(entry).orderBy(desc(entry.seq)).limit(1).prepare()
  const add = db
    .insert(entry)
    .values({
      id: value('id'),
      colony: value('colony'),
      kind: value('kind'),
      onDay: value('onDay'),
      replaces: value('replaces'),
      recordedAt: value('recordedAt'),
      recordedBy: value('recordedBy'),
      payload: value('payload'),
      digest: value('digest'),
    })
    .prepare()

  return {
    ofColony: (colony) => readable(ofColony.all({ colony })),
    byId(id) {
      const row = byId.get({ id })
      const [read] = readable(row === undefined ? [] : [row])
      return read ?? null
    },
    insert(written, row) {
      const { kept, site } = apart(written)
      const made = {
        ...row,
        id: written.id,
        kind: written.kind,
        onDay: written.on,
        replaces: written.replaces ?? null,
        payload: canonical(kept),
      }
      const { lastInsertRowid } = add.run({ ...made, digest: linkOf(last.get()?.digest ?? '', made) })
      if (site !== null) addSite.run({ entry: written.id, site })
      return Number(lastInsertRowid)
    },
    page: ({ colony, before, limit }) =>
      readable(colony === null ? newest.all({ before, limit }) : newestOf.all({ before, limit, colony })),
    *all() {
      let after = 0
      for (;;) {
        const rows = oldest.all({ after })
        yield* readable(rows)
        const last = rows.at(-1)
        if (last === undefined) return
        after = last.seq
      }
    },
    colonyIds: () => ids.all().map((r) => r.colony),
    count: () => count.get()?.n ?? 0,
  }
}
