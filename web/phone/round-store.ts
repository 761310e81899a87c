/** The round as the server last told it: kept whole, or brought up to date colony by colony. */
import { FORMAT, type RoundBundle } from '../../src/exchange/round-bundle.ts'
import { type Database, type RoundHead, STRICT } from './database.ts'

/** When a phone asks for the whole again, so that what was erased at the server does not stay here. */
const WHOLE_AGAIN_HOURS = 20

export async function head(db: Database): Promise<RoundHead | null> {
  const kept = await db.get('kept', 'round')
  return kept?.key === 'round' && kept.head.format === FORMAT ? kept.head : null
}

/** A name for this database, made when it was: another one means that the browser threw the old one away. */
export async function birth(db: Database): Promise<string> {
  const kept = await db.get('kept', 'birth')
  return kept?.key === 'birth' ? kept.id : ''
}

/** What to ask the server with: the newest entry we know of, or null for all of it. */
export function sinceOf(known: RoundHead | null, now: Date): number | null {
  if (known === null) return null
  const hours = (now.getTime() - Date.parse(known.wholeAt)) / 3_600_000
  return hours >= 0 && hours < WHOLE_AGAIN_HOURS ? known.seq : null
}

/** Whether an answer is a bundle, and not, say, the page of a hotel's network. */
export const isBundle = (answer: unknown): answer is RoundBundle =>
  typeof answer === 'object' &&
  answer !== null &&
  'format' in answer &&
  answer.format === FORMAT &&
  'open' in answer

/** Keeps a bundle. One of another person, or of the same in another role, takes the place of everything before it. */
export async function keepRound(
  db: Database,
  bundle: RoundBundle,
  now: Date,
): Promise<{ head: RoundHead; changed: boolean }> {
  const { colonies, whole, past: fresh, ...rest } = bundle
  const tx = db.transaction(['kept', 'colonies'], 'readwrite', STRICT)
  const store = tx.objectStore('colonies')
  const known = await tx.objectStore('kept').get('round')
  const fetchedAt = now.toISOString()
  const wholeAt = whole || known?.key !== 'round' ? fetchedAt : known.head.wholeAt
  const before = await store.getAll()
  const entries = new Set(before.flatMap((c) => c.rows.map((r) => r.entry.id)))
  if (whole) await store.clear()
  const open = new Set(bundle.open)
  const gone = before.filter((c) => !open.has(c.id))
  for (const { id } of gone) await store.delete(id)
  for (const colony of colonies) await store.put(colony)
  const news = gone.length > 0 || colonies.some((c) => c.rows.some((r) => !entries.has(r.entry.id)))
  const newsAt = news || known?.key !== 'round' ? fetchedAt : known.head.newsAt
  const past = fresh ?? (known?.key === 'round' ? known.head.past : undefined) ?? []
  const next = { ...rest, past, fetchedAt, wholeAt, newsAt }
  await tx.objectStore('kept').put({ key: 'round', head: next })
  await tx.done
  return { head: next, changed: whole || gone.length > 0 || colonies.length > 0 }
}

/** Forgets the round, at sign-out. The outbox stays. */
export async function forgetRound(db: Database): Promise<void> {
  const tx = db.transaction(['kept', 'colonies'], 'readwrite', STRICT)
  await tx.objectStore('kept').delete('round')
  await tx.objectStore('colonies').clear()
  await tx.done
}
