import { Hono } from 'hono'
import { type AppContext, type Deps, type Env, page, typedIn } from '../../app/index.ts'
import { type FieldProblem, one, type Typed } from '../../forms/index.ts'
import { goesFall } from '../removal/node.ts'
import { SettingsPage } from './settings-page.tsx'

/** Units and time zone as they stand, for the form. */
export const unitsTyped = ({ store: { settings } }: Deps): Typed => ({
  temperature: [settings.get('temperature')],
  weight: [settings.get('weight')],
  timeZone: [settings.get('timeZone') ?? ''],
  yardName: [settings.get('yardName')],
  inspector: [settings.get('inspector')],
  currency: [settings.get('currency')],
})

/** Units and time zone of the yard. */
export function settings(deps: Deps): Hono<Env> {
  const { settings: kept } = deps.store
  const app = new Hono<Env>()
  const show = (c: AppContext, typed: Typed, problems: FieldProblem[] = []) =>
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

  app.get('/settings', (c) => show(c, unitsTyped(deps)))

  app.post('/settings', async (c) => {
    const typed = await typedIn(c)
    const temperature = one(typed, 'temperature')
    const weight = one(typed, 'weight')
    const problems: FieldProblem[] = []
    if (temperature !== 'C' && temperature !== 'F')
      problems.push({ field: 'temperature', message: 'must be °C or °F' })
    if (weight !== 'kg' && weight !== 'lb') problems.push({ field: 'weight', message: 'must be kg or lb' })
    for (const [name, most] of [
      ['yardName', 80],
      ['inspector', 200],
      ['currency', 5],
    ] as const)
      if (one(typed, name).length > most)
        problems.push({ field: name, message: `must be at most ${most} characters` })
    // The zone is the only one that can be refused by the store; it is written first, so that a refusal writes nothing.
    const zone = kept.get('timeZone')
    if (problems.length === 0)
      problems.push(
        ...kept
          .set('timeZone', one(typed, 'timeZone') || null)
          .map(({ field, message }) => ({ field, message })),
      )
    if (problems.length > 0) return show(c, typed, problems)
    // Yesterday evening may be today again, and what was decided then is not.
    const chosen = kept.get('timeZone')
    const here = { zone: chosen ?? deps.zone, now: deps.clock() }
    if (chosen !== zone) goesFall(deps.store.removals, here, 'time-zone')
    kept.set('temperature', temperature as 'C' | 'F')
    kept.set('weight', weight as 'kg' | 'lb')
    for (const name of ['yardName', 'inspector', 'currency'] as const)
      if (typed[name] !== undefined) kept.set(name, one(typed, name))
    return c.redirect(one(typed, 'back') === '/protocol' ? '/protocol?saved=units' : '/settings?saved=1', 303)
  })
  return app
}
