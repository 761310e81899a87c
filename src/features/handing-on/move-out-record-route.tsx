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
import { type FieldProblem, one, type Typed } from '../../forms/index.ts'
import { beforeItLeaves, instantWords } from '../../words/index.ts'
import { atRow, recordDraft, typedRecord } from './move-out-record-form.ts'
import { MoveOutRecordPage } from './move-out-record-page.tsx'

/** The private record of a move: shown, saved as a new version, an old version looked at, erased. */
export function moveOutRecord(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const { records } = deps.store.after

  const show = (c: AppContext, typed: Typed, problems: FieldProblem[], old = false) => {
    const colony = colonyIn(c, deps.store)
    if (colony === null) return unknownColony(c, deps, c.req.param('tag') ?? '')
    const { zone, today } = c.var.frame
    return formPage(
      c,
      <MoveOutRecordPage
        frame={c.var.frame}
        form={{ typed, problems }}
        summary={colony.summary}
        path={colonyPath(colony.summary)}
        versions={records.of(colony.summary.id).map((v) => ({
          version: v.version,
          savedAt: instantWords(v.savedAt, zone, today),
          savedBy: v.savedBy,
        }))}
        old={old}
        saved={c.req.query('saved') === '1'}
        currency={deps.store.settings.get('currency')}
        before={
          colony.summary.outcome === null
            ? beforeItLeaves(
                colony.summary.plan,
                records.of(colony.summary.id)[0]?.record.permits ?? [],
                today,
              )
            : []
        }
      />,
      problems.length > 0,
    )
  }

  app.get('/colony/:tag/move-record', (c) => {
    const colony = colonyIn(c, deps.store)
    if (colony === null) return unknownColony(c, deps, c.req.param('tag'))
    const versions = records.of(colony.summary.id)
    const asked = versions.find((v) => String(v.version) === c.req.query('version'))
    const shown = asked ?? versions[0]
    const base = [String(versions[0]?.version ?? 0)]
    if (shown === undefined) return show(c, { base, yard: [destinationOf(colony.history.outcome)] }, [])
    const typed = typedRecord(shown.record, c.var.frame.units)
    return show(c, { ...typed, base }, [], shown !== versions[0])
  })

  app.post('/colony/:tag/move-record', async (c) => {
    const colony = colonyIn(c, deps.store)
    if (colony === null) return unknownColony(c, deps, c.req.param('tag'))
    const typed = await typedIn(c)
    const draft = recordDraft(typed, c.var.frame.units)
    if (draft.problems.length > 0) return show(c, typed, draft.problems)
    const base = Number(one(typed, 'base'))
    // The form asks neither what was told since nor whether somebody was asked.
    const { followUps, askedOn } = records.of(colony.summary.id)[0]?.record ?? {}
    const kept = { ...(followUps && { followUps }), ...(askedOn && { askedOn }) }
    const content = { ...draft.raw, ...kept }
    const result = records.save(colony.summary.id, Number.isSafeInteger(base) ? base : 0, content, {
      savedAt: deps.clock().toISOString(),
      savedBy: signedIn(c),
    })
    if (result.ok) return c.redirect(`${colonyPath(colony.summary)}/move-record?saved=1`, 303)
    if ('problems' in result)
      return show(
        c,
        typed,
        result.problems.map(({ field, message }) => atRow({ field, message }, draft.rows)),
      )
    // What was typed stays; saving once more puts it over the newer version, which is kept below it.
    const { newer } = result
    const message = `${newer.savedBy} saved this record meanwhile, as version ${newer.version}. Look at it below; saving again puts yours on top of it.`
    return show(c, { ...typed, base: [String(newer.version)] }, [{ field: '', message }])
  })

  app.post('/colony/:tag/move-record/erase', (c) => {
    const colony = colonyIn(c, deps.store)
    if (colony === null) return unknownColony(c, deps, c.req.param('tag'))
    records.erase(colony.summary.id)
    deps.store.clean()
    return c.redirect(colonyPath(colony.summary), 303)
  })
  return app
}

/** Where the journal says it went, to begin with. */
const destinationOf = (outcome: { destination?: string | undefined } | null): string =>
  outcome?.destination ?? ''
