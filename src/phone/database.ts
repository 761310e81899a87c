/**
 * What a phone keeps, in IndexedDB: the outbox (entries not yet acknowledged), and the round (what the server last said).
 *
 * Only the service worker opens it. A page left open from an older version could not read a newer shape; it asks the
 * worker instead. A new shape is a new VERSION with a step in `upgrade`, and never throws an entry away.
 */

import {
  type DBSchema,
  type IDBPDatabase,
  type IDBPObjectStore,
  type IDBPTransaction,
  openDB,
  type StoreNames,
} from 'idb'
import type { RoundBundle, RoundColony, RoundSheet } from '../features/offline/index.ts'
import type { ColonyId, Tag } from '../ids.ts'
import type { Entry, Problem } from '../journal/index.ts'
import type { ClockOff } from '../parts/index.ts'
import type { Photo } from '../photos/index.ts'
import type { Sheet } from '../records/index.ts'

/** An entry that waits to be acknowledged. */
export interface Waiting {
  /** Order in which entries were kept; given by the database. */
  n: number
  id: string
  entry: Entry
  /** Id of the colony it belongs to. */
  colony: ColonyId
  /** What the colony was called then. */
  tag: Tag
  /** Whose entry it is: nobody else's session may send it. */
  owner: { id: string; name: string }
  /** UTC, ISO. */
  keptAt: string
  /** Times it was handed to the network. After the first, the server may have it without our knowing. */
  tries: number
  /** Kept, or to be sent, while the phone’s day was not the yard’s: somebody has to say that its day is right. */
  clock?: ClockOff
  /** Somebody has said that. */
  dayRight?: boolean
  /** The server has a copy for the beekeeper's list: somebody else is signed in here, who may not send it. */
  handedOver?: boolean
  /** Why the server would not have it; null while it waits. */
  refused: Problem[] | null
}

/** A photo of an entry that waits, or of a form that came back and will be posted again. */
export interface KeptPhoto extends Photo {
  /** UTC, ISO. */
  keptAt: string
  /** The server has it. */
  sent: boolean
}

/** A removal sheet on this phone. */
export interface KeptSheet {
  id: string
  /** What the server last said; null where it does not know it yet. */
  theirs: RoundSheet | null
  /** What whoever the round is for wrote here and waits to be acknowledged; null where nothing does. */
  mine: WaitingSheet | null
  /** What others wrote on it here: it waits for each of them. Absent: nothing, as far as an older program knew. */
  aside?: WaitingSheet[]
  /** What the server made of two words that crossed where no tap could choose: said once, to whoever wrote the one. */
  told?: { to: string; name: string; lines: Problem[] }
}

/** Whether something is to be said of it to a person. */
export const isToldTo = ({ told }: KeptSheet, person: string | undefined): boolean =>
  told !== undefined && told.to === person

/** Everybody's words that wait on a sheet. */
export const waitingOn = ({ mine, aside = [] }: KeptSheet): WaitingSheet[] =>
  mine === null ? aside : [mine, ...aside]

export interface WaitingSheet {
  /** The server's version it was made from; 0 for a sheet that began here. */
  base: number
  /** What that version said; absent of a sheet that began here, or that an older program kept. */
  from?: Sheet | undefined
  sheet: Sheet
  /** Whose it is: nobody else's session may send it. */
  owner: { id: string; name: string }
  /** UTC, ISO. */
  keptAt: string
  /** Milliseconds by which the phone took its own clock to be behind the yard's when it was first written on. */
  behind?: number
  tries: number
  /** Why the server would not have it, until it takes it: no “go” on it stands here. */
  refused: Problem[] | null
  /** It was written on since, or is to stand over the other one: it is sent again. */
  unaccepted?: boolean
  /** The server's version that it was refused over. */
  clash?: number | undefined
  /** The version that was read, and over which this one is to stand; an older program kept no more than that there is one. */
  over: number | boolean
}

/** Refused, and neither written on since nor meant to stand over the other one: it does not go by itself. */
export const isRefused = ({ refused, unaccepted }: Pick<WaitingSheet, 'refused' | 'unaccepted'>): boolean =>
  refused !== null && unaccepted !== true

/** What the server last said, less the colonies and sheets. */
export type RoundHead = Omit<RoundBundle, 'colonies' | 'sheets' | 'whole'> & {
  /** When it was last brought up to date. UTC, ISO. */
  fetchedAt: string
  /** When it was last fetched whole. UTC, ISO. */
  wholeAt: string
  /** When it last brought something this phone did not know. UTC, ISO. */
  newsAt: string
}

/** What is kept once. */
export type Kept = { key: 'round'; head: RoundHead } | { key: 'birth'; id: string }

interface Shape extends DBSchema {
  outbox: { key: number; value: Waiting; indexes: { id: string } }
  colonies: { key: string; value: RoundColony }
  photos: { key: string; value: KeptPhoto }
  kept: { key: string; value: Kept }
  sheets: { key: string; value: KeptSheet }
}

export type Database = IDBPDatabase<Shape>
/** A store within a transaction that writes. */
export type Writing<Name extends StoreNames<Shape>> = IDBPObjectStore<
  Shape,
  StoreNames<Shape>[],
  Name,
  'readwrite'
>
/** A transaction in which photos that nothing names any more can be let go. */
export type WithPhotos = Pick<IDBPTransaction<Shape, StoreNames<Shape>[], 'readwrite'>, 'objectStore'>
type Upgrading = IDBPTransaction<Shape, StoreNames<Shape>[], 'versionchange'>

export const NAME = 'resettle'
export const VERSION = 3

/** Opens what the phone keeps, bringing an older shape up to date. */
export const openDatabase = (onGone: () => void = () => {}): Promise<Database> =>
  openDB<Shape>(NAME, VERSION, {
    upgrade(db, from, _to, transaction) {
      if (from < 1) create(db)
      if (from < 2) void addPhotos(db, transaction)
      if (from < 3) db.createObjectStore('sheets', { keyPath: 'id' })
    },
    // A newer version wants in: make way, it knows how to read what is here.
    blocking(_current, _blocked, event) {
      ;(event.target as IDBDatabase).close()
      onGone()
    },
    // The browser closed it under us, as phones do with what is in the background.
    terminated: onGone,
  })

function create(db: Database): void {
  db.createObjectStore('outbox', { keyPath: 'n', autoIncrement: true }).createIndex('id', 'id', {
    unique: true,
  })
  db.createObjectStore('colonies', { keyPath: 'id' })
  db.createObjectStore('kept', { keyPath: 'key' }).put({ key: 'birth', id: crypto.randomUUID() })
}

/** Version 2: photos; and reasons for a refusal by field, where there was one sentence. */
async function addPhotos(db: Database, transaction: Upgrading): Promise<void> {
  db.createObjectStore('photos', { keyPath: 'id' })
  const outbox = transaction.objectStore('outbox')
  for (let at = await outbox.openCursor(); at !== null; at = await at.continue()) {
    const old = at.value as Omit<Waiting, 'refused'> & { refused: string | Waiting['refused'] }
    if (typeof old.refused === 'string')
      await at.update({ ...old, refused: [{ field: '', message: old.refused }] })
  }
}

/** Written through to the disk before it is called done: a phone may lose power the moment after. */
export const STRICT = { durability: 'strict' } as const
