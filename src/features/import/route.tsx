import { Hono } from 'hono'
import {
  type AppContext,
  type Deps,
  type Env,
  formIn,
  page,
  typedIn,
  unknownPage,
  viewerOf,
} from '../../app/index.ts'
import { rowOf, writeColonies } from './colonies-csv.ts'
import type { Fields } from './form.ts'
import { ColoniesPage, type ImportRowShown } from './page.tsx'
import { step } from './steps.tsx'
import { decoded } from './text.ts'
import { importState, withdrawalsOf } from './undo.ts'
import { UndoPage } from './undo-page.tsx'

/** Colonies in and out as spreadsheets. */
export function coloniesImport(deps: Deps): Hono<Env> {
  const { store } = deps
  const app = new Hono<Env>()

  const start = (c: AppContext, problems: string[] = [], pasted = '') => {
    const notes = store.imports.list()
    const named = (name: string) => notes.find((n) => n.id === c.req.query(name)) ?? null
    return page(
      c,
      <ColoniesPage
        frame={c.var.frame}
        imports={notes.map((n): ImportRowShown => ({ ...n, left: coloniesLeft(n.id) }))}
        taken={named('taken')}
        undone={named('undone')}
        problems={problems}
        pasted={pasted}
      />,
      problems.length > 0 ? 422 : 200,
    )
  }

  /** Colonies of an import that are in the book. */
  const coloniesLeft = (id: string): number =>
    new Set(store.imports.entries(id).filter((entry) => store.colony(entry) !== null)).size

  app.get('/data/colonies', (c) => start(c))

  app.post('/data/colonies', async (c) => {
    const posted = await postedIn(c)
    const go = posted.fields.get('go') ?? ''
    if (go !== 'read') return step(c, deps, go, posted.fields)
    const pasted = posted.fields.get('pasted') ?? ''
    if (posted.bytes === null && pasted.trim() === '') return start(c, ['Choose a file, or paste the cells.'])
    const read = posted.bytes === null ? { ok: true as const, text: pasted } : decoded(posted.bytes)
    if (!read.ok) return start(c, read.problems, pasted)
    const source = posted.bytes === null ? 'a pasted table' : posted.name
    return step(
      c,
      deps,
      go,
      new Map([
        ['text', read.text],
        ['source', source],
      ]),
    )
  })

  app.get('/data/colonies/colonies.csv', (c) =>
    csv(
      c,
      `colonies-${c.var.frame.today}.csv`,
      [...store.histories()].map(({ history }) => rowOf(history)),
    ),
  )
  app.get('/data/colonies/empty.csv', (c) => csv(c, 'colonies-empty.csv', []))

  app.get('/data/colonies/undo', (c) => {
    const state = importState(store, c.req.query('import') ?? '')
    return state === null
      ? unknownPage(c)
      : page(c, <UndoPage frame={c.var.frame} state={state} problems={[]} />)
  })

  app.post('/data/colonies/undo', async (c) => {
    const id = (await typedIn(c)).import?.at(-1) ?? ''
    const state = importState(store, id)
    if (state === null) return unknownPage(c)
    if (state.onTop.length > 0)
      return page(c, <UndoPage frame={c.var.frame} state={state} problems={[]} />, 409)
    const by = viewerOf(c).name
    const { today } = c.var.frame
    const result = store.append(withdrawalsOf(state, { by, today }), {
      today,
      recordedAt: deps.clock().toISOString(),
      recordedBy: by,
    })
    if (result.ok) return c.redirect(`/data/colonies?undone=${id}`, 303)
    const problems = result.problems.map((p) => p.message)
    return page(c, <UndoPage frame={c.var.frame} state={state} problems={problems} />, 422)
  })
  return app
}

function csv(c: AppContext, name: string, rows: Parameters<typeof writeColonies>[0]): Response {
  c.header('Content-Type', 'text/csv; charset=utf-8; header=present')
  c.header('Content-Disposition', `attachment; filename="${name}"`)
  c.header('Cache-Control', 'no-store')
  return c.body(writeColonies(rows))
}

interface Posted {
  fields: Fields
  /** Of the chosen file; null when none was chosen. */
  bytes: Uint8Array | null
  name: string
}

/** A file's name as it is shown: without signs that cannot be seen. */
const shownName = (name: string): string =>
  name
    .replaceAll(/[\p{Cc}\p{Cf}]/gu, '')
    .trim()
    .slice(0, 100) || 'a file'

/** The whole form, its texts uncut; nothing when the body is no form. */
async function postedIn(c: AppContext): Promise<Posted> {
  const fields = new Map<string, string>()
  const posted: Posted = { fields, bytes: null, name: '' }
  for (const [name, value] of (await formIn(c)) ?? [])
    if (typeof value === 'string') fields.set(name, value)
    else if (name === 'file' && value.size > 0) {
      posted.bytes = new Uint8Array(await value.arrayBuffer())
      posted.name = shownName(value.name)
    }
  return posted
}
