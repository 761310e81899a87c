import { Hono } from 'hono'
import { type Deps, type Env, page } from '../../app/index.ts'
import { sheetName } from '../../records/index.ts'
import { RemovalPrintPage } from './print-page.tsx'
import { factsOf } from './sheet-facts.ts'
import { momentNow, onSheet } from './sheet-handlers.ts'
import { PARTS } from './stage.ts'
import { reckoningOf, termsNow } from './view.ts'

/** The agreement and the job sheet on paper. Only the server makes them: where there is no signal, there is no printer. */
export function removalPrint(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const on = onSheet(deps)
  app.get(
    '/removals/:id/print',
    on((c, saved) => {
      const { sheet } = saved.last
      const { frame } = c.var
      const at = { units: frame.units, today: frame.today, currency: deps.store.settings.get('currency') }
      return page(
        c,
        <RemovalPrintPage
          frame={frame}
          path={saved.path}
          name={sheetName(sheet)}
          what={c.req.query('what') === 'job' ? 'job' : 'agreement'}
          sheet={sheet}
          asOf={{ version: saved.last.version, at: momentNow(c, deps).at }}
          terms={termsNow(c, deps, sheet)}
          parts={PARTS.map((part) => ({ part, facts: factsOf(part, sheet, at) }))}
          reckoning={reckoningOf(c, deps, sheet)}
        />,
      )
    }),
  )
  return app
}
