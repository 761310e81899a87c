import { Hono } from 'hono'
import { type Deps, type Env, page } from '../../app/index.ts'
import { sheetName } from '../../records/index.ts'
import { RemovalErasePage } from './end-page.tsx'
import { onSheet } from './sheet-handlers.ts'

/** Erasing a sheet, every version of it. Only the server can. */
export function removalErase(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const on = onSheet(deps)
  app.get(
    '/removals/:id/erase',
    on((c, saved) =>
      page(
        c,
        <RemovalErasePage
          frame={c.var.frame}
          path={saved.path}
          name={sheetName(saved.last.sheet)}
          versions={saved.versions.length}
        />,
      ),
    ),
  )
  app.post(
    '/removals/:id/erase',
    on((c, saved) => {
      deps.store.removals.erase(saved.id)
      return c.redirect('/removals?erased=1', 303)
    }),
  )
  return app
}
