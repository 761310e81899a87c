/** One database file and everything that is kept in it, put together: the journal, the people, the backups. */
import { dayIn } from '../days.ts'
import { type Cost, type Limits, type People, peopleOn } from '../people/index.ts'
import type { Connection } from '../store/connection.ts'
import { DamagedError, openConnection, type Store, StoreError, storeOn } from '../store/index.ts'
import { type Safekeeping, safekeepingOf } from '../store/safekeeping.ts'
import { assertNotLost, assertSound, wayOut } from '../store/sound.ts'

export interface House {
  /** For rooms that keep tables of their own in the file. */
  connection: Connection
  store: Store
  people: People
  /** Null for a database in memory. */
  safekeeping: Safekeeping | null
  close: () => void
}

export interface HouseOptions {
  clock?: () => Date
  /** Less than the real cost of hashing: for tests and the demo. */
  cost?: Cost
  limits?: Limits
  /** Hears when a backup fails. */
  report?: (error: unknown) => void
}

/** The machine's own time zone. */
export const machineZone = (): string => Intl.DateTimeFormat().resolvedOptions().timeZone

/** Opens the file, or makes it, bringing it up to date. Throws StoreError in words when it cannot be used. */
export function openHouse(file: string, options: HouseOptions = {}): House {
  const { clock = () => new Date(), cost, limits, report = () => undefined } = options
  const connection = openConnection(file)
  const store = storeOn(connection)
  const people = peopleOn(connection, {
    clock,
    ...(cost === undefined ? {} : { cost }),
    ...(limits === undefined ? {} : { limits }),
  })
  const dayOf = (instant: Date): string => dayIn(store.settings.get('timeZone') ?? machineZone(), instant)
  return {
    connection,
    store,
    people,
    safekeeping: connection.raw.memory ? null : safekeepingOf(connection, { clock, dayOf, report }),
    close: () => store.close(),
  }
}

/**
 * The same for serving: the whole file is read through first. Throws StoreError for a damaged file, naming the newest good
 * backup and how to go back to it.
 */
export function openSoundHouse(file: string, options: HouseOptions = {}): House {
  try {
    assertNotLost(file)
    const connection = openConnection(file)
    try {
      assertSound(connection)
    } finally {
      connection.raw.close()
    }
    return openHouse(file, options)
  } catch (error) {
    if (!(error instanceof DamagedError)) throw error
    throw new StoreError(`${error.message} It is not served.\n${wayOut(file)}`)
  }
}
