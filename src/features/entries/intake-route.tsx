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
  withIds,
  withPhotos,
} from '../../app/index.ts'
import { draftOf, type FieldProblem, one, type Typed } from '../../forms/index.ts'
import {
  hasBegun,
  hasLostGo,
  isUnwritten,
  mayBeCutAgain,
  mayBeOf,
  otherKind,
  sheetName,
  withMark,
} from '../../records/index.ts'
import type { Repository } from '../../store/index.ts'
import { timeIn } from '../../time-of-day.ts'
import { IntakePage, type OpenJob } from './intake-page.tsx'
import { freeStand, nextTag } from './propose.ts'

/** Logging an intake. `unmetOf`: what is unmet on a removal sheet now, in words. */
export function intake(
  deps: PageDeps,
  unmetOf: (c: AppContext, deps: PageDeps, job: string) => string[],
): Hono<Env> {
  const { store } = deps
  const app = new Hono<Env>()
  const show = (c: AppContext, typed: Typed, problems: FieldProblem[] = []) =>
    formPage(
      c,
      <IntakePage
        frame={c.var.frame}
        form={{ typed, problems }}
        draft={draftOfJob(store, one(typed, 'id'))}
        jobs={jobsLike(store, typed, c.var.frame.today)}
        yards={store.yards().map((y) => y.yard)}
        types={ownTypes(store)}
      />,
      problems.length > 0,
    )

  app.get('/intake', (c) => show(c, proposed(store, c.var.frame.today)))

  app.post('/intake', async (c) => {
    const came = await withPhotos(c, deps, await typedIn(c))
    const typed = withIds(came.typed, ['id'])
    const own = store.removals.get(one(typed, 'id'))
    // No bees come of a job where nothing was begun: what was done is written down first.
    const unsaid = own !== null && own.colonies.length === 0 && own.last.sheet
    if (unsaid && (!hasBegun(unsaid) || isUnwritten(unsaid, c.var.frame.today)))
      return c.redirect(`${REMOVALS}/${one(typed, 'id')}/work#now`, 303)
    const draft = draftOf('intake', typed, c.var.frame.units)
    draft.problems.push(...came.problems)
    const id = idIn(typed)
    if (own === null && one(typed, 'otherJob') === '' && jobsLike(store, typed, c.var.frame.today).length > 0)
      draft.problems.push({
        field: 'otherJob',
        message:
          'is not said: a removal sheet is open for bees like these. Log them from it, or tap that they are others',
      })
    const saved = await submit(deps, c.var.frame.today, signedIn(c), [
      { draft, id, colony: one(typed, 'colony') },
    ])
    if (!saved.ok) return show(c, typed, saved.problems)
    const kind = unsaid ? otherKind(unsaid, one(typed, 'removal.type')) : null
    const lost = unsaid && unsaid.work.boxedAt === undefined && hasLostGo(unsaid)
    const unmet = (): string[] => [...(kind === null ? [] : [kind]), ...unmetOf(c, deps, one(typed, 'id'))]
    if (lost || kind !== null) markLost(c, deps, one(typed, 'id'), unmet().slice(0, 40))
    const made = store.colony(id)
    return made === null ? c.redirect('/yard', 303) : toColony(c, made.summary, id)
  })
  return app
}

/** The bees are in the yard: they are kept, and the job whose “go” fell before they were boxed is marked. */
function markLost(c: AppContext, deps: PageDeps, job: string, unmet: string[]): void {
  const last = deps.store.removals.get(job)?.last
  if (last === undefined) return
  const { zone, today } = c.var.frame
  const [by, now] = [signedIn(c), deps.clock()]
  const marked = withMark(last.sheet, { by, on: today, at: timeIn(zone, now), unmet })
  deps.store.removals.save(job, last.version, marked, { savedAt: now.toISOString(), savedBy: by })
}

const REMOVALS = '/removals'

/** What was typed for the box of one job is not put back into the form of another. */
const draftOfJob = (store: Repository, id: string): string | undefined =>
  store.removals.get(id) === null ? undefined : `${REMOVALS}/${id}/intake`

/** Open jobs that these bees may be of: an intake beside its sheet leaves the sheet open, and nobody asked what was unmet there. */
function jobsLike(store: Repository, typed: Typed, today: string): OpenJob[] {
  const bees = {
    today,
    days: [one(typed, 'on'), one(typed, 'removal.removedOn')].filter((day) => day !== ''),
    type: one(typed, 'removal.type'),
    site: one(typed, 'removal.site'),
  }
  return store.removals
    .list()
    .filter(({ sheet, colonies }) => (colonies.length === 0 ? mayBeOf : mayBeCutAgain)(sheet, bees))
    .map(({ id, sheet, colonies }) => {
      const named = [sheetName(sheet), sheet.job.address].filter((x, i, all) => x && all.indexOf(x) === i)
      const done = colonies.length > 0
      return {
        path: `${REMOVALS}/${id}${!done && hasBegun(sheet) ? '/intake' : '#now'}`,
        name: `${named.join(', ')}${done ? ': done before. What was cut out again has a call, looks and a sheet of its own' : ''}`,
      }
    })
}

/** The day is today, the yard the one used last. */
function blank(store: Repository, today: string): Typed {
  const last = store.changes({ limit: 50 }).find((r) => r.entry.kind === 'intake')
  return {
    id: [v7()],
    on: [today],
    ...(last?.entry.kind === 'intake' ? { yard: [last.entry.yard] } : {}),
  }
}

/** As blank, with the next tag and a free stand proposed. */
export function proposed(store: Repository, today: string): Typed {
  const typed = blank(store, today)
  const open = store.colonies({ open: true })
  const latest = open
    .toSorted((a, b) => a.intakeOn.localeCompare(b.intakeOn) || a.id.localeCompare(b.id))
    .at(-1)
  const [tag, stand] = [nextTag(open, latest?.tag ?? null), freeStand(open, one(typed, 'yard'))]
  return { ...typed, ...(tag === '' ? {} : { colony: [tag] }), ...(stand === '' ? {} : { stand: [stand] }) }
}

/** Removal types that this yard uses beside the shipped ones. */
export const ownTypes = (store: Repository): string[] => [
  ...new Set([...store.settings.get('removalTypes'), ...store.removalTypes()]),
]
