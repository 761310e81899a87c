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
import { one, type Typed } from '../../forms/index.ts'
import type { Refusal } from '../../people/index.ts'
import { sameToken } from '../../people/node.ts'
import { changeSession } from './session.ts'
import { SetUpPage } from './set-up-page.tsx'

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
    const kept = { token: [one(typed, 'token')], name: [one(typed, 'name')] }
    const wait = await deps.people.limits.guess(addressOf(c, deps.outside))
    if (wait > 0) return show(c, kept, [{ field: '', message: `Too many attempts: wait ${wait} seconds.` }])
    if (!sameToken(one(typed, 'token'), deps.setUpToken ?? ''))
      return show(c, kept, [{ field: 'token', message: 'is not the one in the terminal' }])
    const passphrase = typed.passphrase?.at(-1) ?? ''
    if (passphrase !== (typed.again?.at(-1) ?? ''))
      return show(c, kept, [{ field: 'again', message: 'is not the same as above' }])
    const made = await deps.people.setUp(one(typed, 'name'), passphrase)
    if (!made.ok) return show(c, kept, made.problems)
    changeSession(c, deps, made.value.token)
    return c.redirect('/', 303)
  })
  return app
}
