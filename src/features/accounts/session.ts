/** Who is asking: the account whose session the browser holds. And the answer to those who hold none. */

import { deleteCookie, getCookie, setCookie } from 'hono/cookie'
import { createMiddleware } from 'hono/factory'
import {
  type AppContext,
  type Deps,
  type Env,
  frameFor,
  languageChosen,
  page,
  sendsJson,
} from '../../app/index.ts'
import { isSecure } from '../../app/node.ts'
import { ABSOLUTE_DAYS } from '../../people/node.ts'
import { SignInAgainPage } from './sign-in-page.tsx'

/** Over TLS the name itself makes browsers insist on Secure, on this host, and on the whole path. */
const cookieName = (secure: boolean): string => (secure ? '__Host-resettle' : 'resettle')

const DAY_SECONDS = 86_400

function keepSession(c: AppContext, deps: Deps, token: string): void {
  const secure = isSecure(c, deps.outside)
  setCookie(c, cookieName(secure), token, {
    path: '/',
    httpOnly: true,
    sameSite: 'Lax',
    secure,
    maxAge: ABSOLUTE_DAYS * DAY_SECONDS,
  })
}

const tokenOf = (c: AppContext, deps: Deps): string | undefined =>
  getCookie(c, cookieName(isSecure(c, deps.outside)))

function closeOld(c: AppContext, deps: Deps): void {
  const token = tokenOf(c, deps)
  if (token !== undefined) deps.people.sessions.close(token)
}

/** What was chosen on the way in stays with whoever came in. */
export function keepLanguage(c: AppContext, deps: Deps, person: string): void {
  const chosen = languageChosen(c)
  if (chosen !== null) deps.people.accounts.setLanguage(person, chosen)
}

/** Signs this browser out, and forgets its cookie. */
export function endSession(c: AppContext, deps: Deps): void {
  closeOld(c, deps)
  const secure = isSecure(c, deps.outside)
  deleteCookie(c, cookieName(secure), { path: '/', secure })
}

/** A new session in place of the browser's old one, whoever held that. */
export function changeSession(c: AppContext, deps: Deps, token: string): void {
  closeOld(c, deps)
  keepSession(c, deps, token)
}

/** Finds out who is asking. */
export const visitor = (deps: Deps) =>
  createMiddleware<Env>(async (c, next) => {
    const token = tokenOf(c, deps)
    const person = token === undefined ? null : deps.people.sessions.holder(token)
    c.set('viewer', person === null || token === undefined ? null : { ...person, session: token })
    await next()
  })

/**
 * Strangers stop here, with the same answer whatever they asked for: the way to the sign-in page (to the set-up page
 * while there is no account), or 401 to programs and to whatever wanted to write.
 */
export const noStrangers = (deps: Deps) =>
  createMiddleware<Env>(async (c, next) => {
    if (c.var.viewer !== null) return next()
    c.header('Cache-Control', 'no-store')
    const reads = c.req.method === 'GET' || c.req.method === 'HEAD'
    if (!wantsPage(c)) return c.json({ error: 'sign in first' }, 401)
    if (!reads) return page(c, SignInAgainPage({ frame: frameFor(c, deps) }), 401)
    if (deps.people.accounts.none()) return c.redirect('/set-up', 303)
    const to = c.req.path + (new URL(c.req.url).search || '')
    return c.redirect(to === '/' ? '/sign-in' : `/sign-in?to=${encodeURIComponent(to.slice(0, 500))}`, 303)
  })

/** Browsers opening a page or posting a form say that they want HTML; scripts and programs don't. */
const wantsPage = (c: AppContext): boolean => {
  const accept = c.req.header('accept') ?? '*/*'
  return !sendsJson(c) && /text\/html|^\*\/\*$/.test(accept)
}
