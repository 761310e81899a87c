/**
 * Removal sheets in their own table: every save is a new version with who and when, the last one stands. Apart from the
 * journal because they name customers; `erase` takes a sheet out with all its versions.
 */

import { and, asc, desc, eq, sql } from 'drizzle-orm'
import type { Day } from '../days.ts'
import type { ColonyId } from '../ids.ts'
import { problemsOf } from '../journal/index.ts'
import { BROUGHT_IN, photosOfSheet, type Sheet, sheet as sheetSchema } from '../records/index.ts'
import { type Problems, type Result, refused } from '../result.ts'
import { customerLetter } from './after-schema.ts'
import type { Connection } from './connection.ts'
import { eraseRefusedSites, eraseSites } from './erasing.ts'
import { canonical } from './fold.ts'
import { readPayload } from './payload.ts'
import { removalColony, removalSheet } from './removal-schema.ts'
import type { Versioned } from './types.ts'

export interface SheetVersion {
  /** The sheet's id; the colony that comes of it is logged under the same id. */
  id: string
  version: number
  savedAt: string
  savedBy: string
  sheet: Sheet
}

export interface SavedSheet {
  last: SheetVersion
  /** Newest first. */
  versions: Omit<SheetVersion, 'sheet'>[]
  /** Ids of the colonies that came of it, the first one first. */
  colonies: ColonyId[]
}

/** A colony that came of a sheet, and who said so. */
interface Box extends SheetStamp {
  colony: ColonyId
  id: string
}

interface SheetStamp {
  /** UTC, ISO. */
  savedAt: string
  savedBy: string
}

/** Sheets as pages read and write them, on the server or in a phone. */
export interface Jobs {
  /** The last version of every sheet, the one saved last first. */
  list(): (SheetVersion & { colonies: ColonyId[] })[]
  /** Of a phone: what others wrote there and have not sent. */
  unsent?: () => { id: string; by: string; sheet: Sheet; colonies: ColonyId[] }[]
  get(id: string): SavedSheet | null
  version(id: string, version: number): SheetVersion | null
  /** `base`: the version that was shown when it was changed; 0 for a new sheet. Saving the same content again is harmless. */
  save(id: string, base: number, content: unknown, stamp: SheetStamp): Versioned<SheetVersion>
  /** Notes that a colony came of the sheet. */
  link(id: string, colony: ColonyId, stamp: SheetStamp): void
  /** Sheets of work that was begun without a “go”, as they stand now, of those saved on that day or later. */
  withoutGo(since: Day): SheetVersion[]
  /** The sheet a colony came of, null when there is none. */
  ofColony(colony: ColonyId): string | null
}

export interface Removals extends Jobs {
  /** Every version of every sheet, and which colonies came of them: what an export keeps. */
  everything(): { versions: SheetVersion[]; boxes: Box[] }
  /** Takes over versions and boxes as they were; those that are here already are left. Sentences where they differ. */
  take(versions: readonly SheetVersion[], boxes: readonly Box[]): string[]
  /**
   * Takes the sheet out, every version of it; where each colony that came of it was taken from, also in entries
   * that were refused; and the letters about them, whose own words may name the customer. Returns how many versions there were. The file is to be `cleaned` after.
   */
  erase(id: string): number
  /** Photos that only this sheet names, in any of its versions. */
  ownPhotos(id: string): string[]
}

type Row = typeof removalSheet.$inferSelect

/** The version in a row, or why it cannot be read. */
function readSheet(row: Row): Result<{ made: SheetVersion }, Problems<string>> {
  const read = readPayload(sheetSchema, row.payload)
  if (!read.ok) return read
  const { sheet: id, version, savedAt, savedBy } = row
  return { ok: true, made: { id, version, savedAt, savedBy, sheet: read.made } }
}

/** Versions that cannot be read, a sentence each: for `verify`. */
export const sheetProblems = ({ db }: Connection): string[] =>
  db
    .select()
    .from(removalSheet)
    .all()
    .flatMap((row) => {
      const read = readSheet(row)
      return read.ok
        ? []
        : read.problems.map((p) => `version ${row.version} of removal sheet ${row.sheet} ${p}`)
    })

/** The sheets' statements, prepared once. */
export function removalsOf(connection: Connection): Removals {
  const { db } = connection
  const value = sql.placeholder
  const isSheet = eq(removalSheet.sheet, value('id'))
  const versions = db.select().from(removalSheet).where(isSheet).orderBy(desc(removalSheet.version)).prepare()
  const lasts = db
    .select()
    .from(removalSheet)
    .where(
      sql`${removalSheet.version} = (SELECT max(v.version) FROM removal_sheet v WHERE v.sheet = ${removalSheet.sheet})`,
    )
    .orderBy(desc(removalSheet.savedAt), asc(removalSheet.sheet))
    .prepare()
  const begun = db
    .select()
    .from(removalSheet)
    .where(
      sql`${removalSheet.version} = (SELECT max(v.version) FROM removal_sheet v WHERE v.sheet = ${removalSheet.sheet}) AND ${removalSheet.savedAt} >= ${value('since')} AND instr(${removalSheet.payload}, '"withoutGo"') > 0`,
    )
    .prepare()
  const links = db
    .select()
    .from(removalColony)
    .where(eq(removalColony.sheet, value('id')))
    .orderBy(asc(removalColony.linkedAt), asc(removalColony.colony))
    .prepare()
  const linked = db
    .select()
    .from(removalColony)
    .where(eq(removalColony.colony, value('colony')))
    .prepare()
  const colonyNamed = connection.raw.prepare<[string], 1>('SELECT 1 FROM colony WHERE id = ?').pluck()

  const every = db
    .select()
    .from(removalSheet)
    .orderBy(asc(removalSheet.sheet), asc(removalSheet.version))
    .prepare()
  const link = ({ colony, id, savedAt, savedBy }: Box): void => {
    db.insert(removalColony)
      .values({ colony, sheet: id, linkedAt: savedAt, linkedBy: savedBy })
      .onConflictDoNothing()
      .run()
  }

  /** A colony logged under the sheet's own id needs no link: a phone without signal cannot make one. */
  const coloniesOf = (id: string): ColonyId[] => {
    const found = links.all({ id }).map((l) => l.colony)
    return colonyNamed.get(id) !== undefined && !found.includes(id) ? [id, ...found] : found
  }
  const whole = (rows: readonly Row[]): SheetVersion[] =>
    rows.map(readSheet).flatMap((read) => (read.ok ? [read.made] : []))

  const write = (id: string, base: number, content: Sheet, stamp: SheetStamp): Versioned<SheetVersion> => {
    const [last] = whole(versions.all({ id }))
    const payload = canonical(content)
    if (last !== undefined && last.version !== base)
      return canonical(last.sheet) === payload
        ? { ok: true, version: last.version }
        : { ok: false, newer: last }
    if (last !== undefined && canonical(last.sheet) === payload) return { ok: true, version: last.version }
    const version = (last?.version ?? 0) + 1
    db.insert(removalSheet)
      .values({ sheet: id, version, ...stamp, payload })
      .run()
    for (const colony of content.boxes ?? []) link({ ...stamp, id, colony: colony as ColonyId })
    return { ok: true, version }
  }

  return {
    list: () => whole(lasts.all()).map((v) => ({ ...v, colonies: coloniesOf(v.id) })),
    get(id) {
      const rows = whole(versions.all({ id }))
      const [last] = rows
      if (last === undefined) return null
      return { last, versions: rows.map(({ sheet: _sheet, ...v }) => v), colonies: coloniesOf(id) }
    },
    version: (id, version) => whole(versions.all({ id })).find((v) => v.version === version) ?? null,
    save(id, base, content, stamp) {
      const parsed = sheetSchema.safeParse(content)
      if (!parsed.success) return refused(problemsOf(parsed.error, content))
      return connection.write(() => write(id, base, parsed.data, stamp))
    },
    link: (id, colony, stamp) => link({ ...stamp, id, colony }),
    withoutGo: (since) => whole(begun.all({ since })),
    ofColony(colony) {
      const row = linked.get({ colony })
      if (row !== undefined) return row.sheet
      return versions.get({ id: colony }) === undefined ? null : colony
    },
    everything: () => ({
      versions: whole(every.all()),
      boxes: db
        .select()
        .from(removalColony)
        .orderBy(asc(removalColony.colony))
        .all()
        .map((l) => ({ colony: l.colony, id: l.sheet, savedAt: l.linkedAt, savedBy: l.linkedBy })),
    }),
    take: (versions, boxes) =>
      connection.write(() => {
        const ours = ({ id, version }: SheetVersion) =>
          and(eq(removalSheet.sheet, id), eq(removalSheet.version, version))
        for (const v of versions)
          db.delete(removalSheet)
            .where(and(ours(v), eq(removalSheet.savedBy, BROUGHT_IN)))
            .run()
        const there = new Map(whole(every.all()).map((v) => [`${v.id} ${v.version}`, canonical(v)]))
        const others = versions.filter(
          (v) => (there.get(`${v.id} ${v.version}`) ?? canonical(v)) !== canonical(v),
        )
        if (others.length > 0)
          return others.map((v) => `version ${v.version} of removal sheet ${v.id} is another one here`)
        for (const { id, version, savedAt, savedBy, sheet } of versions)
          if (!there.has(`${id} ${version}`))
            db.insert(removalSheet)
              .values({ sheet: id, version, savedAt, savedBy, payload: canonical(sheet) })
              .run()
        for (const box of boxes) link(box)
        return []
      }),
    ownPhotos(id) {
      const elsewhere = connection.raw
        .prepare<[{ id: string; photo: string }], 1>(
          `SELECT 1 FROM removal_sheet WHERE sheet <> @id AND instr(payload, @photo) > 0
           UNION ALL SELECT 1 FROM entry WHERE instr(payload, @photo) > 0`,
        )
        .pluck()
      const named = new Set(whole(versions.all({ id })).flatMap((v) => photosOfSheet(v.sheet)))
      return [...named].filter((photo) => elsewhere.get({ id, photo }) === undefined)
    },
    erase: (id) =>
      connection.write(() => {
        const colonies = coloniesOf(id)
        eraseSites(connection, colonies)
        const jobs = whole(versions.all({ id })).map((v) => v.sheet.job)
        const said = jobs.flatMap((job) => [job.name ?? '', job.address ?? ''])
        eraseRefusedSites(connection, { ids: [id, ...colonies], said })
        for (const colony of colonies)
          db.delete(customerLetter).where(eq(customerLetter.colony, colony)).run()
        db.delete(removalColony).where(eq(removalColony.sheet, id)).run()
        return db.delete(removalSheet).where(eq(removalSheet.sheet, id)).run().changes
      }),
  }
}
