import { Hono } from 'hono'
import { type Deps, type Env, page } from '../../app/index.ts'
import { isDay } from '../../days.ts'
import { PaperPage } from './page.tsx'
import { printedSheet, sheetDays } from './sheet-of.ts'
import { SIZES, usualSize } from './sizes.ts'

/** The round sheet, to be printed. */
export function paper(deps: Deps): Hono<Env> {
  const { store } = deps
  const app = new Hono<Env>()
  app.get('/paper', (c) => {
    const { today, units } = c.var.frame
    const days = sheetDays(today)
    const asked = c.req.query('day') ?? ''
    const yards = store.yards().filter((y) => y.open > 0)
    const size = SIZES.find((s) => s === c.req.query('size'))
    const chosen = {
      yard: yards.find((y) => y.yard === c.req.query('yard'))?.yard ?? null,
      day: isDay(asked) && asked >= today && asked <= days.to ? asked : today,
      all: c.req.query('all') === '1',
    }
    return page(
      c,
      <PaperPage
        frame={c.var.frame}
        {...chosen}
        size={size ?? usualSize(units.temperature)}
        yards={yards.map((y) => y.yard)}
        days={days}
        boxes={printedSheet(store, chosen, today)}
      />,
    )
  })
  return app
}
