import { Hono } from 'hono'
import { type AppContext, colonyPath, type Env, type PageDeps, page } from '../../app/index.ts'
import { folded } from '../../folded.ts'
import { ribbonOf } from '../../parts/index.ts'
import { PHASES, type Phase } from '../../recovery/index.ts'
import type { ColonySummary, Repository } from '../../store/index.ts'
import { howPressing, knownAs, leftWords, toDoOf, type Words, waitWords } from '../../words/index.ts'
import { SHOWS, SORTS, YardPage, type YardProps, type YardRow } from './page.tsx'

const PAGE = 40

/** The yard: filter, order, find by tag. */
export function yard(deps: PageDeps): Hono<Env> {
  const app = new Hono<Env>()
  app.get('/yard', (c) => {
    const { store } = deps
    const asked = askedIn(c)
    const exact = asked.find === '' ? null : store.colony(asked.find)
    if (exact !== null && asked.yard === '') return c.redirect(colonyPath(exact.summary), 303)
    const { total, pageOf } = choose(store, asked)
    const pages = Math.max(1, Math.ceil(total / PAGE))
    const at = Math.min(asked.page, pages)
    const yards = store.yards()
    return page(
      c,
      <YardPage
        frame={c.var.frame}
        rows={pageOf((at - 1) * PAGE).flatMap((s) => rowOf(store, s, c.var.frame.words))}
        total={total}
        yards={yards}
        asked={{ ...asked, page: at }}
        pages={pages}
        empty={yards.length === 0}
        pageHref={(n) => hrefOf(asked, n)}
      />,
    )
  })
  return app
}

type Asked = YardProps['asked']

const oneOf = <T extends string>(value: string | undefined, among: readonly T[], otherwise: T): T =>
  among.find((a) => a === value) ?? otherwise

function askedIn(c: AppContext): Asked {
  const n = Number(c.req.query('page'))
  return {
    yard: (c.req.query('yard') ?? '').slice(0, 80),
    find: (c.req.query('find') ?? '').trim().slice(0, 60),
    sort: oneOf(c.req.query('sort'), SORTS, 'walk'),
    show: oneOf(c.req.query('show'), SHOWS, 'in'),
    phase: oneOf<Phase | ''>(c.req.query('phase'), PHASES, ''),
    page: Number.isInteger(n) && n > 0 ? n : 1,
  }
}

/** What was asked for, of which a page is looked at. */
interface Chosen {
  total: number
  /** One page of it, after so many. */
  pageOf: (skip: number) => ColonySummary[]
}

function choose(store: Repository, asked: Asked): Chosen {
  if (asked.show !== 'in' && asked.find === '' && asked.sort === 'walk') return theLastToLeave(store, asked)
  const found = sorted(store, asked)
  return { total: found.length, pageOf: (skip) => found.slice(skip, skip + PAGE) }
}

/** Those that have left, the last first, after those in the yard where all are wanted: only the page is read. */
function theLastToLeave(store: Repository, { show, phase, yard: asked }: Asked): Chosen {
  const yard = asked || undefined
  const here =
    show === 'all'
      ? store.colonies({ open: true, yard }).filter((s) => phase === '' || s.phase === phase)
      : []
  const left = (skip: number, limit: number) =>
    phase === '' || phase === 'closed' ? store.left({ yard, skip, limit }) : { total: 0, found: [] }
  return {
    total: here.length + left(0, 0).total,
    pageOf(skip) {
      const page = here.slice(skip, skip + PAGE)
      return [...page, ...left(Math.max(0, skip - here.length), PAGE - page.length).found]
    },
  }
}

function sorted(store: Repository, asked: Asked): ColonySummary[] {
  const sought = folded(asked.find)
  const found = store
    .colonies({
      open: asked.show === 'all' ? undefined : asked.show === 'in',
      yard: asked.yard || undefined,
    })
    .filter((s) => asked.phase === '' || s.phase === asked.phase)
    .filter((s) => knownAs(s).includes(sought))
  switch (asked.sort) {
    case 'walk':
      return asked.show === 'in'
        ? found
        : found.sort((a, b) => (b.closedOn ?? '9').localeCompare(a.closedOn ?? '9'))
    case 'day':
      return found.sort((a, b) => b.day - a.day)
    case 'tag':
      return found.sort((a, b) => a.tag.localeCompare(b.tag, 'en', { numeric: true }))
    case 'next':
      return found.sort((a, b) => pressing(a).localeCompare(pressing(b)))
  }
}

const ORDER = ['overdue', 'due', 'open'] as const

/** Sorts late before due before open before what can wait, the nearer end first. */
function pressing(s: ColonySummary): string {
  const toDo = toDoOf(s.plan)
  const rank = toDo === null ? ORDER.length : ORDER.indexOf(howPressing(toDo))
  return `${rank} ${toDo?.check?.closes ?? s.nextOpens ?? '9'} ${s.tag}`
}

function rowOf(store: Repository, s: ColonySummary, w: Words): YardRow[] {
  const colony = store.colony(s.id)
  if (colony === null) return []
  const toDo = s.closedOn === null ? toDoOf(s.plan, w) : null
  return [
    {
      tag: s.tag,
      path: colonyPath(s),
      yard: s.yard,
      stand: s.stand,
      day: s.day,
      standing: s.outcome === null ? w.trade.phases[s.phase] : leftWords(s.outcome, w),
      next: toDo?.title ?? waitWords(s.plan, w),
      toDo,
      left: s.closedOn,
      ribbon: ribbonOf(colony.history, s.plan),
    },
  ]
}

function hrefOf(asked: Asked, n: number): string {
  const query = new URLSearchParams()
  for (const [key, value] of Object.entries({ ...asked, page: n }))
    if (value !== '') query.set(key, String(value))
  return `/yard?${query}`
}
