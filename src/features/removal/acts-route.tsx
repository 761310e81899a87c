import { Hono } from 'hono'
import { type AppContext, type Env, type PageDeps, page } from '../../app/index.ts'
import { type FieldProblem, fieldsIn, many, one, type Typed } from '../../forms/index.ts'
import { problemsOf } from '../../journal/index.ts'
import { clearance, sheetName, TRADE_HAZARDS } from '../../records/index.ts'
import { clearanceProblems } from './decide.ts'
import { RemovalEndPage } from './end-page.tsx'
import { CLEARANCE_FIELDS } from './fields.ts'
import { CLEARED_BY, hazardsFound, isTested, seenOn } from './hazards.ts'
import { placeOf } from './place.ts'
import { second, secondPage } from './second-route.tsx'
import { isOfAnotherJob, keep, knownAt, onSheet, type Saved } from './sheet-handlers.ts'
import { openPart, showSheet } from './show.tsx'
import { sheetIn } from './view.ts'

/** What is done to a sheet rather than typed into it: clearing, signing for an item, ending. */
export function removalActs(deps: PageDeps): Hono<Env> {
  const app = new Hono<Env>()
  const on = onSheet(deps)

  app.post(
    '/removals/:id/clear',
    on((c, saved, typed, ofPhotos) => clear(c, deps, saved, typed, ofPhotos)),
  )
  app.post(
    '/removals/:id/second',
    on((c, saved, typed) => second(c, deps, saved, typed)),
  )
  app.get(
    '/removals/:id/second',
    on((c, saved) => secondPage(c, deps, saved, c.req.query('item') ?? '', {})),
  )
  app.get(
    '/removals/:id/end',
    on((c, saved) => endPage(c, saved, {})),
  )
  app.post(
    '/removals/:id/end',
    on((c, saved, typed) => {
      const why = one(typed, 'why')
      if (why === '' || why.length > 500)
        return endPage(c, saved, typed, [
          { field: 'why', message: why === '' ? 'must not be empty' : 'must be at most 500 characters' },
        ])
      keep(c, deps, saved, { ...saved.last.sheet, ended: { on: c.var.frame.today, why } })
      return c.redirect(`${saved.path}?saved=1`, 303)
    }),
  )
  return app
}

/** At most as many as the schema takes: the last ones. */
const MOST = 40

/** A small form came back: the page again, with that form open. */
function refuse(
  c: AppContext,
  deps: PageDeps,
  saved: Saved,
  id: string,
  typed: Typed,
  problems: FieldProblem[],
): Response | Promise<Response> {
  const form = {
    typed,
    problems: problems.map((p) => ({ ...p, field: p.field === '' ? '' : `${id}.${p.field}` })),
  }
  return showSheet(c, deps, saved, { part: openPart(c, deps, saved), refused: { id, form } })
}

async function clear(
  c: AppContext,
  deps: PageDeps,
  was: Saved,
  typed: Typed,
  ofPhotos: FieldProblem[],
): Promise<Response> {
  // Taken again, the last one counts.
  const photo = many(typed, 'photos').at(-1)
  // A photo that is only named is none.
  const shown = photo !== undefined && (await deps.photos.find(photo)) !== null
  const saved = sheetIn(c, deps) ?? was
  const { sheet } = saved.last
  const hazard = TRADE_HAZARDS.find((h) => h === one(typed, 'hazard'))
  const knew = hazardsFound(sheet)
  if (hazard === undefined || !(knew.includes(hazard) || isTested(sheet, hazard)))
    return c.redirect(`${saved.path}#unmet`, 303)
  const id = `trade-${hazard}`
  const { raw } = fieldsIn(CLEARANCE_FIELDS, typed, c.var.frame.units, `${id}.`)
  const [only, ...more] = CLEARED_BY[hazard]
  const content = {
    ...(more.length === 0 ? { as: only } : {}),
    ...raw,
    hazard,
    knew,
    writtenAt: deps.clock().toISOString(),
    ...placeOf(sheet),
    ...(shown ? { photo } : {}),
  }
  const parsed = clearance.safeParse(content)
  const problems: FieldProblem[] = parsed.success
    ? clearanceProblems(parsed.data, sheet, knownAt(c, deps, sheet, saved), c.var.frame.today)
    : problemsOf(parsed.error, content)
  if (one(typed, 'seen') !== seenOn(sheet))
    problems.unshift({
      field: '',
      message:
        'The sheet was changed since this was opened: another wall, or something else was found. Ask the trade about what stands here now.',
    })
  if (photo !== undefined && isOfAnotherJob(deps, saved.id, photo))
    problems.push({ field: 'photos', message: 'is of another job: take one of the paper for this wall' })
  const all =
    ofPhotos.length === 0 ? problems : [...problems.filter((p) => p.field !== 'photos'), ...ofPhotos]
  if (!parsed.success || all.length > 0) return refuse(c, deps, saved, id, typed, all)
  const clearances = [...(sheet.check.clearances ?? []), parsed.data].slice(-MOST)
  keep(c, deps, saved, { ...sheet, check: { ...sheet.check, clearances } })
  return c.redirect(`${saved.path}?saved=1#unmet`, 303)
}

const endPage = (
  c: AppContext,
  saved: Saved,
  typed: Typed,
  problems: FieldProblem[] = [],
): Response | Promise<Response> =>
  page(
    c,
    <RemovalEndPage
      frame={c.var.frame}
      form={{ typed, problems }}
      path={saved.path}
      name={sheetName(saved.last.sheet)}
    />,
    problems.length === 0 ? 200 : 422,
  )
