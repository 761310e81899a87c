import { Hono } from 'hono'
import {
  type AppContext,
  type Deps,
  type Env,
  frameFor,
  page,
  refusalStatus,
  typedIn,
} from '../../app/index.ts'
import { addressOf } from '../../app/node.ts'
import { isZone } from '../../days.ts'
import { many, one, type Typed } from '../../forms/index.ts'
import type { Refusal } from '../../people/index.ts'
import { sameToken } from '../../people/node.ts'
import { CLIMATES, MONTHS, seasonOf, suggestedMatingMonths } from '../../recovery/index.ts'
import { hemisphereOf, wordsIn } from '../../words/index.ts'
import { changeSession } from './session.ts'
import { SetUpPage } from './set-up-page.tsx'

/** Whom to call, and when queens mate here: the months tapped, or those of the climate. What makes no sense is left out. */
function keepChoices(deps: Deps, typed: Typed, zone: string): void {
  const inspector = one(typed, 'inspector')
  if (inspector !== '') deps.store.settings.set('inspector', inspector)
  const climate = CLIMATES.find((x) => x === one(typed, 'climate'))
  const tapped = MONTHS.filter((m) => many(typed, 'matingMonths').includes(m))
  const months =
    tapped.length > 0 || climate === undefined ? tapped : suggestedMatingMonths(hemisphereOf(zone), climate)
  const season = seasonOf(months)
  if (season.matingMonths === undefined) return
  deps.store.protocols.change(
    { ...deps.store.settings.get('protocol'), ...season },
    { changedAt: deps.clock().toISOString(), changedBy: one(typed, 'name'), reason: 'Said at set-up' },
  )
  while (deps.store.protocols.remakeSome(50) !== null) {}
}

/** The one-time page that makes the first operator. Once anybody can sign in it is an unknown page like any other. */
export function setUp(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const isOpen = (): boolean => deps.setUpToken !== null && deps.people.accounts.none()
  const show = (c: AppContext, typed: Typed, problems: Refusal[] = []) =>
    page(
      c,
      <SetUpPage frame={frameFor(c, deps)} form={{ typed, problems }} />,
      problems.length === 0 ? 200 : refusalStatus(c, problems[0]),
    )

  app.get('/set-up', (c, next) => (isOpen() ? show(c, { token: [c.req.query('token') ?? ''] }) : next()))

  app.post('/set-up', async (c, next) => {
    if (!isOpen()) return next()
    const typed = await typedIn(c)
    const season = { climate: typed.climate ?? [], matingMonths: many(typed, 'matingMonths') }
    const kept = {
      token: [one(typed, 'token')],
      name: [one(typed, 'name')],
      inspector: [one(typed, 'inspector')],
      timeZone: [one(typed, 'timeZone')],
      ...season,
    }
    if (!sameToken(one(typed, 'token'), deps.setUpToken ?? '')) {
      const wait = await deps.people.limits.guess('set-up', addressOf(c, deps.outside))
      return wait > 0
        ? show(c, kept, [{ field: '', message: wordsIn('en').signIn.tooMany(wait) }])
        : show(c, kept, [{ field: 'token', message: 'is not the one in the terminal' }])
    }
    const passphrase = typed.passphrase?.at(-1) ?? ''
    if (passphrase !== (typed.again?.at(-1) ?? ''))
      return show(c, kept, [{ field: 'again', message: 'is not the same as above' }])
    if (one(typed, 'inspector').length > 200)
      return show(c, kept, [{ field: 'inspector', message: 'must be at most 200 characters' }])
    const zone = one(typed, 'timeZone')
    if (zone !== '' && !isZone(zone))
      return show(c, kept, [
        { field: 'timeZone', message: 'must be a name like America/Denver or Europe/Lisbon' },
      ])
    const made = await deps.people.setUp(one(typed, 'name'), passphrase)
    if (!made.ok) return show(c, kept, made.problems)
    if (zone !== '') deps.store.settings.set('timeZone', zone)
    keepChoices(deps, typed, frameFor(c, deps).zone)
    changeSession(c, deps, made.value.token)
    return c.redirect('/', 303)
  })
  return app
}
