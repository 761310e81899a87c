import { Hono } from 'hono'
import { v7 } from 'uuid'
import {
  type AppContext,
  boxPath,
  colonyIn,
  colonyPath,
  type Env,
  forecastCache,
  idIn,
  onward,
  type PageDeps,
  page,
  savedTogether,
  signedIn,
  submit,
  thenOf,
  typedIn,
  unknownColony,
  withIds,
} from '../../app/index.ts'
import { draftOf, type FieldProblem, type Typed } from '../../forms/index.ts'
import { correctPath } from '../../parts/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import { entryWords } from '../../words/index.ts'
import { loadFor } from './bring.ts'
import { RoundColonyPage } from './colony-page.tsx'
import { MissedPage } from './missed-page.tsx'
import { nextRound } from './next-round.ts'
import { RoundPage } from './page.tsx'
import { RoundSummaryPage } from './summary-page.tsx'
import { boxesIn, roundView } from './today-round.ts'

/** The round: its list, each box, the end; and a box that could not be reached. */
export function round(deps: PageDeps): Hono<Env> {
  const { store } = deps
  const app = new Hono<Env>()
  const forecasts = deps.forecasts ?? forecastCache()

  app.get('/round', (c) => {
    const view = roundView(c, { ...deps, forecasts })
    const here = view.round.stops.map((s) => s.box).filter((b) => b.history.outcome === null)
    return page(c, <RoundPage {...view} load={loadFor(here)} />)
  })

  app.get('/round/box/:tag', (c) => {
    const colony = colonyIn(c, store)
    if (colony === null) return unknownColony(c, deps, c.req.param('tag'))
    const view = roundView(c, { ...deps, forecasts })
    const { id } = colony.summary
    const stop = [...view.round.stops, ...view.round.putOff].find((s) => s.box.id === id)
    // A box that asks nothing today has no place on the round.
    if (stop === undefined) return c.redirect(colonyPath(colony.summary), 303)
    return page(
      c,
      <RoundColonyPage
        {...view}
        stop={stop}
        path={colonyPath(colony.summary)}
        entryId={v7()}
        inspector={store.settings.get('inspector')}
        saved={savedElsewhere(c, id)}
      />,
    )
  })

  app.get('/round/end', (c) => {
    const view = roundView(c, { ...deps, forecasts })
    const next = nextRound(boxesIn(store, view.where.yard), view.frame.today, store.plan)
    return page(c, <RoundSummaryPage {...view} next={next} />)
  })

  /** What was saved at another box on the way here; of this box itself the page says so anyhow. */
  const savedElsewhere = (c: AppContext, here: string) => {
    const row = store.entry(c.req.query('saved') ?? '')
    if (row === null || row.entry.colony === here || row.entry.kind === 'withdrawal') return null
    const { units, today } = c.var.frame
    const words = savedTogether(store.colony(row.entry.colony)?.journal ?? [row], row.entry.id).map(
      ({ entry }) => {
        const { title, facts } = entryWords(entry, units, today, false, c.var.frame.words)
        return [title.charAt(0).toLowerCase() + title.slice(1), ...facts].join(', ')
      },
    )
    return { tag: row.tag, words: words.join('; '), path: correctPath(row.entry.id, c.var.frame) }
  }

  /** Where one came from: the box's card on the round that `then` leads on. */
  const cardOf = (c: AppContext, summary: ColonySummary): string => {
    const then = thenOf(c)
    const query = new URLSearchParams(then?.split('?')[1])
    return then === null
      ? colonyPath(summary)
      : boxPath({ yard: query.get('yard') || null, until: query.get('until') }, summary.tag)
  }

  const missed = (c: AppContext, summary: ColonySummary, typed: Typed, problems: FieldProblem[] = []) =>
    page(
      c,
      <MissedPage
        frame={c.var.frame}
        form={{ typed, problems }}
        summary={summary}
        path={colonyPath(summary)}
        then={thenOf(c)}
        back={cardOf(c, summary)}
      />,
      problems.length === 0 ? 200 : 422,
    )

  app.get('/colony/:tag/missed', (c) => {
    const colony = colonyIn(c, store)
    if (colony === null) return unknownColony(c, deps, c.req.param('tag'))
    return missed(c, colony.summary, { id: [v7()] })
  })

  app.post('/colony/:tag/missed', async (c) => {
    const colony = colonyIn(c, store)
    if (colony === null) return unknownColony(c, deps, c.req.param('tag'))
    const typed = withIds(await typedIn(c), ['id'])
    const id = idIn(typed)
    const draft = draftOf('missed-visit', typed, c.var.frame.units)
    const sent = [{ draft, id, colony: colony.summary.id }]
    const saved = await submit(deps, c.var.frame.today, signedIn(c), sent)
    return saved.ok ? onward(c, colony.summary, id) : missed(c, colony.summary, typed, saved.problems)
  })
  return app
}
