import { Hono } from 'hono'
import { v7 } from 'uuid'
import {
  type AppContext,
  colonyPath,
  type Env,
  formPage,
  type PageDeps,
  signedIn,
  toColony,
  typedIn,
  unknownEntry,
  withIds,
} from '../../app/index.ts'
import { type FieldProblem, many, one, type Typed } from '../../forms/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import { problemWords } from '../../words/index.ts'
import { isMovable, type Movable, movesOf, sameVisit } from './other-box.ts'
import { OtherBoxPage } from './other-box-page.tsx'

interface Wrong {
  /** What can go along; the one that was opened first. */
  entries: Movable[]
  summary: ColonySummary
}

/** Moving what was written down at the wrong box. */
export function otherBox(deps: PageDeps): Hono<Env> {
  const { store } = deps
  const app = new Hono<Env>()

  const wrong = (c: AppContext): Wrong | null => {
    const row = store.entry(c.req.param('id') ?? '')
    const colony = row === null ? null : store.colony(row.entry.colony)
    const entry = row?.entry
    if (entry === undefined || colony === null || entry.kind === 'withdrawal' || !isMovable(entry))
      return null
    return { entries: sameVisit(colony.journal, entry), summary: colony.summary }
  }

  const show = (c: AppContext, { entries, summary }: Wrong, typed: Typed, problems: FieldProblem[] = []) =>
    formPage(
      c,
      <OtherBoxPage
        frame={c.var.frame}
        form={{ typed, problems }}
        entries={entries}
        tag={summary.tag}
        path={colonyPath(summary)}
        tags={store.colonies({ open: true }).map((s) => s.tag)}
        ids={idNames(entries)}
      />,
      problems.length > 0,
    )

  app.get('/entry/:id/other-box', (c) => {
    const found = wrong(c)
    if (found === null) return unknownEntry(c)
    const ids = Object.fromEntries(idNames(found.entries).map((name) => [name, [v7()]]))
    return show(c, found, { ...ids, along: found.entries.map((e) => e.id) })
  })

  app.post('/entry/:id/other-box', async (c) => {
    const found = wrong(c)
    if (found === null) return unknownEntry(c)
    const typed = withIds(await typedIn(c), idNames(found.entries))
    const to = store.colony(one(typed, 'to').trim())
    const ticked = many(typed, 'along')
    const entries = found.entries.filter((e) => ticked.includes(e.id))
    const problems = problemsOf(found, to?.summary ?? null, one(typed, 'to'), entries)
    if (to === null || problems.length > 0) return show(c, found, typed, problems)
    const by = signedIn(c)
    const { today, words } = c.var.frame
    const reason = words.corrections.otherBox.reason(to.summary.tag)
    const idOf = (name: string): string => one(typed, `id.${name}`)
    const moves = movesOf({ entries, to: to.summary, today, by, reason, idOf })
    const saved = store.append(moves, { today, recordedAt: deps.clock().toISOString(), recordedBy: by })
    const first = entries[0]
    if (saved.ok && first !== undefined) return toColony(c, to.summary, idOf(`new.${first.id}`))
    const said = saved.ok ? [] : saved.problems.map((p) => problemWords(p.message, today))
    return show(
      c,
      found,
      typed,
      [...new Set(said)].map((message) => ({ field: '', message: `At ${to.summary.tag}: ${message}` })),
    )
  })
  return app
}

const idNames = (entries: readonly Movable[]): string[] =>
  entries.flatMap((e) => [`id.back.${e.id}`, `id.new.${e.id}`])

function problemsOf(
  { summary }: Wrong,
  to: ColonySummary | null,
  typed: string,
  entries: readonly Movable[],
): FieldProblem[] {
  if (typed.trim() === '') return [{ field: 'to', message: 'is missing: type the tag of the right box' }]
  if (to === null) return [{ field: 'to', message: `“${typed.slice(0, 40)}” is no box of this yard` }]
  if (to.id === summary.id) return [{ field: 'to', message: `is ${summary.tag} itself` }]
  return entries.length === 0 ? [{ field: 'along', message: 'is missing: tap what goes there' }] : []
}
