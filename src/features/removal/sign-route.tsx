import { Hono } from 'hono'
import type { Child } from 'hono/jsx'
import { type AppContext, type Env, type PageDeps, page, unknownPage } from '../../app/index.ts'
import { inWords } from '../../days.ts'
import { type FieldProblem, one, type Typed } from '../../forms/index.ts'
import { problemsOf } from '../../journal/index.ts'
import { qrCode } from '../../parts/index.ts'
import {
  BLANKS,
  type Blank,
  drawingOf,
  type Sheet,
  type Signature,
  sheetName,
  signature as signatureSchema,
  svgOf,
} from '../../records/index.ts'
import type { Result } from '../../result.ts'
import { newSecret, sha256 } from './secret.ts'
import { keep, onSheet, type Saved } from './sheet-handlers.ts'
import { type Missing, RemovalSignPage } from './sign-page.tsx'
import { JustSigned } from './signed-page.tsx'
import { blanksNow, termsNow } from './view.ts'

/** Reading and signing the agreement, on paper or by drawing a name. */
export function removalSign(deps: PageDeps): Hono<Env> {
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

async function signPage(
  c: AppContext,
  deps: PageDeps,
  saved: Saved,
  typed: Typed,
  problems: FieldProblem[] = [],
): Promise<Response> {
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
      mark={await sha256(terms)}
      signature={signature}
      blank={missing(c, deps, sheet)}
      yard={deps.store.settings.get('yardName')}
      email={sheet.job.email ?? ''}
    />,
    problems.length === 0 ? 200 : 422,
  )
}

/** Where each blank of the text is typed in; the others are never blank. */
const TYPED_AT: Partial<Record<Blank, Missing>> = {
  price: { what: 'the price', part: 'agreement', field: 'hourly' },
  address: { what: 'the address', part: 'job', field: 'address' },
  day: { what: 'the day', part: 'job', field: 'plannedOn' },
  customer: { what: 'the customer’s name', part: 'job', field: 'name' },
  bees: { what: 'where the bees are', part: 'site', field: 'where' },
}

/** Nothing is signed blank: what is missing, and where it is typed in. */
const missing = (c: AppContext, deps: PageDeps, s: Sheet): Missing[] =>
  blanksNow(c, deps, s).map((name) =>
    name === 'price' && s.agreement.hourly !== undefined && s.agreement.fixed !== undefined
      ? { what: 'which price: by the hour or fixed', part: 'agreement', field: 'pricing' }
      : (TYPED_AT[name] ?? { what: BLANKS[name], part: 'agreement', field: 'extra' }),
  )

async function sign(c: AppContext, deps: PageDeps, saved: Saved, typed: Typed): Promise<Response> {
  const { sheet } = saved.last
  if (sheet.agreement.signature !== undefined) return c.redirect(`${saved.path}/sign`, 303)
  const blank = missing(c, deps, sheet)
  if (blank.length > 0)
    return signPage(c, deps, saved, typed, [
      { field: '', message: `Nothing is signed blank: ${blank.map((b) => b.what).join(', ')} is missing.` },
    ])
  const terms = termsNow(c, deps, sheet)
  if (one(typed, 'mark') !== (await sha256(terms)))
    return signPage(c, deps, saved, typed, [
      {
        field: '',
        message: 'The agreement has changed since this page was opened. Read it again, then sign.',
      },
    ])
  const token = newSecret()
  const read = signatureIn(typed, terms, await sha256(token), c.var.frame.today)
  if (!read.ok) return signPage(c, deps, saved, typed, read.problems)
  keep(c, deps, saved, { ...sheet, agreement: { ...sheet.agreement, signature: read.made } })
  // The address is kept nowhere but in this one way back, so that loading the page again does not lose it: whoever has it
  // can read what was signed, and nothing else.
  return c.redirect(`${saved.path}?copy=${token}#signed`, 303)
}

/** What was signed a moment ago, where the page was opened with the address of the text; else null. */
export async function justSigned(c: AppContext, deps: PageDeps, saved: Saved): Promise<Child | null> {
  const token = c.req.query('copy')
  const { agreement, job } = saved.last.sheet
  const { signature } = agreement
  if (token === undefined || signature === undefined || signature.copy !== (await sha256(token))) return null
  const link = `${(deps.origin ?? ownOrigin)(c)}/signed/${token}`
  return (
    <JustSigned
      onPhone={c.var.frame.phone !== undefined}
      path={saved.path}
      signature={signature}
      yard={deps.store.settings.get('yardName')}
      email={job.email ?? ''}
      link={link}
      qr={qrCode(link)}
    />
  )
}

const ownOrigin = (c: AppContext): string => new URL(c.req.url).origin

type Read = Result<{ made: Signature }, { problems: FieldProblem[] }>

/** The signature as it was typed or drawn. */
function signatureIn(typed: Typed, terms: string, copy: string, today: string): Read {
  const how = one(typed, 'how')
  const drawing = how === 'drawn' ? drawingOf(one(typed, 'drawing')) : null
  const raw = {
    how,
    name: one(typed, 'name'),
    on: one(typed, 'on'),
    terms,
    copy,
    ...(drawing?.ok ? { path: drawing.path } : {}),
  }
  const parsed = signatureSchema.safeParse(raw)
  const problems: FieldProblem[] = parsed.success ? [] : problemsOf(parsed.error, raw)
  if (drawing?.ok === false)
    problems.push(...drawing.problems.map((message) => ({ field: 'drawing', message })))
  if (parsed.success && parsed.data.on > today)
    problems.push({ field: 'on', message: `is in the future (today is ${inWords(today)})` })
  return parsed.success && problems.length === 0 ? { ok: true, made: parsed.data } : { ok: false, problems }
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
