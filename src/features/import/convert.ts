/** A sheet and its mapping to rows of the colonies CSV; what is wrong is reported by line and by the sheet's own headings. */

import type * as z from 'zod/mini'
import type { Day } from '../../days.ts'
import { intake, problemsOf } from '../../journal/index.ts'
import { COLUMNS, type ColonyRow, readingRows } from './colonies-csv.ts'
import type { LineProblem, RawRow, TableRow } from './csv-table.ts'
import { type DateOrder, dateTyped, readingsOf } from './dates.ts'
import type { Field, Target } from './fields.ts'
import type { Mapping } from './mapping.ts'
import { columnsOf } from './mapping.ts'
import { framesIn, type HeatUnit, heatIn, hoursIn } from './measures.ts'
import { type Named, nameTaken } from './names-found.ts'
import { LONG_BLANK, NOT_SAID, STILL_HERE, type Worded, wordKey } from './words.ts'

/** What an intake holds beside the columns of the colonies CSV. */
export interface Extras {
  stand?: string
  site?: string
  /** Who removed it, and so signs the intake. */
  removedBy?: string
}

export interface ConvertedRow extends ColonyRow, Extras {
  line: number
}

export interface Converted {
  rows: ConvertedRow[]
  /** By line; `field` is the sheet's heading. */
  problems: LineProblem[]
  /** Tags that could not stay as they were written. */
  retagged: { line: number; from: string; to: string }[]
  /**
   * Dates that mean another day with the other order of day and month, where the sheet itself does not prove its order:
   * each with the day taken and the day it would be otherwise.
   */
  twoWays: { line: number; field: string; text: string; taken: Day; other: Day }[]
}

const DATES: readonly Field[] = ['intake_on', 'removed_on', 'outcome_on']
const FRAMES: readonly Field[] = ['egg_frames', 'open_frames', 'capped_frames']
const WORDED: ReadonlySet<Field> = new Set<Worded>(['queen_at_intake', 'outcome', 'method', 'removal_type'])

/** Every row, as far as it can be understood, pausing after each. */
export function* converting(mapping: Mapping, today: Day): Generator<undefined, Converted> {
  const problems: LineProblem[] = [...mapping.sheet.problems]
  const table: TableRow[] = []
  const extras = new Map<number, Extras>()
  const retagged: Converted['retagged'] = []
  const twoWays: Converted['twoWays'] = []
  for (const row of mapping.sheet.rows) {
    const one = new RowReader(row, mapping)
    const { cells, extra } = one.read()
    if (one.retagged !== null) retagged.push({ line: row.line, ...one.retagged })
    twoWays.push(...one.twoWays)
    if (one.problems.length > 0) problems.push(...one.problems)
    else {
      table.push({ line: row.line, cells })
      extras.set(row.line, extra)
    }
    yield
  }
  const read = yield* readingRows(table, today)
  return {
    rows: read.rows.map((r) => ({ ...r, ...extras.get(r.line) })),
    problems: [...problems, ...read.problems.map((p) => ({ ...p, field: headingOf(p.field, mapping) }))].sort(
      (a, b) => a.line - b.line,
    ),
    retagged,
    twoWays,
  }
}

/** The sheet's heading of a column of the colonies CSV; the column's own name when the sheet has none. */
export function headingOf(field: string, { sheet, targets }: Mapping): string {
  const [column] = columnsOf(targets, field as Target)
  return column === undefined ? field : sheet.header[column] || `column ${column + 1}`
}

/** Signs a tag cannot have: it is written on boxes and in addresses. */
const NOT_IN_TAGS = /[/\\?#%<>"'`]+/g

/** Example: cleanTag('# 12/A') = '12-A'. */
export const cleanTag = (text: string): string =>
  text
    .replace(/^[#'\s]+/, '')
    .replace(NOT_IN_TAGS, '-')
    .replaceAll(/\s+/g, ' ')
    .replace(/-+$/, '')
    .trim()

/** Reads one row of the sheet. */
class RowReader {
  readonly problems: LineProblem[] = []
  retagged: { from: string; to: string } | null = null
  readonly twoWays: Converted['twoWays'] = []

  constructor(
    private readonly row: RawRow,
    private readonly mapping: Mapping,
  ) {}

  read(): { cells: Record<string, string>; extra: Extras } {
    const cells: Record<string, string> = {}
    for (const name of COLUMNS) {
      const value = this.#cell(name)
      if (value !== '') cells[name] = value
    }
    // A sheet with one date has the day of the job in it.
    if (cells.intake_on === undefined && cells.removed_on !== undefined) cells.intake_on = cells.removed_on
    return { cells, extra: this.#extras() }
  }

  #said(field: Target): string {
    const [column] = columnsOf(this.mapping.targets, field)
    return column === undefined ? '' : (this.row.fields[column] ?? '')
  }

  #named(field: Named): string {
    const written = this.#said(field)
    return written === '' ? '' : nameTaken(this.mapping.names, field, written)
  }

  #has(field: Field): boolean {
    return columnsOf(this.mapping.targets, field).length > 0
  }

  #say(field: string, message: string): '' {
    this.problems.push({ line: this.row.line, field: headingOf(field, this.mapping), message })
    return ''
  }

  #cell(field: (typeof COLUMNS)[number]): string {
    if (field === 'tag') return this.#tag()
    if (field === 'note') return this.#note()
    if (field === 'yard') return this.#named('yard') || this.mapping.yard
    if (WORDED.has(field)) return this.#word(field as Worded)
    const text = this.#said(field)
    if (text === '') return ''
    if (DATES.includes(field)) return this.#date(field, text, this.mapping.order ?? 'day-first')
    if (field === 'outdoor_c') return this.#heat(text, this.mapping.heat ?? 'C')
    if (field === 'hours_open_to_boxed')
      return this.#number(field, text, hoursIn(text), 'hours: write them like 2.5 or 2:30')
    if (FRAMES.includes(field))
      return this.#number(field, text, framesIn(text), 'a number of frames: write it like 1.5')
    return text
  }

  #tag(): string {
    if (!this.#has('tag')) return `${this.mapping.tagPrefix}${this.row.line}`
    const from = this.#said('tag')
    const to = cleanTag(from)
    if (to !== from) this.retagged = { from, to }
    return to
  }

  #date(field: Field, text: string, order: DateOrder): string {
    const day = dateTyped(text, order)
    if (day !== null) {
      const otherDay = this.mapping.found.order === null ? readingsOf(text).find((d) => d !== day) : undefined
      if (otherDay !== undefined)
        this.twoWays.push({
          line: this.row.line,
          field: headingOf(field, this.mapping),
          text,
          taken: day,
          other: otherDay,
        })
      return day
    }
    const other = dateTyped(text, order === 'day-first' ? 'month-first' : 'day-first')
    return this.#say(
      field,
      other === null
        ? `"${text}" is no date that can be read; write it like 2024-05-31`
        : `"${text}" is no date with the ${order === 'day-first' ? 'day' : 'month'} first, as the other dates are`,
    )
  }

  #heat(text: string, unit: HeatUnit): string {
    return this.#number('outdoor_c', text, heatIn(text, unit), 'a temperature: write it like 85')
  }

  #number(field: Field, text: string, value: number | null, like: string): string {
    return value === null ? this.#say(field, `"${text}" is not ${like}`) : String(value)
  }

  #word(field: Worded): string {
    const words = this.mapping.words[field]
    if (words === undefined) return this.#withoutColumn(field)
    const word = this.#said(field)
    const long = field === 'outcome' && this.mapping.longBlank.has(this.row.line)
    // No word and no day it left, and it came lately: it is still here.
    if (field === 'outcome' && word === '' && !long && this.#said('outcome_on') === '') return ''
    const key = long ? LONG_BLANK : wordKey(word)
    const known = words.find((w) => w.key === key)
    // Empty words that need no meaning are not among the words.
    if (known === undefined) return ''
    if (known.meaning === null)
      return this.#say(
        field,
        word === '' ? 'is empty' : `"${word}" has no meaning yet: say what it stands for`,
      )
    return known.meaning === STILL_HERE || known.meaning === NOT_SAID ? '' : known.meaning
  }

  #withoutColumn(field: Worded): string {
    if (field === 'removal_type') return this.mapping.removalType
    return field === 'queen_at_intake' ? 'unknown' : ''
  }

  /** All columns that go into the note; those with another heading say it. */
  #note(): string {
    const { targets, sheet } = this.mapping
    return targets
      .flatMap((target, column) => {
        const text = this.row.fields[column] ?? ''
        if (text === '') return []
        if (target === 'note') return [text]
        return target === 'to-note' ? [`${sheet.header[column] || `Column ${column + 1}`}: ${text}`] : []
      })
      .join('; ')
  }

  #extras(): Extras {
    const stand = this.#checked('stand', intake.shape.stand)
    const site = this.#checked('site', intake.shape.removal.shape.site)
    const removedBy = this.#checked('removed_by', intake.shape.by)
    return {
      ...(stand === '' ? {} : { stand }),
      ...(site === '' ? {} : { site }),
      ...(removedBy === '' ? {} : { removedBy: nameTaken(this.mapping.names, 'removed_by', removedBy) }),
    }
  }

  #checked(field: Field, schema: z.ZodMiniType): string {
    const text = this.#said(field)
    if (text === '') return ''
    const parsed = schema.safeParse(text)
    if (parsed.success) return text
    return this.#say(field, problemsOf(parsed.error, text)[0]?.message ?? 'cannot be taken in')
  }
}
