import { Hono } from 'hono'
import { type Deps, type Env, type Histories, page, typedIn, yardHistories } from '../../app/index.ts'
import { inSlices, remakerOf } from '../../app/node.ts'
import { calibrating, type Learned, learning, type OwnCalibration } from '../../forecast/index.ts'
import { one } from '../../forms/index.ts'
import type { History } from '../../journal/index.ts'
import { ratesIn } from '../../store/index.ts'
import { RatesPage } from './page.tsx'

/** What the odds rest on: the rates with their sources, the yard's own beside them, and how far the odds can be trusted. */
export function rates(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const { settings, protocols } = deps.store
  const remaker = remakerOf(deps.store, (error) => deps.report(error, 'making plans again'))
  const histories = yardHistories(deps.store)
  let kept: { key: string; learned: Promise<Learned> } | null = null

  /** Read again only when a colony has closed, or an entry of a closed one was corrected. */
  const learned = (): Promise<Learned> => {
    const all = histories()
    const key = keyOf(all)
    if (kept?.key !== key) kept = { key, learned: inSlices(learning([...all.values()])) }
    return kept.learned
  }

  let held: { key: string; found: Promise<OwnCalibration> } | null = null

  /** Read again when a book or the rates have changed. */
  const calibration = (): Promise<OwnCalibration> => {
    const [all, own] = [histories(), ratesIn(settings)]
    const key = `${JSON.stringify(own)} ${[...all].map(entriesKey).join()}`
    if (held?.key !== key) held = { key, found: inSlices(calibrating([...all.values()], own)) }
    return held.found
  }

  app.get('/rates', async (c) =>
    page(
      c,
      <RatesPage
        frame={c.var.frame}
        learned={await learned()}
        calibration={await calibration()}
        own={settings.get('ownRates')}
        saved={c.req.query('saved') === '1'}
      />,
    ),
  )

  app.post('/rates/use', async (c) => {
    const use = one(await typedIn(c), 'use')
    if (use === 'default') protocols.choose('ownRates', null)
    if (use === 'own') {
      const { table, colonies } = await learned()
      const values = Object.fromEntries(table.map((l) => [l.name, l.own]))
      protocols.choose('ownRates', { values, colonies, on: c.var.frame.today })
    }
    remaker.start()
    return c.redirect(use === 'own' || use === 'default' ? '/rates?saved=1' : '/rates', 303)
  })
  return app
}

const entriesKey = ([id, h]: [string, History]): string =>
  `${id} ${h.entries.length} ${h.entries.at(-1)?.id ?? ''}`

const keyOf = (all: Histories): string =>
  [...all]
    .filter(([, h]) => h.outcome !== null)
    .map(entriesKey)
    .join()
