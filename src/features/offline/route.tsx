import { Hono } from 'hono'
import { type Deps, type Env, languageFor, page, viewerOf } from '../../app/index.ts'
import { OutboxPage } from './outbox-page.tsx'
import { roundBundle } from './round-bundle.ts'

/** What a phone fetches to work without signal, and the page that says what waits on it. */
export function offline(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()

  app.get('/phone/round', (c) => {
    const { id, name, role } = viewerOf(c)
    // A phone that knows the round of another person, or of this one in another role, gets all of it.
    const same = c.req.query('person') === id && c.req.query('role') === role
    const since = Number(c.req.query('since') ?? '')
    c.header('Cache-Control', 'no-store')
    return c.json(
      roundBundle(deps.store, {
        viewer: { id, name, role, language: languageFor(c) },
        zone: c.var.frame.zone,
        today: c.var.frame.today,
        now: deps.clock(),
        crew: deps.crew?.() ?? [],
        since: same && Number.isInteger(since) && since > 0 ? since : null,
      }),
    )
  })

  /** For a phone that could not read the round: whose entries it may send. */
  app.get('/phone/person', (c) => {
    const { id, name, role } = viewerOf(c)
    c.header('Cache-Control', 'no-store')
    return c.json({ id, name, role, language: languageFor(c) })
  })

  /** A phone that keeps anything answers this itself: asked here, nothing waits. */
  app.get('/outbox', (c) => page(c, <OutboxPage frame={c.var.frame} items={[]} />))
  return app
}
