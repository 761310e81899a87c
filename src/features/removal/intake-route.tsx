import { Hono } from 'hono'
import { v7 } from 'uuid'
import {
  type AppContext,
  type Env,
  formPage,
  idIn,
  type PageDeps,
  signedIn,
  submit,
  toColony,
  typedIn,
  unknownPage,
  withIds,
  withPhotos,
} from '../../app/index.ts'
import { addDays } from '../../days.ts'
import { draftOf, type FieldProblem, Fields, fieldsIn, one, type Typed, typedOf } from '../../forms/index.ts'
import type { Entry } from '../../journal/index.ts'
import {
  hasBegun,
  hasLostGo,
  isUnwritten,
  otherKind,
  sheetName,
  withMark,
  withoutGo,
} from '../../records/index.ts'
import { IntakePage, ownTypes, proposed } from '../entries/index.ts'
import { unmetWords } from './decide.ts'
import { WITHOUT_GO_FIELDS } from './fields.ts'
import { whoAndWhen } from './found-kept.ts'
import { heatToBees } from './heat.ts'
import { freshOf } from './not-saved.ts'
import { stampOf } from './sheet-handlers.ts'
import { sinceMark } from './since-mark.ts'
import { intakeFrom } from './to-intake.ts'
import { reckoningOf, sheetIn } from './view.ts'
import { showsIn } from './words.ts'

type Saved = NonNullable<ReturnType<typeof sheetIn>>

/** A box that came days after the work, another one on the day after, or one after they called again: of which opening it is has to be asked. */
function isOfLaterOpening({ last, colonies }: Saved, came: string): boolean {
  const {
    work: { on },
    callBacks = [],
  } = last.sheet
  const boxes = colonies.length
  if (on === undefined || came < on) return false
  const calledAgain = callBacks.some((b) => b.on >= on && b.on <= came)
  return came === on ? calledAgain : came > addDays(on, 1) || boxes > 0 || calledAgain
}

/** No bees come of a place where nothing was begun, or nothing since another day: what was done is written down first. */
const isEarly = ({ last, colonies }: Saved, today: string): boolean =>
  colonies.length === 0 && (!hasBegun(last.sheet) || isUnwritten(last.sheet, today))

/** Its “go” fell before the box was shut, or before this other box: why it was gone on with is asked. */
const isOnLostGo = ({ last, colonies }: Saved): boolean =>
  hasLostGo(last.sheet) && (last.sheet.work.boxedAt === undefined || colonies.length > 0)

/** What is unmet on a sheet now, in words. */
export function unmetOf(c: AppContext, deps: PageDeps, id: string): string[] {
  const last = deps.store.removals.get(id)?.last
  return last === undefined ? [] : unmetWords(reckoningOf(c, deps, last.sheet, id))
}

/** The box is in the yard whatever anybody says: it is kept, and the job marked, with a reason where one was tapped. */
function mark(c: AppContext, deps: PageDeps, saved: Saved, typed: Typed): void {
  const { id, last } = freshOf(deps, saved)
  const { raw } = fieldsIn(WITHOUT_GO_FIELDS, typed, c.var.frame.units, 'withoutGo.')
  const kind = otherKind(last.sheet, one(typed, 'removal.type'))
  const unmet = [...(kind === null ? [] : [kind]), ...unmetOf(c, deps, id)].slice(0, 40)
  const base = { ...whoAndWhen(c, deps), unmet }
  const said = withoutGo.safeParse({ ...raw, ...base })
  const marked = withMark(last.sheet, said.success ? said.data : base)
  deps.store.removals.save(id, last.version, marked, stampOf(c, deps))
}

/**
 * An intake filled from a removal sheet. The first box is logged under the sheet's own id, by the form every intake has,
 * so that it is linked even when a phone without signal saves it; another box of the same job is linked here.
 */
export function removalIntake(deps: PageDeps): Hono<Env> {
  const { store } = deps
  const app = new Hono<Env>()
  const adviceOf = (c: AppContext, saved: Saved): string[] =>
    heatToBees(saved.last.sheet, store.protocol().heatLimitC, showsIn(c.var.frame.units))
  const show = (c: AppContext, saved: Saved, typed: Typed, problems: FieldProblem[] = []) =>
    formPage(
      c,
      <IntakePage
        frame={c.var.frame}
        form={{ typed, problems }}
        draft={`${saved.path}/intake`}
        yards={store.yards().map((y) => y.yard)}
        types={ownTypes(store)}
        sheet={{
          name: sheetName(saved.last.sheet),
          advice: adviceOf(c, saved),
          path: saved.path,
          later: isOfLaterOpening(saved, one(typed, 'on')) ? saved.last.sheet.work.on : undefined,
          action: one(typed, 'id') === saved.id ? '/intake' : `${saved.path}/intake`,
          asked: isOnLostGo(saved) ? (
            <div class="notice notice-late">
              <p>
                <b>Its “go” does not stand any more.</b> The box is kept all the same, and the job marked.
              </p>
              <Fields
                form={{ typed, problems }}
                frame={c.var.frame}
                prefix="withoutGo."
                of={WITHOUT_GO_FIELDS}
                show={['why', 'words']}
              />
            </div>
          ) : undefined,
        }}
      />,
      problems.length > 0,
    )

  app.get('/removals/:id/intake', (c) => {
    const saved = sheetIn(c, deps)
    if (saved === null) return unknownPage(c)
    const { last, colonies } = saved
    const isMore =
      last.sheet.work.boxedAt === undefined &&
      sinceMark(reckoningOf(c, deps, last.sheet), last.sheet).length > 0
    const asksFirst = colonies.length === 0 && (isOnLostGo(saved) || isMore)
    if (asksFirst || isEarly(saved, c.var.frame.today)) return c.redirect(`${saved.path}/work#now`, 303)
    const { frame } = c.var
    const filled = intakeFrom(saved.last.sheet, adviceOf(c, saved))
    // The day it came to the yard is the day of the removal, as far as anybody has said.
    const day = saved.colonies.length > 0 ? frame.today : (saved.last.sheet.work.on ?? frame.today)
    const on = [day].filter((d) => d <= frame.today)
    const typed = typedOf({ ...filled, kind: 'intake' } as unknown as Entry, frame.units)
    const id = store.entry(saved.id) === null ? saved.id : v7()
    return show(c, saved, {
      ...proposed(store, frame.today),
      ...typed,
      on: on.length === 0 ? [frame.today] : on,
      id: [id],
    })
  })

  app.post('/removals/:id/intake', async (c) => {
    const saved = sheetIn(c, deps)
    if (saved === null) return unknownPage(c)
    const came = await withPhotos(c, deps, await typedIn(c))
    if (isEarly(saved, c.var.frame.today)) return c.redirect(`${saved.path}/work#now`, 303)
    const typed = withIds(came.typed, ['id'])
    const id = idIn(typed)
    const by = signedIn(c)
    const draft = draftOf('intake', typed, c.var.frame.units)
    draft.problems.push(...came.problems)
    const taken = one(typed, 'removal.removedOn') || one(typed, 'on')
    const { on } = saved.last.sheet.work
    // Its “go” was of that day; what is cut out later has a call, looks and a “go” of its own.
    if (on !== undefined && taken > on)
      draft.problems.push({
        field: 'removal.removedOn',
        message: `is after the day of this job (${on}): bees of a later day have a sheet of their own`,
      })
    else if (isOfLaterOpening(saved, one(typed, 'on')) && one(typed, 'thatOpening') === '')
      draft.problems.push({
        field: 'thatOpening',
        message:
          'is not said: it came days after the job, or they called again since. What was cut out later has a call, looks and a “go” of its own: begin a new sheet',
      })
    const result = await submit(deps, c.var.frame.today, by, [{ draft, id, colony: one(typed, 'colony') }])
    if (!result.ok) return show(c, saved, typed, result.problems)
    store.removals.link(saved.id, id, { savedAt: deps.clock().toISOString(), savedBy: by })
    if (isOnLostGo(saved) || otherKind(saved.last.sheet, one(typed, 'removal.type')) !== null)
      mark(c, deps, saved, typed)
    const made = store.colony(id)
    return made === null ? c.redirect(saved.path, 303) : toColony(c, made.summary, id)
  })
  return app
}
