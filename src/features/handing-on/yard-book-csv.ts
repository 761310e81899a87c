/** The yard book as CSV (RFC 4180), one file a table. Public format (README). */
import { stringify } from 'csv-stringify/sync'
import type { YardBook } from './yard-book.ts'

type Cell = string | number | null

export const BOOK_TABLES = ['colonies', 'movements', 'treatments', 'health'] as const
export type BookTable = (typeof BOOK_TABLES)[number]

const COLUMNS: Record<BookTable, readonly string[]> = {
  colonies: ['tag', 'origin', 'came_on', 'yard', 'stand', 'left_on', 'left'],
  movements: ['on', 'tag', 'what', 'from', 'to', 'permits'],
  treatments: ['on', 'tag', 'yard', 'what', 'product', 'litres', 'kg', 'batch', 'withdrawal_until', 'by'],
  health: ['on', 'tag', 'yard', 'what', 'mites_per_100', 'detail'],
}

const rowsOf: { [T in BookTable]: (book: YardBook) => Cell[][] } = {
  colonies: (b) => b.colonies.map((l) => [l.tag, l.origin, l.cameOn, l.yard, l.stand, l.leftOn, l.left]),
  movements: (b) => b.movements.map((l) => [l.on, l.tag, l.what, l.from, l.to, l.permits]),
  treatments: (b) =>
    b.treatments.map((l) => [
      l.on,
      l.tag,
      l.yard,
      l.what,
      l.product,
      l.litres,
      l.kg,
      l.batch,
      l.withdrawalUntil,
      l.by,
    ]),
  health: (b) =>
    b.health.map((l) => [
      l.on,
      l.tag,
      l.yard,
      l.what,
      l.per100 === null ? null : Number(l.per100.toFixed(2)),
      l.detail,
    ]),
}

/** One table with its header. Cells that a spreadsheet would take for a formula get an apostrophe in front. */
export const bookCsv = (book: YardBook, table: BookTable): string =>
  stringify([[...COLUMNS[table]], ...rowsOf[table](book)], {
    record_delimiter: '\r\n',
    escape_formulas: true,
  })
