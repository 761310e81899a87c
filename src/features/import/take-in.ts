/** Rows to entries, in the order in which things happened; rehearsed against the book before anything is written. */

import { createHash } from 'node:crypto'
import { parse, v7 } from 'uuid'
import type { Problem } from '../../journal/index.ts'
import { type Problems, type Result, refused } from '../../result.ts'
import type { AppendContext, AppendResult, ColonyImports } from '../../store/index.ts'
import { type ColonyRow, entriesOf } from './colonies-csv.ts'
import type { Extras } from './convert.ts'
import type { LineProblem } from './csv-table.ts'

export type ImportRow = ColonyRow & Extras & { line: number }

export interface ImportEntry {
  entry: Record<string, unknown>
  line: number
}

export interface Signing {
  /** UUIDv7 of the import; entries' ids come of it, so the same import sent twice is one import. */
  importId: string
  by: string
  /** Where colonies without a yard go. */
  yard: string
}

/**
 * An id that depends on nothing but the import, the line (or what else it is made for) and which entry of it it is: a UUIDv7 of
 * the import's own instant.
 */
export function idFor(importId: string, line: number | string, nth: number): string {
  const bytes = parse(importId)
  const msecs = bytes.slice(0, 6).reduce((n, b) => n * 256 + b, 0)
  const random = createHash('sha256').update(`${importId} ${line} ${nth}`).digest().subarray(0, 16)
  return v7({ msecs, random, seq: random.readUInt32BE(0) & 0x7fffffff })
}

/**
 * Every row's entries. A tag used again comes after the colony that had it has left, a colony united into another after
 * that one came; outcomes name their colony by its id, so that a tag cannot mean the wrong one.
 */
export function importEntries(rows: readonly ImportRow[], signing: Signing): ImportEntry[] {
  const made = rows.flatMap((row) => {
    let nth = 0
    const newId = (): string => idFor(signing.importId, row.line, nth++)
    const entries = entriesOf(row, { newId, by: signing.by, yard: signing.yard }).map(withExtras(row))
    const [intake] = entries
    return entries.map((entry) => ({
      line: row.line,
      entry: entry === intake || intake === undefined ? entry : { ...entry, colony: intake.id },
      on: String(entry.on),
      rank: rankOf(entry, row),
    }))
  })
  return made
    .sort((a, b) => (a.on === b.on ? a.rank - b.rank || a.line - b.line : a.on < b.on ? -1 : 1))
    .map(({ entry, line }) => ({ entry, line }))
}

/** On one day: colonies leave, others come, some are united into these, some come and leave the same day. */
function rankOf(entry: Record<string, unknown>, row: ColonyRow): number {
  if (entry.kind === 'intake') return 1
  // An outcome without its day stands on the day of the intake.
  if ((row.outcome_on ?? row.intake_on) === row.intake_on) return 3
  return entry.what === 'united' ? 2 : 0
}

const withExtras =
  ({ stand, site, removedBy }: Extras) =>
  (entry: Record<string, unknown>): Record<string, unknown> => {
    const by = removedBy ?? entry.by
    if (entry.kind !== 'intake') return entry
    const removal = entry.removal as Record<string, unknown>
    return {
      ...entry,
      by,
      ...(stand === undefined ? {} : { stand }),
      ...(site === undefined ? {} : { removal: { ...removal, site } }),
    }
  }

const FIELD_NAMES: Record<string, string> = {
  colony: 'tag',
  'removal.type': 'removal_type',
  'removal.removedOn': 'removed_on',
  on: '',
}

/** What the journal says against entries, reported by line. */
const byLine = (problems: readonly Problem[], entries: readonly ImportEntry[]): LineProblem[] =>
  problems.map((p) => ({
    line: entries[(p.entry ?? 1) - 1]?.line ?? 1,
    field: FIELD_NAMES[p.field] ?? p.field,
    message: p.message,
  }))

export interface Rehearsed {
  /** Rows that can be taken in together. */
  good: ImportRow[]
  problems: LineProblem[]
}

/**
 * What would happen. Rows the book refuses are put aside and the others tried again, until none is refused: a row left
 * out can be what another needs (a colony united into it), which is then reported for that one too.
 */
export function rehearsed(
  imports: Pick<ColonyImports, 'rehearse'>,
  rows: readonly ImportRow[],
  signing: Signing,
  context: AppendContext,
): Rehearsed {
  const problems: LineProblem[] = []
  let good = [...rows]
  for (;;) {
    const entries = importEntries(good, signing)
    const result: AppendResult = imports.rehearse(
      entries.map((e) => e.entry),
      context,
    )
    if (result.ok) return { good, problems: problems.sort((a, b) => a.line - b.line) }
    const found = byLine(result.problems, entries)
    problems.push(...found)
    const bad = new Set(found.map((p) => p.line))
    const left = good.filter((r) => !bad.has(r.line))
    // Nothing can be put aside: the book refuses for another reason.
    if (left.length === good.length) return { good: [], problems }
    good = left
  }
}

export type TakenIn = Result<{ colonies: number; entries: number; already: number }, Problems<LineProblem>>

/** Writes the rows, all or none. */
export function takeIn(
  imports: Pick<ColonyImports, 'take'>,
  rows: readonly ImportRow[],
  source: string,
  signing: Signing,
  context: AppendContext,
): TakenIn {
  const entries = importEntries(rows, signing)
  const batch = { id: signing.importId, source, colonies: rows.length }
  const result = imports.take(
    batch,
    entries.map((e) => e.entry),
    context,
  )
  return result.ok
    ? { ok: true, colonies: rows.length, entries: result.accepted.length, already: result.already.length }
    : refused(byLine(result.problems, entries))
}
