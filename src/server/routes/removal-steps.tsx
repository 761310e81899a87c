import { createHash } from 'node:crypto'
import { Hono } from 'hono'
import { fieldsIn } from '../../../web/forms/read.ts'
import { DECISION_FIELDS, schemaProblems } from '../../../web/forms/sheet-fields.ts'
import { type FieldProblem, one, type Typed } from '../../../web/forms/typed.ts'
import { RemovalDecidePage } from '../../../web/pages/removal-check.tsx'
import { RemovalEndPage, RemovalErasePage } from '../../../web/pages/removal-end.tsx'
import { RemovalPrintPage } from '../../../web/pages/removal-print.tsx'
import { RemovalSignPage } from '../../../web/pages/removal-sign.tsx'
import { factsOf } from '../../../web/words/sheet-facts.ts'
import { problemsOf } from '../../journal/problem.ts'
import { priceWords } from '../../removal/agreement.ts'
import { decisionProblems, unmetWords } from '../../removal/decide.ts'
import { drawingOf, svgOf } from '../../removal/drawing.ts'
import { type Sheet, type Signature, sheetName, signature as signatureSchema } from '../../removal/sheet.ts'
import { PARTS } from '../../removal/stage.ts'
import type { SavedSheet } from '../../store/index.ts'
import type { Deps, Env, Here } from '../deps.ts'
import { unknownPage } from '../errors.tsx'
import { signedIn, typedIn } from '../form.ts'
import { reckoningOf, sheetIn, termsNow } from '../removal-view.ts'
import { page } from '../respond.tsx'

type Saved = SavedSheet & { id: string; path: string }

/** Signing, deciding, printing, ending and erasing: what is done to a sheet rather than typed into it. */
export function removalSteps(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  type Handler = (c: Here, saved: Saved, typed: Typed) => Response | Promise<Response>
  /** The sheet is read after the form has come, so that nobody can save in between. */
  const on =
    (handler: Handler) =>
    async (c: Here): Promise<Response> => {
      const typed = c.req.method === 'POST' ? await typedIn(c) : {}
      const saved = sheetIn(c, deps)
      return saved === null ? unknownPage(c) : handler(c, saved, typed)
    }

  app.get(
    '/removals/:id/sign',
    on((c, saved) =>
      signPage(c, deps, saved, {
        how: ['drawn'],
        name: [saved.last.sheet.job.name ?? ''],
        on: [c.var.frame.today],
      }),
    ),
  )
  app.post(
    '/removals/:id/sign',
    on((c, saved, typed) => sign(c, deps, saved, typed)),
  )
  app.post(
    '/removals/:id/unsign',
    on((c, saved) => {
      const { signature: _signature, ...agreement } = saved.last.sheet.agreement
      keep(c, deps, saved, { ...saved.last.sheet, agreement })
      return c.redirect(`${saved.path}/agreement`, 303)
    }),
  )
  app.get(
    '/removals/:id/signature.svg',
    on((c, saved) => signatureFile(c, saved)),
  )
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

/** Writes the sheet as it now is over its last version. Throws when it does not fit: what is written here was checked. */
function keep(c: Here, deps: Deps, saved: Saved, sheet: Sheet): void {
  const stamp = { savedAt: deps.clock().toISOString(), savedBy: signedIn(c) }
  const result = deps.store.removals.save(saved.id, saved.last.version, sheet, stamp)
  if (!result.ok) throw new Error(`removal sheet ${saved.id}: ${JSON.stringify(result)}`)
}

const markOf = (terms: string): string => createHash('sha256').update(terms).digest('base64url').slice(0, 22)

function signPage(
  c: Here,
  deps: Deps,
  saved: Saved,
  typed: Typed,
  problems: FieldProblem[] = [],
): Response | Promise<Response> {
  const { sheet } = saved.last
  const signature = sheet.agreement.signature ?? null
  const terms = signature?.terms ?? termsNow(c, deps, sheet)
  return page(
    c,
    <RemovalSignPage
      frame={c.var.frame}
      form={{ typed, problems }}
      path={saved.path}
      name={sheetName(sheet)}
      terms={terms}
      mark={markOf(terms)}
      signature={signature}
      missing={missing(deps, sheet)}
    />,
    problems.length === 0 ? 200 : 422,
  )
}

function missing(deps: Deps, s: Sheet): string[] {
  const { settings } = deps.store
  const wanted: [string, unknown][] = [
    ['the customer’s name', s.job.name],
    ['the address', s.job.address],
    ['the price', priceWords(s.agreement, settings.get('currency'))],
    ['the name of your yard', settings.get('yardName') || undefined],
  ]
  return wanted.filter(([, value]) => value === undefined).map(([words]) => words)
}

function sign(c: Here, deps: Deps, saved: Saved, typed: Typed): Response | Promise<Response> {
  const { sheet } = saved.last
  if (sheet.agreement.signature !== undefined) return c.redirect(`${saved.path}/sign`, 303)
  const terms = termsNow(c, deps, sheet)
  if (one(typed, 'mark') !== markOf(terms))
    return signPage(c, deps, saved, typed, [
      {
        field: '',
        message: 'The agreement has changed since this page was opened. Read it again, then sign.',
      },
    ])
  const how = one(typed, 'how')
  const drawing = how === 'drawn' ? drawingOf(one(typed, 'drawing')) : null
  const raw = {
    how,
    name: one(typed, 'name'),
    on: one(typed, 'on'),
    terms,
    ...(drawing?.ok ? { path: drawing.path } : {}),
  }
  const parsed = signatureSchema.safeParse(raw)
  const problems: FieldProblem[] = parsed.success ? [] : problemsOf(parsed.error, raw)
  if (drawing !== null && !drawing.ok) problems.push({ field: 'drawing', message: drawing.message })
  if (parsed.success && parsed.data.on > c.var.frame.today)
    problems.push({ field: 'on', message: `is in the future (today is ${c.var.frame.today})` })
  if (!parsed.success || problems.length > 0) return signPage(c, deps, saved, typed, problems)
  keep(c, deps, saved, { ...sheet, agreement: { ...sheet.agreement, signature: parsed.data } })
  return c.redirect(`${saved.path}?saved=1#agreement`, 303)
}

/** The drawn name as a file. */
function signatureFile(c: Here, saved: Saved): Response | Promise<Response> {
  const signature: Signature | undefined = saved.last.sheet.agreement.signature
  if (signature?.path === undefined) return unknownPage(c)
  c.header('Content-Type', 'image/svg+xml; charset=utf-8')
  c.header('Content-Disposition', 'attachment; filename="signature.svg"')
  c.header('Cache-Control', 'no-store')
  return c.body(svgOf(signature.path, `${signature.name}, ${signature.on}`))
}

function printPage(c: Here, deps: Deps, saved: Saved): Response | Promise<Response> {
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
  c: Here,
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

function decide(c: Here, deps: Deps, saved: Saved, typed: Typed): Response | Promise<Response> {
  const { sheet } = saved.last
  const reckoning = reckoningOf(c, deps, sheet)
  const { raw } = fieldsIn(DECISION_FIELDS, typed, c.var.frame.units)
  const decision = { ...raw, on: c.var.frame.today, unmet: unmetWords(reckoning) }
  const problems = schemaProblems('decision', { raw: decision, problems: [] })
  if (problems.length === 0)
    problems.push(...decisionProblems(decision as unknown as NonNullable<Sheet['decision']>, reckoning))
  if (problems.length > 0) return decidePage(c, deps, saved, typed, problems)
  keep(c, deps, saved, { ...sheet, decision: decision as unknown as NonNullable<Sheet['decision']> })
  return c.redirect(`${saved.path}?saved=1`, 303)
}

const endPage = (
  c: Here,
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
