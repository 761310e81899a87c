/**
 * The app: what every request passes through, and one line for each feature's routes. Listens to nothing by itself.
 *
 * Outside are the pages of signing in. Behind them there is one app for each role, built on the store as that role
 * sees it, so that no page can show or write what its viewer may not.
 */

import { Hono, type MiddlewareHandler, type Next } from 'hono'
import { bodyLimit } from 'hono/body-limit'
import { compress } from 'hono/compress'
import { HTTPException } from 'hono/http-exception'
import {
  type AppContext,
  allowed,
  broken,
  type Env,
  forecastCache,
  frame,
  groupOf,
  sendsJson,
  todayOf,
  tooLarge,
  unknownPage,
} from '../app/index.ts'
import {
  addressOf,
  dailyOf,
  headers,
  logged,
  originOf,
  othersFirst,
  ownPagesOnly,
  type Times,
  timeLimit,
} from '../app/node.ts'
import { account, invite, noStrangers, people, setUp, signIn, visitor } from '../features/accounts/node.ts'
import { api, apiTokens } from '../features/api/node.ts'
import type { CalendarDeps } from '../features/calendar/index.ts'
import { calendar, calendarFeed } from '../features/calendar/node.ts'
import { photos } from '../features/colony/index.ts'
import { changes, data } from '../features/data/node.ts'
import { entries } from '../features/entries/index.ts'
import { followUp, moveOutRecord } from '../features/handing-on/index.ts'
import { handingOn, keeperSheets, openKeeperSheet, yardBook } from '../features/handing-on/node.ts'
import { health } from '../features/health/index.ts'
import { coloniesImport } from '../features/import/node.ts'
import { countingLetters } from '../features/letters/index.ts'
import { letters, openLetter } from '../features/letters/node.ts'
import type { MessagesDeps } from '../features/messages/index.ts'
import { messages } from '../features/messages/node.ts'
import { offline } from '../features/offline/index.ts'
import { paper, sheetEntry } from '../features/paper/index.ts'
import { labels } from '../features/paper/node.ts'
import { ROUND_PAGES } from '../features/phone-features.ts'
import { settings } from '../features/protocol/index.ts'
import { protocol } from '../features/protocol/node.ts'
import { rates } from '../features/rates/node.ts'
import { leftBehind, refusedEntries } from '../features/refused/index.ts'
import { removalTerms } from '../features/removal/index.ts'
import {
  historyOf,
  removalCallBack,
  removalErase,
  removalPrint,
  removalSync,
  signedText,
} from '../features/removal/node.ts'
import { review } from '../features/review/node.ts'
import { stands, supplies, supplyWarmer } from '../features/supplies/node.ts'
import { tidying } from '../features/tidying/node.ts'
import { weeks } from '../features/weeks/node.ts'
import { guardFor, membersOf, ROLES, type Role, storeFor } from '../people/index.ts'
import { PHOTO_LIMIT } from '../photos/index.ts'
import { assetFiles } from './assets.ts'
import { isLong, takesAWhile } from './reader/long-pages.ts'
import type { Reader } from './reader/reader.ts'
import { turns } from './reader/turns.ts'

/** What all features together are given. */
export type AllDeps = MessagesDeps &
  CalendarDeps & {
    /** Makes long pages beside the requests; without one they are made between them. */
    reader?: Reader
    /** How long requests may take; only tests want less. */
    times?: Times
    /** Entries wait for it; without it for nothing. */
    ready?: Promise<unknown>
  }

type Feature = (deps: AllDeps) => Hono<Env>

/** What a stranger can reach. */
const PUBLIC_FEATURES: Feature[] = [
  signIn,
  setUp,
  invite,
  openLetter,
  openKeeperSheet,
  signedText,
  calendarFeed,
]

/**
 * Features, each a sub-app with its own paths; those a phone can answer without signal are in
 * src/features/phone-features.ts. A new page is a file in its feature, a line here, and a line for its path in
 * src/people/permissions.ts, which says who may open it.
 */
const ROUTES: Feature[] = [
  ...ROUND_PAGES,
  paper,
  labels,
  sheetEntry,
  calendar,
  entries,
  leftBehind,
  refusedEntries,
  offline,
  photos,
  settings,
  account,
  people,
  data,
  coloniesImport,
  tidying,
  changes,
  review,
  supplies,
  stands,
  weeks,
  rates,
  removalTerms,
  removalErase,
  removalPrint,
  removalSync,
  removalCallBack,
  protocol,
  health,
  letters,
  moveOutRecord,
  followUp,
  keeperSheets,
  handingOn,
  yardBook,
  messages,
  apiTokens,
]

const BODY_LIMIT = 1024 * 1024

/** Paths that take more than a form, and how much. */
const LARGE: Record<string, number> = { '/data/import': 64 * BODY_LIMIT, '/data/colonies': 8 * BODY_LIMIT }

/** A photo, and a form with the photos of one entry as a camera makes them. */
const PHOTO = /^\/photos\//
const MOST_WITH_PHOTOS = 4 * PHOTO_LIMIT

function mostFor(c: AppContext): number {
  const large = LARGE[c.req.path]
  if (large !== undefined) return large
  if (PHOTO.test(c.req.path)) return PHOTO_LIMIT
  return /^multipart\/form-data\b/i.test(c.req.header('content-type') ?? '') ? MOST_WITH_PHOTOS : BODY_LIMIT
}

const squeeze = compress()

/** Whoever sends JSON gets a short answer, which compressing would only delay. */
const squeezed: MiddlewareHandler<Env> = (c, next) => (sendsJson(c) ? next() : squeeze(c, next))

/**
 * What says its length is judged by that, and Node reads no more than it; hono's own check would first make a stream of
 * every body, which costs more than most entries.
 */
function atMost(c: AppContext, next: Next, maxSize: number): ReturnType<MiddlewareHandler<Env>> {
  if (c.req.method === 'GET' || c.req.method === 'HEAD') return next()
  const length = c.req.header('content-length')
  if (length !== undefined && c.req.header('transfer-encoding') === undefined)
    return Number(length) <= maxSize ? next() : Promise.resolve(tooLarge(c))
  return bodyLimit({ maxSize, onError: tooLarge })(c, next)
}

/** Everything but listening. */
export function createApp(given: AllDeps): Hono<Env> {
  const daily = given.daily ?? dailyOf(given.store)
  const { ready } = given
  const grouped =
    given.grouped ?? groupOf((work) => given.store.together(work), { pause: othersFirst, ready })
  const deps = { ...given, daily, grouped }
  const app = new Hono<Env>()
  app.use(logged(deps.log, deps.outside), squeezed, headers(deps.outside), timeLimit(deps.times))
  app.route('/', assetFiles(deps.assets))
  // Asks for a token in a header, which no other site can make a browser send; a session is nothing to it.
  app.route('/', api(deps))
  app.use(ownPagesOnly(deps), visitor(deps))
  app.use((c, next) => {
    // Strangers get the smaller limit everywhere: it must not tell which paths there are.
    return atMost(c, next, c.var.viewer === null ? BODY_LIMIT : mostFor(c))
  })
  for (const feature of PUBLIC_FEATURES) app.route('/', feature(deps))
  app.use(noStrangers(deps))
  const origin = (c: AppContext): string => originOf(c, deps.outside)
  const shared = { ...deps, origin, forecasts: deps.forecasts ?? forecastCache() }
  const behind = Object.fromEntries(ROLES.map((role) => [role, appFor(role, shared)])) as Record<
    Role,
    Hono<Env>
  >
  const turn = turns()
  app.all('*', async (c) => {
    const { viewer } = c.var
    if (viewer === null) return unknownPage(c)
    const { reader } = deps
    const { method, path } = c.req
    const url = new URL(c.req.url)
    const beside = reader !== undefined && isLong(method, path, deps.store.size, url.search)
    if (!beside && takesAWhile(method, path)) await turn()
    const here = () => behind[viewer.role].fetch(c.req.raw, { ...c.env, viewer })
    if (!beside) return here()
    await daily(todayOf(deps))
    const { headers, signal } = c.req.raw
    const made = reader.answer({
      method,
      url: originOf(c, deps.outside) + url.pathname + url.search,
      headers,
      viewer,
      now: deps.clock(),
      signal,
    })
    return made.catch((error: unknown) => {
      if (error instanceof HTTPException) throw error
      // A thread that cannot be had is reported; the page is still made, if more slowly.
      deps.report(error, `${method} ${path}`)
      return here()
    })
  })
  app.onError(broken(deps))
  return app
}

/** Everything behind the sign-in, as one role has it. */
export function appFor(role: Role, deps: AllDeps): Hono<Env> {
  const own = {
    ...deps,
    store: storeFor(role, deps.store),
    lettersDue: countingLetters(deps.store),
    crew: () => membersOf(deps.people.accounts.list()),
    history: historyOf(storeFor(role, deps.store)),
    prove: async (c: AppContext, name: string, passphrase: string) => {
      const proof = await deps.people.prove(name, passphrase, addressOf(c, deps.outside))
      return proof.ok ? ('right' as const) : proof.why
    },
  }
  const app = new Hono<Env>()
  app.use(async (c, next) => {
    c.set('viewer', c.env.viewer ?? null)
    await next()
  })
  app.use(frame(own, guardFor(role).may('see-supplies') ? supplyWarmer(own) : undefined), allowed)
  for (const feature of ROUTES) app.route('/', feature(own))
  app.notFound(unknownPage)
  app.onError(broken(own))
  return app
}
