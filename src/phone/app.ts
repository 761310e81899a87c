/**
 * The pages of the round, answered in the phone: the server's own routes over what the phone keeps. Whoever calls this
 * hands in the book and looks afterwards at what was appended to it.
 */

import { Hono } from 'hono'
import { secureHeaders } from 'hono/secure-headers'
import {
  allowed,
  broken,
  type Env,
  type ForecastCache,
  frameFor,
  NO_SNIFFING_AROUND,
  type PageDeps,
  unknownPage,
  type Viewer,
} from '../app/index.ts'
import type { ROUND_PAGES } from '../features/phone-features.ts'
import type { PhoneState } from '../parts/index.ts'
import { repositoryFor } from '../people/index.ts'
import type { PhotoShelf } from '../photos/index.ts'
import type { Repository } from '../store/index.ts'
import { type OutboxActions, outboxPages } from './outbox-pages.tsx'
import type { Base } from './round-store.ts'

export interface PhoneAppParts {
  repository: Repository
  base: Pick<Base, 'viewer' | 'zone' | 'crew'>
  /** Those of the round; none where it cannot be read, and only the outbox is left. */
  pages: typeof ROUND_PAGES
  state: PhoneState
  clock: () => Date
  built: (source: string) => string | null
  actions: OutboxActions
  photos: PhotoShelf
  /** Forecasts made before. */
  forecasts: ForecastCache
  report: (error: unknown, request: string) => void
}

/** Set on an answer when the phone has nothing to say and the server should be asked. */
export const ASK_THE_SERVER = 'Resettle-Elsewhere'

/** One app for one state of what the phone keeps. */
export function phoneApp({
  repository,
  base,
  pages,
  state,
  clock,
  built,
  actions,
  photos,
  forecasts,
  report,
}: PhoneAppParts): Hono<Env> {
  const deps: PageDeps = {
    store: repositoryFor(base.viewer.role, repository),
    clock,
    zone: base.zone,
    assets: { built },
    photos,
    forecasts,
    crew: () => base.crew ?? [],
    report,
  }
  const app = new Hono<Env>()
  app.use(secureHeaders({ ...NO_SNIFFING_AROUND, strictTransportSecurity: false }))
  app.use(async (c, next) => {
    c.set('viewer', asViewer(base))
    c.set('frame', { ...frameFor(c, deps), phone: state })
    await next()
  })
  app.use(allowed)
  for (const some of pages) app.route('/', some(deps))
  app.route('/', outboxPages(deps, actions))
  app.notFound(async (c) => {
    const answer = await unknownPage(c)
    answer.headers.set(ASK_THE_SERVER, 'yes')
    return answer
  })
  app.onError(broken(deps))
  return app
}

/** Whoever was signed in when the round was fetched. */
const asViewer = ({ viewer }: Pick<Base, 'viewer'>): Viewer => ({
  ...viewer,
  language: viewer.language ?? null,
  state: 'active',
  createdAt: '',
  createdBy: null,
  session: '',
})
