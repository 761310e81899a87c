import { Hono } from 'hono'
import { type Env, type PageDeps, page, unknownPage } from '../../app/index.ts'
import { ACTS } from '../../words/index.ts'
import { ActPage, FirstRoundPage, GlossaryPage, HowIndexPage } from './page.tsx'

/** How things are done. The same for everybody, and on every phone. */
export function how(_deps: PageDeps): Hono<Env> {
  const app = new Hono<Env>()
  app.get('/how', (c) => page(c, <HowIndexPage frame={c.var.frame} />))
  app.get('/how/words', (c) => page(c, <GlossaryPage frame={c.var.frame} />))
  app.get('/how/first-round', (c) => page(c, <FirstRoundPage frame={c.var.frame} />))
  app.get('/how/:act', (c) => {
    const act = ACTS.find((a) => a === c.req.param('act'))
    return act === undefined ? unknownPage(c) : page(c, <ActPage frame={c.var.frame} act={act} />)
  })
  return app
}
