/** Text to cells: which sign parts the columns, and on which line the headings are. */
import { type LineProblem, type RawRow, rawRows } from './csv-table.ts'

export const DELIMITERS = { comma: ',', semicolon: ';', tab: '\t', bar: '|' } as const
export type Delimiter = keyof typeof DELIMITERS

export interface Sheet {
  delimiter: Delimiter
  /** Where the headings are, in the file. */
  headerLine: number
  header: string[]
  /** Below the headings; every row has as many cells as the widest. */
  rows: RawRow[]
  columns: number
  /** Of the text as a whole, such as a quote that never closes. */
  problems: LineProblem[]
}

/** Lines looked at to guess. */
const SAMPLE = 30

/**
 * The sign that parts the columns: the one with which most lines fall into as many cells as the most usual line.
 * Example: guessDelimiter('a;b\n1,5;2') = 'semicolon'.
 */
export function guessDelimiter(text: string): Delimiter {
  const sample = text.split(/\r\n?|\n/, SAMPLE).join('\n')
  let best: { name: Delimiter; score: number } = { name: 'comma', score: 0 }
  for (const name of Object.keys(DELIMITERS) as Delimiter[]) {
    const widths = rawRows(sample, DELIMITERS[name]).rows.map((r) => r.fields.length)
    const counts = new Map<number, number>()
    for (const w of widths) if (w > 1) counts.set(w, (counts.get(w) ?? 0) + 1)
    for (const [width, lines] of counts) {
      const score = (lines / Math.max(1, widths.length)) * 100 + width
      if (score > best.score) best = { name, score }
    }
  }
  return best.name
}

/** What the operator said of the sheet, where the guess was wrong. */
export interface SheetChoice {
  delimiter?: Delimiter | undefined
  headerLine?: number | undefined
}

/** `looksLikeHeading` tells whether a cell is one; the line with the most of them within the first ones is taken. */
export function sheetOf(
  text: string,
  choice: SheetChoice,
  looksLikeHeading: (cell: string) => boolean,
): Sheet {
  const delimiter = choice.delimiter ?? guessDelimiter(text)
  const { rows, problems } = rawRows(text, DELIMITERS[delimiter])
  const at = rows.findIndex((r) => r.line === choice.headerLine)
  const header = at >= 0 ? at : headerAt(rows, looksLikeHeading)
  const columns = rows.slice(header).reduce((m, r) => Math.max(m, r.fields.length), 0)
  const filled = (r: RawRow): RawRow => ({
    line: r.line,
    fields: Array.from({ length: columns }, (_, i) => r.fields[i] ?? ''),
  })
  const head = rows[header]
  return {
    delimiter,
    headerLine: head?.line ?? 1,
    header: head === undefined ? [] : filled(head).fields,
    rows: rows.slice(header + 1).map(filled),
    columns,
    problems,
  }
}

/** Headings stand above the table, sometimes below a title. */
function headerAt(rows: readonly RawRow[], looksLikeHeading: (cell: string) => boolean): number {
  let best = { at: 0, found: 0 }
  for (const [at, row] of rows.slice(0, SAMPLE).entries()) {
    const found = row.fields.filter(looksLikeHeading).length
    if (found > best.found) best = { at, found }
  }
  return best.at
}
