/** What protects every answer: headers, a strict content security policy, and no writing from elsewhere. */
import type { MiddlewareHandler } from 'hono'
import { csrf } from 'hono/csrf'
import { createMiddleware } from 'hono/factory'
import { HTTPException } from 'hono/http-exception'
import { secureHeaders } from 'hono/secure-headers'
import { isSecure, type Outside, originOf } from './address.ts'
import type { AppContext, Deps, Env } from './context.ts'
import { ElsewherePage } from './error-pages.tsx'
import { frameFor } from './frame.tsx'
import { NO_SNIFFING_AROUND } from './policy.ts'
import { page, sendsJson } from './respond.tsx'

const overTls = secureHeaders({ ...NO_SNIFFING_AROUND, strictTransportSecurity: 'max-age=15552000' })
const plain = secureHeaders({ ...NO_SNIFFING_AROUND, strictTransportSecurity: false })

/** Security headers; browsers are told to insist on TLS where they came over it. */
export const headers = (outside: Outside): MiddlewareHandler<Env> =>
  createMiddleware<Env>((c, next) => (isSecure(c, outside) ? overTls : plain)(c, next))

const READING = new Set(['GET', 'HEAD', 'OPTIONS'])

/**
 * Refuses what a page of another site sends. hono's check covers what a form can send; ours whatever a script of another
 * site could. Whoever came by another address than the one that was set is told which one to open.
 */
export function ownPagesOnly(deps: Deps): MiddlewareHandler<Env> {
  const own = (origin: string, c: AppContext): boolean => origin === originOf(c, deps.outside)
  const formCheck = csrf({ origin: own })
  return createMiddleware<Env>(async (c, next) => {
    if (READING.has(c.req.method)) return next()
    const origin = c.req.header('origin')
    const site = c.req.header('sec-fetch-site')
    const foreign = (origin !== undefined && !own(origin, c)) || site === 'cross-site' || site === 'same-site'
    if (!foreign && (await passes(formCheck, c))) return next()
    if (sendsJson(c)) return c.json({ error: 'sent from another address than this yard’s' }, 403)
    const home = { address: originOf(c, deps.outside), known: deps.outside.url !== null }
    return page(c, ElsewherePage({ frame: frameFor(c, deps), ...home }), 403)
  })
}

/** Whether a check lets the request go on, which it says by throwing or not. */
async function passes(check: MiddlewareHandler, c: AppContext): Promise<boolean> {
  try {
    await check(c, async () => undefined)
    return true
  } catch (error) {
    if (error instanceof HTTPException) return false
    throw error
  }
}
