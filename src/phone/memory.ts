/** What is on the phone's disk, read once and kept in memory until it changes. */

import type { Day } from '../days.ts'
import type { RoundColony } from '../features/offline/index.ts'
import { killing } from '../features/removal/index.ts'
import type { PhoneState } from '../parts/index.ts'
import { EMPTY_SHEET, withFound } from '../records/index.ts'
import { clockOff } from './clock.ts'
import { connectionOf, type On } from './connection.ts'
import {
  type Database,
  isRefused,
  isToldTo,
  type KeptSheet,
  type RoundHead,
  type Waiting,
  waitingOn,
} from './database.ts'
import { all } from './outbox.ts'
import { bookOf, type PhoneBook } from './repository.ts'
import { type Base, birth, forgetRound, type KeptRound, keptRound } from './round-store.ts'
import { inHandsOf } from './sheet-outbox.ts'

export interface Snapshot extends KeptRound {
  birth: string
  colonies: RoundColony[]
  waiting: Waiting[]
  sheets: KeptSheet[]
}

/** What the last talk with the server showed; forgotten when the worker ends. */
interface Standing {
  signIn: boolean
  /** Null until the server was asked. */
  reached: boolean | null
  /** Goes up whenever another session may have begun: what was asked before is not for whoever is there now. */
  session: number
}

export interface Memory {
  on: On
  standing: Standing
  snapshot: () => Promise<Snapshot>
  state: () => Promise<PhoneState>
  /** The book of a day, made once for as long as nothing changes; for reading only. */
  repository: (of: Snapshot, base: Base, day: Day) => PhoneBook
  /** The round is as it was, asked for anew. */
  confirmed: (head: RoundHead) => Promise<void>
  /** Something on the disk has changed. Reports it to every page. */
  changed: () => Promise<void>
  /** Forgets the round: whoever it was for is not signed in any more. */
  forget: () => Promise<void>
  /** Reports how it stands to every page. */
  tellAll: () => Promise<void>
}

export function memoryOf(
  open: (onGone: () => void) => Promise<Database>,
  tell: (state: PhoneState) => void,
  now: () => Date,
): Memory {
  let known: Promise<Snapshot> | null = null
  let made: { key: unknown[]; repository: PhoneBook } | null = null
  const standing: Standing = { signIn: false, reached: null, session: 0 }
  const on = connectionOf(open, () => {
    known = null
  })

  function snapshot(): Promise<Snapshot> {
    if (known === null) {
      const loading = on(read)
      known = loading
      loading.catch(() => {
        if (known === loading) known = null
      })
    }
    return known
  }

  async function state(): Promise<PhoneState> {
    return {
      ...stateOf(await snapshot(), now(), standing.signIn),
      signIn: standing.signIn,
      reached: standing.reached !== false,
    }
  }

  const tellAll = async (): Promise<void> => tell(await state())

  const changed = (): Promise<void> => {
    known = null
    return tellAll()
  }

  return {
    on,
    standing,
    snapshot,
    state,
    repository(of, base, day) {
      const key = [
        of.colonies,
        of.waiting,
        of.sheets,
        day,
        base.viewer.id,
        JSON.stringify([base.settings, base.yards]),
      ]
      if (made === null || key.some((part, i) => part !== made?.key[i]))
        made = { key, repository: bookOf({ ...of, head: base, today: day }) }
      return made.repository
    },
    async confirmed(head) {
      const mine = snapshot()
      const before = await mine
      // A form may have been kept, or the round forgotten, in between: then it is read from the disk again.
      if (known === mine && before.head !== null) known = Promise.resolve({ ...before, head, base: head })
    },
    changed,
    async forget() {
      standing.session++
      standing.signIn = false
      await on(forgetRound)
      await changed()
    },
    tellAll,
  }
}

const read = async (db: Database): Promise<Snapshot> => {
  const [name, round, colonies, waiting, sheets] = await Promise.all([
    birth(db),
    keptRound(db),
    db.getAll('colonies'),
    all(db),
    db.getAll('sheets'),
  ])
  // Colonies of a round in another format cannot be read either.
  return {
    birth: name,
    ...round,
    colonies: round.head === null ? [] : colonies,
    waiting,
    sheets: sheets.map((s) => inHandsOf(round.base?.viewer.id, s)),
  }
}

function stateOf(
  { birth, head, base, colonies, waiting, sheets }: Snapshot,
  now: Date,
  signIn: boolean,
): Omit<PhoneState, 'signIn' | 'reached'> {
  const written = sheets.flatMap((s) => waitingOn(s).map((w) => ({ id: s.id, ...w })))
  const all = [...waiting, ...written]
  const refused = all.filter((w) => w.refused !== null).length
  const last = all.map((w) => w.keptAt).sort()
  return {
    birth,
    waiting: all.length - refused,
    refused,
    told: sheets.filter((s) => isToldTo(s, base?.viewer.id)).length,
    unsent: all.map((w) => w.id),
    lastKept: last.at(-1) ?? null,
    newsAt: head?.newsAt ?? '',
    // The yard’s own moment, where it said one: a phone’s clock may be hours off.
    fetchedAt: head?.at ?? head?.fetchedAt ?? null,
    boxes: colonies.length,
    clock: clockOff(head, now),
    kills: byOwner(sheets.flatMap((s) => killsOn(signIn ? s : { ...s, mine: null }))),
  }
}

/** One line for each who has to sign in, however many sheets wait: it stands above every page, that of signing in too. */
export const byOwner = (kills: NonNullable<PhoneState['kills']>): typeof kills =>
  [...new Set(kills.map(({ by }) => by))].map((by) => ({
    by,
    what: [...new Set(kills.filter((k) => k.by === by).flatMap(({ what }) => what.split(', ')))].join(', '),
  }))

/** What can kill of a sheet, that the yard does not know, and that nobody sends before its writer has signed in. */
export const killsOn = (s: KeptSheet): NonNullable<PhoneState['kills']> =>
  waitingOn(s).flatMap((w) => {
    const before = s.theirs?.sheet ?? w.from ?? EMPTY_SHEET
    // Of a sheet that was refused the yard has kept what it found, and no more; of one that was erased, or never came there, nothing.
    const known = isRefused(w) && w.base > 0 && s.theirs !== null
    const what = killing(w.sheet, known ? withFound(before, w.sheet, w.from) : before)
    return what === '' ? [] : [{ what, by: w.owner.name }]
  })
