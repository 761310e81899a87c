/** Listening: the app on a port of this machine. */
import { type ServerType, serve } from '@hono/node-server'
import type { Store } from '../store/index.ts'
import { createApp } from './app.ts'
import { assetsIn } from './assets.ts'

export interface ListenOptions {
  store: Store
  /** 0: any free one. */
  port: number
  /** Default 127.0.0.1: without accounts, nobody outside this machine may come in. */
  host?: string
  clock?: () => Date
  report?: (error: unknown, request: string) => void
}

export interface Listening {
  /** Address to open in a browser. */
  url: string
  /** Stops taking requests; the store stays open. */
  stop: () => Promise<void>
}

/** Serves a store. Rejects when the port cannot be had. */
export function listen(options: ListenOptions): Promise<Listening> {
  const host = options.host ?? '127.0.0.1'
  const app = createApp({
    store: options.store,
    clock: options.clock ?? (() => new Date()),
    zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
    assets: assetsIn(),
    report: options.report ?? toStderr,
  })
  return new Promise((resolve, reject) => {
    const server: ServerType = serve({ fetch: app.fetch, hostname: host, port: options.port }, (at) =>
      resolve({ url: `http://${host}:${at.port}`, stop: () => stopping(server) }),
    )
    server.once('error', reject)
  })
}

const stopping = (server: ServerType): Promise<void> =>
  new Promise((resolve) => {
    server.close(() => resolve())
    if ('closeIdleConnections' in server) server.closeIdleConnections()
  })

function toStderr(error: unknown, request: string): void {
  process.stderr.write(
    `${request}: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`,
  )
}
