import { Hono } from 'hono'
import {
  type AppContext,
  type Deps,
  type Env,
  forecastCache,
  groundIn,
  page,
  STANDS_AHEAD,
  typedIn,
} from '../../app/index.ts'
import { mappedInSlices } from '../../app/node.ts'
import { occupancyForecast } from '../../forecast/index.ts'
import { type FieldProblem, one, type Typed } from '../../forms/index.ts'
import { StandsPage, standsField } from './stands-page.tsx'

/** Stands free by date in each yard, and how many stands a yard has. */
export function stands(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const { store } = deps
  const forecasts = deps.forecasts ?? forecastCache()

  const show = async (c: AppContext, typed: Typed, problems: FieldProblem[] = []) => {
    const { frame } = c.var
    const ground = groundIn(store, frame.today, frame.zone)
    const kept = store.settings.get('stands')
    const open = store.colonies({ open: true })
    const moving = await mappedInSlices(open, ({ id, yard, plan }) => {
      const history = store.colony(id)?.history
      return history === undefined
        ? []
        : [{ yard, moveOut: forecasts.moveOut({ id, history, plan }, ground) }]
    })
    const here = moving.flat()
    const yards = yardNames(store).map((yard) => {
      const count = kept[yard] ?? null
      const colonies = here.filter((m) => m.yard === yard).map((m) => m.moveOut)
      return {
        yard,
        stands: count,
        colonies: colonies.length,
        days: occupancyForecast(colonies, frame.today, STANDS_AHEAD, count),
      }
    })
    return page(
      c,
      <StandsPage
        frame={frame}
        yards={yards}
        form={{ typed, problems }}
        saved={c.req.query('saved') === '1'}
      />,
      problems.length === 0 ? 200 : 422,
    )
  }

  // Its address until 2026-11.
  app.get('/stands', (c) => c.redirect('/supplies/stands', 301))

  app.get('/supplies/stands', (c) => {
    const kept = store.settings.get('stands')
    const typed: Typed = {}
    for (const yard of yardNames(store)) {
      const count = kept[yard]
      if (count !== undefined) typed[standsField(yard)] = [String(count)]
    }
    return show(c, typed)
  })

  app.post('/supplies/stands', async (c) => {
    const typed = await typedIn(c)
    const problems: FieldProblem[] = []
    const kept: Record<string, number> = { ...store.settings.get('stands') }
    for (const yard of yardNames(store)) {
      const field = standsField(yard)
      if (typed[field] === undefined) continue
      const text = one(typed, field)
      if (text === '') delete kept[yard]
      else if (/^\d{1,4}$/.test(text)) kept[yard] = Number(text)
      else problems.push({ field, message: `must be a whole number from 0 to 9999, not "${text}"` })
    }
    if (problems.length === 0)
      problems.push(...store.settings.set('stands', kept).map(({ message }) => ({ field: '', message })))
    return problems.length > 0 ? show(c, typed, problems) : c.redirect('/supplies/stands?saved=1', 303)
  })
  return app
}

const yardNames = (store: Deps['store']): string[] => {
  const kept = store.settings.get('stands')
  return store
    .yards()
    .filter((y) => y.open > 0 || kept[y.yard] !== undefined)
    .map((y) => y.yard)
}
