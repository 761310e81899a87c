/** The outbox: entries kept on the phone until the server has named their ids. Nothing here ever expires. */
import type { Entry, Problem } from '../journal/index.ts'
import type { ClockOff } from '../parts/index.ts'
import type { Photo } from '../photos/index.ts'
import { photosOfSheet } from '../records/index.ts'
import {
  type Database,
  type KeptPhoto,
  STRICT,
  type Waiting,
  type WithPhotos,
  type Writing,
  waitingOn,
} from './database.ts'
import { readable } from './round-store.ts'

export type NewWaiting = Omit<Waiting, 'n' | 'tries' | 'refused'>

/** Everything that waits, in the order in which it was kept. */
export const all = (db: Database): Promise<Waiting[]> => db.getAll('outbox')

/** Names of the photos that go with an entry. */
export const photosOf = (entry: Entry): readonly string[] => ('photos' in entry ? (entry.photos ?? []) : [])

/**
 * Keeps entries, all or none; their photos are kept before. When this resolves they are on the disk. Rejects when there is no room. An id that waits
 * already is kept once; one that was refused takes what it says now.
 */
export async function keep(db: Database, entries: readonly NewWaiting[]): Promise<void> {
  const tx = db.transaction('outbox', 'readwrite', STRICT)
  try {
    for (const e of entries) {
      const before = await tx.store.index('id').get(e.id)
      const now = { ...e, tries: 0, refused: null }
      if (before === undefined) await tx.store.add(now as Waiting)
      else if (before.refused !== null) await tx.store.put({ ...now, n: before.n })
    }
    await tx.done
  } catch (error) {
    await tx.done.catch(() => {})
    throw error
  }
}

/** Keeps a photo, to be named by an entry next. When this resolves it is on the disk. */
export async function keepPhoto(db: Database, { id, bytes }: Photo, keptAt: string): Promise<void> {
  const tx = db.transaction('photos', 'readwrite', STRICT)
  if ((await tx.store.getKey(id)) === undefined) await tx.store.put({ id, bytes, keptAt, sent: false })
  await tx.done
}

/** Notes, before it is handed to the network, that from now on the server may have it. */
export const tried = (db: Database, n: number): Promise<void> =>
  change(db, n, (w) => ({ ...w, tries: w.tries + 1 }))

/** The server would not have it: it stays, with the reasons, until somebody mends it or takes it out. */
export const refuse = (db: Database, n: number, problems: Problem[]): Promise<void> =>
  change(db, n, (w) => ({ ...w, refused: problems }))

/** The server has a copy, for somebody to ask about. */
export const handedOver = (db: Database, n: number): Promise<void> =>
  change(db, n, (w) => ({ ...w, handedOver: true }))

/** Somebody has said that its day is right, whatever the phone’s clock was. */
export const dayRight = (db: Database, n: number): Promise<void> =>
  change(db, n, ({ clock: _clock, ...w }) => ({ ...w, dayRight: true }))

/** The phone’s day is not the yard’s: it stays until somebody has looked at its day. */
export const doubtDay = (db: Database, n: number, clock: ClockOff): Promise<void> =>
  change(db, n, (w) => ({ ...w, clock }))

/** To be sent again as it is. */
export const sendAgain = (db: Database, n: number): Promise<void> =>
  change(db, n, (w) => ({ ...w, refused: null }))

/** The same entry, said otherwise. Only for one the server cannot have: see {@link mayBeThere}. */
export const rewrite = (db: Database, n: number, entry: Entry): Promise<void> =>
  change(db, n, ({ clock: _clock, ...w }) => ({ ...w, entry, refused: null, tries: 0, dayRight: true }))

/**
 * Whether the server may have it: it was sent and no answer came. What may be there is not changed in place but corrected
 * by a further entry, as what is there would be.
 */
export const mayBeThere = (w: Waiting): boolean => w.tries > 0 && w.refused === null

/** Takes one out that the server cannot have. */
export async function takeOut(db: Database, n: number, now: string): Promise<void> {
  const tx = db.transaction(['outbox', 'photos', 'sheets'], 'readwrite', STRICT)
  await tx.objectStore('outbox').delete(n)
  await dropLoose(tx, now)
  await tx.done
}

const DAY_MS = 86_400_000

/** Photos that no entry names: sent, or of a form that was given up a day ago. */
export async function dropLoose(tx: WithPhotos, now: string): Promise<void> {
  const photos = tx.objectStore('photos')
  const sheets = (await tx.objectStore('sheets').getAll()).flatMap(waitingOn).map((w) => w.sheet)
  const named = new Set([
    ...(await tx.objectStore('outbox').getAll()).flatMap((w) => photosOf(w.entry)),
    ...sheets.flatMap(photosOfSheet),
  ])
  for (const { id, sent, keptAt } of await photos.getAll())
    if (!named.has(id) && (sent || Date.parse(now) - Date.parse(keptAt) > DAY_MS)) await photos.delete(id)
}

/**
 * The server has named the id: the entry leaves the outbox and joins what the phone knows of its colony, at once, so that
 * no page misses it before the round is fetched again. Where no round is kept that this version can read, it only leaves.
 */
export async function acknowledge(db: Database, w: Waiting, recordedAt: string): Promise<void> {
  const tx = db.transaction(['outbox', 'colonies', 'photos', 'kept', 'sheets'], 'readwrite', STRICT)
  const colonies = tx.objectStore('colonies')
  await tx.objectStore('outbox').delete(w.n)
  await dropLoose(tx, recordedAt)
  if (readable(await tx.objectStore('kept').get('round')) !== null) await join(colonies, w, recordedAt)
  await tx.done
}

async function join(colonies: Writing<'colonies'>, w: Waiting, recordedAt: string): Promise<void> {
  const known = (await colonies.get(w.colony)) ?? { id: w.colony, rows: [] }
  if (known.rows.some((r) => r.entry.id === w.id)) return
  const row = {
    entry: { ...w.entry, colony: w.colony },
    seq: Math.max(0, ...known.rows.map((r) => r.seq)) + 1,
    recordedAt,
    recordedBy: w.owner.name,
    written: w.entry.colony,
  }
  await colonies.put({ id: w.colony, rows: [...known.rows, row] })
}

/** A photo that waits with its entry, if it does. */
export const photo = (db: Database, id: string): Promise<KeptPhoto | undefined> => db.get('photos', id)

/** Notes that the server has a photo: it need not be sent again with the next try. */
export async function photoSent(db: Database, id: string): Promise<void> {
  const tx = db.transaction('photos', 'readwrite', STRICT)
  const kept = await tx.store.get(id)
  if (kept !== undefined) await tx.store.put({ ...kept, sent: true })
  await tx.done
}

async function change(db: Database, n: number, how: (w: Waiting) => Waiting): Promise<void> {
  const tx = db.transaction('outbox', 'readwrite', STRICT)
  const before = await tx.store.get(n)
  if (before !== undefined) await tx.store.put(how(before))
  await tx.done
}
