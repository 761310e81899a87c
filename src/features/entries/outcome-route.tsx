import type { Hono } from 'hono'
import type { Env, PageDeps } from '../../app/index.ts'
import type { Typed } from '../../forms/index.ts'
import type { Plan } from '../../recovery/index.ts'
import { entryForm } from './entry-form.ts'
import { OutcomePage } from './outcome-page.tsx'

const given = (name: string, value: string | undefined): Typed =>
  value === undefined ? {} : { [name]: [value] }

/** A box that somebody found lost: what is likely, for a beekeeper to confirm or to mend. */
const confirming = ({ lost }: Plan): Typed =>
  lost === null
    ? {}
    : {
        what: [lost.how === 'dead' ? 'died' : 'absconded'],
        on: [lost.on],
        cause: [lost.how === 'no-bees' ? 'No bees in it' : ''],
      }

/** A colony leaves: moved out, united, died, absconded. */
export const outcome = (deps: PageDeps): Hono<Env> =>
  entryForm(deps, {
    kind: 'outcome',
    name: 'outcome',
    blank: ({ plan }, asked) => ({ ...confirming(plan), ...given('what', asked('what')) }),
    view: (view) => (
      <OutcomePage
        {...view}
        papers={deps.store.papers?.(view.summary.id) ?? null}
        others={deps.store.colonies({ open: true }).flatMap((s) => (s.id === view.summary.id ? [] : [s.tag]))}
      />
    ),
  })
