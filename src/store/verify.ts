/**
 * Proves that the database is whole: the file, the references, every entry, the guards, and that the projections are
 * what a rebuild would make, byte for byte. Looks only; what it finds it says in sentences.
 */

import { asc, eq, sql } from 'drizzle-orm'
import type { Protocol } from '../recovery/index.ts'
import { chainProblems } from './chain.ts'
import type { Connection } from './connection.ts'
import { type Exposures, exposureOf } from './exposures.ts'
import { fold } from './fold.ts'
import { type EntryRow, type Journal, readRow } from './journal.ts'
import { missingGuards } from './migrate.ts'
import { recordProblems } from './move-records.ts'
import type { Planner } from './planner.ts'
import { type Projected, project } from './project.ts'
import { sheetProblems } from './removals.ts'
import { rulesStamp } from './rules-stamp.ts'
import { colony, entry, plannedCheck, stay } from './schema.ts'
import { settingProblems } from './settings.ts'
import { type StayRow, stayRow } from './stay-row.ts'
import type { VerifyReport } from './types.ts'

/** What projections hang on beside the journal. */
interface Choices {
  planner: Planner
  protocol: () => Protocol
}

/** Enough to see what is wrong; a file full of garbage would fill the screen. */
const SHOWN = 100

export function verify(
  connection: Connection,
  journal: Journal,
  { planner, protocol }: Choices,
  exposures: () => Exposures,
): VerifyReport {
  try {
    return connection.read(() => {
      const compared = madeByTheseRules(connection)
      const problems = [
        ...fileProblems(connection),
        ...missingGuards(connection.raw).map((g) => `the journal has lost its guard ${g}`),
        ...settingProblems(connection),
        ...sheetProblems(connection),
        ...recordProblems(connection),
        ...chainProblems(connection.raw),
        ...entryProblems(connection),
        ...(compared ? projectionProblems(connection, journal, { planner, protocol }, exposures()) : []),
      ]
      const colonies = connection.db.select({ n: sql<number>`count(*)` }).from(colony).get()?.n ?? 0
      return {
        ok: problems.length === 0,
        problems: capped(problems),
        compared,
        colonies,
        entries: journal.count(),
      }
    })
  } catch (error) {
    // A file damaged badly enough makes reading itself fail.
    const message = error instanceof Error ? error.message : String(error)
    return {
      ok: false,
      problems: [`the file cannot be read through: ${message}`],
      compared: false,
      colonies: 0,
      entries: 0,
    }
  }
}

/** Other rules make other plans, which is no damage; 0 stands there while plans are being recomputed. */
const madeByTheseRules = ({ raw }: Connection): boolean =>
  raw.pragma('user_version', { simple: true }) === rulesStamp()

const capped = (problems: string[]): string[] =>
  problems.length <= SHOWN
    ? problems
    : [...problems.slice(0, SHOWN), `and ${problems.length - SHOWN} more problems`]

function fileProblems({ raw }: Connection): string[] {
  const integrity = raw.prepare('PRAGMA integrity_check').pluck().all() as string[]
  const orphans = raw.pragma('foreign_key_check') as { table: string; rowid: number | null; parent: string }[]
  return [
    ...integrity.filter((line) => line !== 'ok').map((line) => `integrity check: ${line}`),
    ...orphans.map(
      (o) => `${o.table} row ${o.rowid ?? '?'} refers to a row of ${o.parent} that is not there`,
    ),
  ]
}

/** Walks the journal once, without holding it in memory. */
function entryProblems({ db, raw }: Connection): string[] {
  const problems: string[] = []
  const founders = new Set<string>()
  const rows = raw.prepare(db.select().from(entry).orderBy(asc(entry.seq)).toSQL().sql)
  for (const columns of rows.iterate() as IterableIterator<Record<string, unknown>>) {
    const row = named(columns)
    const read = readRow(row)
    if (row.kind === 'intake') founders.add(row.colony)
    if (!read.ok) problems.push(...read.problems.map((p) => `${nameOf(row)} ${p}`))
    else
      problems.push(
        ...disagreements(row, read.made.entry).map(
          (field) => `${nameOf(row)}: ${field} disagrees with its payload`,
        ),
      )
    if (!founders.has(row.colony))
      problems.push(`${nameOf(row)} belongs to a colony without an intake: ${row.colony}`)
  }
  return problems
}

const nameOf = (row: EntryRow): string => `entry ${row.seq} (${row.id})`

/** A raw row's columns by drizzle's keys. */
const named = (c: Record<string, unknown>): EntryRow => ({
  seq: Number(c.seq),
  id: String(c.id),
  colony: String(c.colony),
  kind: String(c.kind),
  onDay: String(c.on_day),
  replaces: c.replaces === null ? null : String(c.replaces),
  recordedAt: String(c.recorded_at),
  recordedBy: String(c.recorded_by),
  payload: String(c.payload),
})

function disagreements(
  row: EntryRow,
  e: { id: string; kind: string; on: string; replaces?: string | undefined },
): string[] {
  const pairs = {
    id: [row.id, e.id],
    kind: [row.kind, e.kind],
    day: [row.onDay, e.on],
    replaces: [row.replaces, e.replaces ?? null],
  }
  return Object.entries(pairs).flatMap(([field, [column, said]]) => (column === said ? [] : [field]))
}

/** Every colony, and every row of the projections, whichever there is too many of. */
function projectionProblems(
  { db, raw }: Connection,
  journal: Journal,
  { planner, protocol }: Choices,
  exposures: Exposures,
): string[] {
  const rowOf = db
    .select()
    .from(colony)
    .where(eq(colony.id, sql.placeholder('id')))
    .prepare()
  const checksOf = db
    .select()
    .from(plannedCheck)
    .where(eq(plannedCheck.colony, sql.placeholder('id')))
    .orderBy(asc(plannedCheck.place))
    .prepare()
  const stayOf = db
    .select()
    .from(stay)
    .where(eq(stay.colony, sql.placeholder('id')))
    .prepare()
  const recordedAt = raw.prepare('SELECT recorded_at FROM entry WHERE id = ?').pluck()
  const ids = new Set([
    ...journal.colonyIds(),
    ...db
      .select({ id: colony.id })
      .from(colony)
      .all()
      .map((r) => r.id),
  ])
  const problems: string[] = []
  const tags = new Map<string, string>()
  for (const id of ids) {
    const row = rowOf.get({ id })
    const { history, tag } = fold(id, journal.ofColony(id))
    // A plan is as of the day it was made; a row that is missing is wrong on any day.
    const asOf = row?.asOf ?? history?.intake.on ?? ''
    const expected =
      history === null ? null : project(id, history, asOf, planner, exposureOf(exposures, id, history))
    const actual = row === undefined ? null : { row, checks: checksOf.all({ id }) }
    const differs = difference(expected, actual)
    if (differs !== null)
      problems.push(`colony ${row?.tag ?? tag}: ${differs}; "resettle rebuild" makes it again`)
    const stayed = history === null ? null : stayRow(id, history, String(recordedAt.get(id)), protocol())
    const stayDiffers = stayDifference(stayed, stayOf.get({ id }) ?? null)
    if (stayDiffers !== null)
      problems.push(`colony ${row?.tag ?? tag}: ${stayDiffers}; "resettle rebuild" makes it again`)
    if (history !== null && history.outcome === null) {
      const twin = tags.get(tag.toLowerCase())
      if (twin !== undefined) problems.push(`two colonies in the yard have the tag ${tag}: ${twin} and ${id}`)
      tags.set(tag.toLowerCase(), id)
    }
  }
  return problems
}

/** What a rebuild would change in what is kept of a stay that is over, or null. */
function stayDifference(expected: StayRow | null, actual: StayRow | null): string | null {
  if (expected === null || actual === null)
    return expected === actual
      ? null
      : actual === null
        ? 'has no row of its stay'
        : 'has a row of a stay that is not over'
  const fields = Object.keys(expected).filter(
    (k) => expected[k as keyof StayRow] !== actual[k as keyof StayRow],
  )
  return fields.length === 0 ? null : `its stay differs from a rebuild in ${fields.join(', ')}`
}

/** What a rebuild would change, or null. */
function difference(expected: Projected | null, actual: Projected | null): string | null {
  if (expected === null || actual === null)
    return expected === actual
      ? null
      : actual === null
        ? 'has no projection'
        : 'has a projection but no intake'
  const fields = Object.keys(expected.row).filter(
    (k) => expected.row[k as keyof Projected['row']] !== actual.row[k as keyof Projected['row']],
  )
  if (fields.length > 0) return `its projection differs from a rebuild in ${fields.join(', ')}`
  return JSON.stringify(expected.checks) === JSON.stringify(actual.checks)
    ? null
    : 'its planned checks differ from a rebuild'
}
