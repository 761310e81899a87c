import { Hono } from 'hono'
import {
  colonyIn,
  colonyPath,
  type Env,
  type PageDeps,
  page,
  unknownColony,
  unknownPage,
} from '../../app/index.ts'
import type { Entry } from '../../journal/index.ts'
import { PhotoPage } from './photo-page.tsx'

const photosOf = (e: Entry): readonly string[] => ('photos' in e ? (e.photos ?? []) : [])

/** A photo of a colony's journal on a page of its own. The picture itself comes from /photos, or from the phone. */
export function photo(deps: PageDeps): Hono<Env> {
  const app = new Hono<Env>()
  app.get('/colony/:tag/photo/:photo', (c) => {
    const found = colonyIn(c, deps.store)
    if (found === null) return unknownColony(c, deps, c.req.param('tag'))
    const asked = c.req.param('photo')
    // The latest entry that has it: a correction keeps the photos of what it corrects.
    const row = found.journal.findLast((r) => photosOf(r.entry).includes(asked))
    if (row === undefined) return unknownPage(c)
    const ids = photosOf(row.entry)
    return page(
      c,
      <PhotoPage
        frame={c.var.frame}
        summary={found.summary}
        path={colonyPath(found.summary)}
        entry={row.entry}
        ids={ids}
        at={ids.indexOf(asked)}
      />,
    )
  })
  return app
}
