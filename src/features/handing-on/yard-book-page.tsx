/** The yard book for the inspector: four tables over a period, to print or as CSV. */

import type { Child } from 'hono/jsx'
import { type Day, inWordsWithYear } from '../../days.ts'
import { type FormState, TextField } from '../../forms/index.ts'
import { type Frame, Layout, Refusal } from '../../parts/index.ts'
import { GIFT, labelIn, leftWords, plain, removalTypes, SIGN, volume, weight } from '../../words/index.ts'
import type { MovementLine, Period, YardBook } from './yard-book.ts'
import { BOOK_TABLES, type BookTable } from './yard-book-csv.ts'

interface YardBookProps {
  frame: Frame
  form: FormState
  /** Null when the period cannot be read. */
  book: YardBook | null
  /** What the whole yard is called; '' for nothing. */
  yardName: string
}

const TITLES: Record<BookTable, string> = {
  colonies: 'Colonies',
  movements: 'Movements',
  treatments: 'Treatments and feed',
  health: 'Health',
}

export const YardBookPage = ({ frame, form, book, yardName }: YardBookProps) => (
  <Layout frame={frame} title="Yard book" scripts={['islands/print.ts']}>
    <h1>Yard book{yardName === '' ? '' : `, ${yardName}`}</h1>
    <Refusal form={form} labels={{ from: 'From', to: 'To' }} heading="This period cannot be shown" />
    <form class="book-choose" method="get" action="/yard-book">
      <TextField form={form} name="from" label="From" type="date" />
      <TextField form={form} name="to" label="To" type="date" />
      <button class="button" type="submit">
        Show
      </button>
      <button class="button button-do" type="button" id="print" hidden>
        Print
      </button>
    </form>
    {book === null ? null : (
      <>
        <p>
          {inWordsWithYear(book.period.from)} to {inWordsWithYear(book.period.to)}. For the apiary inspector:
          what authorities usually ask for. Registration, and what has to be kept for how long, are local
          rules. No customer is named.
        </p>
        {BOOK_TABLES.map((table) => (
          <BookSection table={table} book={book} frame={frame} />
        ))}
      </>
    )}
  </Layout>
)

const csvPath = (table: BookTable, { from, to }: Period): string =>
  `/yard-book/csv?table=${table}&from=${from}&to=${to}`

/** A longer table is folded on a screen, and never on paper (judgement: a screen of a phone). */
const FEW_LINES = 12

const BookSection = ({ table, book, frame }: { table: BookTable; book: YardBook; frame: Frame }) => (
  <details class="fold book-section" open={book[table].length <= FEW_LINES}>
    <summary>
      <h2>{TITLES[table]}</h2>
      <small class="soft">{book[table].length === 0 ? 'none in this period' : book[table].length}</small>
    </summary>
    {book[table].length === 0 ? null : (
      <>
        {/* Scrolls sideways on a phone, so it can be reached with the keyboard. */}
        <section class="book-table" tabindex={0} aria-label={TITLES[table]}>
          {TABLES[table](book, frame)}
        </section>
        <p class="buttons">
          <a class="button" href={csvPath(table, book.period)}>
            {TITLES[table]} as CSV
          </a>
        </p>
      </>
    )}
  </details>
)

interface TableProps {
  heads: readonly string[]
  /** What nobody noted stays empty, to be written in by hand. */
  rows: Child[][]
}

const Table = ({ heads, rows }: TableProps) => (
  <table>
    <thead>
      <tr>
        {heads.map((h) => (
          <th scope="col">{h}</th>
        ))}
      </tr>
    </thead>
    <tbody>
      {rows.map((cells) => (
        <tr>
          {cells.map((cell) => (
            <td>{cell}</td>
          ))}
        </tr>
      ))}
    </tbody>
  </table>
)

/** Days as authorities write them. */
const On = ({ day }: { day: Day }) => (
  <time class="nowrap" datetime={day}>
    {day}
  </time>
)

const origin = (type: string): string => labelIn(removalTypes(), type)

const MOVED: Record<MovementLine['what'], string> = {
  came: 'Came in',
  moved: 'Moved',
  'moved-out': 'Moved out',
  united: 'United',
  died: 'Died',
  absconded: 'Absconded',
  other: 'Left',
  unknown: 'Gone, not known how',
}

const TABLES: Record<BookTable, (book: YardBook, frame: Frame) => Child> = {
  colonies: ({ colonies }) => (
    <Table
      heads={['Colony', 'From', 'Came', 'Yard', 'Stand', 'Left', 'How']}
      rows={colonies.map((l) => [
        <b>{l.tag}</b>,
        origin(l.origin),
        <On day={l.cameOn} />,
        l.yard,
        l.stand,
        l.leftOn === null ? 'in the yard' : <On day={l.leftOn} />,
        l.left === null ? '' : leftWords(l.left),
      ])}
    />
  ),
  movements: ({ movements }) => (
    <Table
      heads={['Day', 'Colony', 'What', 'From', 'To', 'Permits']}
      rows={movements.map((l) => [
        <On day={l.on} />,
        <b>{l.tag}</b>,
        MOVED[l.what],
        l.what === 'came' ? origin(l.from) : l.from,
        l.to,
        l.permits,
      ])}
    />
  ),
  treatments: ({ treatments }, frame) => (
    <Table
      heads={['Day', 'Colony', 'Yard', 'What', 'Product', 'Batch', 'Amount', 'Withdrawal until', 'By']}
      rows={treatments.map((l) => [
        <On day={l.on} />,
        <b>{l.tag}</b>,
        l.yard,
        labelIn(GIFT, l.what),
        l.product,
        l.batch,
        [
          l.litres === null ? '' : volume(l.litres, frame.units),
          l.kg === null ? '' : weight(l.kg, frame.units),
        ]
          .filter((s) => s !== '')
          .join(', '),
        l.withdrawalUntil === null ? '' : <On day={l.withdrawalUntil} />,
        l.by,
      ])}
    />
  ),
  health: ({ health }) => (
    <Table
      heads={['Day', 'Colony', 'Yard', 'What', 'Mites per 100', 'More']}
      rows={health.map((l) => [
        <On day={l.on} />,
        <b>{l.tag}</b>,
        l.yard,
        HEALTH[l.what],
        l.per100 === null ? '' : plain(l.per100, 1),
        l.what === 'signs'
          ? l.detail
              .split(', ')
              .map((s) => labelIn(SIGN, s))
              .join(', ')
          : l.detail,
      ])}
    />
  ),
}

const HEALTH: Record<YardBook['health'][number]['what'], string> = {
  'mite-wash': 'Mite wash',
  'disease-suspected': 'Brood disease suspected',
  'disease-cleared': 'Suspicion cleared',
  signs: 'Seen',
}
