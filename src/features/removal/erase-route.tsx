import { Hono } from 'hono'
import { type AppContext, type Deps, type Env, page } from '../../app/index.ts'
import { sheetName } from '../../records/index.ts'
import { RemovalErasePage } from './end-page.tsx'
import { GRAVE_WORDS } from './hazard-words.ts'
import { otherSheetsOf, saidOn } from './other-sheets.ts'
import { momentNow, onSheet, type Saved, stampOf } from './sheet-handlers.ts'
import { isOver, stageOf } from './stage.ts'
import { colonyLinks } from './view.ts'
import { withWords } from './written.ts'

/** A name is forgotten, and a gas pipe is not: open sheets of the same house keep in words what the erased one said, and of nobody. */
function leaveHazards(c: AppContext, deps: Deps, { id, last, colonies }: Saved): void {
  const { removals } = deps.store
  for (const v of removals.list()) {
    const said = otherSheetsOf(v.id, v.sheet, [{ id, sheet: last.sheet, colonies }], c.var.frame.today)
    const words = said.flatMap((o) =>
      (o.shares === 'perhaps' ? [] : o.what).map((g) => GRAVE_WORDS[g].toLowerCase()),
    )
    if (words.length === 0 || isOver(stageOf(v.sheet, v.colonies.length))) continue
    const { behindNote = '' } = v.sheet.site
    const note = `Another sheet of this house, erased since, said: ${words.join(', ')}. ${behindNote}`.slice(
      0,
      500,
    )
    const noted = { ...v.sheet, site: { ...v.sheet.site, behindNote: note.trim() } }
    // What there was no room for any more is not forgotten.
    removals.save(v.id, v.version, withWords(v.sheet, noted, momentNow(c, deps)), stampOf(c, deps))
  }
}

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
          said={saidOn(saved.last.sheet).map((g) => GRAVE_WORDS[g].toLowerCase())}
        />,
      ),
    ),
  )
  app.post(
    '/removals/:id/erase',
    on((c, saved) => {
      const { removals } = deps.store
      const photos = removals.ownPhotos(saved.id)
      leaveHazards(c, deps, saved)
      removals.erase(saved.id)
      for (const photo of photos) deps.photos.eraseNow(photo)
      return c.redirect(`/removals?erased=${deps.store.clean() ? 'clean' : 'yes'}`, 303)
    }),
  )
  return app
}
