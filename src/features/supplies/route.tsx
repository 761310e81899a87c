import { setTimeout } from 'node:timers/promises'
import { Hono } from 'hono'
import {
  type Deps,
  type Env,
  forecastCache,
  groundIn,
  type Histories,
  type Known,
  page,
  SUPPLIES_AHEAD,
  yardHistories,
} from '../../app/index.ts'
import { mappedInSlices } from '../../app/node.ts'
import { orderAdvice, type YardSupplies, yardSupplies } from '../../forecast/index.ts'
import type { History } from '../../journal/index.ts'
import type { Frame } from '../../parts/index.ts'
import { orderIn } from './order.ts'
import { SuppliesPage } from './page.tsx'

/** Colonies in the yard as forecasts want them, by their history. */
function knownIn(store: Deps['store'], all: Histories): Map<History, Known> {
  const known = new Map<History, Known>()
  for (const { id, plan } of store.colonies({ open: true })) {
    const history = all.get(id)
    if (history !== undefined) known.set(history, { id, history, plan })
  }
  return known
}

/** Milliseconds after the first page of a day: that page comes first. */
const AFTER_MS = 250

/** Of every colony's reckoning so many times as long is left to others: at most a tenth of the processor. */
const GIVING_WAY = 9

/** A larger yard is reckoned beside the requests, when it is asked for (src/node/reader). */
const MOST_WARMED = 60

/** Reckons every colony's needs when a day begins, so that the first look at Supplies does not wait for them; it gives way. */
export function supplyWarmer(deps: Deps): (frame: Frame) => void {
  const forecasts = deps.forecasts ?? forecastCache()
  const warm = async ({ today, zone }: Frame): Promise<void> => {
    const ground = groundIn(deps.store, today, zone)
    const open = deps.store.colonies({ open: true })
    if (open.length > MOST_WARMED) return
    // One colony after the other: reading every journal of the past at once would keep everybody waiting.
    for (const { id, plan } of open) {
      const began = performance.now()
      const history = deps.store.colony(id)?.history
      if (history !== undefined) forecasts.supplies({ id, history, plan }, ground)
      await setTimeout((performance.now() - began) * GIVING_WAY, undefined, { ref: false })
    }
  }
  return (frame) => {
    // Nothing hangs on it: where it fails (the database was closed meanwhile), the page reckons for itself.
    setTimeout(AFTER_MS, frame, { ref: false })
      .then(warm)
      .catch(() => undefined)
  }
}

/** What the yard may need from that day on; the first look of a day recomputes every colony. */
export function suppliesOn(deps: Deps): (frame: Frame) => Promise<YardSupplies & { colonies: number }> {
  const forecasts = deps.forecasts ?? forecastCache()
  const histories = yardHistories(deps.store)
  return async ({ today, zone }) => {
    const ground = groundIn(deps.store, today, zone)
    const all = histories()
    const known = knownIn(deps.store, all)
    // In slices, so that others are answered in between.
    await mappedInSlices([...known.values()], (colony) => forecasts.supplies(colony, ground))
    const found = yardSupplies([...all.values()], today, forecasts.model(ground), {
      ahead: SUPPLIES_AHEAD,
      known: (history) => {
        const colony = known.get(history)
        return colony === undefined ? null : forecasts.supplies(colony, ground)
      },
    })
    return { ...found, colonies: known.size }
  }
}

/** Queens and frames of eggs to have on hand, and who can give. What is asked stands in the address. */
export function supplies(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const reckon = suppliesOn(deps)

  app.get('/supplies', async (c) => {
    const { frame } = c.var
    const found = await reckon(frame)
    const { options, typed, problems } = orderIn(new URL(c.req.url).searchParams)
    return page(
      c,
      <SuppliesPage
        frame={frame}
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
