import type { Hono } from 'hono'
import type { Env, PageDeps } from '../../app/index.ts'
import { entryForm } from './entry-form.ts'
import { MovePage } from './move-page.tsx'

/** To another stand or yard. */
export const move = (deps: PageDeps): Hono<Env> =>
  entryForm(deps, {
    kind: 'move',
    name: 'move',
    blank: (summary) => ({ yard: [summary.yard] }),
    view: (view) => <MovePage {...view} yards={deps.store.yards().map((y) => y.yard)} />,
  })
