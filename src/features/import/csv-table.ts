/**
 * Reads a comma-separated table: RFC 4180, UTF-8, a byte order mark tolerated, a header line first; semicolons or tabs
 * between the columns, as spreadsheets of many countries write them, are told by the header. Rows keep the number of the
 * line on which they begin; what is wrong with a line is a value, not an exception.
 */
import { CsvError, parse } from 'csv-parse/sync'

export interface LineProblem {
  /** In the file, from 1. */
  line: number
  /** The column, '' for the whole line. */
  field: string
  message: string
}

/** 'line 12: outdoor_c: must be a number, not "warm"' */
export const lineOf = (p: LineProblem): string =>
  [`line ${p.line}`, p.field, p.message].filter(Boolean).join(': ')

export interface TableRow {
  line: number
  /** By column, trimmed; empty cells are left out. */
  cells: Record<string, string>
}

/** What stands between the columns. */
type Separator = ',' | ';' | '\t'

export interface Table {
  separator: Separator
  header: string[]
  rows: TableRow[]
  problems: LineProblem[]
}

/** Cells of one record, trimmed. */
export interface RawRow {
  fields: string[]
  /** On which it begins. */
  line: number
}

/**
 * Text to rows. `known` names the columns that are understood, `required` those that must be there; with a header that
 * does not fit there are no rows. A row with too many or too few cells is a problem, and left out.
 */
export function readTable(text: string, known: readonly string[], required: readonly string[]): Table {
  const separator = separatorOf(text)
  const { rows, problems } = rawRows(text, separator)
  const [first, ...rest] = rows
  if (first === undefined) {
    if (problems.length === 0)
      problems.push({ line: 1, field: '', message: `is empty; the header must be ${known.join(',')}` })
    return { separator, header: [], rows: [], problems }
  }
  const header = first.fields.map((name) => name.toLowerCase())
  const wrong = headerProblems(header, known, required)
  if (wrong.length > 0)
    return {
      separator,
      header,
      rows: [],
      problems: wrong.map((message) => ({ line: first.line, field: '', message })),
    }
  const table: TableRow[] = []
  for (const { fields, line } of rest) {
    if (fields.length !== header.length) {
      const message = `has ${fields.length} cells where the header has ${header.length}; a text with a ${SEPARATOR_WORDS[separator]} needs quotes around it`
      problems.push({ line, field: '', message })
      continue
    }
    const cells: Record<string, string> = {}
    for (const [i, name] of header.entries()) {
      const cell = fields[i]
      if (cell !== undefined && cell !== '') cells[name] = cell
    }
    table.push({ line, cells })
  }
  return { separator, header, rows: table, problems: problems.sort((a, b) => a.line - b.line) }
}

const SEPARATOR_WORDS: Record<Separator, string> = { ',': 'comma', ';': 'semicolon', '\t': 'tab' }

/** Of the three, the one that is in the first line most often; a comma where none is. */
function separatorOf(text: string): Separator {
  const [first = ''] = text
    .replace(/^\uFEFF/, '')
    .trimStart()
    .split(/[\r\n]/, 1)
  const count = (s: Separator): number => first.split(s).length
  return ([';', '\t'] as const).reduce<Separator>((most, s) => (count(s) > count(most) ? s : most), ',')
}

function headerProblems(header: string[], known: readonly string[], required: readonly string[]): string[] {
  const twice = header.filter((name, i) => header.indexOf(name) !== i)
  return [
    ...header
      .filter((name) => !known.includes(name))
      .map((name) => `has a column "${name}" that is not known; known are: ${known.join(', ')}`),
    ...twice.map((name) => `has the column "${name}" twice`),
    ...required
      .filter((name) => !header.includes(name))
      .map((name) => `has no column "${name}"; it is needed`),
  ]
}

/** Cells line by line, empty lines left out. A quote that never closes swallows the rest of the file: what comes before it is still read. */
export function rawRows(text: string, delimiter = ','): { rows: RawRow[]; problems: LineProblem[] } {
  const rows: RawRow[] = []
  let nextLine = 1
  try {
    // Line ends are made alike first: the parser counts a CR LF inside quotes as two lines.
    parse(text.replace(/\r\n?/g, '\n'), {
      bom: true,
      delimiter,
      record_delimiter: '\n',
      relax_column_count: true,
      relax_quotes: true,
      skip_empty_lines: true,
      trim: true,
      on_record: (fields: string[], { lines }: { lines: number }) => {
        nextLine = lines + 1
        const within = fields.reduce((sum, f) => sum + f.split('\n').length - 1, 0)
        if (fields.some((f) => f !== '')) rows.push({ fields, line: lines - within })
        return null
      },
    })
    return { rows, problems: [] }
  } catch (error) {
    if (!(error instanceof CsvError)) throw error
    const message =
      error.code === 'CSV_QUOTE_NOT_CLOSED'
        ? 'opens a quote (") that never closes; this line and those after it cannot be read'
        : error.message
    return { rows, problems: [{ line: nextLine, field: '', message }] }
  }
}
