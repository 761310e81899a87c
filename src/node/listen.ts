/** Listening: the app on a port of this machine. */

import type { Server } from 'node:http'
import { isIPv6 } from 'node:net'
import { type ServerType, serve } from '@hono/node-server'
import ipaddr from 'ipaddr.js'
import type { DemoSignIn, Logger, Outside } from '../app/index.ts'
import { DIRECT, errorForLog, inSlices, pathForLog, remakerOf, SILENT, type Times } from '../app/node.ts'
import { newToken } from '../people/node.ts'
import { StoreError } from '../store/node.ts'
import { type AllDeps, createApp } from './app.ts'
import { assetsIn } from './assets.ts'
import { machineZone, type Services } from './services.ts'

export interface ListenOptions {
  services: Services
  /** 0: any free one. */
  port: number
  /** Default 127.0.0.1. Any other address only once there is an account. */
  host?: string
  outside?: Outside
  demo?: DemoSignIn
  clock?: () => Date
  log?: Logger
  /** How long headers may take, and a whole request at the very most; only tests want less. */
  times?: typeof TIMES
  /** How slowly a request may arrive, and how long its answer may take; only tests want less. */
  patience?: Times
  /** What is said in a language; only tests say it otherwise. */
  words?: AllDeps['words']
  /** Called with errors that are our bugs; by default they are logged. */
  report?: (error: unknown, request: string) => void
}

export interface Listening {
  /** Address to open in a browser on this machine. */
  url: string
  /** Where the first account is made, as the yard is called from outside; null when there is one. */
  setUpUrl: string | null
  /** Stops taking requests; the services stay open. */
  stop: () => Promise<void>
}

/** Milliseconds to send a whole request at the very most (whoever dribbles is cut off long before), and its headers. */
const REQUEST_MS = 3_600_000
const HEADERS_MS = 15_000

/** Serves the services. Rejects when the port cannot be had, and where strangers could come in before there is an account. */
export function listen(options: ListenOptions): Promise<Listening> {
  const { services, host = '127.0.0.1', outside = DIRECT, demo = null, log = SILENT } = options
  const empty = services.people.accounts.none()
  if (empty && !isLoopback(host)) return Promise.reject(new StoreError(noAccountYet(host)))
  const setUpToken = empty ? newToken() : null
  const report = options.report ?? reportTo(log)
  const { reader } = services
  const app = createApp({
    ...(reader === undefined ? {} : { reader }),
    ...(options.patience === undefined ? {} : { times: options.patience }),
    ...(options.words === undefined ? {} : { words: options.words }),
    store: services.store,
    people: services.people,
    tokens: services.tokens,
    messages: services.messages,
    calendars: services.calendars,
    safekeeping: services.safekeeping,
    photos: services.photos,
    outside,
    setUpToken,
    demo,
    log,
    report,
    clock: options.clock ?? (() => new Date()),
    zone: machineZone(),
    assets: assetsIn(),
    ready: inSlices(services.store.tracing()).catch((error) => report(error, 'tracing brood disease')),
  })
  // What an update left to be made again, if anything.
  remakerOf(services.store, (error) => report(error, 'making plans again')).start()
  return new Promise((resolve, reject) => {
    const server: ServerType = serve(
      { fetch: app.fetch, hostname: host, port: options.port, serverOptions: options.times ?? TIMES },
      (at) => {
        const url = `http://${isIPv6(host) ? `[${host}]` : host}:${at.port}`
        // A form is taken only from the address that was set, so that is where the page must be opened.
        const home = outside.url ?? url
        const setUpUrl = setUpToken === null ? null : `${home}/set-up?token=${setUpToken}`
        const stop = async (): Promise<void> => {
          await stopping(server as Server)
          await reader?.close()
        }
        resolve({ url, setUpUrl, stop })
      },
    )
    server.once('error', reject)
  })
}

const TIMES = { requestTimeout: REQUEST_MS, headersTimeout: HEADERS_MS, connectionsCheckingInterval: 5000 }

/** Whether only this machine can reach the address. */
export const isLoopback = (host: string): boolean =>
  host === 'localhost' || (ipaddr.isValid(host) && ipaddr.process(host).range() === 'loopback')

const noAccountYet = (host: string): string =>
  `There is no account yet, so ${host} would let in anybody. Start without an address first and open the set-up page on this machine, or make an account here: resettle person add NAME --role operator`

const stopping = (server: Server): Promise<void> =>
  new Promise((resolve) => {
    server.close(() => resolve())
    server.closeIdleConnections()
  })

/** A bug of ours, in the log: what and where. */
const reportTo =
  (log: Logger) =>
  (error: unknown, request: string): void => {
    const [method = '', path = ''] = request.split(' ')
    log.error({ method, path: pathForLog(path), error: errorForLog(error) }, 'failed')
  }
