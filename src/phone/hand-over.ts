/**
 * What waits here for somebody who is not signed in: a copy goes to the beekeeper's list, once, so that what was seen is not
 * on this phone alone should they never sign in on it again. The entry itself stays for its owner to send.
 */
import { ask, type Fetch } from './asking.ts'
import type { Database, Waiting } from './database.ts'
import { all, handedOver } from './outbox.ts'

/** In one request; the next run takes the rest. */
const MOST = 100

interface HandOverParts {
  db: Database
  fetch: Fetch
  viewer: { id: string }
}

export async function handOver({ db, fetch, viewer }: HandOverParts): Promise<void> {
  const theirs = (await all(db)).filter((w) => w.owner.id !== viewer.id && w.handedOver !== true)
  const byOwner = new Map<string, Waiting[]>()
  for (const w of theirs.slice(0, MOST)) byOwner.set(w.owner.id, [...(byOwner.get(w.owner.id) ?? []), w])
  for (const some of byOwner.values()) {
    const [first] = some
    if (first === undefined) continue
    const answer = await ask(fetch, '/entries/left', {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify({
        person: first.owner.name,
        entries: some.map((w) => ({ ...w.entry, tag: w.tag, keptAt: w.keptAt })),
      }),
    })
    if (typeof answer === 'string' || !answer.ok) return
    const { kept } = (answer.body ?? {}) as { kept?: unknown }
    if (!Array.isArray(kept)) return
    for (const w of some) if (kept.includes(w.id)) await handedOver(db, w.n)
  }
}
