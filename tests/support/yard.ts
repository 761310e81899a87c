/** A yard that runs for one journey: its own database, its own port on this machine, and a clock the journey sets. */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { serve } from '@hono/node-server'
import { fill } from '../../demo/fill.ts'
import type { Day } from '../../src/days.ts'
import { createApp } from '../../src/server/app.ts'
import { assetsIn } from '../../src/server/assets.ts'
import { openStore, type Store } from '../../src/store/index.ts'

export interface RunningYard {
  /** Where it answers, without a slash at the end. */
  url: string
  store: Store
  /** Makes it noon of that day. */
  setDay: (day: Day) => void
  /** What the server reported as its own bugs. */
  errors: string[]
  stop: () => Promise<void>
}

/** Starts a yard on that day: empty, or filled with the invented one. */
export async function startYard(options: { day: Day; demo?: boolean }): Promise<RunningYard> {
  const folder = mkdtempSync(join(tmpdir(), 'resettle-journey-'))
  const store = openStore(join(folder, 'resettle.db'))
  let now = noon(options.day)
  if (options.demo) fill(store, options.day, now.toISOString())
  const errors: string[] = []
  const app = createApp({
    store,
    clock: () => now,
    zone: 'UTC',
    assets: assetsIn(),
    report: (error, request) =>
      errors.push(`${request}: ${error instanceof Error ? (error.stack ?? error.message) : error}`),
  })
  const { server, port } = await listening(app.fetch)
  return {
    url: `http://127.0.0.1:${port}`,
    store,
    setDay: (day) => {
      now = noon(day)
    },
    errors,
    stop: async () => {
      await new Promise<void>((done) => {
        server.close(() => done())
        if ('closeAllConnections' in server) server.closeAllConnections()
      })
      store.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

const noon = (day: Day): Date => new Date(`${day}T12:00:00Z`)

type Fetch = Parameters<typeof serve>[0]['fetch']

function listening(fetch: Fetch): Promise<{ server: ReturnType<typeof serve>; port: number }> {
  return new Promise((ready) => {
    const server = serve({ fetch, port: 0, hostname: '127.0.0.1' }, ({ port }) => ready({ server, port }))
  })
}
