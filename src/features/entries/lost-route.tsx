import { Hono } from 'hono'
import type { Env, PageDeps } from '../../app/index.ts'
import { one } from '../../forms/index.ts'
import { oneTap } from './one-tap.ts'

/** One tap, by anybody: no bees in it, dead, or gone. Nothing more is asked of the box; a beekeeper confirms how it left. */
export function lostBox(deps: PageDeps): Hono<Env> {
  const app = new Hono<Env>()
  app.post('/colony/:tag/lost', (c) =>
    oneTap(c, deps, { says: (typed) => ({ lost: [one(typed, 'lost')] }), needs: 'lost', form: 'visit' }),
  )
  return app
}
