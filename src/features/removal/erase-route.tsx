import { Hono } from 'hono'
import { type Deps, type Env, page } from '../../app/index.ts'
import { sheetName } from '../../records/index.ts'
import { RemovalErasePage } from './end-page.tsx'
import { onSheet } from './sheet-handlers.ts'
import { colonyLinks } from './view.ts'

/** Erasing a sheet, its photos, and where its colonies came from; then the file is written anew. Only the server can. */
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
          colonies={colonyLinks(deps, saved.colonies)}
        />,
      ),
    ),
  )
  app.post(
    '/removals/:id/erase',
    on((c, saved) => {
      const { removals } = deps.store
      const photos = removals.ownPhotos(saved.id)
      removals.erase(saved.id)
      for (const photo of photos) deps.photos.eraseNow(photo)
      return c.redirect(`/removals?erased=${deps.store.clean() ? 'clean' : 'yes'}`, 303)
    }),
  )
  return app
}
