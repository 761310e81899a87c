/** What protects every answer: headers, a strict content security policy, and no writing from elsewhere. */
import type { MiddlewareHandler } from 'hono'
import { csrf } from 'hono/csrf'
import { createMiddleware } from 'hono/factory'
import { HTTPException } from 'hono/http-exception'
import { secureHeaders } from 'hono/secure-headers'
import { timeout } from 'hono/timeout'
import type { Env } from '../deps.ts'
import { isSecure, type Outside, originOf } from './address.ts'
import { NO_SNIFFING_AROUND } from './policy.ts'

const overTls = secureHeaders({ ...NO_SNIFFING_AROUND, strictTransportSecurity: 'max-age=15552000' })
const plain = secureHeaders({ ...NO_SNIFFING_AROUND, strictTransportSecurity: false })

/** Security headers; browsers are told to insist on TLS where they came over it. */
export const headers = (outside: Outside): MiddlewareHandler<Env> =>
  createMiddleware<Env>((c, next) => (isSecure(c, outside) ? overTls : plain)(c, next))

const READING = new Set(['GET', 'HEAD', 'OPTIONS'])

/** hono's check covers what a form can send; the second one whatever a script of another site could. */
export function ownPagesOnly(outside: Outside): MiddlewareHandler<Env>[] {
  const own = (origin: string, c: Parameters<typeof originOf>[0]): boolean => origin === originOf(c, outside)
  return [
    csrf({ origin: own }),
    createMiddleware<Env>(async (c, next) => {
      const origin = c.req.header('origin')
      const site = c.req.header('sec-fetch-site')
      const foreign =
        (origin !== undefined && !own(origin, c)) || site === 'cross-site' || site === 'same-site'
      if (!READING.has(c.req.method) && foreign) throw new HTTPException(403, { message: 'Forbidden' })
      await next()
    }),
  ]
}

/** Milliseconds an answer may take. */
const PATIENCE_MS = 30_000

export const timeLimit: MiddlewareHandler<Env> = timeout(
  PATIENCE_MS,
  () => new HTTPException(503, { res: new Response('This took too long. Try again.', { status: 503 }) }),
)
