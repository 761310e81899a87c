import { Hono } from 'hono'
import { v7 } from 'uuid'
import {
  type AppContext,
  colonyIn,
  colonyPath,
  type Env,
  formPage,
  idIn,
  onward,
  type PageDeps,
  signedIn,
  submit,
  thenOf,
  typedIn,
  unknownColony,
  withIds,
  withPhotos,
} from '../../app/index.ts'
import type { FieldProblem, Typed } from '../../forms/index.ts'
import type { History } from '../../journal/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import { timeIn } from '../../time-of-day.ts'
import { isHeld, toDoOf } from '../../words/index.ts'
import { idField, isEmptyVisit, NOTHING, VISIT_PREFIXES, visitDrafts } from './visit.ts'
import { VisitPage } from './visit-page.tsx'

/** Recording a visit. */
export function visit(deps: PageDeps): Hono<Env> {
  const { store } = deps
  const app = new Hono<Env>()
  type Colony = NonNullable<ReturnType<typeof colonyIn>>
  const show = (c: AppContext, colony: Colony, typed: Typed, problems: FieldProblem[] = []) =>
    formPage(
      c,
      <VisitPage
        frame={c.var.frame}
        form={{ typed, problems }}
        summary={colony.summary}
        path={colonyPath(colony.summary)}
        then={thenOf(c)}
        liveData={liveData(c, deps, colony)}
        donors={store
          .colonies({ open: true })
          .filter(
            (s) =>
              s.phase === 'queenright' &&
              s.action !== 'call-inspector' &&
              s.plan.exposed === null &&
              s.id !== colony.summary.id,
          )
          .map((s) => s.tag)}
      />,
      problems.length > 0,
    )

  app.get('/colony/:tag/visit', (c) => {
    const colony = colonyIn(c, store)
    if (colony === null) return unknownColony(c, deps, c.req.param('tag'))
    // Where the plan says to leave the lid on, somebody who comes all the same has most likely looked from outside.
    const toDo = toDoOf(colony.summary.plan)
    const lidOn = c.req.query('lid') === 'on' || toDo === null || toDo.lidOn || isHeld(colony.summary.plan)
    const ids = Object.fromEntries(VISIT_PREFIXES.map((p) => [idField(p), [v7()]]))
    // On the round one writes at the box: the time tells how long boxes take.
    const at = thenOf(c) === null ? {} : { at: [timeIn(c.var.frame.zone, deps.clock())] }
    return show(c, colony, { ...ids, ...at, on: [c.var.frame.today], opened: [lidOn ? 'no' : 'yes'] })
  })

  app.post('/colony/:tag/visit', async (c) => {
    const colony = colonyIn(c, store)
    if (colony === null) return unknownColony(c, deps, c.req.param('tag'))
    const came = await withPhotos(c, deps, await typedIn(c))
    const typed = withIds(came.typed, VISIT_PREFIXES.map(idField))
    const drafts = visitDrafts(typed, c.var.frame.units)
    if (isEmptyVisit(typed, drafts) && came.problems.length === 0)
      return show(c, colony, typed, [{ field: NOTHING, message: c.var.frame.words.record.nothingNoted }])
    const sent = drafts.map((draft) => ({
      draft,
      id: idIn(typed, idField(draft.prefix)),
      colony: colony.summary.id,
    }))
    sent[0]?.draft.problems.push(...came.problems)
    const saved = await submit(deps, c.var.frame.today, signedIn(c), sent)
    if (!saved.ok) return show(c, colony, typed, saved.problems)
    return onward(c, colony.summary, saved.ids[0] ?? '')
  })
  return app
}

/** The history without what is private, for the core that runs in the phone. */
function liveData(
  c: AppContext,
  deps: PageDeps,
  { history, summary }: { history: History; summary: ColonySummary },
): string {
  const { site: _site, ...removal } = history.intake.removal
  const intake = { ...history.intake, removal }
  const entries = history.entries.map((e) => (e.kind === 'intake' ? intake : e))
  const { today, units } = c.var.frame
  const { exposed: exposure } = summary.plan
  return JSON.stringify({
    tag: history.tag,
    entries,
    today,
    units,
    protocol: deps.store.protocol(),
    exposure,
  })
}
