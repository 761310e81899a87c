import { Hono } from 'hono'
import type { ContentfulStatusCode } from 'hono/utils/http-status'
import {
  type AppContext,
  type Deps,
  type Env,
  frameFor,
  languageChosen,
  page,
  typedIn,
} from '../../app/index.ts'
import { addressOf } from '../../app/node.ts'
import { one, type Typed } from '../../forms/index.ts'
import { nameKey } from '../../people/index.ts'
import type { Words } from '../../words/index.ts'
import { changeSession, keepLanguage } from './session.ts'
import { SignInPage } from './sign-in-page.tsx'

/** Signing in. */
export function signIn(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const show = (
    c: AppContext,
    typed: Typed,
    refused: ((words: Words['signIn']) => string) | null,
    status: ContentfulStatusCode = 200,
  ) => {
    const frame = frameFor(c, deps)
    const problems = refused === null ? [] : [{ field: '', message: refused(frame.words.signIn) }]
    const chosen = languageChosen(c)
    return page(
      c,
      <SignInPage frame={frame} form={{ typed, problems }} demo={deps.demo?.people ?? []} chosen={chosen} />,
      status,
    )
  }
  app.get('/sign-in', (c) =>
    deps.people.accounts.none()
      ? c.redirect('/set-up', 303)
      : show(c, { to: [localPath(c.req.query('to'))] }, null),
  )

  app.post('/sign-in', async (c) => {
    const typed = await typedIn(c)
    const name = one(typed, 'name').slice(0, 200)
    // Not trimmed: a space is a character of a passphrase like any other.
    const result = await deps.people.signIn(name, typed.passphrase?.at(-1) ?? '', addressOf(c, deps.outside))
    const again = { name: [name], to: [localPath(one(typed, 'to'))] }
    if (result.ok) {
      changeSession(c, deps, result.token)
      keepLanguage(c, deps, result.person.id)
      return c.redirect(localPath(one(typed, 'to')), 303)
    }
    deps.log.warn({ why: result.why }, 'sign-in refused')
    if (result.why === 'wrong') return show(c, again, (w) => w.wrong, 401)
    c.header('Retry-After', String(result.seconds))
    return show(c, again, (w) => w.tooMany(result.seconds), 429)
  })

  app.post('/sign-in/as', async (c, next) => {
    const typed = await typedIn(c)
    const offered = deps.demo?.people.find((p) => nameKey(p.name) === nameKey(one(typed, 'name')))
    const person = offered === undefined ? null : deps.people.accounts.byName(offered.name)
    if (person === null) return next()
    changeSession(c, deps, deps.people.sessions.open(person.id))
    keepLanguage(c, deps, person.id)
    return c.redirect(localPath(one(typed, 'to')), 303)
  })
  return app
}

const LOCAL = /^\/(?![/\\])[^\s\\]*$/

/**
 * A path of this server and nothing else: '//elsewhere' and '/\\elsewhere' would lead away, and so would what '/.//elsewhere'
 * becomes once it is read as an address, so the result is looked at too.
 */
export function localPath(to: string | undefined): string {
  if (to === undefined || !LOCAL.test(to)) return '/'
  const url = URL.canParse(to, 'http://here.invalid') ? new URL(to, 'http://here.invalid') : null
  const path = url === null || url.host !== 'here.invalid' ? '/' : url.pathname + url.search
  return LOCAL.test(path) ? path : '/'
}
