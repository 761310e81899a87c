import { Hono } from 'hono'
import { type AppContext, colonyPath, type Deps, type Env, page, signedIn } from '../../app/index.ts'
import type { RefusedEntry } from '../../store/index.ts'
import { RefusedPage, withoutTag } from './page.tsx'

/** The beekeeper's list of what phones could not hand in. */
export function refusedEntries(deps: Deps): Hono<Env> {
  const { store } = deps
  const app = new Hono<Env>()
  const one = (c: AppContext): RefusedEntry | null =>
    store.refused.open().find((e) => e.id === c.req.param('id')) ?? null

  app.get('/refused', (c) => {
    const done = c.req.query('done')
    return page(
      c,
      <RefusedPage
        frame={c.var.frame}
        entries={store.refused.open().map((e) => {
          const summary = store.colony(colonyOf(e))?.summary ?? null
          return {
            ...e,
            tag: summary?.tag ?? e.tag,
            path: summary === null ? null : colonyPath(summary),
            closed: summary !== null && summary.closedOn !== null,
          }
        })}
        again={c.req.query('again') ?? null}
        done={done === 'taken' || done === 'settled' ? done : null}
      />,
    )
  })

  /** Signed by whose it is, entered by who takes it in. */
  app.post('/refused/:id/take', (c) => {
    const found = one(c)
    if (found === null) return c.redirect('/refused', 303)
    const by = signedIn(c)
    const at = deps.clock().toISOString()
    const { today } = c.var.frame
    const raw = { ...(withoutTag(found.entry) as object), by: found.person }
    const saved = store.append([raw], { today, recordedAt: at, recordedBy: by })
    if (saved.ok) {
      store.refused.settle([found.id], { at, by })
      return c.redirect('/refused?done=taken', 303)
    }
    const problems = saved.problems.map(({ field, message }) => ({ field, message }))
    store.refused.keep([{ ...found, problems }])
    return c.redirect(`/refused?again=${found.id}#r-${found.id}`, 303)
  })

  app.post('/refused/:id/settle', (c) => {
    const found = one(c)
    if (found !== null) store.refused.settle([found.id], { at: deps.clock().toISOString(), by: signedIn(c) })
    return c.redirect('/refused?done=settled', 303)
  })
  return app
}

const colonyOf = ({ entry, tag }: RefusedEntry): string => {
  const { colony } = (entry ?? {}) as { colony?: unknown }
  return typeof colony === 'string' ? colony : tag
}
