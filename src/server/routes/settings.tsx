import { Hono } from 'hono'
import { type FieldProblem, one, type Typed } from '../../../web/forms/typed.ts'
import { SettingsPage } from '../../../web/pages/settings.tsx'
import type { Deps, Env, Here } from '../deps.ts'
import { typedIn } from '../form.ts'
import { page } from '../respond.tsx'

/** Units and time zone of the yard. */
export function settings(deps: Deps): Hono<Env> {
  const { settings: kept } = deps.store
  const app = new Hono<Env>()
  const show = (c: Here, typed: Typed, problems: FieldProblem[] = []) =>
    page(
      c,
      <SettingsPage
        frame={c.var.frame}
        form={{ typed, problems }}
        machineZone={deps.zone}
        saved={c.req.query('saved') === '1'}
      />,
      problems.length === 0 ? 200 : 422,
    )

  app.get('/settings', (c) =>
    show(c, {
      temperature: [kept.get('temperature')],
      weight: [kept.get('weight')],
      timeZone: [kept.get('timeZone') ?? ''],
    }),
  )

  app.post('/settings', async (c) => {
    const typed = await typedIn(c)
    const temperature = one(typed, 'temperature')
    const weight = one(typed, 'weight')
    const problems: FieldProblem[] = []
    if (temperature !== 'C' && temperature !== 'F')
      problems.push({ field: 'temperature', message: 'must be °C or °F' })
    if (weight !== 'kg' && weight !== 'lb') problems.push({ field: 'weight', message: 'must be kg or lb' })
    // The zone is the only one that can be refused by the store; it is written first, so that a refusal writes nothing.
    if (problems.length === 0)
      problems.push(
        ...kept
          .set('timeZone', one(typed, 'timeZone') || null)
          .map(({ field, message }) => ({ field, message })),
      )
    if (problems.length > 0) return show(c, typed, problems)
    kept.set('temperature', temperature as 'C' | 'F')
    kept.set('weight', weight as 'kg' | 'lb')
    return c.redirect('/settings?saved=1', 303)
  })
  return app
}
