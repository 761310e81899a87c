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
import type { Repository } from '../../store/index.ts'
import { IntakePage } from './intake-page.tsx'
import { freeStand, nextTag } from './propose.ts'

/** Logging an intake. */
export function intake(deps: PageDeps): Hono<Env> {
  const { store } = deps
  const app = new Hono<Env>()
  const show = (c: AppContext, typed: Typed, problems: FieldProblem[] = []) =>
    formPage(
      c,
      <IntakePage
        frame={c.var.frame}
        form={{ typed, problems }}
        yards={store.yards().map((y) => y.yard)}
        types={ownTypes(store)}
      />,
      problems.length > 0,
    )

  app.get('/intake', (c) => show(c, proposed(store, c.var.frame.today)))

  app.post('/intake', async (c) => {
    const came = await withPhotos(c, deps, await typedIn(c))
    const typed = withIds(came.typed, ['id'])
    const draft = draftOf('intake', typed, c.var.frame.units)
    draft.problems.push(...came.problems)
    const id = idIn(typed)
    const saved = await submit(deps, c.var.frame.today, signedIn(c), [
      { draft, id, colony: one(typed, 'colony') },
    ])
    if (!saved.ok) return show(c, typed, saved.problems)
    const made = store.colony(id)
    return made === null ? c.redirect('/yard', 303) : toColony(c, made.summary, id)
  })
  return app
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
