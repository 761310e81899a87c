/** What the app is given, and what every request carries. */
import type { Context, Env as HonoEnv } from 'hono'
import type { Frame } from '../../web/parts/layout.tsx'
import type { Store } from '../store/index.ts'
import type { Assets } from './assets.ts'

export interface Deps {
  store: Store
  /** The instant now. */
  clock: () => Date
  /** Time zone (IANA) of a yard that has not chosen its own. */
  zone: string
  /** Built styles and browser code. */
  assets: Assets
  /** Hears of errors that are our bugs. */
  report: (error: unknown, request: string) => void
}

export interface Env extends HonoEnv {
  Variables: { frame: Frame }
}

export type Here = Context<Env>
