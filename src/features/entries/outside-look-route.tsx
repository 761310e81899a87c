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
  thenOf,
  typedIn,
  unknownColony,
} from '../../app/index.ts'
import { draftOf } from '../../forms/index.ts'
import { timeIn } from '../../time-of-day.ts'

/** One tap on the round: looked from outside today, all well, lid stayed on. Anything wrong leads to the whole form. */
export function outsideLook(deps: PageDeps): Hono<Env> {
  const app = new Hono<Env>()
  app.post('/colony/:tag/outside-look', async (c) => {
    const colony = colonyIn(c, deps.store)
    if (colony === null) return unknownColony(c, deps, c.req.param('tag'))
    const typed = await typedIn(c)
    const { today, units } = c.var.frame
    const at = thenOf(c) === null ? {} : { at: [timeIn(c.var.frame.zone, deps.clock())] }
    const draft = draftOf('inspection', { on: [today], opened: ['no'], signs: ['none'], ...at }, units)
    const id = idIn(typed)
    const saved = await submit(deps, today, signedIn(c), [{ draft, id, colony: colony.summary.id }])
    return saved.ok
      ? onward(c, colony.summary, id)
      : c.redirect(`${colonyPath(colony.summary)}/visit?lid=on`, 303)
  })
  return app
}
