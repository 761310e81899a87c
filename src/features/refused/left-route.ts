import { Hono } from 'hono'
import { type Deps, type Env, sendsJson, viewerOf } from '../../app/index.ts'
import { keptOf } from './kept.ts'

const MOST_AT_ONCE = 200
const LONGEST_NAME = 60

/**
 * POST /entries/left: { person, entries }, what waits on a phone for somebody who is not signed in on it. Written nowhere
 * but on the beekeeper's list, with the name of who handed it over. 200 { kept: ids }. Sending again is harmless.
 */
export function leftBehind(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  app.post('/entries/left', async (c) => {
    const body: unknown = sendsJson(c) ? await c.req.json().catch(() => null) : null
    const { person, entries } = (body ?? {}) as { person?: unknown; entries?: unknown }
    if (
      typeof person !== 'string' ||
      person === '' ||
      person.length > LONGEST_NAME ||
      !Array.isArray(entries)
    )
      return c.json({ error: 'needs the name of a person, and a list of their entries' }, 400)
    if (entries.length > MOST_AT_ONCE) return c.json({ error: `send at most ${MOST_AT_ONCE}` }, 422)
    const sent = { person, sentBy: viewerOf(c).name, receivedAt: deps.clock().toISOString() }
    // What has arrived since is in the journal, and asks nobody.
    const kept = keptOf(entries, [], sent).filter(({ id }) => deps.store.entry(id) === null)
    deps.store.together(() => deps.store.refused.keep(kept))
    return c.json({ kept: entries.flatMap((e: unknown) => (e as { id?: unknown } | null)?.id ?? []) })
  })
  return app
}
