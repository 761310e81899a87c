/**
 * Talking with the server: the round first, then what waits, one at a time over all workers of this browser.
 *
 * A round that cannot be had or read does not keep back what waits: then only who is signed in is asked for.
 */
import type { RoundBundle, RoundViewer } from '../features/offline/index.ts'
import { ask, type Fetch } from './asking.ts'
import { clockOff, yardDay } from './clock.ts'
import { type RoundHead, waitingOn } from './database.ts'
import { handOver } from './hand-over.ts'
import type { Memory } from './memory.ts'
import { dayRight, doubtDay } from './outbox.ts'
import { isBundle, keepRound, sinceOf, viewerIn } from './round-store.ts'
import { type Ended, send as sendAll } from './sender.ts'
import { sendSheets } from './sheet-sender.ts'

export interface LineParts {
  fetch: Fetch
  now: () => Date
  /** Runs one piece of work at a time, over all pages and workers of this browser. */
  alone: <T>(work: () => Promise<T>) => Promise<T>
  report: (error: unknown, request: string) => void
}

/** Brings the round up to date, unless it was that few milliseconds ago, and sends what waits. */
export type Send = (fresh?: number) => Promise<Ended>

/** Milliseconds for the short answer who is signed in: slower than this, there is no signal to send by. */
const WHO_PATIENCE_MS = 8_000

export function lineOf(
  { on, standing, snapshot, confirmed, changed, tellAll, forget }: Memory,
  parts: LineParts,
): Send {
  /** Fetches the round, or what is new in it, and says who is signed in. */
  async function refresh(): Promise<RoundViewer | 'sign-in' | 'no-answer'> {
    const { session } = standing
    const isStill = (): boolean => standing.session === session
    const { head, base } = await snapshot()
    const answer = await askForRound(parts, head)
    const bundle = answer === 'sign-in' ? null : answer
    const viewer = bundle?.viewer ?? (answer === 'sign-in' ? answer : await askWho(parts))
    const kept =
      bundle === null ? null : await on(async (db) => (isStill() ? keepRound(db, bundle, parts.now()) : null))
    // Somebody signed in or out meanwhile: what came was for whoever was there before.
    if (!isStill()) return refresh()
    if (kept !== null) await (kept.changed ? changed() : confirmed(kept.head))
    else if (typeof viewer === 'object' && base !== null && !isSame(base.viewer, viewer)) await forget()
    return viewer
  }

  /** What is to go from a phone whose day is not the yard's is asked about, unless it is of the yard's own day. */
  async function lookAtDays(viewer: RoundViewer): Promise<void> {
    const { head, waiting } = await snapshot()
    if (head === null) return
    const off = clockOff(head, parts.now())
    const today = yardDay(head, parts.now())
    const own = waiting.filter((w) => w.owner.id === viewer.id && w.refused === null)
    const right = own.filter((w) => w.clock !== undefined && w.entry.on === today)
    // What was looked at before, or was sent before, is not asked about again.
    const doubted =
      off === null
        ? []
        : own.filter((w) => w.clock === undefined && w.tries === 0 && !w.dayRight && w.entry.on !== today)
    for (const w of right) await on((db) => dayRight(db, w.n))
    for (const w of doubted) if (off !== null) await on((db) => doubtDay(db, w.n, off))
    if (right.length + doubted.length > 0) await changed()
  }

  async function sendWaiting(viewer: RoundViewer): Promise<Ended> {
    const { waiting, sheets } = await snapshot()
    const written = sheets.some((s) => waitingOn(s).length > 0)
    if (waiting.length === 0 && !written) return 'done'
    const moved = (): void => {
      changed().catch((error: unknown) => parts.report(error, 'outbox'))
    }
    await lookAtDays(viewer)
    const to = { fetch: parts.fetch, now: parts.now, viewer, moved }
    // Sheets first: the intake of a job is better read beside it. One that cannot go keeps no entry back.
    const ended = written ? await on((db) => sendSheets({ db, ...to })) : 'done'
    if (ended === 'sign-in' || ended === 'other-person') return ended
    const sent = await on((db) => sendAll({ db, ...to }))
    if (sent === 'done') await on((db) => handOver({ db, fetch: parts.fetch, viewer }))
    return sent === 'done' ? ended : sent
  }

  // The round first: asking for it shows whether there is signal and who is signed in. An entry that is handed to a dead
  // network may have arrived for all we know, and could no longer be changed in place.
  async function talk(fresh: number): Promise<Ended> {
    const { head } = await snapshot()
    const known = standing.reached === true && head !== null && isFresh(head, fresh)
    const viewer = known ? head.viewer : await refresh()
    return typeof viewer === 'string' ? viewer : sendWaiting(viewer)
  }

  const isFresh = (head: RoundHead, milliseconds: number): boolean =>
    Math.abs(parts.now().getTime() - Date.parse(head.fetchedAt)) < milliseconds

  return (fresh = 0) =>
    parts.alone(async () => {
      let ended = await talk(fresh)
      if (ended === 'other-person') ended = await talk(0)
      standing.signIn = ended === 'sign-in'
      standing.reached = ended !== 'no-answer'
      await tellAll()
      return ended
    })
}

/** The same person in the same role: only then may what is kept be shown on. */
const isSame = (a: RoundViewer, b: RoundViewer): boolean => a.id === b.id && a.role === b.role

/** The round; null where none came that this version can read. */
async function askForRound(
  { fetch, now }: LineParts,
  head: RoundHead | null,
): Promise<RoundBundle | 'sign-in' | null> {
  const since = sinceOf(head, now())
  const asked = new URLSearchParams()
  if (head !== null && since !== null) {
    asked.set('since', String(since))
    asked.set('person', head.viewer.id)
    asked.set('role', head.viewer.role)
  }
  const heard = await ask(fetch, `/phone/round?${asked}`)
  if (heard === 'sign-in') return heard
  return typeof heard === 'object' && heard.ok && isBundle(heard.body) ? heard.body : null
}

/** Who is signed in, without the round. An answer that does not say so is not one of ours. */
async function askWho({ fetch }: LineParts): Promise<RoundViewer | 'sign-in' | 'no-answer'> {
  const heard = await ask(fetch, '/phone/person', {}, WHO_PATIENCE_MS)
  if (heard === 'sign-in') return heard
  return (typeof heard === 'object' && heard.ok ? viewerIn(heard.body) : null) ?? 'no-answer'
}
