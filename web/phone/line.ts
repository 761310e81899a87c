/** Talking with the server: the round first, then what waits, one at a time over all workers of this browser. */
import type { RoundHead } from './database.ts'
import type { Memory } from './memory.ts'
import { isBundle, keepRound, sinceOf } from './round-store.ts'
import { type Ended, PATIENCE_MS, send as sendAll } from './sender.ts'

export interface LineParts {
  fetch: (path: string, init: RequestInit) => Promise<Response>
  now: () => Date
  /** Runs one piece of work at a time, over all pages and workers of this browser. */
  alone: <T>(work: () => Promise<T>) => Promise<T>
  report: (error: unknown, request: string) => void
}

/** Brings the round up to date, unless it was that few milliseconds ago, and sends what waits. */
export type Send = (fresh?: number) => Promise<Ended>

export function lineOf(
  { on, standing, snapshot, confirmed, changed, tellAll }: Memory,
  parts: LineParts,
): Send {
  /** Fetches the round, or what is new in it. */
  async function refresh(): Promise<Ended> {
    const { head } = await snapshot()
    const answer = await askForRound(parts, head)
    if (typeof answer === 'string') return answer
    const kept = await on((db) => keepRound(db, answer, parts.now()))
    await (kept.changed ? changed() : confirmed(kept.head))
    return 'done'
  }

  async function sendWaiting(): Promise<Ended> {
    const { head, waiting } = await snapshot()
    if (head === null || waiting.length === 0) return 'done'
    const moved = (): void => {
      changed().catch((error: unknown) => parts.report(error, 'outbox'))
    }
    return on((db) => sendAll({ db, fetch: parts.fetch, now: parts.now, viewer: head.viewer, moved }))
  }

  const isFresh = (head: RoundHead | null, milliseconds: number): boolean =>
    head !== null && Math.abs(parts.now().getTime() - Date.parse(head.fetchedAt)) < milliseconds

  // The round first: asking for it tells whether there is signal and who is signed in. An entry that is handed to a dead
  // network may have arrived for all we know, and could no longer be changed in place.
  return (fresh = 0) =>
    parts.alone(async () => {
      const known = standing.reached === true && isFresh((await snapshot()).head, fresh)
      let ended: Ended = known ? 'done' : await refresh()
      if (ended === 'done') ended = await sendWaiting()
      if (ended === 'other-person') {
        ended = await refresh()
        if (ended === 'done') ended = await sendWaiting()
      }
      standing.signIn = ended === 'sign-in'
      standing.reached = ended !== 'no-answer'
      await tellAll()
      return ended
    })
}

async function askForRound({ fetch, now }: LineParts, head: RoundHead | null) {
  const since = sinceOf(head, now())
  const asked = new URLSearchParams()
  if (head !== null && since !== null) {
    asked.set('since', String(since))
    asked.set('person', head.viewer.id)
    asked.set('role', head.viewer.role)
  }
  try {
    const response = await fetch(`/phone/round?${asked}`, {
      headers: { Accept: 'application/json' },
      redirect: 'error',
      cache: 'no-store',
      signal: AbortSignal.timeout(PATIENCE_MS),
    })
    if (response.status === 401) return 'sign-in'
    const answer: unknown = response.ok ? await response.json() : null
    return isBundle(answer) ? answer : 'no-answer'
  } catch {
    return 'no-answer'
  }
}
