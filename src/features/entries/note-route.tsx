import type { Hono } from 'hono'
import type { Env, PageDeps } from '../../app/index.ts'
import { entryForm } from './entry-form.ts'
import { NotePage } from './note-page.tsx'

/** A note, which changes no plan. */
export const note = (deps: PageDeps): Hono<Env> =>
  entryForm(deps, {
    kind: 'note',
    name: 'note',
    // A link may ask for somebody to look.
    blank: (_, asked) => (asked('asks') === 'look' ? { asks: ['look'] } : {}),
    view: (view) => <NotePage {...view} />,
  })
