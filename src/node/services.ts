/** One database file and everything that is kept in it, put together: the journal, the people, the backups. */

import { dayIn } from '../days.ts'
import type { Calendars } from '../features/calendar/index.ts'
import { calendarsOn } from '../features/calendar/node.ts'
import type { HookRules, Mailer, Messages } from '../features/messages/index.ts'
import { choicesOn, messengerOf, sentOn } from '../features/messages/node.ts'
import type { ApiTokens, Cost, Limits, People } from '../people/index.ts'
import { apiTokensOn, peopleOn } from '../people/node.ts'
import type { PhotoFiles } from '../photos/index.ts'
import { photoFolder, shelfIn, shelfInMemory } from '../photos/node.ts'
import type { BackupService, Connection, Store } from '../store/index.ts'
import {
  assertComplete,
  assertIntact,
  assertNotLost,
  backupServiceOf,
  DamagedError,
  lockFolder,
  openConnection,
  readingStoreOn,
  StoreError,
  storeOn,
  wayOut,
} from '../store/node.ts'
import { type Reader, readerOf } from './reader/reader.ts'

export interface Services {
  /** For features that keep tables of their own in the file. */
  connection: Connection
  store: Store
  people: People
  tokens: ApiTokens
  messages: Messages
  calendars: Calendars
  /** Null for a database in memory. */
  safekeeping: BackupService | null
  /** Pictures taken at the boxes. */
  photos: PhotoFiles
  /** The thread that makes long pages; left out where the services are not served, or live in memory. */
  reader?: Reader
  close: () => void
}

export interface ServicesOptions {
  clock?: () => Date
  /** Less than the real cost of hashing: for tests and the demo. */
  cost?: Cost
  limits?: Limits
  /** Called when a backup or a message fails. */
  report?: (error: unknown) => void
  /** Null: no e-mail is sent. */
  mailer?: Mailer | null
  /** Where webhooks may go; nowhere by default. */
  hookRules?: HookRules
  /** Address of the yard's pages, for messages. */
  home?: string | null
  /** At a start: plans of colonies that have left are recomputed after it, where an update changed the rules. */
  pastLater?: boolean
  /** The program of the thread that makes long pages and proves backups; left out, that is done between the requests. */
  readerProgram?: URL
}

/** The machine's own time zone. */
export const machineZone = (): string => Intl.DateTimeFormat().resolvedOptions().timeZone

/** No webhook goes anywhere. */
const NOWHERE: HookRules = { mayReach: () => false }

/** Opens the file, or makes it, bringing it up to date. Throws StoreError in words when it cannot be used. */
export function openServices(file: string, options: ServicesOptions = {}): Services {
  const connection = openConnection(file)
  return servicesOn(connection, storeOn(connection, options), options)
}

/** A second connection to a file that is open already, for reading only: nothing can be written on it. */
export function openToRead(file: string): Services {
  const connection = openConnection(file, { migrate: false })
  connection.raw.pragma('query_only = ON')
  return servicesOn(connection, readingStoreOn(connection))
}

function servicesOn(connection: Connection, store: Store, options: ServicesOptions = {}): Services {
  const { clock = () => new Date(), cost, limits, report = () => undefined } = options
  const { mailer = null, hookRules = NOWHERE, home = null } = options
  const file = connection.raw.name
  const people = peopleOn(connection, {
    clock,
    yardNames: () => store.yards().map((y) => y.yard),
    ...(cost === undefined ? {} : { cost }),
    ...(limits === undefined ? {} : { limits }),
  })
  const reader =
    options.readerProgram === undefined || connection.raw.memory
      ? undefined
      : readerOf({ program: options.readerProgram, file, zone: machineZone(), report })
  const zone = (): string => store.settings.get('timeZone') ?? machineZone()
  const dayOf = (instant: Date): string => dayIn(zone(), instant)
  const [choices, sent] = [choicesOn(connection), sentOn(connection)]
  const parts = { store, choices, sent, mailer, rules: hookRules, clock, zone, home, report }
  return {
    connection,
    store,
    people,
    tokens: apiTokensOn(connection, clock),
    messages: { choices, sent, messenger: messengerOf(parts) },
    calendars: calendarsOn(connection, clock),
    safekeeping: connection.raw.memory
      ? null
      : backupServiceOf(connection, { clock, dayOf, report, prove: reader?.prove }),
    photos: connection.raw.memory ? shelfInMemory() : shelfIn(photoFolder(file)),
    ...(reader === undefined ? {} : { reader }),
    close: () => store.close(),
  }
}

/**
 * The same for serving: for this process alone, the whole file read through and held against the backups first. Throws
 * StoreError when another server has the folder, and for a damaged file, naming the backup to go back to and how.
 */
export function openCheckedServices(file: string, options: ServicesOptions = {}): Services {
  const unlock = lockFolder(file)
  try {
    assertNotLost(file)
    const connection = openConnection(file)
    try {
      assertIntact(connection)
      assertComplete(connection)
    } finally {
      connection.raw.close()
    }
    const services = openServices(file, { pastLater: true, ...options })
    const close = (): void => {
      services.close()
      unlock()
    }
    return { ...services, close }
  } catch (error) {
    unlock()
    if (!(error instanceof DamagedError)) throw error
    throw new StoreError(`${error.message} It is not served.\n${wayOut(file)}`)
  }
}
