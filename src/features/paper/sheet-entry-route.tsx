import { Hono } from 'hono'
import { v7 } from 'uuid'
import {
  type AppContext,
  type Deps,
  type Env,
  idIn,
  page,
  signedIn,
  submit,
  typedIn,
} from '../../app/index.ts'
import { isDay } from '../../days.ts'
import { type FieldProblem, one, type Typed } from '../../forms/index.ts'
import { idField } from '../entries/index.ts'
import { boxOf, doneOn } from '../round/index.ts'
import { isRowFilled, ROW_PREFIXES, rowDrafts, rowOf, rowPrefix } from './sheet.ts'
import { SheetEntryPage, type SheetRow } from './sheet-entry-page.tsx'
import { type SheetAsked, sheetDays, sheetOf } from './sheet-of.ts'

/** Rows for boxes that are not on the sheet. */
const MORE_ROWS = 2
/** Rows that are read from one post: more than any sheet has. */
const MOST_ROWS = 500

/** A whole sheet typed in. Each row is written by itself, all of it or nothing; rows that fail come back filled in. */
export function sheetEntry(deps: Deps): Hono<Env> {
  const { store } = deps
  const app = new Hono<Env>()

  const askedOf = (c: AppContext, get: (name: string) => string): SheetAsked => {
    const { today } = c.var.frame
    const day = get('day')
    return {
      yard: store.yards().find((y) => y.yard === get('yard'))?.yard ?? null,
      day: isDay(day) && day <= today && day >= sheetDays(today).from ? day : today,
      all: get('all') === '1',
    }
  }

  /** The rows of a sheet: its boxes as they stand now, then a few for others. */
  const rowsFor = (c: AppContext, asked: SheetAsked): SheetRow[] => {
    const boxes = sheetOf(store, asked, c.var.frame.today)
    return [
      ...boxes.map((box, n) => ({ n, box, known: knownOf(box.id, asked.day) })),
      ...Array.from({ length: MORE_ROWS }, (_, i) => ({ n: boxes.length + i, box: null, known: [] })),
    ]
  }

  const knownOf = (id: string, day: string): SheetRow['known'] => {
    const history = boxOf(store, id)?.history
    if (history === undefined) return []
    const missed = history.entries.filter((e) => e.kind === 'missed-visit' && e.on === day)
    return [...doneOn(history, day), ...missed]
  }

  interface Shown {
    asked: SheetAsked
    typed: Typed
    problems: FieldProblem[]
    saved: number | null
    rows: SheetRow[]
  }
  const show = (c: AppContext, { asked, typed, problems, saved, rows }: Shown) => {
    const { today } = c.var.frame
    return page(
      c,
      <SheetEntryPage
        frame={c.var.frame}
        form={{ typed: withNewIds(typed, rows), problems }}
        {...asked}
        yards={store.yards().map((y) => y.yard)}
        days={sheetDays(today)}
        rows={rows}
        tags={store.colonies({ open: true }).map((s) => s.tag)}
        saved={saved}
      />,
      problems.length === 0 ? 200 : 422,
    )
  }

  app.get('/sheet-entry', (c) => {
    const asked = askedOf(c, (name) => c.req.query(name) ?? '')
    const saved = Number(c.req.query('saved'))
    const count = Number.isInteger(saved) && saved > 0 && saved <= MOST_ROWS ? saved : null
    return show(c, { asked, typed: {}, problems: [], saved: count, rows: rowsFor(c, asked) })
  })

  app.post('/sheet-entry', async (c) => {
    const typed = await typedIn(c)
    const asked = askedOf(c, (name) => one(typed, name))
    const kept: Typed = { by: typed.by ?? [] }
    const problems: FieldProblem[] = []
    let saved = 0
    for (const n of numbersIn(typed)) {
      const row = rowOf(typed, n)
      if (!isRowFilled(row)) continue
      const found = await writeRow(c, row, asked, one(typed, 'by'))
      if (found.length === 0) saved++
      else {
        // Only what was refused comes back filled in: the rest is in the book.
        for (const [name, values] of Object.entries(row)) kept[rowPrefix(n) + name] = values
        problems.push(...found.map((p) => ({ ...p, field: rowPrefix(n) + p.field })))
      }
    }
    if (problems.length > 0)
      return show(c, { asked, typed: kept, problems, saved, rows: refill(c, asked, typed) })
    const query = new URLSearchParams({
      yard: asked.yard ?? '',
      day: asked.day,
      ...(asked.all ? { all: '1' } : {}),
      saved: String(saved),
    })
    return c.redirect(`/sheet-entry?${query}`, 303)
  })

  /** The rows as they were sent, in their places: by now the sheet itself may have others. */
  const refill = (c: AppContext, asked: SheetAsked, typed: Typed): SheetRow[] => {
    const boxes = new Map(sheetOf(store, { ...asked, all: true }, c.var.frame.today).map((b) => [b.id, b]))
    return numbersIn(typed).map((n) => {
      const id = one(typed, `${rowPrefix(n)}colony`)
      const box = boxes.get(id) ?? (id === '' ? null : boxOf(store, id))
      return { n, box, known: box === null ? [] : knownOf(box.id, asked.day) }
    })
  }

  const writeRow = async (
    c: AppContext,
    row: Typed,
    asked: SheetAsked,
    by: string,
  ): Promise<FieldProblem[]> => {
    const { units, words } = c.var.frame
    const colony = one(row, 'colony') || one(row, 'tag')
    if (colony === '') return [{ field: 'tag', message: words.paper.entry.empty }]
    if (store.colony(colony) === null)
      return [{ field: 'tag', message: words.paper.entry.noColony(colony.slice(0, 60)) }]
    const sent = rowDrafts(row, asked.day, units, words).map((draft) => ({
      draft,
      id: idIn(row, idField(draft.prefix)),
      colony,
    }))
    const signer = signedIn(c)
    const walker = c.var.frame.may('sign-for-others') && by !== '' ? by : signer
    const saved = await submit(deps, c.var.frame.today, walker, sent, signer)
    return saved.ok ? [] : saved.problems.map(onSheet)
  }
  return app
}

/** The problem beside the field that the sheet has for it. */
function onSheet(p: FieldProblem): FieldProblem {
  return p.field === 'text' || p.field.endsWith('.note') ? { ...p, field: 'note' } : p
}

/** The numbers of the rows in a form, in order. */
function numbersIn(typed: Typed): number[] {
  const numbers = new Set<number>()
  for (const name of Object.keys(typed)) {
    const n = /^r(\d{1,3})\./.exec(name)?.[1]
    if (n !== undefined && Number(n) < MOST_ROWS) numbers.add(Number(n))
  }
  return [...numbers].sort((a, b) => a - b)
}

/** Every row with an id for each entry it may become: those it was sent with, or new ones. */
function withNewIds(typed: Typed, rows: readonly SheetRow[]): Typed {
  const all: Typed = { ...typed }
  for (const { n } of rows)
    for (const prefix of ROW_PREFIXES) {
      const name = rowPrefix(n) + idField(prefix)
      all[name] ??= [v7()]
    }
  return all
}
