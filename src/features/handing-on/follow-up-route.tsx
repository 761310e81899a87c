import { Hono } from 'hono'
import {
  type AppContext,
  colonyIn,
  colonyPath,
  type Deps,
  type Env,
  formPage,
  signedIn,
  typedIn,
  unknownColony,
} from '../../app/index.ts'
import type { FieldProblem, Typed } from '../../forms/index.ts'
import { asksForFollowUp, type MoveRecord } from '../../records/index.ts'
import { dayWords } from '../../words/index.ts'
import { changeRecord } from './change-record.ts'
import { followUpFrom, followUpWords, withFollowUp } from './follow-up-form.ts'
import { FollowUpPage } from './follow-up-page.tsx'

/** How a colony that moved out fares: shown, one more answer saved, or noted that the keeper was asked. */
export function followUp(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const { records } = deps.store.after

  const goneIn = (c: AppContext) => {
    const colony = colonyIn(c, deps.store)
    const summary = colony?.summary
    return summary?.outcome === 'moved-out' && summary.closedOn !== null
      ? { summary, left: summary.closedOn }
      : null
  }
  const show = (c: AppContext, typed: Typed, problems: FieldProblem[]) => {
    const gone = goneIn(c)
    if (gone === null) return unknownColony(c, deps, c.req.param('tag') ?? '')
    const { today } = c.var.frame
    const record: MoveRecord = records.of(gone.summary.id)[0]?.record ?? {}
    return formPage(
      c,
      <FollowUpPage
        frame={c.var.frame}
        form={{ typed, problems }}
        tag={gone.summary.tag}
        path={colonyPath(gone.summary)}
        left={`Moved out ${dayWords(gone.left, today)}.`}
        told={(record.followUps ?? []).map((f) => followUpWords(f, (day) => dayWords(day, today)))}
        buyer={record.buyer ?? {}}
        mayAsk={asksForFollowUp(
          { movedOutOn: gone.left, followUps: record.followUps ?? [] },
          record.askedOn !== undefined,
          today,
        )}
      />,
      problems.length > 0,
    )
  }
  const save = (c: AppContext, typed: Typed, change: (record: MoveRecord) => MoveRecord) => {
    const gone = goneIn(c)
    if (gone === null) return unknownColony(c, deps, c.req.param('tag') ?? '')
    const stamp = { savedAt: deps.clock().toISOString(), savedBy: signedIn(c) }
    const problems = changeRecord(deps.store, gone.summary.id, change, stamp)
    return problems.length > 0
      ? show(c, typed, problems)
      : c.redirect(`${colonyPath(gone.summary)}/follow-up`, 303)
  }

  app.get('/colony/:tag/follow-up', (c) => show(c, { on: [c.var.frame.today] }, []))
  app.post('/colony/:tag/follow-up', async (c) => {
    const gone = goneIn(c)
    if (gone === null) return unknownColony(c, deps, c.req.param('tag'))
    const { today, units } = c.var.frame
    const typed = await typedIn(c)
    const read = followUpFrom(typed, { by: signedIn(c), left: gone.left, today, units })
    return read.ok
      ? save(c, typed, (record) => withFollowUp(record, read.told))
      : show(c, typed, read.problems)
  })
  app.post('/colony/:tag/follow-up/asked', (c) =>
    save(c, {}, (record) => ({ ...record, askedOn: c.var.frame.today })),
  )
  return app
}
