/** A yard that runs for one journey: its own database, its own port on this machine, and a clock the journey sets. */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fill } from '../../demo/fill.ts'
import type { Day } from '../../src/days.ts'
import { listen } from '../../src/node/listen.ts'
import { openServices } from '../../src/node/services.ts'
import type { People, Role } from '../../src/people/index.ts'
import type { Store } from '../../src/store/index.ts'
import type { Words } from '../../src/words/index.ts'
import { writeFilled } from './filled.ts'
import { moreEntries } from './many.ts'
import { CHEAP, signInAs } from './people.ts'
import { keepSignedIn } from './signed-in.ts'

export interface RunningYard {
  /** Where it answers, without a slash at the end. */
  url: string
  /** Where the first account is made, when there is none. */
  setUpUrl: string | null
  /** Where its database is. */
  folder: string
  store: Store
  people: People
  /** Makes it noon of that day, or another hour of it, '15:00'. */
  setDay: (day: Day, at?: string) => void
  /** What the server reported as its own bugs. */
  errors: string[]
  stop: () => Promise<void>
}

export interface YardOptions {
  day: Day
  /** Filled with the invented yard. */
  demo?: boolean
  /** Its colonies of these weeks so many times more. */
  copies?: number
  /** Whom pages opened by `watchedPage` are signed in as; default Wren, an operator. */
  as?: { name: string; role: Role }
  /** What is said in every language. */
  words?: Words
  /** Nobody is signed in, and nobody can be yet: the yard before its set-up. */
  untouched?: boolean
}

/** Starts a yard on that day, empty or filled; its pages are opened signed in. */
export async function startYard(options: YardOptions): Promise<RunningYard> {
  let now = noon(options.day)
  const folder = mkdtempSync(join(tmpdir(), 'resettle-journey-'))
  if (options.demo) writeFilled(join(folder, 'resettle.db'), options.day)
  const services = openServices(join(folder, 'resettle.db'), { cost: CHEAP, clock: () => now })
  const { store, people } = services
  store.settings.set('timeZone', 'UTC')
  if (options.copies !== undefined && options.copies > 0)
    fill(store, options.day, now.toISOString(), moreEntries(options.day, options.copies))
  const { words } = options
  const errors: string[] = []
  const session = options.untouched
    ? null
    : await signInAs(people, options.as ?? { name: 'Wren', role: 'operator' })
  const server = await listen({
    services,
    port: 0,
    ...(words === undefined ? {} : { words: () => words }),
    clock: () => now,
    report: (error, request) =>
      errors.push(`${request}: ${error instanceof Error ? (error.stack ?? error.message) : error}`),
  })
  if (session !== null) keepSignedIn(server.url, session)
  return {
    url: server.url,
    setUpUrl: server.setUpUrl,
    folder,
    store,
    people,
    setDay: (day, at = '12:00') => {
      now = new Date(`${day}T${at}:00Z`)
    },
    errors,
    stop: async () => {
      await server.stop()
      services.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

const noon = (day: Day): Date => new Date(`${day}T12:00:00Z`)
