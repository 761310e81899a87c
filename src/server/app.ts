/** The app: what every request passes through, and one line for each feature's routes. Listens to nothing by itself. */
import { Hono } from 'hono'
import { bodyLimit } from 'hono/body-limit'
import { compress } from 'hono/compress'
import { assetFiles } from './assets.ts'
import type { Deps, Env } from './deps.ts'
import { broken, tooLarge, unknownPage } from './errors.tsx'
import { frame } from './frame.tsx'
import { colony } from './routes/colony.tsx'
import { corrections } from './routes/corrections.tsx'
import { entries } from './routes/entries.ts'
import { intake } from './routes/intake.tsx'
import { move } from './routes/move.tsx'
import { note } from './routes/note.tsx'
import { outcome } from './routes/outcome.tsx'
import { outsideLook } from './routes/outside-look.tsx'
import { settings } from './routes/settings.tsx'
import { signature } from './routes/signature.tsx'
import { today } from './routes/today.tsx'
import { visit } from './routes/visit.tsx'
import { yard } from './routes/yard.tsx'

/** Features, each a sub-app with its own paths. A new feature is a file in routes/ and a line here. */
const ROUTES: ((deps: Deps) => Hono<Env>)[] = [
  today,
  yard,
  intake,
  colony,
  visit,
  outsideLook,
  outcome,
  move,
  note,
  corrections,
  entries,
  signature,
  settings,
]

const BODY_LIMIT = 1024 * 1024

/** Everything but listening. */
export function createApp(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  app.use(compress())
  app.route('/', assetFiles(deps.assets))
  app.use(bodyLimit({ maxSize: BODY_LIMIT, onError: tooLarge }))
  app.use(frame(deps))
  for (const feature of ROUTES) app.route('/', feature(deps))
  app.notFound(unknownPage)
  app.onError(broken(deps))
  return app
}
