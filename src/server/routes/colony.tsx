import { Hono } from 'hono'
import { ColonyPage } from '../../../web/pages/colony.tsx'
import type { Env, PageDeps } from '../deps.ts'
import { colonyIn, unknownColony } from '../errors.tsx'
import { journalLines } from '../journal-lines.ts'
import { colonyPath, page } from '../respond.tsx'

/** One colony. */
export function colony(deps: PageDeps): Hono<Env> {
  const app = new Hono<Env>()
  app.get('/colony/:tag', (c) => {
    const found = colonyIn(c, deps.store)
    if (found === null) return unknownColony(c, deps, c.req.param('tag'))
    const lines = journalLines(found.journal, c.var.frame)
    const saved = c.req.query('saved')
    return page(
      c,
      <ColonyPage
        frame={c.var.frame}
        summary={found.summary}
        history={found.history}
        journal={[...lines].reverse()}
        path={colonyPath(found.summary)}
        saved={lines.find((l) => l.entry.id === saved) ?? null}
      />,
    )
  })
  return app
}
