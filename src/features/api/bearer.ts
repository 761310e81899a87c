/** Before everything of the HTTP API: whose token it is, how often it asks, and what it may be used for. */

import { createMiddleware } from 'hono/factory'
import { RateLimiterMemory, RateLimiterRes } from 'rate-limiter-flexible'
import { type Deps, type Env, problemResponse } from '../../app/index.ts'
import { addressOf } from '../../app/node.ts'
import { ACTIONS, forWhom, guardFor, type TokenHolder } from '../../people/index.ts'
import type { Operation } from './operations.ts'

/** Requests of one token within the seconds. */
export const API_LIMIT = { points: 240, duration: 60 }

const challenge = (more = ''): Record<string, string> => ({
  'WWW-Authenticate': `Bearer realm="resettle"${more}`,
})

/** Finds out whose token it is. Wrong ones count against the address they come from, like any guess. */
export function bearer(deps: Deps) {
  const limiter = new RateLimiterMemory(API_LIMIT)
  return createMiddleware<Env>(async (c, next) => {
    const [, token] = /^Bearer +([A-Za-z0-9_-]{10,200})$/i.exec(c.req.header('authorization') ?? '') ?? []
    if (token === undefined)
      return problemResponse(401, 'Send a personal token: "Authorization: Bearer …".', {
        headers: challenge(),
      })
    const holder = deps.tokens.holder(token)
    if (holder === null) {
      const wait = await deps.people.limits.guess('api-token', addressOf(c, deps.outside))
      return wait > 0
        ? tooOften(wait, 'Too many tokens that do not work came from your network')
        : problemResponse(401, 'This token does not work: it is unknown, ran out, or was taken back.', {
            headers: challenge(', error="invalid_token"'),
          })
    }
    try {
      await limiter.consume(holder.token)
    } catch (refusal) {
      if (!(refusal instanceof RateLimiterRes)) throw refusal
      return tooOften(Math.max(1, Math.ceil(refusal.msBeforeNext / 1000)))
    }
    c.set('holder', holder)
    return next()
  })
}

const tooOften = (seconds: number, what = 'Too many requests'): Response =>
  problemResponse(429, `${what}: wait ${seconds} seconds.`, {
    headers: { 'Retry-After': String(seconds) },
  })

/** Null when the token's scopes and its owner's role allow the operation. */
export function refusalOf(holder: TokenHolder, { scope, action }: Operation): Response | null {
  if (scope !== null && !holder.scopes.includes(scope))
    return problemResponse(403, `The token has no scope "${scope}".`, {
      headers: challenge(`, error="insufficient_scope", scope="${scope}"`),
    })
  if (action !== null && !guardFor(holder.person.role).may(action))
    return problemResponse(403, `To ${ACTIONS[action].words} is ${forWhom(action)}.`)
  return null
}
