import { Hono } from 'hono'
import { v7 } from 'uuid'
import {
  type AppContext,
  colonyPath,
  type Env,
  idIn,
  journalLines,
  type PageDeps,
  page,
  signedIn,
  submit,
  toColony,
  typedIn,
  unknownEntry,
  withIds,
  withPhotos,
} from '../../app/index.ts'
import { correctionOf, draftOf, type FieldProblem, one, type Typed, typedOf } from '../../forms/index.ts'
import type { StandingEntry } from '../../journal/index.ts'
import type { ColonySummary, TaggedRow } from '../../store/index.ts'
import { CorrectPage, WithdrawPage } from './correct-page.tsx'
import { ownTypes } from './intake-route.tsx'

interface Target {
  entry: StandingEntry
  row: TaggedRow
  /** Null when the colony's intake was taken back. */
  summary: ColonySummary | null
  path: string
}

/** Corrections and withdrawals: a new entry takes the place of an old one, which stays in the journal. */
export function corrections(deps: PageDeps): Hono<Env> {
  const { store } = deps
  const app = new Hono<Env>()

  /** The entry of a path, when it can still be corrected; its latest correction when it was corrected already. */
  const target = async (c: AppContext): Promise<Target | Response> => {
    const row = store.entry(c.req.param('id') ?? '')
    if (row === null || row.entry.kind === 'withdrawal') return unknownEntry(c)
    const colony = store.colony(row.entry.colony)
    const path = colony === null ? '/yard' : colonyPath(colony.summary)
    const line = colony && journalLines(colony.journal, c.var.frame).find((l) => l.entry.id === row.entry.id)
    if (line?.superseded) return c.redirect(`${path}#e-${row.entry.id}`, 303)
    return { entry: row.entry, row, summary: colony?.summary ?? null, path }
  }

  const form = (c: AppContext, t: Target, typed: Typed, problems: FieldProblem[] = []) =>
    page(
      c,
      <CorrectPage
        frame={c.var.frame}
        form={{ typed, problems }}
        entry={t.entry}
        tag={t.row.tag}
        path={t.path}
        yards={store.yards().map((y) => y.yard)}
        types={ownTypes(store)}
        tags={store.colonies({ open: true }).map((s) => s.tag)}
      />,
      problems.length === 0 ? 200 : 422,
    )

  app.get('/entry/:id/correct', async (c) => {
    const t = await target(c)
    if (t instanceof Response) return t
    const tag = t.entry.kind === 'intake' ? { colony: [t.row.tag] } : {}
    return form(c, t, { ...typedOf(t.entry, c.var.frame.units), ...tag, id: [v7()] })
  })

  app.post('/entry/:id/correct', async (c) => {
    const t = await target(c)
    if (t instanceof Response) return t
    const came = await withPhotos(c, deps, await typedIn(c))
    const typed = withIds(came.typed, ['id'])
    const draft = correctionOf(t.entry, typed, c.var.frame.units)
    draft.problems.push(...came.problems)
    const colony = t.entry.kind === 'intake' ? one(typed, 'colony') : t.entry.colony
    const id = idIn(typed)
    const sent = [{ draft, id, colony, replaces: t.entry.id }]
    const saved = await submit(deps, c.var.frame.today, signedIn(c), sent)
    if (!saved.ok) return form(c, t, typed, saved.problems)
    return back(c, t, id)
  })

  app.get('/entry/:id/withdraw', async (c) => {
    const t = await target(c)
    if (t instanceof Response) return t
    return withdraw(c, t, { id: [v7()] })
  })

  const withdraw = (c: AppContext, t: Target, typed: Typed, problems: FieldProblem[] = []) =>
    page(
      c,
      <WithdrawPage
        frame={c.var.frame}
        form={{ typed, problems }}
        entry={t.entry}
        tag={t.row.tag}
        path={t.path}
      />,
      problems.length === 0 ? 200 : 422,
    )

  app.post('/entry/:id/withdraw', async (c) => {
    const t = await target(c)
    if (t instanceof Response) return t
    const typed = withIds(await typedIn(c), ['id'])
    const id = idIn(typed)
    const { today, units } = c.var.frame
    const draft = draftOf('withdrawal', { ...typed, on: [today] }, units)
    const sent = [{ draft, id, colony: t.entry.colony, replaces: t.entry.id }]
    const saved = await submit(deps, today, signedIn(c), sent)
    return saved.ok ? back(c, t, id) : withdraw(c, t, typed, saved.problems)
  })

  /** To the colony, or to the yard when its intake itself was taken back. */
  const back = (c: AppContext, t: Target, id: string): Response => {
    const colony = store.colony(t.entry.colony)
    return colony === null ? c.redirect('/yard', 303) : toColony(c, colony.summary, id)
  }
  return app
}
