import { Hono } from 'hono'
import { v7 } from 'uuid'
import {
  type AppContext,
  type Deps,
  type Env,
  idIn,
  page,
  typedIn,
  unknownPage,
  viewerOf,
} from '../../app/index.ts'
import { many, one, type Typed } from '../../forms/index.ts'
import { type Entry, type Problem, REMOVAL_TYPES } from '../../journal/index.ts'
import type { AppendResult, Tidied } from '../../store/index.ts'
import { keep, madeBy, noteOf, noteTakenBack, renameSettings, restoreSettings, takenBackBy } from './batch.ts'
import { CLOSED_AS, closings, LONG_DAYS, longGone } from './long-gone.ts'
import { LongGonePage } from './long-gone-page.tsx'
import { NAMED, type Named, namesIn, offered, renamed, turnedBack } from './names.ts'
import { NamesPage } from './names-page.tsx'
import { withdrawn } from './withdrawn.ts'

/** As many as are read; the others are like them. */
const firstOf = (problems: readonly Problem[]): string[] => problems.slice(0, 10).map((p) => p.message)

/** An old book put in order: names merged and renamed, what is long gone closed; each taken back as a whole. */
export function tidying(deps: Deps): Hono<Env> {
  const { store } = deps
  const app = new Hono<Env>()

  const append = (c: AppContext, entries: Entry[]): AppendResult =>
    store.append(entries, {
      today: c.var.frame.today,
      recordedAt: deps.clock().toISOString(),
      recordedBy: viewerOf(c).name,
    })

  const done = (c: AppContext): Tidied | null => noteOf(store.settings, c.req.query('done') ?? '')

  /** Spellings that stay: the shipped types and the yard's own, yards that have stands, people who can sign in. */
  const known = (): Record<Named, readonly string[]> => ({
    removalType: [...REMOVAL_TYPES, ...store.settings.get('removalTypes')],
    yard: Object.keys(store.settings.get('stands')),
    person: deps.people.accounts.list().map((a) => a.name),
  })

  const showNames = (c: AppContext, problems: string[] = []) => {
    const names = namesIn(store.histories())
    const kept = known()
    return page(
      c,
      <NamesPage
        frame={c.var.frame}
        id={v7()}
        names={names}
        offers={{
          removalType: offered(names.removalType, kept.removalType),
          yard: offered(names.yard, kept.yard),
          person: offered(names.person, kept.person),
        }}
        accounts={kept.person}
        past={store.settings.get('tidied').toReversed()}
        done={done(c)}
        problems={problems}
      />,
      problems.length > 0 ? 422 : 200,
    )
  }

  app.get('/data/names', (c) => showNames(c))

  app.post('/data/names', async (c) => {
    const typed = await typedIn(c)
    const what = NAMED.find((n) => n === one(typed, 'what'))
    const to = one(typed, 'to')
    const from = many(typed, 'from').filter((name) => name !== to)
    if (what === undefined) return unknownPage(c)
    const problem = problemIn(what, from, to, known().person)
    if (problem !== null) return showNames(c, [problem])
    const id = idIn(typed)
    const entries = renamed(store.histories(), what, { from: new Set(from), to }, madeBy(id))
    const result = append(c, entries)
    if (!result.ok) return showNames(c, firstOf(result.problems))
    if (result.accepted.length > 0) {
      const stands = renameSettings(store.settings, what, { from, to })
      keep(store.settings, { ...noted(c, id, result.accepted.length), what, from, to, stands })
    }
    return c.redirect(`/data/names?done=${id}`, 303)
  })

  const noted = (
    c: AppContext,
    id: string,
    entries: number,
  ): Pick<Tidied, 'id' | 'entries' | 'at' | 'by'> => ({
    id,
    entries,
    at: deps.clock().toISOString(),
    by: viewerOf(c).name,
  })

  app.post('/data/names/back', async (c) => {
    const note = noteOf(store.settings, one(await typedIn(c), 'change'))
    if (note === null) return unknownPage(c)
    if (note.takenBack !== undefined) return c.redirect(pageOf(note), 303)
    const entries = takingBack(c, note)
    const result = append(c, entries)
    if (!result.ok) return showNames(c, firstOf(result.problems))
    restoreSettings(store.settings, note)
    noteTakenBack(store.settings, note.id, deps.clock().toISOString())
    return c.redirect(pageOf(note), 303)
  })

  function takingBack(c: AppContext, note: Tidied): Entry[] {
    if (note.what === 'long-gone')
      return withdrawn(store.histories(), note, { by: viewerOf(c).name, on: c.var.frame.today })
    return turnedBack(store.histories(), note.what, {
      madeBy: madeBy(note.id),
      idOf: takenBackBy(note.id),
      was: (id) => store.entry(id)?.entry ?? null,
    })
  }

  const showGone = (c: AppContext, problems: string[] = [], typed: Typed = {}) => {
    const asked = Number(c.req.query('days') ?? one(typed, 'days'))
    const days = Number.isInteger(asked) && asked > 0 ? asked : LONG_DAYS
    return page(
      c,
      <LongGonePage
        frame={c.var.frame}
        id={v7()}
        days={days}
        colonies={longGone(store.histories(), c.var.frame.today, days)}
        past={store.settings.get('tidied').toReversed()}
        done={done(c)}
        problems={problems}
      />,
      problems.length > 0 ? 422 : 200,
    )
  }

  app.get('/data/long-gone', (c) => showGone(c))

  app.post('/data/long-gone', async (c) => {
    const typed = await typedIn(c)
    const chosen = new Set(many(typed, 'colony'))
    const what = CLOSED_AS.find((w) => w === one(typed, 'what')) ?? 'unknown'
    const day = one(typed, 'day') === 'not-known' ? 'not-known' : 'last-seen'
    const id = idIn(typed)
    if (noteOf(store.settings, id) !== null) return c.redirect(`/data/long-gone?done=${id}`, 303)
    const colonies = longGone(store.histories(), c.var.frame.today, 0).filter((x) => chosen.has(x.id))
    if (colonies.length === 0) return showGone(c, ['Choose the colonies that are gone.'], typed)
    const result = append(c, closings(colonies, { what, day, by: viewerOf(c).name }, madeBy(id)))
    if (!result.ok) return showGone(c, firstOf(result.problems), typed)
    keep(store.settings, { ...noted(c, id, result.accepted.length), what: 'long-gone', from: [], to: what })
    return c.redirect(`/data/long-gone?done=${id}`, 303)
  })
  return app
}

const pageOf = ({ id, what }: Tidied): string =>
  `${what === 'long-gone' ? '/data/long-gone' : '/data/names'}?done=${id}`

function problemIn(
  what: Named,
  from: readonly string[],
  to: string,
  accounts: readonly string[],
): string | null {
  if (to === '') return 'Say which name it is to be.'
  if (from.length === 0) return 'That is the name already.'
  const account = what === 'person' ? from.find((name) => accounts.includes(name)) : undefined
  return account === undefined
    ? null
    : `${account} is a name with which somebody signs in, and stays with what it signed.`
}
