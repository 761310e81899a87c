/** A phone in a test: the sync service over an IndexedDB in memory, and a network between it and the yard that can fail. */
import 'fake-indexeddb/auto'
import { IDBFactory } from 'fake-indexeddb'
import type { Role } from '../../src/people/index.ts'
import { type Database, openDatabase } from '../../src/phone/database.ts'
import { type SyncService, syncServiceOf } from '../../src/phone/sync-service.ts'
import { ORIGIN, type TestYard } from './yard-app.ts'

/** What becomes of a request. `reach` hands it to the yard. */
export type Network = (path: string, reach: () => Promise<Response>) => Promise<Response>

export const good: Network = (_path, reach) => reach()
export const down: Network = () => Promise.reject(new TypeError('Failed to fetch'))
/** Requests for which `when` is true go the other way. */
export const sometimes =
  (when: (path: string) => boolean, other: Network): Network =>
  (path, reach) =>
    when(path) ? other(path, reach) : reach()
export const answering =
  (status: number, body = ''): Network =>
  () =>
    Promise.resolve(new Response(body, { status }))

export interface Phone {
  syncService: SyncService
  /** Opens a page as the worker does without signal; throws when the phone cannot make it. */
  open: (path: string) => Promise<string>
  /** Posts a form to the worker. Gives where it leads, or the page that comes back. */
  post: (
    path: string,
    fields: Record<string, string>,
  ) => Promise<{ status: number; to: string; html: string }>
  /** Who holds the phone. */
  heldBy: (role: Role | null) => void
  network: (next: Network) => void
  /** Signal, or what passes for it, and it is gone again. */
  signal: (passing?: Network) => Promise<void>
  /** Somebody else signs in on it, where there is no signal for anything but that. */
  handedTo: (role: Role) => Promise<void>
  /** The phone's own clock; the yard has another. */
  at: (instant: string) => void
  /** What is on its disk, read past the sync service. */
  database: () => Promise<Database>
  /** Requests that left the phone, in order. */
  asked: string[]
  errors: unknown[]
}

export function phoneIn(yard: TestYard, role: Role = 'helper', factory = new IDBFactory()): Phone {
  let holder: Role | null = role
  let network = good
  let now = new Date('2026-06-01T12:00:00Z')
  let last: Promise<unknown> = Promise.resolve()
  const asked: string[] = []
  const errors: unknown[] = []
  const open = (onGone?: () => void): Promise<Database> => {
    globalThis.indexedDB = factory
    return openDatabase(onGone)
  }
  const syncService = syncServiceOf({
    open,
    fetch: (path, init) => {
      asked.push(`${init.method ?? 'GET'} ${path.split('?')[0]}`)
      return network(path, () => yard.ask(holder, path, { ...init, signal: null }))
    },
    now: () => now,
    alone: (work) => {
      const mine = last.then(work)
      last = mine.catch(() => undefined)
      return mine
    },
    built: yard.deps.assets.built,
    browserReads: 'en',
    tell: () => undefined,
    report: (error) => errors.push(error),
  })
  const signal = async (passing = good): Promise<void> => {
    network = passing
    await syncService.send()
    network = down
  }
  return {
    syncService,
    signal,
    async handedTo(next) {
      holder = next
      await syncService.signedOut()
      await signal()
    },
    async open(path) {
      const answer = await syncService.page(new Request(`${ORIGIN}${path}`))
      if (answer === null) throw new Error(`the phone has no page ${path}`)
      return answer.text()
    },
    async post(path, fields) {
      const body = new URLSearchParams(fields)
      const answer = await syncService.form(new Request(`${ORIGIN}${path}`, { method: 'POST', body }))
      if (answer === null) throw new Error(`the phone takes no form ${path}`)
      return { status: answer.status, to: answer.headers.get('Location') ?? '', html: await answer.text() }
    },
    heldBy: (next) => {
      holder = next
    },
    network: (next) => {
      network = next
    },
    at: (instant) => {
      now = new Date(instant)
    },
    database: () => open(),
    asked,
    errors,
  }
}

let count = 0
/** A time-ordered id (UUIDv7 shape) that tests can read. */
export function nextId(): string {
  count++
  return `019e8000-0000-7000-8000-${String(count).padStart(12, '0')}`
}

/** The fields of a visit from outside, as its form posts them. */
export const outside = (on: string, more: Record<string, string> = {}): Record<string, string> => ({
  'id.': nextId(),
  on,
  opened: 'no',
  signs: 'none',
  ...more,
})

/** The text of a page, tags taken out, spaces made single. */
export const wordsOf = (html: string): string =>
  html
    .replaceAll(/<(script|style|svg)[\s\S]*?<\/\1>/g, ' ')
    .replaceAll(/<[^>]+>/g, ' ')
    .replaceAll('&quot;', '"')
    .replaceAll(/\s+/g, ' ')
