/** The customer called again: an entry on a job that is done. No phone keeps those, so only the server answers. */
import { Hono } from 'hono'
import { type AppContext, type Env, type PageDeps, page, signedIn } from '../../app/index.ts'
import { type FieldProblem, type FieldSpecs, Fields, fieldsIn, spec, type Typed } from '../../forms/index.ts'
import { problemsOf } from '../../journal/index.ts'
import { FormPage } from '../../parts/index.ts'
import { callBack, sheetName, withoutGo } from '../../records/index.ts'
import { openedAgain } from './again-sheet.ts'
import { BEGUN, CALLED_BACK } from './choices.ts'
import type { EndProps } from './end-page.tsx'
import { keep, onSheet, type Saved } from './sheet-handlers.ts'

const { choice, day, text, yesNo } = spec

const CALL_BACK_FIELDS = {
  what: choice('Why they call', CALLED_BACK, 3),
  on: day('Called on', { past: true, required: true }),
  opened: yesNo(
    'Was anything opened?',
    [
      { value: 'no', label: 'No' },
      { value: 'yes', label: 'Yes' },
    ],
    2,
  ),
  why: choice('Opened, and with no “go”: why?', BEGUN, 3),
  note: text('More about it', { maxlength: 500, wide: true }),
} satisfies FieldSpecs

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
  const { why, ...said } = fieldsIn(CALL_BACK_FIELDS, typed, units).raw
  const content = { ...said, by: signedIn(c) }
  const parsed = callBack.safeParse(content)
  const problems = parsed.success ? [] : problemsOf(parsed.error, content)
  if (parsed.success && parsed.data.on > today) problems.push({ field: 'on', message: 'is in the future' })
  if (parsed.success && parsed.data.opened === undefined)
    problems.push({ field: 'opened', message: 'is not said' })
  if ((sheet.callBacks ?? []).length >= 50) problems.push({ field: '', message: 'There are 50 already.' })
  if (!parsed.success || problems.length > 0) return callBackPage(c, saved, typed, problems)
  keep(c, deps, saved, { ...sheet, callBacks: [...(sheet.callBacks ?? []), parsed.data] })
  const to =
    parsed.data.opened === true
      ? openedAgain(c, deps, saved, parsed.data, withoutGo.shape.why.safeParse(why).data)
      : `${saved.path}?saved=1`
  return c.redirect(to, 303)
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
    <Fields form={form} frame={frame} of={CALL_BACK_FIELDS} show={['what', 'on', 'opened']} />
    <div class="when-opened">
      <Fields form={form} frame={frame} of={CALL_BACK_FIELDS} show={['why']} />
    </div>
    <Fields form={form} frame={frame} of={CALL_BACK_FIELDS} show={['note']} />
    <p class="hint">
      What was opened has a sheet of its own, which comes next. Is it still to be opened? Begin with{' '}
      <a href="/removals/new">a new call</a>: looks, heat, people and “go” are its own.
    </p>
  </FormPage>
)
