import type { Hono } from 'hono'
import { MovePage } from '../../../web/pages/move.tsx'
import type { Env, PageDeps } from '../../app/context.ts'
import { entryForm } from '../entry-form.ts'

/** To another stand or yard. */
export const move = (deps: PageDeps): Hono<Env> =>
  entryForm(deps, {
    kind: 'move',
    name: 'move',
    blank: (summary) => ({ yard: [summary.yard] }),
    view: (view) => <MovePage {...view} yards={deps.store.yards().map((y) => y.yard)} />,
  })
