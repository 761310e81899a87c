import { Hono } from 'hono'
import {
  type AppContext,
  type Deps,
  type Env,
  grouped,
  jsonIn,
  sendsJson,
  viewerOf,
} from '../../app/index.ts'
import { problemLine } from '../../journal/index.ts'
import { refused } from '../../result.ts'
import { keptOf } from '../refused/index.ts'

const MOST_AT_ONCE = 500

/**
 * POST /entries: one entry or a list, all or none. 200 {accepted, already} names the ids that are in the journal now;
 * 422 {problems: [{entry, field, message}]}, nothing written. Sending again what was sent is harmless. With the header
 * Resettle-Person: 409 when that is not the id of who is signed in.
 */
export function entries(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const write = grouped(deps)
  app.post('/entries', async (c) => {
    if (isForAnother(c)) return c.json({ error: 'somebody else is signed in' }, 409)
    const body = sendsJson(c) ? await jsonIn(c) : refused(['It must be sent as JSON.'])
    if (!body.ok) return refuse(c, 400, `must be JSON, one entry or a list of entries. ${body.problems[0]}`)
    const list = (Array.isArray(body.value) ? body.value : [body.value]).map((e) =>
      signed(e, viewerOf(c).name),
    )
    if (list.length > MOST_AT_ONCE)
      return refuse(c, 422, `has ${list.length} entries: send at most ${MOST_AT_ONCE}`)
    const context = {
      today: c.var.frame.today,
      recordedAt: deps.clock().toISOString(),
      recordedBy: viewerOf(c).name,
    }
    const fromPhone = c.req.header('resettle-person') !== undefined
    const result = await write(() => {
      const made = deps.store.append(list, context)
      const { recordedAt: at, recordedBy: by } = context
      if (made.ok) deps.store.refused.settle([...made.accepted, ...made.already], { at, by })
      // A phone has it alone otherwise, until whoever wrote it looks.
      else if (fromPhone)
        deps.store.refused.keep(keptOf(list, made.problems, { person: by, sentBy: by, receivedAt: at }))
      return made
    })
    c.header('Cache-Control', 'no-store')
    return result.ok
      ? c.json({ accepted: result.accepted, already: result.already })
      : c.json({ problems: result.problems.map((p) => ({ ...p, line: problemLine(p) })) }, 422)
  })
  return app
}

/** A phone says whose entries it sends: after another person signed in on it, the first one's must wait. */
const isForAnother = (c: AppContext): boolean => {
  const person = c.req.header('resettle-person')
  return person !== undefined && person !== viewerOf(c).id
}

/** Signed by whoever is signed in where the entry names nobody. */
const signed = (entry: unknown, name: string): unknown =>
  typeof entry === 'object' && entry !== null && !Array.isArray(entry) && !('by' in entry)
    ? { ...entry, by: name }
    : entry

const refuse = (c: AppContext, status: 400 | 422, message: string): Response =>
  c.json({ problems: [{ field: '', message, line: message }] }, status)
