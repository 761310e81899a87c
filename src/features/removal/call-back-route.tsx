/** The customer called again: an entry on a job that is done. No phone keeps those, so only the server answers. */
import { Hono } from 'hono'
import { type AppContext, type Env, type PageDeps, page, signedIn } from '../../app/index.ts'
import { type FieldProblem, Fields, fieldsIn, type Typed } from '../../forms/index.ts'
import { problemsOf } from '../../journal/index.ts'
import { FormPage } from '../../parts/index.ts'
import { callBack, sheetName } from '../../records/index.ts'
import type { EndProps } from './end-page.tsx'
import { CALL_BACK_FIELDS } from './fields.ts'
import { keep, onSheet, type Saved } from './sheet-handlers.ts'

export function removalCallBack(deps: PageDeps): Hono<Env> {
  const app = new Hono<Env>()
  const on = onSheet(deps)
  app.get(
    '/removals/:id/call-back',
    on((c, saved) => callBackPage(c, saved, { on: [c.var.frame.today] })),
  )
  app.post(
    '/removals/:id/call-back',
    on((c, saved, typed) => calledBack(c, deps, saved, typed)),
  )
  return app
}

function calledBack(c: AppContext, deps: PageDeps, saved: Saved, typed: Typed): Response | Promise<Response> {
  const { sheet } = saved.last
  const { today, units } = c.var.frame
  const content = { ...fieldsIn(CALL_BACK_FIELDS, typed, units).raw, by: signedIn(c) }
  const parsed = callBack.safeParse(content)
  const problems = parsed.success ? [] : problemsOf(parsed.error, content)
  if (parsed.success && parsed.data.on > today) problems.push({ field: 'on', message: 'is in the future' })
  if ((sheet.callBacks ?? []).length >= 50) problems.push({ field: '', message: 'There are 50 already.' })
  if (!parsed.success || problems.length > 0) return callBackPage(c, saved, typed, problems)
  keep(c, deps, saved, { ...sheet, callBacks: [...(sheet.callBacks ?? []), parsed.data] })
  return c.redirect(`${saved.path}?saved=1`, 303)
}

const callBackPage = (c: AppContext, saved: Saved, typed: Typed, problems: FieldProblem[] = []) =>
  page(
    c,
    <CallBackPage
      frame={c.var.frame}
      form={{ typed, problems }}
      path={saved.path}
      name={sheetName(saved.last.sheet)}
    />,
    problems.length === 0 ? 200 : 422,
  )

/** The customer called again: an entry on the job, counted in the review by kind of removal. */
const CallBackPage = ({ frame, form, path, name }: EndProps) => (
  <FormPage
    frame={frame}
    title="They called again"
    form={form}
    action={`${path}/call-back`}
    back={{ href: path, label: name }}
    button="Save"
    labels={(field) => CALL_BACK_FIELDS[field as 'on']?.label ?? ''}
    ids={[]}
  >
    <Fields form={form} frame={frame} of={CALL_BACK_FIELDS} show={['what', 'on', 'note']} />
    <p class="hint">
      Somebody opens it again? That is another job: <a href="/removals/new">a new call</a>, with its own
      looks, heat, people and “go”.
    </p>
  </FormPage>
)
