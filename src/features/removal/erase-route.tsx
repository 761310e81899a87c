import { Hono } from 'hono'
import { type AppContext, type Deps, type Env, page } from '../../app/index.ts'
import { type NotedLine, type Sheet, sheetName } from '../../records/index.ts'
import { RemovalErasePage } from './end-page.tsx'
import { fallen } from './found-kept.ts'
import { GRAVE_WORDS } from './hazard-words.ts'
import { MOST } from './looked-again.ts'
import { notesOf } from './notes-read.ts'
import { leftOf, saidOn, stopOf } from './other-sheets.ts'
import { momentNow, onSheet, type Saved, stampOf } from './sheet-handlers.ts'
import { isOver, stageOf } from './stage.ts'
import { colonyLinks } from './view.ts'
import { withLines } from './was-said.ts'
import { withWords } from './written.ts'

/** A name is forgotten, and a gas pipe is not: what open sheets of the same house keep of this one, each in words of nobody. */
function leavesOn(
  c: AppContext,
  { store }: Deps,
  { id, last, colonies }: Saved,
): { on: Listed; words: string }[] {
  const erased = { id, sheet: last.sheet, colonies }
  return store.removals.list().flatMap((on) => {
    const words = leftOf(on.id, on.sheet, erased, c.var.frame.today)
    return words === '' || isOver(stageOf(on.sheet, on.colonies.length)) ? [] : [{ on, words }]
  })
}
type Listed = ReturnType<Deps['store']['removals']['list']>[number]

function leave(c: AppContext, deps: Deps, saved: Saved): void {
  for (const { on, words } of leavesOn(c, deps, saved)) {
    const { behindNote = '' } = on.sheet.site
    const both = `${words} ${behindNote}`.trim()
    const site = { ...on.sheet.site, behindNote: both.length > MOST ? words : both }
    const moment = momentNow(c, deps)
    // What there was no room for any more is not forgotten.
    const line: NotedLine = { what: 'note', is: 'was', words: behindNote, ...moment }
    const kept = site.behindNote === both ? site : withLines(site, [line])
    const noted = withWords(on.sheet, { ...on.sheet, site: kept }, moment)
    deps.store.removals.save(on.id, on.version, fallen(c, deps, on.sheet, noted, on.id), stampOf(c, deps))
  }
}

/** What it says that somebody would have to look for again: ['gas pipe', 'why it was stopped', 'its notes'] */
const wordsOn = (s: Sheet): string[] => [
  ...saidOn(s).map((g) => GRAVE_WORDS[g].toLowerCase()),
  ...(stopOf(s) === undefined ? [] : ['why it was stopped']),
  ...(notesOf(s, '').length === 0 ? [] : ['its notes']),
]

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
          said={wordsOn(saved.last.sheet)}
          leaves={leavesOn(c, deps, saved).map(({ on: o, words }) => ({ name: sheetName(o.sheet), words }))}
        />,
      ),
    ),
  )
  app.post(
    '/removals/:id/erase',
    on((c, saved) => {
      const { removals } = deps.store
      const photos = removals.ownPhotos(saved.id)
      leave(c, deps, saved)
      removals.erase(saved.id)
      for (const photo of photos) deps.photos.eraseNow(photo)
      return c.redirect(`/removals?erased=${deps.store.clean() ? 'clean' : 'yes'}`, 303)
    }),
  )
  return app
}
