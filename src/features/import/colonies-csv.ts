/**
 * Colonies as CSV, one a line: what they were at intake and what became of them. Public format (README). The rules for
 * each cell are the journal's own, so that what is read here can be entered there.
 */

import { stringify } from 'csv-stringify/sync'
import { z } from 'zod'
import type { Day } from '../../days.ts'
import {
  day,
  type History,
  intake,
  METHODS,
  OUTCOMES,
  outcome,
  problemsOf,
  QUEEN_AT_INTAKE,
  tag,
} from '../../journal/index.ts'
import { toTheEnd } from '../../steps.ts'
import { type LineProblem, readTable, type TableRow } from './csv-table.ts'
import { orderIn, twoWaysSaid } from './dates.ts'

export const COLUMNS = [
  'tag',
  'removal_type',
  'removed_on',
  'intake_on',
  'yard',
  'queen_at_intake',
  'egg_frames',
  'open_frames',
  'capped_frames',
  'outdoor_c',
  'hours_open_to_boxed',
  'method',
  'outcome',
  'outcome_on',
  'into',
  'note',
] as const
export type ColumnName = (typeof COLUMNS)[number]
export const REQUIRED: readonly ColumnName[] = ['tag', 'removal_type', 'intake_on', 'queen_at_intake']

const removal = intake.shape.removal.shape
const brood = intake.shape.brood.def.innerType.shape
const colonyRow = z.strictObject({
  tag,
  removal_type: removal.type,
  removed_on: z.optional(day),
  intake_on: day,
  yard: z.optional(intake.shape.yard),
  queen_at_intake: z.enum(QUEEN_AT_INTAKE),
  egg_frames: brood.eggs,
  open_frames: brood.open,
  capped_frames: brood.capped,
  outdoor_c: removal.outdoorC,
  hours_open_to_boxed: removal.hoursOpenToBoxed,
  method: z.enum(METHODS).optional(),
  outcome: z.enum(OUTCOMES).optional(),
  outcome_on: z.optional(day),
  into: outcome.shape.into,
  note: intake.shape.note,
} satisfies Record<ColumnName, z.core.$ZodType>)

/**
 * One colony. Days ISO, °C, hours, frames in quarters; what is left out is unknown, no outcome: still in the yard. An
 * outcome without its day: it left, on a day nobody wrote down.
 */
export type ColonyRow = z.infer<typeof colonyRow>

const NUMBERS: ReadonlySet<string> = new Set([
  'egg_frames',
  'open_frames',
  'capped_frames',
  'outdoor_c',
  'hours_open_to_boxed',
])
const WORDS: ReadonlySet<string> = new Set(['queen_at_intake', 'method', 'outcome'])
const DECIMAL = /^[+-]?(\d+\.?\d*|\.\d+)$/
/** As spreadsheets that part columns by semicolons write numbers: 29,4. */
const DECIMAL_COMMA = /^[+-]?\d*,\d+$/

export interface ColoniesRead {
  rows: (ColonyRow & { line: number })[]
  /** By line. Empty: all is well. */
  problems: LineProblem[]
}

/**
 * Reads the CSV text. `today`: a day after it is a mistake. Rows with problems are left out of `rows`; whether the
 * others may be used is for the caller to say (all or nothing, unless bad rows are to be skipped).
 */
export function readColonies(text: string, today: Day): ColoniesRead {
  const table = readTable(text, COLUMNS, REQUIRED)
  const cells = table.separator === ',' ? table.rows : table.rows.map(pointed)
  const { rows, problems } = toTheEnd(readingRows(cells, today))
  return { rows, problems: [...table.problems, ...problems].sort((a, b) => a.line - b.line) }
}

/** A row with a decimal point in its numbers. */
const pointed = ({ line, cells }: TableRow): TableRow => ({
  line,
  cells: Object.fromEntries(
    Object.entries(cells).map(([name, cell]) => [
      name,
      NUMBERS.has(name) && DECIMAL_COMMA.test(cell) ? cell.replace(',', '.') : cell,
    ]),
  ),
})

/** The same for rows that are cells by column already, pausing after each. */
export function* readingRows(table: readonly TableRow[], today: Day): Generator<undefined, ColoniesRead> {
  const rows: ColoniesRead['rows'] = []
  const problems: LineProblem[] = []
  const order = orderIn(datesIn(table))
  for (const row of table) {
    const input = inputOf(row)
    const parsed = colonyRow.safeParse(input)
    const found = parsed.success
      ? contradictionsIn(parsed.data, today)
      : problemsOf(parsed.error, input).map(({ field, message }) => ({
          field,
          message: twoWaysSaid(row.cells[field] ?? '', order) ?? message,
        }))
    if (parsed.success && found.length === 0) rows.push({ ...parsed.data, line: row.line })
    else problems.push(...found.map((p) => ({ line: row.line, ...p })))
    yield
  }
  const twice = sharedTags(rows)
  return {
    rows: twice.length === 0 ? rows : rows.filter((r) => !twice.some((p) => p.line === r.line)),
    problems: [...problems, ...twice].sort((a, b) => a.line - b.line),
  }
}

/** Cells as the schema wants them: numbers as numbers, words in small letters, a guard before a formula taken off. */
function inputOf({ cells }: TableRow): Record<string, unknown> {
  const input: Record<string, unknown> = {}
  for (const [name, cell] of Object.entries(cells))
    if (NUMBERS.has(name)) input[name] = DECIMAL.test(cell) ? Number(cell) : cell
    else input[name] = WORDS.has(name) ? cell.toLowerCase() : unguarded(cell)
  return input
}

const datesIn = (table: readonly TableRow[]): { line: number; text: string }[] =>
  table.flatMap(({ line, cells }) =>
    [cells.intake_on, cells.removed_on, cells.outcome_on].flatMap((text) => (text ? [{ line, text }] : [])),
  )

function contradictionsIn(r: ColonyRow, today: Day): Omit<LineProblem, 'line'>[] {
  const problems: Omit<LineProblem, 'line'>[] = []
  const say = (field: ColumnName, message: string) => problems.push({ field, message })
  if (r.intake_on > today) say('intake_on', `${r.intake_on} is after ${today}, today`)
  if (r.removed_on !== undefined && r.removed_on > r.intake_on)
    say('removed_on', `${r.removed_on} is after the intake on ${r.intake_on}`)
  if (r.outcome === undefined && r.outcome_on !== undefined)
    say('outcome', `is missing, but outcome_on says ${r.outcome_on}`)
  if (r.outcome_on !== undefined && r.outcome_on < r.intake_on)
    say('outcome_on', `${r.outcome_on} is before the intake on ${r.intake_on}`)
  if (r.outcome_on !== undefined && r.outcome_on > today)
    say('outcome_on', `${r.outcome_on} is after ${today}, today`)
  if (r.into !== undefined && r.outcome !== 'united')
    say('into', `names "${r.into}", but only a united colony went into another`)
  return problems
}

/** A painted box may be used again once its colony has left; two colonies in it at once are a mistake. */
function sharedTags(rows: readonly (ColonyRow & { line: number })[]): LineProblem[] {
  const byTag = new Map<string, (ColonyRow & { line: number })[]>()
  for (const r of rows) {
    const same = byTag.get(r.tag)
    if (same === undefined) byTag.set(r.tag, [r])
    else same.push(r)
  }
  const problems: LineProblem[] = []
  for (const same of byTag.values()) {
    if (same.length < 2) continue
    same.sort((a, b) => (a.intake_on === b.intake_on ? a.line - b.line : a.intake_on < b.intake_on ? -1 : 1))
    let holder = same[0]
    for (const r of same.slice(1)) {
      if (holder !== undefined && stillThere(holder, r.intake_on))
        problems.push({
          line: r.line,
          field: 'tag',
          message: `"${r.tag}" was still the tag of the colony in line ${holder.line} on ${r.intake_on}`,
        })
      else holder = r
    }
  }
  return problems
}

/** Whether a colony still had its tag on a day; one that left on a day nobody knows is taken to have left before. */
const stillThere = ({ outcome, outcome_on }: ColonyRow, on: Day): boolean =>
  outcome_on === undefined ? outcome === undefined : on < outcome_on

/** A cell that a spreadsheet would take for a formula. Written with a ' before it, which reading takes off again. */
const FORMULA = /^'*[=+\-@\t]/
const guarded = (text: string): string => (FORMULA.test(text) ? `'${text}` : text)
const unguarded = (text: string): string =>
  text.startsWith("'") && FORMULA.test(text) ? text.slice(1) : text

/**
 * Writes rows as CSV text: RFC 4180, CR LF line ends. Reading it back gives the same rows.
 * Example: writeColonies([]) is the header alone.
 */
export function writeColonies(rows: readonly ColonyRow[]): string {
  const lines = rows.map((r) =>
    COLUMNS.map((name) => {
      const value = r[name]
      return typeof value === 'string' ? guarded(value) : value
    }),
  )
  // A line feed inside a cell needs quotes too, though it does not end a record here.
  return stringify([[...COLUMNS], ...lines], { record_delimiter: '\r\n', quoted_match: /[\r\n]/ })
}

/** The row of a colony in the journal. The site of the removal is private and not among the columns. */
export function rowOf(history: History): ColonyRow {
  const { intake: i, outcome: end } = history
  return {
    tag: history.tag,
    removal_type: i.removal.type,
    removed_on: i.removal.removedOn,
    intake_on: i.on,
    yard: i.yard,
    queen_at_intake: i.queen,
    egg_frames: i.brood?.eggs,
    open_frames: i.brood?.open,
    capped_frames: i.brood?.capped,
    outdoor_c: i.removal.outdoorC,
    hours_open_to_boxed: i.removal.hoursOpenToBoxed,
    method: i.removal.method,
    outcome: end?.what,
    outcome_on: end?.dayUnknown === true ? undefined : end?.on,
    into: end?.into,
    note: i.note,
  }
}

export interface EntryMaker {
  /** A new UUIDv7. */
  newId: () => string
  /** Who signs the entries. */
  by: string
  /** Where colonies without a yard go. */
  yard: string
}

/** The journal entries of a row: its intake and, when it has left, its outcome. They name the colony by its tag. */
export function entriesOf(row: ColonyRow, { newId, by, yard }: EntryMaker): Record<string, unknown>[] {
  const base = { colony: row.tag, by }
  const frames = present({ eggs: row.egg_frames, open: row.open_frames, capped: row.capped_frames })
  const intakeEntry = present({
    ...base,
    id: newId(),
    kind: 'intake',
    on: row.intake_on,
    removal: present({
      type: row.removal_type,
      removedOn: row.removed_on,
      outdoorC: row.outdoor_c,
      hoursOpenToBoxed: row.hours_open_to_boxed,
      method: row.method,
    }),
    yard: row.yard ?? yard,
    queen: row.queen_at_intake,
    brood: Object.keys(frames).length === 0 ? undefined : frames,
    note: row.note,
  })
  if (row.outcome === undefined) return [intakeEntry]
  const end = {
    ...base,
    id: newId(),
    kind: 'outcome',
    // A day has to stand there: the intake's, so that the box is free for the next colony.
    on: row.outcome_on ?? row.intake_on,
    dayUnknown: row.outcome_on === undefined ? true : undefined,
    what: row.outcome,
    into: row.into,
  }
  return [intakeEntry, present(end)]
}

const present = (fields: Record<string, unknown>): Record<string, unknown> =>
  Object.fromEntries(Object.entries(fields).filter(([, v]) => v !== undefined))
