import type { Hono } from 'hono'
import { OutcomePage } from '../../../web/pages/outcome.tsx'
import type { Env, PageDeps } from '../../app/context.ts'
import { entryForm } from '../entry-form.ts'

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
