import { Hono } from 'hono'
import {
  type AppContext,
  type Deps,
  type Env,
  page,
  refusalStatus,
  takesKeysBack,
  typedIn,
  viewerOf,
} from '../../app/index.ts'
import { many, one, type Typed } from '../../forms/index.ts'
import { languageOf } from '../../languages.ts'
import { KEYS } from '../../parts/index.ts'
import type { Refusal } from '../../people/index.ts'
import { AccountPage, type Saved } from './account-page.tsx'
import { endSession } from './session.ts'

/** What was saved, by the word in the address that comes after it. */
const SAVED: Record<string, Saved> = {
  1: 'passphrase',
  2: 'passphrase and keys',
  3: 'language',
}

/** One's own account: language, passphrase, and signing out of every browser. */
export function account(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const { sessions, keys } = deps.people
  const show = (c: AppContext, problems: Refusal[] = [], typed: Typed = {}) =>
    page(
      c,
      <AccountPage
        frame={c.var.frame}
        form={{ typed: { [KEYS]: many(typed, KEYS) }, problems }}
        browsers={sessions.count(viewerOf(c).id)}
        keys={keys.count(viewerOf(c).id)}
        language={viewerOf(c).language}
        saved={SAVED[c.req.query('saved') ?? ''] ?? null}
      />,
      problems.length === 0 ? 200 : refusalStatus(c, problems[0]),
    )

  app.get('/account', (c) => show(c))

  app.post('/account/passphrase', async (c) => {
    const typed = await typedIn(c)
    const next = typed.passphrase?.at(-1) ?? ''
    if (next !== (typed.again?.at(-1) ?? ''))
      return show(c, [{ field: 'again', message: c.var.frame.words.account.notTheSame }], typed)
    const viewer = viewerOf(c)
    const changed = await deps.people.changePassphrase(viewer, typed.old?.at(-1) ?? '', next, viewer.session)
    if (!changed.ok) return show(c, changed.problems, typed)
    const taken = takesKeysBack(typed) ? keys.revokeAll(viewer.id) : 0
    return c.redirect(taken === 0 ? '/account?saved=1' : '/account?saved=2', 303)
  })

  app.post('/account/language', async (c) => {
    deps.people.accounts.setLanguage(viewerOf(c).id, languageOf(one(await typedIn(c), 'language')))
    return c.redirect('/account?saved=3', 303)
  })

  app.post('/sign-out', (c) => {
    endSession(c, deps)
    return c.redirect('/sign-in', 303)
  })

  app.post('/account/sign-out-everywhere', async (c) => {
    deps.people.signOut(viewerOf(c).id, { keys: takesKeysBack(await typedIn(c)) })
    return c.redirect('/sign-in', 303)
  })
  return app
}
