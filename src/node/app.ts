/**
 * The app: what every request passes through, and one line for each feature's routes. Listens to nothing by itself.
 *
 * Outside the door are the pages of signing in. Behind it there is one app for each role, built on the store as that role
 * sees it, so that no page can show or write what its viewer may not.
 */
import { Hono } from 'hono'
import { bodyLimit } from 'hono/body-limit'
import { compress } from 'hono/compress'
import type { Env, Here } from '../app/context.ts'
import { broken, tooLarge, unknownPage } from '../app/errors.tsx'
import { foresightOf } from '../app/forecasts.ts'
import { frame } from '../app/frame.tsx'
import { logged } from '../app/logging.ts'
import { allowed } from '../app/permission.tsx'
import { headers, ownPagesOnly, timeLimit } from '../app/security.ts'
import { account } from '../features/accounts/account-route.tsx'
import { invite } from '../features/accounts/invite-route.tsx'
import { people } from '../features/accounts/people-route.tsx'
import { noStrangers, visitor } from '../features/accounts/session.ts'
import { setUp } from '../features/accounts/set-up-route.tsx'
import { signIn } from '../features/accounts/sign-in-route.tsx'
import { api } from '../features/api/route.ts'
import { apiTokens } from '../features/api/tokens-route.tsx'
import type { CalendarDeps } from '../features/calendar/feeds.ts'
import { calendar, calendarFeed } from '../features/calendar/route.tsx'
import { photos } from '../features/colony/photos-route.ts'
import { changes } from '../features/data/changes-route.tsx'
import { data } from '../features/data/route.tsx'
import { entries } from '../features/entries/sync-route.ts'
import { moveOutRecord } from '../features/handing-on/move-out-record-route.tsx'
import { yardBook } from '../features/handing-on/yard-book-route.tsx'
import { health } from '../features/health/route.tsx'
import { coloniesImport } from '../features/import/route.tsx'
import { letters, openLetter } from '../features/letters/route.tsx'
import type { MessagesDeps } from '../features/messages/messages.ts'
import { messages } from '../features/messages/route.tsx'
import { offline } from '../features/offline/route.tsx'
import { labels } from '../features/paper/labels-route.tsx'
import { paper } from '../features/paper/route.tsx'
import { sheetEntry } from '../features/paper/sheet-entry-route.tsx'
import { ROUND_PAGES } from '../features/phone-features.ts'
import { protocol } from '../features/protocol/route.tsx'
import { settings } from '../features/protocol/settings-route.tsx'
import { rates } from '../features/rates/route.tsx'
import { removalIntake } from '../features/removal/intake-route.tsx'
import { removals } from '../features/removal/route.tsx'
import { removalSign } from '../features/removal/sign-route.tsx'
import { removalSteps } from '../features/removal/steps-route.tsx'
import { removalTerms } from '../features/removal/terms-route.tsx'
import { review } from '../features/review/route.tsx'
import { supplies, supplyWarmer } from '../features/supplies/route.tsx'
import { stands } from '../features/supplies/stands-route.tsx'
import { ROLES, type Role, storeFor } from '../people/index.ts'
import { may } from '../people/permissions.ts'
import { PHOTO_LIMIT } from '../photos/photo.ts'
import { assetFiles } from './assets.ts'

/** What all features together are given. */
export type AllDeps = MessagesDeps & CalendarDeps

type Feature = (deps: AllDeps) => Hono<Env>

/** What a stranger can reach. */
const DOOR: Feature[] = [signIn, setUp, invite, openLetter, calendarFeed]

/**
 * Features, each a sub-app with its own paths; those a phone can answer without signal are in round-pages.ts. A new
 * feature is a file in routes/, a line here, and a line for each of its paths in src/people/permissions.ts, which says
 * who may open it.
 */
const ROUTES: Feature[] = [
  ...ROUND_PAGES,
  paper,
  labels,
  sheetEntry,
  calendar,
  entries,
  offline,
  photos,
  settings,
  account,
  people,
  data,
  coloniesImport,
  changes,
  review,
  supplies,
  stands,
  rates,
  removalTerms,
  removalIntake,
  removalSign,
  removalSteps,
  removals,
  protocol,
  health,
  letters,
  moveOutRecord,
  yardBook,
  messages,
  apiTokens,
]

export const BODY_LIMIT = 1024 * 1024

/** Paths that take more than a form, and how much. */
const LARGE: Record<string, number> = { '/data/import': 64 * BODY_LIMIT, '/data/colonies': 8 * BODY_LIMIT }

/** A photo, and a form with the photos of one entry as a camera makes them. */
const PHOTO = /^\/photos\//
const MOST_WITH_PHOTOS = 4 * PHOTO_LIMIT

function mostFor(c: Here): number {
  const large = LARGE[c.req.path]
  if (large !== undefined) return large
  if (PHOTO.test(c.req.path)) return PHOTO_LIMIT
  return /^multipart\/form-data\b/i.test(c.req.header('content-type') ?? '') ? MOST_WITH_PHOTOS : BODY_LIMIT
}

/** Everything but listening. */
export function createApp(deps: AllDeps): Hono<Env> {
  const app = new Hono<Env>()
  app.use(logged(deps.log, deps.outside), compress(), headers(deps.outside), timeLimit)
  app.route('/', assetFiles(deps.assets))
  // Asks for a token in a header, which no other site can make a browser send; a session is nothing to it.
  app.route('/', api(deps))
  app.use(ownPagesOnly(deps), visitor(deps))
  app.use((c, next) => {
    // Strangers get the smaller limit everywhere: it must not tell which paths there are.
    return bodyLimit({ maxSize: c.var.viewer === null ? BODY_LIMIT : mostFor(c), onError: tooLarge })(c, next)
  })
  for (const feature of DOOR) app.route('/', feature(deps))
  app.use(noStrangers(deps))
  const shared = { ...deps, foresight: deps.foresight ?? foresightOf() }
  const behind = Object.fromEntries(ROLES.map((role) => [role, roomsFor(role, shared)])) as Record<
    Role,
    Hono<Env>
  >
  app.all('*', (c) => {
    const { viewer } = c.var
    return viewer === null ? unknownPage(c) : behind[viewer.role].fetch(c.req.raw, { ...c.env, viewer })
  })
  app.onError(broken(deps))
  return app
}

/** Everything behind the door, as one role has it. */
export function roomsFor(role: Role, deps: AllDeps): Hono<Env> {
  const own = { ...deps, store: storeFor(role, deps.store) }
  const app = new Hono<Env>()
  app.use(async (c, next) => {
    c.set('viewer', c.env.viewer ?? null)
    await next()
  })
  app.use(frame(own, may(role, 'see-supplies') ? supplyWarmer(own) : undefined), allowed)
  for (const feature of ROUTES) app.route('/', feature(own))
  app.notFound(unknownPage)
  app.onError(broken(own))
  return app
}
