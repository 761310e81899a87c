import type { Hono } from 'hono'
import { NotePage } from '../../../web/pages/note.tsx'
import type { Deps, Env } from '../deps.ts'
import { entryForm } from '../entry-form.ts'

/** A note, which changes no plan. */
export const note = (deps: Deps): Hono<Env> =>
  entryForm(deps, { kind: 'note', name: 'note', view: (view) => <NotePage {...view} /> })
