import { Hono } from 'hono'
import {
  type AppContext,
  colonyIn,
  colonyPath,
  type Deps,
  type Env,
  page,
  streamed,
  unknownColony,
} from '../../app/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import { changeLine, changeOf, changesHeader } from './changes.ts'
import { ChangesPage } from './changes-page.tsx'

const PAGE = 20

/** Who entered, corrected and withdrew what, newest first: of the whole yard, or of one colony. */
export function changes(deps: Deps): Hono<Env> {
  const { store } = deps
  const app = new Hono<Env>()
  const colonyOf = (c: AppContext): ColonySummary | null => {
    const asked = (c.req.query('colony') ?? '').slice(0, 60)
    return asked === '' ? null : (store.colony(asked)?.summary ?? null)
  }

  const show = (c: AppContext, colony: ColonySummary | null) => {
    const n = Number(c.req.query('before'))
    const before = Number.isSafeInteger(n) && n > 0 ? n : undefined
    const rows = store.changes({ before, limit: PAGE + 1, colony: colony?.id })
    const shown = rows.slice(0, PAGE)
    return page(
      c,
      <ChangesPage
        frame={c.var.frame}
        colony={colony === null ? null : { tag: colony.tag, id: colony.id, path: colonyPath(colony) }}
        changes={shown.map((row) => ({ ...changeOf(row, store.entry), path: `/colony/${row.entry.colony}` }))}
        next={rows.length > PAGE ? (shown.at(-1)?.seq ?? null) : null}
      />,
    )
  }

  app.get('/changes', (c) => {
    const colony = colonyOf(c)
    return colony === null ? show(c, null) : c.redirect(`${colonyPath(colony)}/changes`, 303)
  })

  // One colony's has a path of its own, because more people may see it.
  app.get('/colony/:tag/changes', (c) => {
    const found = colonyIn(c, store)
    return found === null ? unknownColony(c, deps, c.req.param('tag')) : show(c, found.summary)
  })

  app.get('/changes/csv', (c) => {
    const name = `changes-${c.var.frame.today}.csv`
    return streamed(c, 'text/csv; charset=utf-8; header=present', name, lines(colonyOf(c)?.id))
  })

  function* lines(colony: string | undefined): Generator<string> {
    yield changesHeader()
    let before: number | undefined
    for (;;) {
      const rows = store.changes({ before, limit: 500, colony })
      for (const row of rows) yield changeLine(changeOf(row, store.entry))
      before = rows.at(-1)?.seq
      if (before === undefined || rows.length < 500) return
    }
  }
  return app
}
