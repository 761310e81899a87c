import type { Hono } from 'hono'
import type { Env, PageDeps } from '../../app/index.ts'
import { entryForm } from './entry-form.ts'
import { OutcomePage } from './outcome-page.tsx'

/** A colony leaves: moved out, united, died, absconded. */
export const outcome = (deps: PageDeps): Hono<Env> =>
  entryForm(deps, {
    kind: 'outcome',
    name: 'outcome',
    blank: (_summary, asked) => ({ what: [asked('what') ?? ''] }),
    view: (view) => (
      <OutcomePage
        {...view}
        others={deps.store.colonies({ open: true }).flatMap((s) => (s.id === view.summary.id ? [] : [s.tag]))}
      />
    ),
  })
