import type { Day } from '../days.ts'
import type { Words } from '../words/index.ts'

/** What these sentences need of the catalogue. */
type PhoneWords = Pick<Words, 'phone'>

/** How it stands with what a phone keeps, as the worker reports it to every page. */
export interface PhoneState {
  /** Name of the database, made when it was. Another one than before: the browser threw the old one away. */
  birth: string
  /** Entries that wait to be sent, of whoever they are. */
  waiting: number
  /** Entries the server would not have; they are counted apart. */
  refused: number
  /** Sheets of whoever is signed in that were put together with a colleague's, and of which that is to be said; absent from an older worker. */
  told?: number
  /** Ids of all of these. */
  unsent: string[]
  /** When the last of these was kept. UTC, ISO; null when there is none. */
  lastKept: string | null
  /** The session has ended: nothing is sent before somebody signs in. */
  signIn: boolean
  /** When somebody else's entries last came in with the round. UTC, ISO; '' for never. */
  newsAt: string
  /** When the round was last brought up to date. UTC, ISO; null when the phone has none. */
  fetchedAt: string | null
  /** Boxes whose journals are kept here. */
  boxes: number
  /** The phone’s day is another than the yard’s; null where it is the same, or that cannot be told. */
  clock: ClockOff | null
  /** What can kill and nobody sends before its writer has signed in. 'gas pipe' of 'Bram'; absent from an older worker. */
  kills?: { what: string; by: string }[]
  /** The server answered the last time it was asked, if it was. */
  reached: boolean
}

/** Two days that should be one. */
export interface ClockOff {
  phone: Day
  yard: Day
}

/** 'This phone says Sun 7 Jun; in the yard it is Wed 10 Jun. …' */
export const clockWords = ({ phone, yard }: ClockOff, w: PhoneWords): string => w.phone.clock(phone, yard)

/** What a page asks of the worker. */
export type Ask =
  /** Say how it stands. */
  | 'state'
  /** Send what waits, and bring the round up to date. */
  | 'send'
  /** Take over from the older version. */
  | 'take-over'

/** '3 waiting to be sent', '2 waiting to be sent, 1 not accepted'; null when there is neither. */
export function waitingWords(
  { waiting, refused, told = 0 }: Pick<PhoneState, 'waiting' | 'refused' | 'told'>,
  w: PhoneWords,
): string | null {
  const parts = [
    waiting === 0 ? null : w.phone.waiting(waiting),
    refused === 0 ? null : w.phone.refused(refused),
    told === 0 ? null : w.phone.told(told),
  ].filter((p) => p !== null)
  return parts.length === 0 ? null : parts.join(', ')
}

/** Where an entry is corrected; one that waits on this phone is changed before it is sent. */
export const correctPath = (id: string, { phone }: { phone?: PhoneState }): string =>
  phone?.unsent.includes(id) ? `/outbox#o-${id}` : `/entry/${id}/correct`
