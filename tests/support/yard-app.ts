/** The whole app in one process, on a database in memory or in a file, with accounts of every role: for tests over HTTP. */

import { DIRECT } from '../../src/app/address.ts'
import { SILENT } from '../../src/app/logging.ts'
import type { Day } from '../../src/days.ts'
import type { AllDeps } from '../../src/node/app.ts'
import { createApp } from '../../src/node/app.ts'
import { assetsIn } from '../../src/node/assets.ts'
import { openServices, type Services, type ServicesOptions } from '../../src/node/services.ts'
import type { Limits, Role } from '../../src/people/index.ts'
import { limitsOf } from '../../src/people/limits.ts'
import { CHEAP, signInAs } from './people.ts'

export const ORIGIN = 'http://yard.test'

/** Who is who in these tests. */
export const NAMES: Record<Role, string> = { operator: 'Odalys', beekeeper: 'Bram', helper: 'Teuila' }

export interface TestYard {
  services: Services
  deps: AllDeps
  app: ReturnType<typeof createApp>
  /** Errors the app reported as bugs. */
  errors: unknown[]
  /** Sets the clock. */
  at: (instant: string) => void
  /** A session of that role's person; the same each time. */
  session: (role: Role) => Promise<string>
  /** Asks as that role (null: a stranger), as a browser on one of our pages would. */
  ask: (role: Role | null, path: string, init?: RequestInit) => Promise<Response>
  /** Posts a form. */
  post: (role: Role | null, path: string, fields: Record<string, string>) => Promise<Response>
  /** Posts entries as the outbox does. */
  send: (role: Role | null, entries: unknown) => Promise<Response>
}

/** Never in the way: for tests that are not about limits. */
export const unlimited = (): Limits => {
  const none = { points: 1e9, window: 900 }
  return limitsOf(none, none, none)
}

export interface TestYardOptions {
  file?: string
  day?: Day
  limits?: Limits
  deps?: Partial<AllDeps>
  services?: Partial<ServicesOptions>
}

export function testYard(options: TestYardOptions = {}): TestYard {
  let now = new Date(`${options.day ?? '2026-06-01'}T12:00:00Z`)
  const clock = (): Date => now
  const services = openServices(options.file ?? ':memory:', {
    clock,
    cost: CHEAP,
    limits: options.limits ?? unlimited(),
    ...options.services,
  })
  services.store.settings.set('timeZone', 'UTC')
  const errors: unknown[] = []
  const deps: AllDeps = {
    ...services,
    outside: DIRECT,
    setUpToken: null,
    demo: null,
    log: SILENT,
    clock,
    zone: 'UTC',
    assets: assetsIn(),
    report: (error) => errors.push(error),
    ...options.deps,
  }
  const app = createApp(deps)
  const sessions = new Map<Role, Promise<string>>()
  const session = (role: Role): Promise<string> => {
    const known = sessions.get(role) ?? signInAs(services.people, { name: NAMES[role], role })
    sessions.set(role, known)
    return known
  }
  const ask: TestYard['ask'] = async (role, path, init = {}) => {
    const headers = new Headers({ Origin: ORIGIN, Accept: 'text/html' })
    if (role !== null) headers.set('Cookie', `resettle=${await session(role)}`)
    for (const [name, value] of new Headers(init.headers)) headers.set(name, value)
    return app.request(`${ORIGIN}${path}`, { ...init, headers })
  }
  return {
    services,
    deps,
    app,
    errors,
    at: (instant) => {
      now = new Date(instant)
    },
    session,
    ask,
    post: (role, path, fields) => ask(role, path, { method: 'POST', body: new URLSearchParams(fields) }),
    send: (role, entries) =>
      ask(role, '/entries', {
        method: 'POST',
        headers: { 'Content-Type': 'application/json', Accept: 'application/json' },
        body: JSON.stringify(entries),
      }),
  }
}
