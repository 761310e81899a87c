import type { Hono } from 'hono'
import type { Env, PageDeps } from '../../app/index.ts'
import { entryForm } from './entry-form.ts'
import { MovePage } from './move-page.tsx'
import { freeStand } from './propose.ts'

/** To another stand or yard. */
export const move = (deps: PageDeps): Hono<Env> =>
  entryForm(deps, {
    kind: 'move',
    name: 'move',
    blank: (summary) => {
      const stand = freeStand(deps.store.colonies({ open: true }), summary.yard)
      return { yard: [summary.yard], ...(stand === '' ? {} : { stand: [stand] }) }
    },
    view: (view) => <MovePage {...view} yards={deps.store.yards().map((y) => y.yard)} />,
  })
