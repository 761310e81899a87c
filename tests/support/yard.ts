/** A yard that runs for one journey: its own database, its own port on this machine, and a clock the journey sets. */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fill } from '../../demo/fill.ts'
import type { Day } from '../../src/days.ts'
import { listen } from '../../src/server/listen.ts'
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
  store.settings.set('timeZone', 'UTC')
  let now = noon(options.day)
  if (options.demo) fill(store, options.day, now.toISOString())
  const errors: string[] = []
  const server = await listen({
    store,
    port: 0,
    clock: () => now,
    report: (error, request) =>
      errors.push(`${request}: ${error instanceof Error ? (error.stack ?? error.message) : error}`),
  })
  return {
    url: server.url,
    store,
    setDay: (day) => {
      now = noon(day)
    },
    errors,
    stop: async () => {
      await server.stop()
      store.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

const noon = (day: Day): Date => new Date(`${day}T12:00:00Z`)
