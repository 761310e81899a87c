import type { Hono } from 'hono'
import { NotePage } from '../../../web/pages/note.tsx'
import type { Env, PageDeps } from '../../app/context.ts'
import { entryForm } from '../entry-form.ts'

/** A note, which changes no plan. */
export const note = (deps: PageDeps): Hono<Env> =>
  entryForm(deps, { kind: 'note', name: 'note', view: (view) => <NotePage {...view} /> })
