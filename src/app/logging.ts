/**
 * One line a request, as JSON. No query, no names, no addresses, no secrets: parts of a path that could be a secret or
 * name something are left out, and a caller is known by a number that means nothing after a restart.
 */
import { createHmac, randomBytes } from 'node:crypto'
import { createMiddleware } from 'hono/factory'
import { type Logger, pino } from 'pino'
import { addressOf, type Outside } from './address.ts'
import type { Env } from './context.ts'
import { rotatingFile } from './log-file.ts'

export type { Logger } from 'pino'

/**
 * Logs as JSON lines on stderr (stdout is for results), or into the file RESETTLE_LOG_FILE names, which is set aside when it
 * is full. Level by RESETTLE_LOG (default 'info'; 'silent' for none).
 */
export const loggerFrom = (env: NodeJS.ProcessEnv): Logger =>
  pino(
    { level: levelFrom(env.RESETTLE_LOG), base: null, timestamp: pino.stdTimeFunctions.isoTime },
    env.RESETTLE_LOG_FILE ? rotatingFile(env.RESETTLE_LOG_FILE) : pino.destination(2),
  )

const LEVELS = ['silent', 'error', 'warn', 'info', 'debug']

const levelFrom = (text: string | undefined): string =>
  text !== undefined && LEVELS.includes(text) ? text : 'info'

export const SILENT: Logger = pino({ enabled: false })

/** First parts of paths whose next part names nothing and opens nothing. */
const PLAIN =
  /^\/(assets\/.*|yard|intake|entries|settings|people|data|changes|account(\/(messages|tokens))?|letters|yard-book|sign-in|sign-out|set-up)?$/

const API_PART = /^(v1|colonies|plans|entries|review|me|openapi\.json)$/

/** A path as it may be logged. Example: '/invite/Xy…/z' becomes '/invite/…', '/colony/A-1/visit' '/colony/…/visit'. */
export function pathForLog(path: string): string {
  if (PLAIN.test(path)) return path
  const [, first = '', ...rest] = path.split('/')
  // Below a resource's name come tags, which may be any word.
  if (first === 'api') return `/${['api', ...rest.slice(0, 2).filter((p) => API_PART.test(p))].join('/')}`
  const known = /^[a-z-]{1,20}$/
  const shown = rest.map((part, i) => (i > 0 && known.test(part) ? part : '…'))
  return `/${[known.test(first) ? first : '…', ...shown].join('/')}`.slice(0, 80)
}

/** Callers whose number is kept at hand. */
const MOST_CALLERS = 1000

/** Logs each request after it was answered. */
export function logged(log: Logger, outside: Outside) {
  const key = randomBytes(16)
  const known = new Map<string, string>()
  const caller = (address: string): string => {
    const before = known.get(address)
    if (before !== undefined) return before
    const made = createHmac('sha256', key).update(address).digest('hex').slice(0, 8)
    if (known.size >= MOST_CALLERS) known.clear()
    known.set(address, made)
    return made
  }
  return createMiddleware<Env>(async (c, next) => {
    const started = performance.now()
    await next()
    if (!log.isLevelEnabled('error')) return
    const { status } = c.res
    const line = {
      method: c.req.method,
      path: pathForLog(c.req.path),
      status,
      ms: Math.round(performance.now() - started),
      caller: caller(addressOf(c, outside)),
    }
    if (status >= 500) log.error(line, 'request')
    else log.info(line, 'request')
  })
}

/** An error as it may be logged: what and where, without what it was about. */
export const errorForLog = (error: unknown): Record<string, unknown> =>
  error instanceof Error
    ? {
        name: error.name,
        code: 'code' in error ? String(error.code) : undefined,
        message: error.message.slice(0, 200),
        at: error.stack
          ?.split('\n')
          .filter((l) => /^\s+at /.test(l))
          .slice(0, 12),
      }
    : { message: typeof error }
