import { Hono } from 'hono'
import { colonyPath, type Deps, type Env, page } from '../../app/index.ts'
import { lettersDue } from '../letters/index.ts'
import { readyList, toAsk } from './ready.ts'
import { ReadyPage } from './ready-page.tsx'

/** Colonies ready to go, those that soon are, and letters it is time for. */
export function handingOn(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const { store } = deps
  app.get('/handing-on', (c) => {
    const { today } = c.var.frame
    store.today(today)
    const records = store.after.records.all()
    const papers = (id: string) => records.get(id)?.permits ?? []
    return page(
      c,
      <ReadyPage
        frame={c.var.frame}
        {...readyList(store.colonies({ open: true }), papers, today)}
        ask={toAsk(store.colonies({ open: false }), records, today).map((s) => ({
          tag: s.tag,
          path: `${colonyPath(s)}/follow-up`,
        }))}
        letters={lettersDue(store, today).map((s) => ({ tag: s.tag, path: `${colonyPath(s)}/letter` }))}
      />,
    )
  })
  return app
}
