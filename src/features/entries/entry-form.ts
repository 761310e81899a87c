/** The routes of a form that writes one entry of a colony: shown, posted, shown again with what is wrong. */

import { Hono } from 'hono'
import type { Child } from 'hono/jsx'
import { v7 } from 'uuid'
import {
  type AppContext,
  colonyIn,
  colonyPath,
  type Env,
  formPage,
  idIn,
  type PageDeps,
  signedIn,
  submit,
  toColony,
  typedIn,
  unknownColony,
  withIds,
  withPhotos,
} from '../../app/index.ts'
import { draftOf, type FormState, type Typed } from '../../forms/index.ts'
import type { EntryKind } from '../../journal/index.ts'
import type { ColonySummary } from '../../store/index.ts'
import type { EntryFormView } from './small-forms.tsx'

interface EntryForm {
  kind: EntryKind
  /** Last part of its path, after the colony. */
  name: string
  /** What is filled in when the form is opened, beside the day. */
  blank?: (summary: ColonySummary, asked: (name: string) => string | undefined) => Typed
  view: (view: EntryFormView) => Child
}

export function entryForm(deps: PageDeps, { kind, name, blank, view }: EntryForm): Hono<Env> {
  const app = new Hono<Env>()
  const show = (c: AppContext, summary: ColonySummary, form: FormState) =>
    formPage(
      c,
      view({ frame: c.var.frame, form, summary, path: colonyPath(summary) }),
      form.problems.length > 0,
    )

  app.get(`/colony/:tag/${name}`, (c) => {
    const colony = colonyIn(c, deps.store)
    if (colony === null) return unknownColony(c, deps, c.req.param('tag') ?? '')
    const typed = {
      id: [v7()],
      on: [c.var.frame.today],
      ...blank?.(colony.summary, (name) => c.req.query(name)),
    }
    return show(c, colony.summary, { typed, problems: [] })
  })

  app.post(`/colony/:tag/${name}`, async (c) => {
    const colony = colonyIn(c, deps.store)
    if (colony === null) return unknownColony(c, deps, c.req.param('tag') ?? '')
    const came = await withPhotos(c, deps, await typedIn(c))
    const typed = withIds(came.typed, ['id'])
    const id = idIn(typed)
    const draft = draftOf(kind, typed, c.var.frame.units)
    draft.problems.push(...came.problems)
    const by = signedIn(c)
    const saved = await submit(deps, c.var.frame.today, by, [{ draft, id, colony: colony.summary.id }])
    if (!saved.ok) return show(c, colony.summary, { typed, problems: saved.problems })
    return toColony(c, deps.store.colony(colony.summary.id)?.summary ?? colony.summary, id)
  })
  return app
}
