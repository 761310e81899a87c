/** The round as the server last sent it: kept whole, or brought up to date colony by colony. */

import * as z from 'zod/mini'
import { FORMAT, type RoundBundle, type RoundSettings, type RoundViewer } from '../features/offline/index.ts'
import { LANGUAGES } from '../languages.ts'
import { ROLES } from '../people/index.ts'
import { type Database, type Kept, type RoundHead, STRICT } from './database.ts'
import { keepTheirs } from './sheet-outbox.ts'

/** When a phone asks for the whole again, so that what was erased at the server does not stay here. */
const WHOLE_AGAIN_HOURS = 20

/** A round as it is kept. */
export interface KeptRound {
  /** Null where there is none, or it is of another format than this version reads. */
  head: RoundHead | null
  /** What the pages of the outbox stand on: of a round of another format, whose it is and little more. */
  base: Base | null
}

/** See {@link KeptRound}. */
export type Base = Pick<
  RoundHead,
  'viewer' | 'zone' | 'settings' | 'yards' | 'past' | 'joined' | 'exposed' | 'crew'
>

/** Reads what is kept of the round. */
export async function keptRound(db: Database): Promise<KeptRound> {
  const kept = await db.get('kept', 'round')
  const head = readable(kept)
  return { head, base: head ?? (kept?.key === 'round' ? bare(kept.head) : null) }
}

/** The round that is kept, where this version can read it; a server of before did not say every choice. */
export const readable = (kept: Kept | undefined): RoundHead | null =>
  kept?.key === 'round' && kept.head.format === FORMAT
    ? { ...kept.head, settings: { ...UNSAID, ...kept.head.settings } }
    : null

/** Of a round in another format: what FORMAT promises, and units where they are what they were. */
function bare(head: unknown): Base | null {
  const read = ANY_ROUND.safeParse(head)
  if (!read.success) return null
  const { viewer, zone, settings } = read.data
  return { viewer, zone, settings: { ...UNSAID, ...settings, timeZone: zone }, yards: [], past: [] }
}

/** What a yard has that has chosen nothing. */
const UNSAID: RoundSettings = {
  timeZone: null,
  temperature: 'F',
  weight: 'lb',
  yardName: '',
  removalTypes: [],
  inspector: '',
  currency: '$',
  agreementTerms: '',
  stands: {},
  ownRates: null,
  costs: {},
  supplies: {},
  protocol: {},
}

const VIEWER = z.object({
  id: z.string(),
  name: z.string(),
  role: z.enum(ROLES),
  language: z.catch(z.optional(z.enum(LANGUAGES)), undefined),
})
const ANY_ROUND = z.object({
  viewer: VIEWER,
  zone: z.string(),
  settings: z.catch(
    z.object({
      temperature: z.catch(z.enum(['C', 'F']), UNSAID.temperature),
      weight: z.catch(z.enum(['kg', 'lb']), UNSAID.weight),
    }),
    UNSAID,
  ),
})

/** Who an answer says is signed in; null where it says nothing of the kind. */
export const viewerIn = (answer: unknown): RoundViewer | null => VIEWER.safeParse(answer).data ?? null

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
  const { colonies, sheets = [], whole, past: fresh, ...rest } = bundle
  const tx = db.transaction(['kept', 'colonies', 'sheets'], 'readwrite', STRICT)
  const store = tx.objectStore('colonies')
  const known = readable(await tx.objectStore('kept').get('round'))
  const fetchedAt = now.toISOString()
  const wholeAt = whole || known === null ? fetchedAt : known.wholeAt
  // Colonies of a round that cannot be read go unread: what comes then is a whole one.
  const before = known === null ? [] : await store.getAll()
  const entries = new Set(before.flatMap((c) => c.rows.map((r) => r.entry.id)))
  if (whole) await store.clear()
  const open = new Set(bundle.open)
  const gone = before.filter((c) => !open.has(c.id))
  for (const { id } of gone) await store.delete(id)
  for (const colony of colonies) await store.put(colony)
  const moved = await keepTheirs(tx.objectStore('sheets'), sheets, bundle.viewer.id)
  const news = gone.length > 0 || colonies.some((c) => c.rows.some((r) => !entries.has(r.entry.id)))
  const newsAt = news || known === null ? fetchedAt : known.newsAt
  const next = { ...rest, past: fresh ?? known?.past ?? [], fetchedAt, wholeAt, newsAt }
  await tx.objectStore('kept').put({ key: 'round', head: next })
  await tx.done
  return { head: next, changed: whole || moved || gone.length > 0 || colonies.length > 0 }
}

/** Forgets the round: whoever it was for is not signed in any more. The outbox stays. */
export async function forgetRound(db: Database): Promise<void> {
  const tx = db.transaction(['kept', 'colonies', 'sheets'], 'readwrite', STRICT)
  await tx.objectStore('kept').delete('round')
  await tx.objectStore('colonies').clear()
  // They name customers: only what waits to be sent stays, for whoever wrote it.
  await keepTheirs(tx.objectStore('sheets'), [])
  await tx.done
}
