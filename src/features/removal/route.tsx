import { Hono } from 'hono'
import { v7, validate } from 'uuid'
import {
  type AppContext,
  type Env,
  type PageDeps,
  page,
  typedIn,
  unknownPage,
  withPhotos,
} from '../../app/index.ts'
import { daysBetween } from '../../days.ts'
import { type FieldProblem, one, type Typed } from '../../forms/index.ts'
import { EMPTY_SHEET } from '../../records/index.ts'
import { CallPage } from './call-page.tsx'
import { sheetTyped } from './form.ts'
import { withNoted } from './grave.ts'
import { RemovalsPage } from './list-page.tsx'
import { stamped } from './place.ts'
import { savePart } from './save-part.ts'
import { momentNow, stampOf } from './sheet-handlers.ts'
import { openPart, showSheet } from './show.tsx'
import { justSigned } from './sign-route.tsx'
import { isOver, PARTS } from './stage.ts'
import { removalPath, rowOf, sheetIn, typesOf } from './view.ts'

/** Removal sheets: the list, the call, and a sheet that grows part by part. Signing and other acts have files of their own. */
export function removals(deps: PageDeps): Hono<Env> {
  const { store } = deps
  const app = new Hono<Env>()

  app.get('/removals', (c) => {
    const rows = store.removals.list().map((v) => rowOf(c, deps, v.id, v.sheet, v.colonies))
    const key = (r: (typeof rows)[number]): string => `${r.plannedOn ?? '9'} ${r.plannedAt ?? ''}`
    const open = rows.filter((r) => !isOver(r.stage)).sort((a, b) => key(a).localeCompare(key(b)))
    const toClose = rows.filter((r) => r.stage === 'boxed' && isLately(r.plannedOn, c.var.frame.today))
    const over = rows.filter((r) => isOver(r.stage) && !toClose.includes(r))
    return page(
      c,
      <RemovalsPage
        frame={c.var.frame}
        open={open}
        toClose={toClose}
        over={over}
        erased={c.req.query('erased') ?? null}
      />,
    )
  })

  const call = (c: AppContext, typed: Typed, problems: FieldProblem[] = []) =>
    page(
      c,
      <CallPage frame={c.var.frame} form={{ typed, problems }} types={typesOf(deps)} />,
      problems.length > 0 ? 422 : 200,
    )

  app.get('/removals/new', (c) => {
    const { today } = c.var.frame
    return call(c, { id: [v7()], version: ['0'], calledOn: [today], plannedOn: [today] })
  })

  app.post('/removals/new', async (c) => {
    const { typed, problems: ofPhotos } = await withPhotos(c, deps, await typedIn(c))
    const id = one(typed, 'id')
    const { sheet, problems } = sheetTyped('job', typed, c.var.frame.units)
    problems.push(...ofPhotos)
    if (problems.length === 0 && !['name', 'phone', 'address'].some((f) => one(typed, f) !== ''))
      problems.push({ field: 'name', message: 'is missing: type a name, a telephone number or an address' })
    if (problems.length > 0) return call(c, typed, problems)
    const made = validate(id) ? id : v7()
    const first = withNoted(
      EMPTY_SHEET,
      stamped(sheet, EMPTY_SHEET, ['bystanders'], c.var.frame.today),
      {},
      momentNow(c, deps),
    )
    const result = store.removals.save(made, 0, first, stampOf(c, deps))
    // Sent again, with more on it: it is the call of the sheet that is there.
    const there = store.removals.get(made)
    if (!result.ok && 'newer' in result && there !== null)
      return savePart(
        c,
        deps,
        'job',
        { ...there, id: made, path: removalPath(made) },
        // Made from the first version: what others saved since is not written over.
        { ...typed, version: ['1'] },
        [],
      )
    if (!result.ok && 'problems' in result) return call(c, typed, result.problems)
    return c.redirect(`${removalPath(made)}?saved=1#now`, 303)
  })

  // An id, so that pages beside it (the text of the agreement) are not taken for one.
  app.get('/removals/:id{[0-9a-f-]{36}}', async (c) => {
    const saved = sheetIn(c, deps)
    if (saved === null) return unknownPage(c)
    const asked = Number(c.req.query('version'))
    const older =
      Number.isInteger(asked) && asked > 0 && asked < saved.last.version
        ? store.removals.version(saved.id, asked)
        : null
    const signed = older === null ? await justSigned(c, deps, saved) : null
    return showSheet(c, deps, saved, { older, part: openPart(c, deps, saved), signed })
  })

  for (const part of PARTS) {
    app.get(`/removals/:id/${part}`, (c) => {
      const saved = sheetIn(c, deps)
      return saved === null ? unknownPage(c) : showSheet(c, deps, saved, { part })
    })

    app.post(`/removals/:id/${part}`, async (c) => {
      const came = await withPhotos(c, deps, await typedIn(c))
      const saved = sheetIn(c, deps)
      return saved === null ? unknownPage(c) : savePart(c, deps, part, saved, came.typed, came.problems)
    })
  }
  return app
}

/** Days after which nobody goes back to close up unasked: jobs from before this was asked are not dug up (judgement). */
const CLOSING_DAYS = 60
const isLately = (day: string | null, today: string): boolean =>
  day !== null && daysBetween(day, today) <= CLOSING_DAYS
