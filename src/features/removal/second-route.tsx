/** A second person signs for one item, for what is unmet as it is shown there: with their passphrase, or drawn and with their telephone. */
import { type AppContext, type PageDeps, page, signedIn } from '../../app/index.ts'
import { type FieldProblem, fieldsIn, one, type Typed } from '../../forms/index.ts'
import { problemsOf } from '../../journal/index.ts'
import { drawingOf, type Sheet, secondName, sheetName } from '../../records/index.ts'
import { SECOND_FIELDS } from './fields.ts'
import { HEAT_AT_START } from './heat.ts'
import { placeOf } from './place.ts'
import { secondProblems, takesAccount } from './second.ts'
import { SecondPage } from './second-page.tsx'
import { keep, knownAt, momentNow, type Saved } from './sheet-handlers.ts'
import { reckoningOf, sheetIn, startOf } from './view.ts'

/** At most as many as the schema takes: the last ones. */
const MOST = 40

/** What is unmet of an item that a second person may sign for; undefined where there is no such thing. */
function signable(c: AppContext, deps: PageDeps, s: Sheet, id: string): string | undefined {
  if (id === HEAT_AT_START) {
    const { start } = startOf(c, deps, s)
    return start.state === 'unmet' ? start.why : undefined
  }
  return reckoningOf(c, deps, s).unmet.find((i) => i.id === id && i.weight === 'second')?.why
}

/** Writes it down, or says why not. */
export async function second(c: AppContext, deps: PageDeps, was: Saved, typed: Typed): Promise<Response> {
  const id = one(typed, 'item')
  const { raw } = fieldsIn(SECOND_FIELDS, typed, c.var.frame.units, `${id}.`)
  const known = knownAt(c, deps, was.last.sheet, was)
  const account = known.open.find((name) => name === raw.by)
  const proof = account === undefined ? null : await proofOf(c, deps, typed, account)
  // Read once that is known: nobody can save in between.
  const saved = sheetIn(c, deps) ?? was
  const { sheet } = saved.last
  const of = signable(c, deps, sheet, id)
  const back = id === HEAT_AT_START ? `${saved.path}/work?saved=1#now` : `${saved.path}?saved=1#unmet`
  if (of === undefined) return c.redirect(back.replace('?saved=1', ''), 303)
  const drawn = one(typed, 'drawing') === '' ? null : drawingOf(one(typed, 'drawing'))
  const { phone, ...said } = raw
  const { on, at } = momentNow(c, deps)
  const content = {
    ...said,
    // Each way leaves what belongs to it, and nothing of the other.
    ...(account === undefined
      ? { ...(phone === undefined ? {} : { phone }), ...(drawn?.ok ? { path: drawn.path } : {}) }
      : { account: true }),
    item: id,
    of,
    on,
    at,
    ...placeOf(sheet),
  }
  const parsed = secondName.safeParse(content)
  const problems: FieldProblem[] = parsed.success
    ? secondProblems(parsed.data, sheet, knownAt(c, deps, sheet, saved))
    : problemsOf(parsed.error, content)
  if (proof !== null) problems.push(proof)
  if (one(typed, 'of') !== of)
    problems.push({ field: 'by', message: 'would sign for something else than was shown: read it again' })
  if (!parsed.success || problems.length > 0) return secondPage(c, deps, saved, id, typed, problems)
  const seconds = [...(sheet.check.seconds ?? []), parsed.data].slice(-MOST)
  keep(c, deps, saved, { ...sheet, check: { ...sheet.check, seconds } })
  return c.redirect(back, 303)
}

/** What is wrong with the passphrase; null where it is theirs. */
async function proofOf(
  c: AppContext,
  deps: PageDeps,
  typed: Typed,
  name: string,
): Promise<FieldProblem | null> {
  const wrong = (message: string): FieldProblem => ({ field: 'passphrase', message })
  if (deps.prove === undefined)
    return wrong(
      `cannot be looked up ${c.var.frame.phone?.signIn ? 'once your sign-in is over. Have it met, or sign in again' : 'without signal. Have it met, or wait until there is signal'}`,
    )
  // Not trimmed: a space is a character of a passphrase like any other.
  const proof = await deps.prove(c, name, typed.passphrase?.at(-1) ?? '')
  if (proof === 'right') return null
  return wrong(
    proof === 'wait' ? 'was tried too often: wait a quarter of an hour' : `is not the one of ${name}`,
  )
}

/** The page on which they do. */
export function secondPage(
  c: AppContext,
  deps: PageDeps,
  saved: Saved,
  id: string,
  typed: Typed,
  problems: FieldProblem[] = [],
): Response | Promise<Response> {
  const { sheet } = saved.last
  const of = signable(c, deps, sheet, id)
  if (of === undefined) return c.redirect(`${saved.path}#unmet`, 303)
  const form = {
    typed,
    problems: problems.map((p) => ({
      ...p,
      field: ['drawing', 'passphrase'].includes(p.field) ? p.field : p.field && `${id}.${p.field}`,
    })),
  }
  const what = reckoningOf(c, deps, sheet).items.find((i) => i.id === id)?.what ?? 'Heat when work starts'
  return page(
    c,
    <SecondPage
      frame={c.var.frame}
      form={form}
      path={saved.path}
      name={sheetName(sheet)}
      item={id}
      what={what}
      of={of}
      account={takesAccount(id)}
      signal={deps.prove !== undefined}
      others={knownAt(c, deps, sheet, saved).open.filter(
        (name) => name !== signedIn(c) && name !== sheet.decision?.by,
      )}
    />,
    problems.length === 0 ? 200 : 422,
  )
}
