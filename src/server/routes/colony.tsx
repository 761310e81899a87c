import { Hono } from 'hono'
import { ColonyPage } from '../../../web/pages/colony.tsx'
import { addDays, type Day, isDay } from '../../days.ts'
import type { Book, Store } from '../../store/types.ts'
import type { Env, Here, PageDeps } from '../deps.ts'
import { colonyIn, unknownColony } from '../errors.tsx'
import { foresightOf, groundIn } from '../foresight.ts'
import { journalLines } from '../journal-lines.ts'
import { colonyPath, page } from '../respond.tsx'

type Found = NonNullable<ReturnType<Book['colony']>>

/** So far ahead may one ask what a frame of brood would do. */
const FRAME_AHEAD = 60

/** The day a frame of brood is thought to be given: as asked, within reason; else today. */
const givenOn = (asked: string | undefined, today: Day): Day =>
  asked !== undefined && isDay(asked) && asked >= today && asked <= addDays(today, FRAME_AHEAD)
    ? asked
    : today

/** The removal sheet a colony came of. A phone keeps none. */
const sheetOf = (store: Book | Store, colony: string): string | null =>
  'removals' in store ? store.removals.ofColony(colony) : null

/** One colony. */
export function colony(deps: PageDeps): Hono<Env> {
  const app = new Hono<Env>()
  const foresight = deps.foresight ?? foresightOf()

  const foreseen = (c: Here, { summary: s, history }: Found) => {
    if (s.outcome !== null) return null
    const { today, zone } = c.var.frame
    const ground = groundIn(deps.store, today, zone)
    const known = { id: s.id, history, plan: s.plan }
    return {
      seen: foresight.colony(known, ground),
      frame: foresight.frame(known, ground, givenOn(c.req.query('frame'), today)),
    }
  }

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
        sheet={sheetOf(deps.store, found.summary.id)}
        foresight={foreseen(c, found)}
      />,
    )
  })
  return app
}
