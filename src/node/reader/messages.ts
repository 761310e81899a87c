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
  /** The next part of the answer is wanted. */
  | { kind: 'more'; id: number }
  /** Whoever asked has gone. */
  | { kind: 'stop'; id: number }

export type FromThread =
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
