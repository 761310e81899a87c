import { Hono } from 'hono'
import { type AppContext, type Deps, type Env, page } from '../../app/index.ts'
import { addDays, isDay } from '../../days.ts'
import type { FieldProblem } from '../../forms/index.ts'
import { type Period, type YardBook, yardBookOf } from './yard-book.ts'
import { BOOK_TABLES, bookCsv } from './yard-book-csv.ts'
import { YardBookPage } from './yard-book-page.tsx'

/** Days shown until somebody chooses others. */
const USUAL_DAYS = 365

/** The inspector's book, to print or as CSV. */
export function yardBook(deps: Deps): Hono<Env> {
  const { store } = deps
  const app = new Hono<Env>()

  const bookOf = (period: Period): YardBook => {
    const records = store.after.records.all()
    return yardBookOf(
      [...store.histories()].map(({ id, history }) => ({ id, history, record: records.get(id) ?? null })),
      period,
    )
  }
  /** The period asked for; a problem for each end that is no day. */
  const asked = (c: AppContext): { period: Period; problems: FieldProblem[] } => {
    const { today } = c.var.frame
    const to = c.req.query('to') || today
    const from = c.req.query('from') || addDays(isDay(to) ? to : today, -USUAL_DAYS)
    const problems: FieldProblem[] = []
    if (!isDay(from)) problems.push({ field: 'from', message: 'must be a real day' })
    if (!isDay(to)) problems.push({ field: 'to', message: 'must be a real day' })
    if (problems.length === 0 && from > to)
      problems.push({ field: 'to', message: 'must not be before the first' })
    return { period: { from, to }, problems }
  }

  app.get('/yard-book', (c) => {
    const { period, problems } = asked(c)
    return page(
      c,
      <YardBookPage
        frame={c.var.frame}
        form={{ typed: { from: [period.from.slice(0, 20)], to: [period.to.slice(0, 20)] }, problems }}
        book={problems.length > 0 ? null : bookOf(period)}
        yardName={store.settings.get('yardName')}
      />,
      problems.length > 0 ? 422 : 200,
    )
  })

  app.get('/yard-book/csv', (c) => {
    const { period, problems } = asked(c)
    const table = BOOK_TABLES.find((t) => t === c.req.query('table'))
    if (problems.length > 0 || table === undefined)
      return c.text(
        `Ask for table=${BOOK_TABLES.join(', ')} with from and to as real days, such as 2026-05-01.\n`,
        422,
      )
    c.header('Content-Type', 'text/csv; charset=utf-8; header=present')
    c.header(
      'Content-Disposition',
      `attachment; filename="yard-book-${table}-${period.from}-${period.to}.csv"`,
    )
    c.header('Cache-Control', 'no-store')
    return c.body(bookCsv(bookOf(period), table))
  })
  return app
}
