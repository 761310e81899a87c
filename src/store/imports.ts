/** Colonies taken in from a spreadsheet: appended like all else, with a note of which file they came with. */
import { asc, desc, eq, sql } from 'drizzle-orm'
import type { Connection } from './connection.ts'
import { colonyImport, colonyImportEntry } from './import-schema.ts'
import type { AppendContext, AppendResult } from './types.ts'

/** One import. */
export interface ImportNote {
  id: string
  /** UTC, ISO. */
  takenAt: string
  takenBy: string
  source: string
  colonies: number
}

interface KeptImport extends ImportNote {
  entries: string[]
}

interface NewImport {
  /** A UUID: the same import sent twice is one import. */
  id: string
  source: string
  colonies: number
}

export interface ColonyImports {
  /** What {@link take} would answer, a few entries at a step; nothing is written. */
  rehearsing(raw: readonly unknown[], context: AppendContext): Generator<undefined, AppendResult>
  /** Appends entries and notes them as the import's, in one transaction: all of it or a part. Safe to repeat. */
  take(batch: NewImport, raw: readonly unknown[], context: AppendContext): AppendResult
  /** Newest first. */
  list(): ImportNote[]
  /** Every import with the ids of its entries: what an export keeps. */
  everything(): KeptImport[]
  /** Notes imports whose entries are here; those noted already are left. */
  note(imports: readonly KeptImport[]): void
  /** Ids of the entries an import made, in the order of the ids; none when there is no such import. */
  entries(id: string): string[]
}

/** What of the journal an import needs. */
interface Parts {
  append: (raw: readonly unknown[], context: AppendContext) => AppendResult
  rehearsing: ColonyImports['rehearsing']
}

export function importsOf(connection: Connection, { append, rehearsing }: Parts): ColonyImports {
  const { db } = connection
  const known = db
    .select()
    .from(colonyImport)
    .where(eq(colonyImport.id, sql.placeholder('id')))
    .prepare()
  const made = db
    .select({ entry: colonyImportEntry.entry })
    .from(colonyImportEntry)
    .where(eq(colonyImportEntry.import, sql.placeholder('id')))
    .orderBy(asc(colonyImportEntry.entry))
    .prepare()
  const list = (): ImportNote[] =>
    db.select().from(colonyImport).orderBy(desc(colonyImport.takenAt), desc(colonyImport.id)).all()
  const entries = (id: string): string[] => made.all({ id }).map((r) => r.entry)
  const write = (note: ImportNote, ids: readonly string[]): void => {
    db.insert(colonyImport).values(note).onConflictDoNothing().run()
    for (const entry of ids) db.insert(colonyImportEntry).values({ entry, import: note.id }).run()
  }
  return {
    rehearsing,
    take: ({ id, source, colonies }, raw, context) =>
      connection.write(() => {
        const result = append(raw, context)
        if (!result.ok || result.accepted.length === 0) return result
        const takenBy = context.recordedBy ?? 'import'
        write({ id, takenAt: context.recordedAt, takenBy, source, colonies }, result.accepted)
        return result
      }),
    list,
    everything: () =>
      list()
        .reverse()
        .map((note) => ({ ...note, entries: entries(note.id) })),
    note: (imports) =>
      connection.write(() => {
        for (const { entries: ids, ...one } of imports)
          if (known.get({ id: one.id }) === undefined) write(one, ids)
      }),
    entries,
  }
}
