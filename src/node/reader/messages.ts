/** What the server and its reading thread say to each other. */
import type { Viewer } from '../../app/index.ts'

/** A page to be made. */
export interface Asked {
  kind: 'ask'
  id: number
  method: string
  /** Whole, as the yard is called from outside. */
  url: string
  headers: [string, string][]
  viewer: Viewer
  /** The instant of the request, UTC ISO. */
  now: string
}

export type ToThread =
  | Asked
  /** Whether a copy of the database is whole. */
  | { kind: 'prove'; id: number; file: string }
  /** The next part of the answer is wanted. */
  | { kind: 'more'; id: number }
  /** Whoever asked has gone. */
  | { kind: 'stop'; id: number }

export type FromThread =
  /** Why it cannot serve as a backup, or null. */
  | { kind: 'proved'; id: number; problem: string | null }
  /** The page is being worked at now. */
  | { kind: 'begun'; id: number }
  | { kind: 'head'; id: number; status: number; headers: [string, string][] }
  /** Null: that was all. */
  | { kind: 'part'; id: number; bytes: Uint8Array | null }
  | { kind: 'failed'; id: number; message: string }
  /** A bug of ours, to be logged; the page says so itself. */
  | { kind: 'bug'; error: unknown; request: string }

/** What the thread is started with. */
export interface ThreadData {
  /** The database. */
  file: string
  /** Time zone of a yard that has not chosen its own. */
  zone: string
}

/** What a page may depend on; who is signed in was found out already. */
const PASSED = ['accept', 'accept-language', 'host', 'content-type']

export const passedOn = (headers: Headers): [string, string][] =>
  PASSED.flatMap((name): [string, string][] => {
    const value = headers.get(name)
    return value === null ? [] : [[name, value]]
  })
