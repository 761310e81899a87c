import { type Context, Hono } from 'hono'
import { etag } from 'hono/etag'
import {
  type AppContext,
  type Env,
  keepPageLanguage,
  page,
  todayOf,
  typedIn,
  viewerOf,
} from '../../app/index.ts'
import { originOf } from '../../app/node.ts'
import { type FieldProblem, one, type Typed } from '../../forms/index.ts'
import { SHOWS } from '../../people/node.ts'
import { wordsIn } from '../../words/index.ts'
import { calendarText } from './calendar.ts'
import { eventsOf } from './events.ts'
import type { CalendarDeps } from './feeds.ts'
import { MOST_FEEDS } from './feeds.ts'
import { CalendarPage, EVERY_YARD } from './page.tsx'

/** The page on which one makes and takes back addresses. */
export function calendar(deps: CalendarDeps): Hono<Env> {
  const { calendars, store } = deps
  const app = new Hono<Env>()
  const yards = () =>
    store
      .yards()
      .filter((y) => y.open > 0)
      .map((y) => y.yard)
  interface Shown {
    typed?: Typed
    problems?: FieldProblem[]
    made?: string
  }
  const show = (c: AppContext, { typed = {}, problems = [], made }: Shown = {}) =>
    page(
      c,
      <CalendarPage
        frame={c.var.frame}
        form={{ typed, problems }}
        feeds={calendars.of(viewerOf(c).id)}
        yards={yards()}
        made={made ?? null}
        revoked={c.req.query('revoked') === '1'}
      />,
      problems.length === 0 ? 200 : 422,
    )

  // Its address until 2026-11.
  app.get('/calendar', (c) => c.redirect('/account/calendar', 301))

  app.get('/account/calendar', (c) => show(c))

  app.post('/account/calendar', async (c) => {
    const typed = await typedIn(c)
    const shows = SHOWS.find((s) => s === (one(typed, 'shows') || 'yard-day'))
    const asked = one(typed, 'yard') === EVERY_YARD ? '' : one(typed, 'yard')
    const problems: FieldProblem[] = []
    const { calendar: words } = c.var.frame.words
    if (shows === undefined) problems.push({ field: 'shows', message: words.sayWhat })
    if (asked !== '' && !yards().includes(asked)) problems.push({ field: 'yard', message: words.noYard })
    if (shows === undefined || problems.length > 0) return show(c, { typed, problems })
    const token = calendars.open(viewerOf(c).id, { shows, yard: asked === '' ? null : asked })
    if (token === null)
      return show(c, { typed, problems: [{ field: '', message: words.tooMany(MOST_FEEDS) }] })
    keepPageLanguage(c, deps)
    return show(c, { made: `${originOf(c, deps.outside)}/feed/${token}.ics` })
  })

  app.post('/account/calendar/take-back', async (c) => {
    const typed = await typedIn(c)
    const done = calendars.revoke(viewerOf(c).id, one(typed, 'key'))
    return c.redirect(done ? '/account/calendar?revoked=1' : '/account/calendar', 303)
  })
  return app
}

/** The feed itself: read by calendars, which hold no session but the address. Any other address is a stranger's. */
export function calendarFeed(deps: CalendarDeps): Hono<Env> {
  const { calendars, store } = deps
  const app = new Hono<Env>()
  app.get('/feed/:name', etag(), async (c, next) => {
    const token = /^([\w-]{20,100})\.ics$/.exec(c.req.param('name'))?.[1]
    const holder = token === undefined ? null : calendars.holder(token)
    if (holder === null) return next()
    const today = todayOf(deps)
    await (deps.daily?.(today) ?? store.refresh(today))
    const words = (deps.words ?? wordsIn)(holder.language)
    const events = eventsOf(store.colonies({ open: true }), today, holder.shows, words)
    const text = calendarText(calendars.told(holder, events, today), {
      name: `${store.settings.get('yardName') || 'Resettle'}${holder.yard === null ? '' : `: ${holder.yard}`}`,
      origin: originOf(c, deps.outside),
      language: holder.language,
    })
    return answer(c, text)
  })
  return app
}

/** Asked for each time; answered with "not modified" where that is so. */
const answer = (c: Context<Env>, text: string): Response =>
  c.body(text, 200, {
    'Content-Type': 'text/calendar; charset=utf-8',
    'Content-Disposition': 'inline; filename="resettle.ics"',
    'Cache-Control': 'private, no-cache',
  })
