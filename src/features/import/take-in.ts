/**
 * Rows to entries, in the order in which things happened; rehearsed against the book before anything is written. A few
 * colonies at a step: an old book has hundreds, and others are answered in between.
 */

import { createHash } from 'node:crypto'
import { parse, v7 } from 'uuid'
import type { Problem } from '../../journal/index.ts'
import { type Problems, type Result, refused } from '../../result.ts'
import type { AppendContext, ColonyImports, Store } from '../../store/index.ts'
import { type ColonyRow, entriesOf } from './colonies-csv.ts'
import type { Extras } from './convert.ts'
import type { LineProblem } from './csv-table.ts'
import { importState, withdrawalsOf } from './undo.ts'

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
 * Every row's entries, in the order in which they can be written. A tag used again comes after the colony that had it has
 * left, a colony united into another after that one came; outcomes name their colony by its id, so that a tag cannot mean the
 * wrong one.
 */
export function* makingEntries(
  rows: readonly ImportRow[],
  signing: Signing,
): Generator<undefined, ImportEntry[]> {
  const made: (ImportEntry & { on: string; rank: number })[] = []
  for (const row of rows) {
    let nth = 0
    const newId = (): string => idFor(signing.importId, row.line, nth++)
    const entries = entriesOf(row, { newId, by: signing.by, yard: signing.yard }).map(withExtras(row))
    const [intake] = entries
    for (const entry of entries)
      made.push({
        line: row.line,
        entry: entry === intake || intake === undefined ? entry : { ...entry, colony: intake.id },
        ...placeOf(entry, row),
      })
    yield
  }
  return made
    .sort((a, b) => (a.on === b.on ? a.rank - b.rank : a.on < b.on ? -1 : 1))
    .map(({ entry, line }) => ({ entry, line }))
}

/**
 * A colony's entries together, on the day it came, so that its plan is made once and not as of a box that stands for years; but
 * one that was united into another when that one had come.
 */
const placeOf = (entry: Record<string, unknown>, row: ColonyRow): { on: string; rank: number } =>
  entry.what === 'united' ? { on: String(entry.on), rank: 1 } : { on: row.intake_on, rank: 0 }

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
export function* rehearsing(
  imports: Pick<ColonyImports, 'rehearsing'>,
  rows: readonly ImportRow[],
  signing: Signing,
  context: AppendContext,
): Generator<undefined, Rehearsed> {
  const problems: LineProblem[] = []
  let good = [...rows]
  for (;;) {
    const entries = yield* makingEntries(good, signing)
    const result = yield* imports.rehearsing(rawOf(entries), context)
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

/** Entries written at a step and the rest of their colony's, for good: what comes between is not held up, and no power cut undoes it. */
const AT_A_STEP = 10

function* parts(entries: readonly ImportEntry[]): Generator<ImportEntry[]> {
  let part: ImportEntry[] = []
  for (const [i, entry] of entries.entries()) {
    part.push(entry)
    if (part.length < AT_A_STEP || entries[i + 1]?.line === entry.line) continue
    yield part
    part = []
  }
  if (part.length > 0) yield part
}

/**
 * Writes the rows, all or none: the whole is rehearsed first, and where the book changes while it is being written so that
 * the rest no longer fits, what was written is taken back. Broken off by a power cut, a part stays, noted as this import:
 * it can be taken back there, or the same sent again.
 */
export function* takingIn(
  store: Taking,
  rows: readonly ImportRow[],
  source: string,
  signing: Signing,
  context: AppendContext,
): Generator<undefined, TakenIn> {
  const entries = yield* makingEntries(rows, signing)
  const judged = yield* store.imports.rehearsing(rawOf(entries), context)
  if (!judged.ok) return refused(byLine(judged.problems, entries))
  const batch = { id: signing.importId, source, colonies: rows.length }
  let [written, already] = [0, 0]
  for (const part of parts(entries)) {
    const result = store.imports.take(batch, rawOf(part), context)
    if (!result.ok) {
      takeBack(store, signing, context)
      return refused(byLine(result.problems, part))
    }
    written += result.accepted.length
    already += result.already.length
    yield
  }
  return { ok: true, colonies: rows.length, entries: written, already }
}

type Taking = Pick<Store, 'append' | 'entry' | 'journal'> & {
  imports: Pick<ColonyImports, 'rehearsing' | 'take' | 'list' | 'entries'>
}

function takeBack(store: Taking, { importId, by }: Signing, context: AppendContext): void {
  const state = importState(store, importId)
  if (state !== null) store.append(withdrawalsOf(state, { by, today: context.today }), context)
}

const rawOf = (entries: readonly ImportEntry[]): Record<string, unknown>[] => entries.map((e) => e.entry)
