import { Hono } from 'hono'
import { AccountPage } from '../../../web/pages/account.tsx'
import type { Deps, Env, Here } from '../deps.ts'
import { typedIn } from '../form.ts'
import { viewerOf } from '../frame.tsx'
import { endSession } from '../middleware/session.ts'
import { page, type Refused, refusalStatus } from '../respond.tsx'

/** One's own account: passphrase, and signing out of every browser. */
export function account(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const { sessions } = deps.people
  const show = (c: Here, problems: Refused[] = []) =>
    page(
      c,
      <AccountPage
        frame={c.var.frame}
        form={{ typed: {}, problems }}
        browsers={sessions.count(viewerOf(c).id)}
        saved={c.req.query('saved') === '1'}
      />,
      problems.length === 0 ? 200 : refusalStatus(c, problems[0]),
    )

  app.get('/account', (c) => show(c))

  app.post('/account/passphrase', async (c) => {
    const typed = await typedIn(c)
    const next = typed.passphrase?.at(-1) ?? ''
    if (next !== (typed.again?.at(-1) ?? ''))
      return show(c, [{ field: 'again', message: 'is not the same as above' }])
    const viewer = viewerOf(c)
    const changed = await deps.people.changePassphrase(viewer, typed.old?.at(-1) ?? '', next, viewer.session)
    return changed.ok ? c.redirect('/account?saved=1', 303) : show(c, [changed])
  })

  app.post('/sign-out', (c) => {
    endSession(c, deps)
    return c.redirect('/sign-in', 303)
  })

  app.post('/account/sign-out-everywhere', (c) => {
    sessions.closeAll(viewerOf(c).id)
    return c.redirect('/sign-in', 303)
  })
  return app
}
