/**
 * The phone's side of the yard: keeps the round and the outbox, answers pages from them, sends what waits. Everything that
 * only a browser has is handed in, so that it runs in a test as it runs in the service worker.
 */

import { bareFrame, forecastCache } from '../app/index.ts'
import { type Day, dayIn } from '../days.ts'
import { SignOutPage, UnlistedPage } from '../features/offline/index.ts'
import { ROUND_PAGES } from '../features/phone-features.ts'
import { entry as entrySchema } from '../journal/index.ts'
import type { Language } from '../languages.ts'
import { type PhoneState, waitingWords } from '../parts/index.ts'
import { repositoryFor } from '../people/index.ts'
import type { PhotoShelf } from '../photos/index.ts'
import type { JournalRow } from '../store/index.ts'
import { ASK_THE_SERVER, phoneApp } from './app.ts'
import { yardMoment } from './clock.ts'
import { type Database, isRefused, type Waiting, waitingOn } from './database.ts'
import { type LineParts, lineOf, type Send } from './line.ts'
import { byOwner, killsOn, memoryOf, type Snapshot } from './memory.ts'
import { pageOf } from './no-signal.ts'
import * as outbox from './outbox.ts'
import type { OutboxActions } from './outbox-pages.tsx'
import { bookOf, type PhoneBook } from './repository.ts'
import type { Base } from './round-store.ts'
import { keepSheets, overSheet, saidSheets, takeOutSheet } from './sheet-outbox.ts'

export interface SyncServiceParts extends LineParts {
  open: (onGone: () => void) => Promise<Database>
  built: (source: string) => string | null
  /** What the browser asks for, where nobody's own choice is known. */
  browserReads: Language
  /** Called with how it stands, after every change. */
  tell: (state: PhoneState) => void
}

export interface SyncService {
  state: () => Promise<PhoneState>
  /** The page of this address as the phone would make it; null when it cannot: then only the server can. */
  page: (request: Request) => Promise<Response | null>
  /** A photo of an entry that waits; null when it is not here. */
  photo: PhotoShelf['find']
  /** Takes a form: what it says is on the disk when this resolves. Null when only the server can take it. */
  form: (request: Request) => Promise<Response | null>
  send: Send
  /** What to say before signing out while something waits; null when nothing does, or it was said and is to be done anyway. */
  signOutWarning: (request: Request) => Promise<Response | null>
  /** Forgets the round: somebody has signed out, or in. The outbox stays. */
  signedOut: () => Promise<void>
  /** What whoever the round is for reads. */
  language: () => Promise<Language>
}

export function syncServiceOf(parts: SyncServiceParts): SyncService {
  const memory = memoryOf(parts.open, parts.tell, parts.now)
  const { on, snapshot, state, changed } = memory
  const send = lineOf(memory, parts)
  let forms: Promise<unknown> = Promise.resolve()
  let forecasts = forecastCache()

  const photos: PhotoShelf = {
    keep: (photo) => on((db) => outbox.keepPhoto(db, photo, parts.now().toISOString())),
    find: (id) => on((db) => outbox.photo(db, id)).then((kept) => kept?.bytes ?? null),
  }

  const actions = (of: Snapshot, base: Base, today: Day): OutboxActions => ({
    waiting: of.waiting,
    sheets: of.sheets,
    overSheet: (id) => on((db) => overSheet(db, id)).then(changed),
    said: () => on((db) => saidSheets(db, base.viewer.id)).then(changed),
    takeOutSheet: (id) => on((db) => takeOutSheet(db, id, parts.now().toISOString())).then(changed),
    person: base.viewer.id,
    signIn: memory.standing.signIn,
    bookWithout(w) {
      const waiting = of.waiting.filter((other) => other.n !== w.n)
      const repository = bookOf({ ...of, waiting, head: base, today })
      return w.entry.kind !== 'intake' && repository.colony(w.colony) === null
        ? unjudged()
        : {
            repository: repositoryFor(base.viewer.role, repository),
            made: () => repository.kept.map(asSent)[0],
          }
    },
    async rewrite(n, entry) {
      await on((db) => outbox.rewrite(db, n, entry))
      // Forecasts are kept by the ids of entries, and this one says something else now.
      forecasts = forecastCache()
      await changed()
    },
    sendAgain: (n) => on((db) => outbox.sendAgain(db, n)).then(changed),
    dayRight: (n) => on((db) => outbox.dayRight(db, n)).then(changed),
    takeOut: (n) => on((db) => outbox.takeOut(db, n, parts.now().toISOString())).then(changed),
    send: () => send().then(() => undefined),
  })

  /** What the phone's app answers, and the book it answered from; null where only the server can answer. */
  async function answered(request: Request, bookFrom: (of: Snapshot, base: Base, day: Day) => PhoneBook) {
    const of = await snapshot()
    const { base } = of
    if (base === null) return null
    // The yard's own time, as far as it is known: a phone three days behind must not propose its own day.
    const clock = (): Date => (of.head === null ? parts.now() : yardMoment(of.head, parts.now()))
    const day = dayIn(base.zone, clock())
    const repository = bookFrom(of, base, day)
    const { built, report } = parts
    const app = phoneApp({
      repository,
      base,
      pages: of.head === null ? [] : ROUND_PAGES,
      state: await state(),
      clock,
      built,
      photos,
      forecasts,
      report,
      actions: actions(of, base, day),
    })
    const answer = await app.fetch(request)
    const behind = clock().getTime() - parts.now().getTime()
    return isForServer(answer) ? null : { answer, repository, viewer: base.viewer, behind }
  }

  /**
   * Of what waits, no more than how much, where it is not known who looks; and what can kill of it, in place of a job that the server knows
   * less of than this phone does, where the phone does not know the rest. Null for every other page.
   */
  async function unlisted(request: Request): Promise<Response | null> {
    const path = new URL(request.url).pathname
    const { base, head } = await snapshot()
    const ofJob = A_JOB.test(path) && head === null
    if (!ofJob && (path !== '/outbox' || base !== null)) return null
    // Nobody may be signed in, who then is to sign in first.
    if (ofJob && memory.standing.reached === null) await send()
    const now = await state()
    const frame = bareFrame(path, parts.built, parts.browserReads)
    const kills = ofJob && !now.signIn ? (now.kills ?? []).map(frame.words.phone.kills) : []
    if (ofJob && kills.length === 0) return null
    const waiting = waitingWords(now, frame.words)
    return waiting === null ? null : pageOf(UnlistedPage({ frame, waiting, kills }), ofJob ? 503 : 200)
  }

  /** A form that the server showed may be of a later version than this phone has heard of: it is judged by no older one. */
  async function hearOfIt(request: Request): Promise<void> {
    const id = A_JOB.exec(new URL(request.url).pathname)?.[1]
    if (id === undefined) return
    const version = Number((await request.formData()).get('version'))
    const theirs = (await snapshot()).sheets.find((s) => s.id === id)?.theirs
    if (theirs == null || !(Math.floor(version) > theirs.version)) return
    await Promise.race([send(), new Promise((done) => setTimeout(done, HEARING_MS))])
  }

  async function takeForm(request: Request): Promise<Response | null> {
    await hearOfIt(request.clone()).catch(() => undefined)
    const taken = await answered(request, (of, head, today) => bookOf({ ...of, head, today }))
    if (taken === null) return unlisted(request)
    const { answer, repository, viewer, behind } = taken
    const { kept: sheets } = repository.removals
    if (sheets.length > 0) {
      const { id, name } = viewer
      await on((db) => keepSheets(db, sheets, { id, name }, behind))
      await changed()
    }
    if (repository.kept.length > 0) {
      const [{ id, name }, keptAt] = [viewer, parts.now().toISOString()]
      const { clock } = await state()
      const entries = repository.kept.map((row) => ({
        id: row.entry.id,
        entry: asSent(row),
        colony: row.entry.colony,
        tag: repository.colony(row.entry.colony)?.summary.tag ?? row.written,
        owner: { id, name },
        keptAt,
        ...(clock === null ? {} : { clock }),
      }))
      await on((db) => outbox.keep(db, entries))
      await changed()
    }
    return answer
  }

  return {
    state,
    page: async (request) => (await answered(request, memory.repository))?.answer ?? unlisted(request),
    photo: photos.find,
    form(request) {
      // One after the other: two at once would each be judged without the other.
      const mine = forms.then(() => takeForm(request))
      forms = mine.catch(() => undefined)
      return mine
    },
    send,
    async signOutWarning(request) {
      const now = await state()
      const { base, sheets, waiting } = await snapshot()
      const viewer = base?.viewer ?? null
      const language = viewer?.language ?? parts.browserReads
      const frame = { ...bareFrame(new URL(request.url).pathname, parts.built, language), viewer }
      const words = waitingWords({ ...now, told: 0 }, frame.words)
      if (words === null || (await request.formData()).get('anyway') === 'yes') return null
      const { outbox, phone } = frame.words
      const all = [...waiting, ...sheets.flatMap(waitingOn)]
      const each = (lines: string[]) => [...new Set(lines)]
      return pageOf(
        SignOutPage({
          frame,
          waiting: words,
          kills: byOwner(sheets.flatMap(killsOn)).map(phone.kills),
          rest: each(all.map((w) => outbox[isRefused(w) ? 'stuck' : 'theirs'](w.owner.name))),
          goes: all.some((w) => w.owner.id === viewer?.id && !isRefused(w)),
        }),
      )
    },
    signedOut: memory.forget,
    language: async () => (await snapshot()).base?.viewer.language ?? parts.browserReads,
  }
}

const A_JOB = /^\/removals\/([\da-f]{8}-[\da-f-]+)/
/** Milliseconds to wait for it; then it is judged by what is here, and says so. */
const HEARING_MS = 2500

/** No page of the round, nothing that is kept here, not allowed, or broken here: the server may know better. */
const isForServer = ({ headers, status }: Response): boolean =>
  headers.has(ASK_THE_SERVER) || status === 403 || status === 404 || status >= 500

/** For an entry of a colony this phone no longer knows, because it left the yard: only the server can judge it. */
function unjudged(): ReturnType<OutboxActions['bookWithout']> {
  let made: Waiting['entry'] | undefined
  return {
    repository: {
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
