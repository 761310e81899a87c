import { Hono } from 'hono'
import {
  type AppContext,
  type Deps,
  type Env,
  page,
  takesKeysBack,
  typedIn,
  viewerOf,
} from '../../app/index.ts'
import { originOf } from '../../app/node.ts'
import { type FieldProblem, one, type Typed } from '../../forms/index.ts'
import { qrCode } from '../../parts/index.ts'
import { type Invitation, type Outcome, type Person, ROLES, type Role } from '../../people/index.ts'
import { instantWords } from '../../words/index.ts'
import { goFallsOf } from '../removal/node.ts'
import { LinkPage, PeoplePage, type PersonLine } from './people-page.tsx'

const roleIn = (typed: Typed): Role | undefined => ROLES.find((r) => r === one(typed, 'role'))

/** Sentences for what was done, by the word in the address that comes after it. */
const DONE: Record<string, string> = {
  role: 'The role is changed. It counts from the next tap on.',
  'sign-out': 'Signed out everywhere.',
  'sign-out-keys': 'Signed out everywhere. Tokens and calendar addresses are taken back.',
  close:
    'The account is closed and signed out; its tokens and calendar addresses are taken back for good. What it signed stays in the journal.',
  reopen: 'The account is open again. Tokens and calendar addresses have to be made anew.',
}

/** Accounts, invitations, roles. */
export function people(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const { accounts, sessions, invites, keys } = deps.people

  const line = (c: AppContext, p: Person): PersonLine => {
    const until = invites.pending(p.id)
    const { zone, today } = c.var.frame
    return {
      ...p,
      linkUntil: until === null ? null : instantWords(until, zone, today),
      browsers: sessions.count(p.id),
      keys: keys.count(p.id),
    }
  }
  const show = (c: AppContext, typed: Typed = {}, problems: FieldProblem[] = []) =>
    page(
      c,
      <PeoplePage
        frame={c.var.frame}
        form={{ typed, problems }}
        people={accounts.list().map((p) => line(c, p))}
        done={DONE[c.req.query('done') ?? ''] ?? null}
      />,
      problems.length === 0 ? 200 : 422,
    )
  const showLink = async (c: AppContext, person: Person, made: Invitation) => {
    const link = `${originOf(c, deps.outside)}/invite/${made.token}`
    const { zone, today } = c.var.frame
    return page(
      c,
      <LinkPage
        frame={c.var.frame}
        name={person.name}
        link={link}
        qr={qrCode(link)}
        until={instantWords(made.expiresAt, zone, today)}
      />,
    )
  }
  const act = (c: AppContext, what: string, result: Outcome<Person>) =>
    result.ok ? c.redirect(`/people?done=${what}`, 303) : show(c, {}, result.problems)

  /** Nothing is opened today on the word of somebody who decides no more. */
  const takeGo = (c: AppContext, { name }: Person): void => {
    const { zone } = c.var.frame
    goFallsOf(deps.store.removals, { zone, now: deps.clock() }, { name, by: viewerOf(c).name })
  }

  app.get('/people', (c) => show(c))

  app.post('/people', async (c) => {
    const typed = await typedIn(c)
    const role = roleIn(typed)
    if (role === undefined) return show(c, typed, [{ field: 'role', message: 'must be chosen' }])
    const made = deps.people.invite({ name: one(typed, 'name'), role, by: viewerOf(c).name })
    return made.ok ? showLink(c, made.value.person, made.value.link) : show(c, typed, made.problems)
  })

  app.post('/people/:id/link', (c) => {
    const person = accounts.byId(c.req.param('id'))
    if (person === null || person.state === 'closed')
      return show(c, {}, [{ field: 'person', message: 'is closed or unknown' }])
    return showLink(c, person, invites.make(person.id, viewerOf(c).name))
  })

  app.post('/people/:id/role', async (c) => {
    const role = roleIn(await typedIn(c))
    if (role === undefined) return show(c, {}, [{ field: 'role', message: 'must be chosen' }])
    const changed = deps.people.setRole(c.req.param('id'), role)
    if (changed.ok && role === 'helper') takeGo(c, changed.value)
    return act(c, 'role', changed)
  })

  app.post('/people/:id/sign-out', async (c) => {
    const ended = deps.people.signOut(c.req.param('id'), { keys: takesKeysBack(await typedIn(c)) })
    return c.redirect(`/people?done=sign-out${ended.keys === 0 ? '' : '-keys'}`, 303)
  })

  app.post('/people/:id/close', (c) => {
    const closed = deps.people.close(c.req.param('id'))
    if (closed.ok) takeGo(c, closed.value)
    return act(c, 'close', closed)
  })
  app.post('/people/:id/reopen', (c) => act(c, 'reopen', deps.people.reopen(c.req.param('id'))))
  return app
}
