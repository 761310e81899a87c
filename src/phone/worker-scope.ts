/** The part of a service worker's surroundings that is used here: the compiler's own list cannot stand beside the page's. */

interface Lasting extends Event {
  waitUntil: (work: Promise<unknown>) => void
}

export interface Fetching extends Lasting {
  readonly request: Request
  readonly respondWith: (answer: Promise<Response> | Response) => void
}

interface Asked extends Lasting {
  readonly data: unknown
  readonly source: { postMessage: (message: unknown) => void } | null
}

interface Syncing extends Lasting {
  readonly tag: string
}

interface Scope {
  addEventListener(type: 'install' | 'activate', hear: (event: Lasting) => void): void
  addEventListener(type: 'fetch', hear: (event: Fetching) => void): void
  addEventListener(type: 'message', hear: (event: Asked) => void): void
  addEventListener(type: 'sync', hear: (event: Syncing) => void): void
  skipWaiting: () => Promise<void>
  readonly clients: {
    claim: () => Promise<void>
    matchAll: (options: { type: 'window' }) => Promise<{ postMessage: (message: unknown) => void }[]>
  }
  readonly registration: { sync?: { register: (tag: string) => Promise<void> } }
  readonly location: Location
}

export const worker = globalThis as unknown as Scope
