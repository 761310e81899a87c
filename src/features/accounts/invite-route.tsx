import { Hono, type Next } from 'hono'
import {
  type AppContext,
  type Deps,
  type Env,
  frameFor,
  languageChosen,
  page,
  refusalStatus,
  takesKeysBack,
  tooManyTries,
  typedIn,
} from '../../app/index.ts'
import { addressOf } from '../../app/node.ts'
import { many, type Typed } from '../../forms/index.ts'
import { KEYS } from '../../parts/index.ts'
import type { Refusal } from '../../people/index.ts'
import { InvitePage } from './invite-page.tsx'
import { changeSession, keepLanguage } from './session.ts'

/** Choosing a passphrase by an invitation. A link that does not work (any more) is an unknown page like any other. */
export function invite(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const show = (c: AppContext, problems: Refusal[] = [], typed: Typed = {}) => {
    const holder = deps.people.invites.holder(c.req.param('token') ?? '')
    return holder === null
      ? null
      : page(
          c,
          <InvitePage
            frame={frameFor(c, deps)}
            form={{ typed: { [KEYS]: many(typed, KEYS) }, problems }}
            name={holder.name}
            role={holder.role}
            keys={deps.people.keys.count(holder.id)}
            chosen={languageChosen(c)}
          />,
          problems.length === 0 ? 200 : refusalStatus(c, problems[0]),
        )
  }
  /** Of a link that does not work: an unknown page, or after too many of them, how long to wait. */
  const wrongLink = async (c: AppContext, next: Next): Promise<Response | undefined> => {
    const wait = await deps.people.limits.guess('invitation', addressOf(c, deps.outside))
    if (wait > 0) return tooManyTries(c, deps, wait)
    await next()
    return undefined
  }

  app.get('/invite/:token', async (c, next) => {
    c.header('Referrer-Policy', 'same-origin')
    return show(c) ?? wrongLink(c, next)
  })

  app.post('/invite/:token', async (c, next) => {
    if (show(c) === null) return wrongLink(c, next)
    const typed = await typedIn(c)
    const passphrase = typed.passphrase?.at(-1) ?? ''
    if (passphrase !== (typed.again?.at(-1) ?? '')) {
      const { notTheSame } = frameFor(c, deps).words.account
      return show(c, [{ field: 'again', message: notTheSame }], typed) ?? next()
    }
    const accepted = await deps.people.accept(c.req.param('token'), passphrase)
    if (!accepted.ok) return show(c, accepted.problems, typed) ?? next()
    if (takesKeysBack(typed)) deps.people.keys.revokeAll(accepted.value.person.id)
    changeSession(c, deps, accepted.value.token)
    keepLanguage(c, deps, accepted.value.person.id)
    return c.redirect('/', 303)
  })
  return app
}
