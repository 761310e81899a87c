/**
 * The phone's side of the yard: keeps the round and the outbox, answers pages from them, sends what waits. Everything that
 * only a browser has is handed in, so that it runs in a test as it runs in the service worker.
 */
import { type Day, dayIn } from '../../src/days.ts'
import type { RoundColony } from '../../src/exchange/round-bundle.ts'
import { entry as entrySchema } from '../../src/journal/entry.ts'
import { bookFor } from '../../src/people/store-for.ts'
import { bareFrame } from '../../src/server/errors.tsx'
import type { JournalRow } from '../../src/store/types.ts'
import { SignOutPage } from '../pages/outbox.tsx'
import { ASK_THE_SERVER, phoneApp } from './app.ts'
import { bookOf, type PhoneBook } from './book.ts'
import type { Database, RoundHead, Waiting } from './database.ts'
import { pageOf } from './no-signal.ts'
import * as outbox from './outbox.ts'
import type { OutboxDesk } from './outbox-pages.tsx'
import { birth, forgetRound, head, isBundle, keepRound, sinceOf } from './round-store.ts'
import { type Ended, PATIENCE_MS, send as sendAll } from './sender.ts'
import { type PhoneState, waitingWords } from './state.ts'

export interface KeeperParts {
  open: (onGone: () => void) => Promise<Database>
  fetch: (path: string, init: RequestInit) => Promise<Response>
  now: () => Date
  /** Runs one piece of work at a time, over all pages and workers of this browser. */
  alone: <T>(work: () => Promise<T>) => Promise<T>
  built: (source: string) => string | null
  /** Hears how it stands, after every change. */
  tell: (state: PhoneState) => void
  report: (error: unknown, request: string) => void
}

export interface Keeper {
  state: () => Promise<PhoneState>
  /** The page of this address as the phone would make it; null when it cannot: then only the server can. */
  page: (request: Request) => Promise<Response | null>
  /** Takes a form: what it says is on the disk when this resolves. Null when only the server can take it. */
  form: (request: Request) => Promise<Response | null>
  /** Brings the round up to date, unless it was that few milliseconds ago, and sends what waits. */
  send: (fresh?: number) => Promise<Ended>
  /** What to say before signing out while something waits; null when nothing does, or it was said and is to be done anyway. */
  signOutWarning: (request: Request) => Promise<Response | null>
  /** Forgets the round: somebody has signed out. The outbox stays. */
  signedOut: () => Promise<void>
}

interface Snapshot {
  birth: string
  head: RoundHead | null
  colonies: RoundColony[]
  waiting: Waiting[]
}

export function keeperOf(parts: KeeperParts): Keeper {
  let opened: Promise<Database> | null = null
  let known: Promise<Snapshot> | null = null
  let cached: { day: Day; of: Snapshot; book: PhoneBook } | null = null
  let signIn = false
  /** Null until the server was asked. */
  let reached: boolean | null = null
  let forms: Promise<unknown> = Promise.resolve()

  const forget = (): void => {
    opened = null
    known = null
  }

  /** Runs work on the database, and once more on a new connection when the browser has closed the old one under us. */
  async function on<T>(work: (db: Database) => Promise<T>): Promise<T> {
    opened ??= parts.open(forget)
    const mine = opened
    try {
      return await work(await mine)
    } catch (error) {
      if (opened === mine) forget()
      if (!isClosed(error)) throw error
      opened ??= parts.open(forget)
      return work(await opened)
    }
  }

  const load = (db: Database): Promise<Snapshot> =>
    Promise.all([birth(db), head(db), db.getAll('colonies'), outbox.all(db)]).then(
      ([birth, head, colonies, waiting]) => ({ birth, head, colonies, waiting }),
    )

  function snapshot(): Promise<Snapshot> {
    if (known === null) {
      const loading = on(load)
      known = loading
      loading.catch(() => {
        if (known === loading) known = null
      })
    }
    return known
  }

  const changed = async (): Promise<void> => {
    known = null
    parts.tell(await state())
  }

  async function state(): Promise<PhoneState> {
    const { birth, head, waiting } = await snapshot()
    const refused = waiting.filter((w) => w.refused !== null).length
    return {
      birth,
      waiting: waiting.length - refused,
      refused,
      unsent: waiting.map((w) => w.id),
      lastKept: waiting.at(-1)?.keptAt ?? null,
      signIn,
      newsAt: head?.newsAt ?? '',
      fetchedAt: head?.fetchedAt ?? null,
      reached: reached !== false,
    }
  }

  const bookAt = (of: Snapshot, head: RoundHead, day: Day): PhoneBook => {
    if (cached?.of !== of || cached.day !== day)
      cached = { of, day, book: bookOf({ ...of, head, today: day }) }
    return cached.book
  }

  function desk(of: Snapshot, head: RoundHead, day: Day): OutboxDesk {
    return {
      waiting: of.waiting,
      person: head.viewer.id,
      signIn,
      bookWithout(w) {
        const book = bookOf({
          ...of,
          waiting: of.waiting.filter((other) => other.n !== w.n),
          head,
          today: day,
        })
        return w.entry.kind !== 'intake' && book.colony(w.colony) === null
          ? unjudged()
          : { book: bookFor(head.viewer.role, book), made: () => book.kept.map(asSent)[0] }
      },
      rewrite: (n, entry) => on((db) => outbox.rewrite(db, n, entry)).then(changed),
      sendAgain: (n) => on((db) => outbox.sendAgain(db, n)).then(changed),
      takeOut: (n) => on((db) => outbox.takeOut(db, n)).then(changed),
      send: () => send().then(() => undefined),
    }
  }

  /** The app of a moment; null when there is no round on this phone. */
  async function appWith(book: (of: Snapshot, head: RoundHead, day: Day) => PhoneBook) {
    const of = await snapshot()
    const { head } = of
    if (head === null) return null
    const day = dayIn(head.zone, parts.now())
    const made: PhoneBook = book(of, head, day)
    const app = phoneApp({
      book: made,
      head,
      state: await state(),
      clock: parts.now,
      built: parts.built,
      desk: desk(of, head, day),
      report: parts.report,
    })
    return { app, book: made, head }
  }

  async function page(request: Request): Promise<Response | null> {
    const made = await appWith(bookAt)
    const answer = await made?.app.fetch(request)
    // A colony that has left the yard is not kept here, nor a page that is not of the round: the server may know it.
    return answer === undefined || isForServer(answer) ? null : answer
  }

  async function takeForm(request: Request): Promise<Response | null> {
    const made = await appWith((of, head, today) => bookOf({ ...of, head, today }))
    const answer = await made?.app.fetch(request)
    if (made === null || answer === undefined || isForServer(answer)) return null
    const { kept, colony } = made.book
    if (kept.length > 0) {
      const { id, name } = made.head.viewer
      const keptAt = parts.now().toISOString()
      const entries = kept.map((row) => ({
        id: row.entry.id,
        entry: asSent(row),
        colony: row.entry.colony,
        tag: colony(row.entry.colony)?.summary.tag ?? row.written,
        owner: { id, name },
        keptAt,
      }))
      await on((db) => outbox.keep(db, entries))
      await changed()
    }
    return answer
  }

  /** One form after the other: two at once would each be judged without the other. */
  function form(request: Request): Promise<Response | null> {
    const mine = forms.then(() => takeForm(request))
    forms = mine.catch(() => undefined)
    return mine
  }

  /** Fetches the round, or what is new in it. */
  async function refresh(): Promise<Ended> {
    const { head } = await snapshot()
    const since = sinceOf(head, parts.now())
    const asked = new URLSearchParams()
    if (head !== null && since !== null) {
      asked.set('since', String(since))
      asked.set('person', head.viewer.id)
      asked.set('role', head.viewer.role)
    }
    let answer: unknown
    try {
      const response = await parts.fetch(`/phone/round?${asked}`, {
        headers: { Accept: 'application/json' },
        redirect: 'error',
        cache: 'no-store',
        signal: AbortSignal.timeout(PATIENCE_MS),
      })
      if (response.status === 401) return 'sign-in'
      answer = response.ok ? await response.json() : null
    } catch {
      return 'no-answer'
    }
    if (!isBundle(answer)) return 'no-answer'
    await on((db) => keepRound(db, answer, parts.now()))
    known = null
    return 'done'
  }

  const isFresh = (head: RoundHead | null, milliseconds: number): boolean =>
    head !== null && Math.abs(parts.now().getTime() - Date.parse(head.fetchedAt)) < milliseconds

  /**
   * The round first, then what waits: asking for the round tells whether there is signal and who is signed in. An entry
   * that is handed to a dead network may have arrived for all we know, and could no longer be changed in place.
   */
  function send(fresh = 0): Promise<Ended> {
    return parts.alone(async () => {
      // What another worker or an older version of this one did in between is on the disk, not in our memory.
      known = null
      let ended: Ended =
        reached === true && isFresh((await snapshot()).head, fresh) ? 'done' : await refresh()
      if (ended === 'done') ended = await sendWaiting()
      if (ended === 'other-person') {
        ended = await refresh()
        if (ended === 'done') ended = await sendWaiting()
      }
      signIn = ended === 'sign-in'
      reached = ended !== 'no-answer'
      await changed()
      return ended
    })
  }

  async function sendWaiting(): Promise<Ended> {
    const { head } = await snapshot()
    return head === null
      ? 'done'
      : on((db) => sendAll({ db, fetch: parts.fetch, now: parts.now, viewer: head.viewer, moved }))
  }

  const moved = (): void => {
    changed().catch((error: unknown) => parts.report(error, 'outbox'))
  }

  async function signOutWarning(request: Request): Promise<Response | null> {
    const now = await state()
    const words = waitingWords(now)
    const { head } = await snapshot()
    if (words === null || (await request.formData()).get('anyway') === 'yes') return null
    const frame = { ...bareFrame(new URL(request.url).pathname, parts.built), viewer: head?.viewer ?? null }
    return pageOf(SignOutPage({ frame, waiting: words }))
  }

  async function signedOut(): Promise<void> {
    await on(forgetRound)
    cached = null
    await changed()
  }

  return { state, page, form, send, signOutWarning, signedOut }
}

/** No page of the round, nothing that is kept here, not allowed, or broken here: the server may know better. */
const isForServer = ({ headers, status }: Response): boolean =>
  headers.has(ASK_THE_SERVER) || status === 403 || status === 404 || status >= 500

/** For an entry of a colony this phone no longer knows, because it left the yard: only the server can judge it. */
function unjudged(): ReturnType<OutboxDesk['bookWithout']> {
  let made: Waiting['entry'] | undefined
  return {
    book: {
      append([raw]) {
        made = entrySchema.parse(raw)
        return { ok: true, accepted: [made.id], already: [] }
      },
    },
    made: () => made,
  }
}

/** The entry as it is sent: it calls its colony what whoever kept it called it. */
const asSent = (row: JournalRow): Waiting['entry'] => ({ ...row.entry, colony: row.written })

const isClosed = (error: unknown): boolean =>
  error instanceof Error && (error.name === 'InvalidStateError' || error.name === 'UnknownError')
