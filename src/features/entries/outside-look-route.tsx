import { Hono } from 'hono'
import { type Env, type PageDeps, thenOf } from '../../app/index.ts'
import { timeIn } from '../../time-of-day.ts'
import { oneTap } from './one-tap.ts'

/** One tap on the round: looked from outside today, all well, lid stayed on. Anything wrong leads to the whole form. */
export function outsideLook(deps: PageDeps): Hono<Env> {
  const app = new Hono<Env>()
  app.post('/colony/:tag/outside-look', (c) => {
    const at = thenOf(c) === null ? {} : { at: [timeIn(c.var.frame.zone, deps.clock())] }
    return oneTap(c, deps, { says: () => ({ signs: ['none'], ...at }), form: 'visit?lid=on' })
  })
  return app
}
