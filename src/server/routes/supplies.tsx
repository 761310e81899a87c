import { Hono } from 'hono'
import { orderIn } from '../../../web/forms/order.ts'
import { SuppliesPage } from '../../../web/pages/supplies.tsx'
import { orderAdvice } from '../../forecast/supplies.ts'
import { yardSupplies } from '../../forecast/yard-supplies.ts'
import type { History } from '../../journal/history.ts'
import type { Deps, Env } from '../deps.ts'
import { foresightOf, groundIn, type Known, SUPPLIES_AHEAD } from '../foresight.ts'
import { page } from '../respond.tsx'
import { yardHistories } from '../yard-histories.ts'

/** Queens and frames of eggs to have on hand, and who can give. What is asked stands in the address. */
export function supplies(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const foresight = deps.foresight ?? foresightOf()
  const histories = yardHistories(deps.store)

  app.get('/supplies', (c) => {
    const { frame } = c.var
    const ground = groundIn(deps.store, frame.today, frame.zone)
    const all = histories()
    const open = deps.store.colonies({ open: true })
    const known = new Map<History, Known>()
    for (const { id, plan } of open) {
      const history = all.get(id)
      if (history !== undefined) known.set(history, { id, history, plan })
    }
    const found = yardSupplies([...all.values()], frame.today, foresight.model(ground), {
      ahead: SUPPLIES_AHEAD,
      known: (history) => {
        const colony = known.get(history)
        return colony === undefined ? null : foresight.supplies(colony, ground)
      },
    })
    const { options, typed, problems } = orderIn(new URL(c.req.url).searchParams)
    return page(
      c,
      <SuppliesPage
        frame={frame}
        colonies={open.length}
        {...found}
        order={orderAdvice(found.forecast.queens, options)}
        options={options}
        form={{ typed, problems }}
        currency={deps.store.settings.get('currency')}
        pathOf={(tag) => `/colony/${encodeURIComponent(tag)}`}
      />,
      problems.length === 0 ? 200 : 422,
    )
  })
  return app
}
