/** What the app is given, and what every request carries. */

import type { Context, Env as HonoEnv } from 'hono'
import type { Day } from '../days.ts'
import type { Language } from '../languages.ts'
import type { Frame } from '../parts/index.ts'
import type { ApiTokens, Member, People, Person, Role, TokenHolder } from '../people/index.ts'
import type { PhotoFiles, PhotoShelf } from '../photos/index.ts'
import type { BackupService, Repository, Store } from '../store/index.ts'
import type { Words } from '../words/index.ts'
import type { Outside } from './address.ts'
import type { Daily } from './daily.ts'
import type { ForecastCache } from './forecasts.ts'
import type { Grouped } from './group.ts'
import type { Logger } from './logging.ts'

/** Built styles and browser code. */
export interface Assets {
  /** Folder of the build. */
  folder: string
  /** Address of a built file, by its source name; null when it was not built. */
  built: (source: string) => string | null
}

export interface SheetHistory {
  /** The fields that were changed when its “go” fell; none where nobody knows. */
  changedAtFall(): string[]
  /** Who wrote these words, and when (UTC, ISO); undefined where they came with the first version. */
  saidBy(text: string): { by: string; at: string } | undefined
  /** Who looked again for what is said so before the cut of that day; undefined where it came with the first version. */
  asideBy(said: string, day: Day): string | undefined
}

/** What the pages of the round are given. A phone without signal answers them too, so nothing here is the server's alone. */
export interface PageDeps {
  /** As the viewer's role sees it, wherever there is a viewer. */
  store: Repository
  /** The instant now. */
  clock: () => Date
  /** Time zone (IANA) of a yard that has not chosen its own. */
  zone: string
  /** Addresses of built styles and browser code. */
  assets: Pick<Assets, 'built'>
  /** Pictures taken at the boxes. */
  photos: PhotoShelf
  /** How the yard is called from outside; where it is not given, as the request says. */
  origin?: (c: AppContext) => string
  /** Forecasts already made; a feature that is given none makes its own. */
  forecasts?: ForecastCache
  /** How many customers it is time to tell of their bees; left out where there are no letters. */
  lettersDue?: (today: Day) => number
  /** Who has an account in the yard; left out where nobody knows. */
  crew?: () => readonly Member[]
  /** What older versions of a removal sheet tell; left out on a phone, which keeps the last one alone. */
  history?: (c: AppContext, id: string) => SheetHistory
  /** Whether that is the passphrase of an account; left out where no passphrase can be looked up, as on a phone. */
  prove?: (c: AppContext, name: string, passphrase: string) => Promise<'right' | 'wrong' | 'wait'>
  /** Lets writes that arrive at the same time share one wait for the disk; left out, each waits for itself. */
  grouped?: Grouped
  /** What is said in a language; only tests say it otherwise. */
  words?: (language: Language) => Words
  /** Called with errors that are our bugs. */
  report: (error: unknown, request: string) => void
}

export interface Deps extends PageDeps {
  store: Store
  photos: PhotoFiles
  people: People
  /** Personal tokens for the HTTP API. */
  tokens: ApiTokens
  /** Backups; null for a database that lives in memory. */
  safekeeping: BackupService | null
  /** How the yard is called from outside, and which proxies are trusted. */
  outside: Outside
  /** What the set-up page asks for while there is no account. */
  setUpToken: string | null
  /** In the invented yard only: whom a visitor may be without a passphrase. */
  demo: DemoSignIn | null
  log: Logger
  /** Makes the plans of a new day in slices; left out, they are made at once. */
  daily?: Daily
  /** Built styles and browser code. */
  assets: Assets
}

/** The people of the invented yard that its sign-in page offers. */
export interface DemoSignIn {
  people: { name: string; role: Role }[]
}

/** Who is asking, and with which session. */
export interface Viewer extends Person {
  session: string
}

export interface Env extends HonoEnv {
  /** `holder`: whose token a request to the HTTP API carries. */
  Variables: { frame: Frame; viewer: Viewer | null; holder?: TokenHolder }
  /** Set when the app of a role answers. */
  Bindings: { viewer?: Viewer }
}

export type AppContext = Context<Env>
