import { Hono } from 'hono'
import { type Deps, type Env, page } from '../../app/index.ts'
import { originOf } from '../../app/node.ts'
import { qrCode } from '../../parts/index.ts'
import { boxAddress, originTyped } from './labels.ts'
import { LabelsPage } from './labels-page.tsx'
import { SIZES, usualSize } from './sizes.ts'

/** Stand labels, to be printed. */
export function labels(deps: Deps): Hono<Env> {
  const { store } = deps
  const app = new Hono<Env>()
  app.get('/labels', async (c) => {
    const yards = store.yards().filter((y) => y.open > 0)
    const yard = yards.find((y) => y.yard === c.req.query('yard'))?.yard ?? null
    const asked = c.req.query('address')
    const typed = asked === undefined || asked.trim() === '' ? null : asked
    const good = typed === null ? null : originTyped(typed)
    const origin = good ?? originOf(c, deps.outside)
    const colonies = store.colonies({ open: true, ...(yard === null ? {} : { yard }) })
    return page(
      c,
      <LabelsPage
        frame={c.var.frame}
        yard={yard}
        yards={yards.map((y) => y.yard)}
        size={SIZES.find((s) => s === c.req.query('size')) ?? usualSize(c.var.frame.units.temperature)}
        origin={origin}
        refused={typed !== null && good === null ? typed : null}
        labels={colonies.map((s) => {
          const address = boxAddress(origin, s.tag)
          return { tag: s.tag, yard: s.yard, stand: s.stand, address, code: qrCode(address) }
        })}
      />,
    )
  })
  return app
}
