import { Hono } from 'hono'
import { type AppContext, type Deps, type Env, page, signedIn } from '../../app/index.ts'
import { type FieldProblem, fieldsIn, one, type Typed } from '../../forms/index.ts'
import { type Sheet, sheetName } from '../../records/index.ts'
import { RemovalDecidePage } from './check-page.tsx'
import { decisionProblems, unmetWords } from './decide.ts'
import { RemovalEndPage, RemovalErasePage } from './end-page.tsx'
import { DECISION_FIELDS } from './fields.ts'
import { schemaProblems } from './form.ts'
import { RemovalPrintPage } from './print-page.tsx'
import { factsOf } from './sheet-facts.ts'
import { keep, onSheet, type Saved } from './sheet-handlers.ts'
import { PARTS } from './stage.ts'
import { reckoningOf, termsNow } from './view.ts'

/** Deciding, printing, ending and erasing: what is done to a sheet rather than typed into it. */
export function removalSteps(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const on = onSheet(deps)

  app.get(
    '/removals/:id/print',
    on((c, saved) => printPage(c, deps, saved)),
  )

  app.get(
    '/removals/:id/decide',
    on((c, saved) => decidePage(c, deps, saved, { by: [signedIn(c)] })),
  )
  app.post(
    '/removals/:id/decide',
    on((c, saved, typed) => decide(c, deps, saved, typed)),
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

  app.get(
    '/removals/:id/erase',
    on((c, saved) =>
      page(
        c,
        <RemovalErasePage
          frame={c.var.frame}
          path={saved.path}
          name={sheetName(saved.last.sheet)}
          versions={saved.versions.length}
        />,
      ),
    ),
  )
  app.post(
    '/removals/:id/erase',
    on((c, saved) => {
      deps.store.removals.erase(saved.id)
      return c.redirect('/removals?erased=1', 303)
    }),
  )
  return app
}

function printPage(c: AppContext, deps: Deps, saved: Saved): Response | Promise<Response> {
  const { sheet } = saved.last
  const { frame } = c.var
  const at = { units: frame.units, today: frame.today, currency: deps.store.settings.get('currency') }
  return page(
    c,
    <RemovalPrintPage
      frame={frame}
      path={saved.path}
      name={sheetName(sheet)}
      what={c.req.query('what') === 'job' ? 'job' : 'agreement'}
      sheet={sheet}
      terms={termsNow(c, deps, sheet)}
      parts={PARTS.map((part) => ({ part, facts: factsOf(part, sheet, at) }))}
      reckoning={reckoningOf(c, deps, sheet)}
    />,
  )
}

function decidePage(
  c: AppContext,
  deps: Deps,
  saved: Saved,
  typed: Typed,
  problems: FieldProblem[] = [],
): Response | Promise<Response> {
  const { sheet } = saved.last
  return page(
    c,
    <RemovalDecidePage
      frame={c.var.frame}
      form={{ typed, problems }}
      path={saved.path}
      name={sheetName(sheet)}
      reckoning={reckoningOf(c, deps, sheet)}
      decision={sheet.decision ?? null}
    />,
    problems.length === 0 ? 200 : 422,
  )
}

function decide(c: AppContext, deps: Deps, saved: Saved, typed: Typed): Response | Promise<Response> {
  const { sheet } = saved.last
  const reckoning = reckoningOf(c, deps, sheet)
  const { raw } = fieldsIn(DECISION_FIELDS, typed, c.var.frame.units)
  const decision = { ...raw, on: c.var.frame.today, unmet: unmetWords(reckoning) }
  const problems = schemaProblems('decision', { raw: decision, problems: [] })
  if (problems.length === 0)
    problems.push(
      ...decisionProblems(decision as unknown as NonNullable<Sheet['decision']>, reckoning, sheet),
    )
  if (problems.length > 0) return decidePage(c, deps, saved, typed, problems)
  keep(c, deps, saved, { ...sheet, decision: decision as unknown as NonNullable<Sheet['decision']> })
  return c.redirect(`${saved.path}?saved=1`, 303)
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
