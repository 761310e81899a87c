/**
 * Sends what waits, one piece at a time, in the order in which it was kept; but what is written down goes before pictures,
 * because one photo over a bad line can take as long as a whole round's entries. An entry leaves the outbox only when an answer
 * names its id: not on a 200 from a hotel's network, not on a 500, not when the answer got lost. Sending again what the
 * server has is harmless, because it knows the id.
 */
import type { Problem } from '../journal/index.ts'
import { ask, type Fetch, type Heard, type Unheard } from './asking.ts'
import type { Database, Waiting } from './database.ts'
import { acknowledge, all, photo, photosOf, refuse, tried } from './outbox.ts'
import { handPiece, type Pieces } from './photo-sender.ts'

/** How a run ended. */
export type Ended =
  /** Nothing is left that could be sent. */
  | 'done'
  /** No answer, or none of ours: to be tried again later. */
  | Unheard

export interface SendParts {
  db: Database
  fetch: Fetch
  now: () => Date
  /** Who is signed in, as far as the phone knows. */
  viewer: { id: string }
  /** Called after each step, to bring counts on the screen up to date. */
  moved?: () => void
}

/** A server that cannot take an entry this often, though it answers, must not keep the rest waiting. */
const GIVE_WAY_AFTER = 5

/** Sends until nothing is left or the way is blocked. One call at a time: see `line.ts`. */
export async function send(parts: SendParts): Promise<Ended> {
  const passed = new Set<number>()
  const pieces: Pieces = new Map()
  for (;;) {
    const waiting = await all(parts.db)
    const next = nextToSend(waiting, parts.viewer.id, passed, await withUnsentPhotos(parts.db, waiting))
    if (next === null) return passed.size > 0 ? 'no-answer' : 'done'
    const answer = await hand(parts, pieces, next)
    parts.moved?.()
    if (answer === 'taken' || answer === 'piece' || answer === 'refused') continue
    if (answer === 'broken' && next.tries + 1 >= GIVE_WAY_AFTER) passed.add(next.n)
    else return answer === 'broken' ? 'no-answer' : answer
  }
}

/** Entries of which a picture has yet to go. */
async function withUnsentPhotos(db: Database, waiting: readonly Waiting[]): Promise<Waiting[]> {
  const unsent: Waiting[] = []
  for (const w of waiting) if ((await unsentPhoto(db, photosOf(w.entry))) !== null) unsent.push(w)
  return unsent
}

/**
 * The first entry that may go: ours, not refused, and not resting on one that has to go before it. `heavy`: those whose
 * pictures go first; they wait until nothing else can go.
 */
function nextToSend(
  waiting: readonly Waiting[],
  person: string,
  passed: ReadonlySet<number>,
  heavy: readonly Waiting[] = [],
): Waiting | null {
  const stuck = waiting.filter((w) => isStuck(w) || passed.has(w.n))
  const free = (w: Waiting): boolean => w.owner.id === person && !stuck.includes(w) && !restsOn(w, stuck)
  const light = (w: Waiting): boolean => !heavy.includes(w) && !restsOn(w, heavy)
  return waiting.find((w) => free(w) && light(w)) ?? waiting.find(free) ?? null
}

/** It stays until somebody has mended it, or has said that its day is right. */
export const isStuck = (w: Waiting): boolean => w.refused !== null || w.clock !== undefined

/** Whether an entry can only be taken after one that is stuck: its colony's intake, or what it corrects. */
export const restsOn = (w: Waiting, stuck: readonly Waiting[]): boolean =>
  stuck.some(
    (s) => s.n < w.n && ((s.entry.kind === 'intake' && s.colony === w.colony) || s.id === w.entry.replaces),
  )

export type Picture = NonNullable<Awaited<ReturnType<typeof photo>>>

/** `piece`: a part of a photo arrived, and there is more of it. */
export type Answer = 'taken' | 'piece' | 'refused' | 'broken' | Unheard

/** Hands over a piece of its photos, or when all of them are there, the entry: others may have come to go first meanwhile. */
async function hand(parts: SendParts, pieces: Pieces, w: Waiting): Promise<Answer> {
  const refuseIt: Refuse = (problems) => refuse(parts.db, w.n, problems)
  const picture = await unsentPhoto(parts.db, photosOf(w.entry))
  if (picture !== null) return handPiece(parts, pieces, picture, refuseIt)
  await tried(parts.db, w.n)
  const answer = await ask(parts.fetch, '/entries', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json', 'Resettle-Person': parts.viewer.id },
    body: JSON.stringify(w.entry),
  })
  if (typeof answer === 'string') return answer
  if (!answer.ok) return refused(answer, refuseIt)
  if (!names(answer.body, w.id)) return 'no-answer'
  await acknowledge(parts.db, w, parts.now().toISOString())
  return 'taken'
}

/** What could not be taken, and why. */
export type Refuse = (problems: Problem[]) => Promise<void>

/** The next picture to go. One that is not here came with an earlier version: the server has it. */
export async function unsentPhoto(db: Database, ids: readonly string[]): Promise<Picture | null> {
  for (const id of ids) {
    const kept = await photo(db, id)
    if (kept !== undefined && !kept.sent) return kept
  }
  return null
}

export async function refused(
  { status, body }: Heard,
  refuseIt: Refuse,
): Promise<'broken' | 'no-answer' | 'refused'> {
  if (status >= 500) return 'broken'
  const problems = status === 413 ? TOO_LARGE : problemsIn(body)
  if (problems.length === 0) return 'no-answer'
  await refuseIt(problems)
  return 'refused'
}

const TOO_LARGE: Problem[] = [
  { field: '', message: 'is larger than the server takes: shorten the note, or leave photos out' },
]

/** Whether the answer says that the entry of this id is in the journal. */
function names(body: unknown, id: string): boolean {
  if (typeof body !== 'object' || body === null) return false
  const { accepted, already } = body as { accepted?: unknown; already?: unknown }
  return [accepted, already].some((ids) => Array.isArray(ids) && ids.includes(id))
}

/** The server's sentences; none when the answer is not one of its. */
export function problemsIn(body: unknown): Problem[] {
  const found =
    typeof body === 'object' && body !== null ? (body as { problems?: unknown }).problems : undefined
  if (!Array.isArray(found)) return []
  return found.flatMap((p: unknown) => {
    const { field, message } = (p ?? {}) as { field?: unknown; message?: unknown }
    return typeof message === 'string' ? [{ field: typeof field === 'string' ? field : '', message }] : []
  })
}
