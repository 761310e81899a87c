import { Hono } from 'hono'
import {
  type AppContext,
  colonyIn,
  colonyPath,
  type Env,
  forecastCache,
  groundIn,
  journalLines,
  type PageDeps,
  page,
  savedTogether,
  unknownColony,
} from '../../app/index.ts'
import { addDays, type Day, isDay } from '../../days.ts'
import type { ColonySummary, Repository, Store } from '../../store/index.ts'
import { ColonyPage } from './page.tsx'

type Found = NonNullable<ReturnType<Repository['colony']>>

/** So far ahead may one ask what a frame of brood would do. */
const FRAME_AHEAD = 60

/** The day a frame of brood is thought to be given: as asked, within reason; else today. */
const givenOn = (asked: string | undefined, today: Day): Day =>
  asked !== undefined && isDay(asked) && asked >= today && asked <= addDays(today, FRAME_AHEAD)
    ? asked
    : today

/** The removal sheet a colony came of. A phone keeps none. */
const sheetOf = (store: Repository | Store, colony: string): string | null =>
  'removals' in store ? store.removals.ofColony(colony) : null

/** Others on the stand that the entry just saved put it on. Two may stand there, but nobody should be surprised by it. */
function onTheStandOf(
  store: Repository,
  { summary: s, history }: Found,
  saved: string | undefined,
): ColonySummary[] {
  const { kind } = history.entries.find((e) => e.id === saved) ?? {}
  if ((kind !== 'intake' && kind !== 'move') || s.stand === null || s.closedOn !== null) return []
  const here = plainStand(s.stand)
  return store
    .colonies({ open: true, yard: s.yard })
    .filter((o) => o.id !== s.id && o.yard === s.yard && o.stand !== null && plainStand(o.stand) === here)
}

const plainStand = (stand: string): string => stand.trim().toLowerCase()

/** One colony. */
export function colony(deps: PageDeps): Hono<Env> {
  const app = new Hono<Env>()
  const forecasts = deps.forecasts ?? forecastCache()

  const foreseen = (c: AppContext, { summary: s, history }: Found) => {
    if (s.outcome !== null) return null
    const { today, zone } = c.var.frame
    const ground = groundIn(deps.store, today, zone)
    const known = { id: s.id, history, plan: s.plan }
    return {
      seen: forecasts.colony(known, ground),
      frame: forecasts.frame(known, ground, givenOn(c.req.query('frame'), today)),
    }
  }

  app.get('/colony/:tag', (c) => {
    const found = colonyIn(c, deps.store)
    if (found === null) return unknownColony(c, deps, c.req.param('tag'))
    const lines = journalLines(found.journal, c.var.frame)
    const saved = savedTogether(found.journal, c.req.query('saved')).map((r) => r.entry.id)
    return page(
      c,
      <ColonyPage
        frame={c.var.frame}
        summary={found.summary}
        history={found.history}
        journal={[...lines].reverse()}
        path={colonyPath(found.summary)}
        joined={deps.store.joined(found.summary)}
        saved={saved.flatMap((id) => lines.find((l) => l.entry.id === id) ?? [])}
        shares={saved.length === 0 ? [] : onTheStandOf(deps.store, found, saved[0])}
        sheet={sheetOf(deps.store, found.summary.id)}
        inspector={deps.store.settings.get('inspector')}
        asksFrame={c.req.query('frame') !== undefined}
        forecasts={foreseen(c, found)}
      />,
    )
  })
  return app
}
