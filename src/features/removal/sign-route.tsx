import { createHash } from 'node:crypto'
import { Hono } from 'hono'
import { type AppContext, type Deps, type Env, page, unknownPage } from '../../app/index.ts'
import { inWords } from '../../days.ts'
import { type FieldProblem, one, type Typed } from '../../forms/index.ts'
import { problemsOf } from '../../journal/index.ts'
import {
  drawingOf,
  priceWords,
  type Sheet,
  type Signature,
  sheetName,
  signature as signatureSchema,
  svgOf,
} from '../../records/index.ts'
import { keep, onSheet, type Saved } from './sheet-handlers.ts'
import { RemovalSignPage } from './sign-page.tsx'
import { termsNow } from './view.ts'

/** Reading and signing the agreement, on paper or by drawing a name. */
export function removalSign(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const on = onSheet(deps)

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
  return app
}

const markOf = (terms: string): string => createHash('sha256').update(terms).digest('base64url').slice(0, 22)

function signPage(
  c: AppContext,
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

function sign(c: AppContext, deps: Deps, saved: Saved, typed: Typed): Response | Promise<Response> {
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
  if (drawing?.ok === false)
    problems.push(...drawing.problems.map((message) => ({ field: 'drawing', message })))
  if (parsed.success && parsed.data.on > c.var.frame.today)
    problems.push({ field: 'on', message: `is in the future (today is ${inWords(c.var.frame.today)})` })
  if (!parsed.success || problems.length > 0) return signPage(c, deps, saved, typed, problems)
  keep(c, deps, saved, { ...sheet, agreement: { ...sheet.agreement, signature: parsed.data } })
  return c.redirect(`${saved.path}?saved=1#agreement`, 303)
}

/** The drawn name as a file. */
function signatureFile(c: AppContext, saved: Saved): Response | Promise<Response> {
  const signature: Signature | undefined = saved.last.sheet.agreement.signature
  if (signature?.path === undefined) return unknownPage(c)
  c.header('Content-Type', 'image/svg+xml; charset=utf-8')
  c.header('Content-Disposition', 'attachment; filename="signature.svg"')
  c.header('Cache-Control', 'no-store')
  return c.body(svgOf(signature.path, `${signature.name}, ${signature.on}`))
}
