import { Hono } from 'hono'
import {
  colonyIn,
  colonyPath,
  type Env,
  idIn,
  onward,
  type PageDeps,
  signedIn,
  submit,
  typedIn,
  unknownColony,
} from '../../app/index.ts'
import { draftOf, one } from '../../forms/index.ts'

/** One tap, by anybody: no bees in it, dead, or gone. Nothing more is asked of the box; a beekeeper confirms how it left. */
export function lostBox(deps: PageDeps): Hono<Env> {
  const app = new Hono<Env>()
  app.post('/colony/:tag/lost', async (c) => {
    const colony = colonyIn(c, deps.store)
    if (colony === null) return unknownColony(c, deps, c.req.param('tag'))
    const typed = await typedIn(c)
    const { today, units } = c.var.frame
    const draft = draftOf('inspection', { on: [today], opened: ['no'], lost: [one(typed, 'lost')] }, units)
    const id = idIn(typed)
    const saved =
      draft.raw.lost === undefined
        ? { ok: false }
        : await submit(deps, today, signedIn(c), [{ draft, id, colony: colony.summary.id }])
    return saved.ok ? onward(c, colony.summary, id) : c.redirect(`${colonyPath(colony.summary)}/visit`, 303)
  })
  return app
}
