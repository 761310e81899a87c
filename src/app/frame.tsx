/** Before every page: which day it is in the yard, plans made for that day, units, and who is signed in. */

import { createMiddleware } from 'hono/factory'
import { type Day, dayIn } from '../days.ts'
import type { Frame } from '../parts/index.ts'
import { guardFor } from '../people/index.ts'
import { wordsIn } from '../words/index.ts'
import type { AppContext, Deps, Env, PageDeps, Viewer } from './context.ts'
import { languageOfPage } from './spoken.ts'

/** The yard's time zone: its own choice, else the machine's. */
export const zoneOf = (deps: Pick<PageDeps, 'store' | 'zone'>): string =>
  deps.store.settings.get('timeZone') ?? deps.zone

/** The yard's day now. */
export const todayOf = (deps: Pick<PageDeps, 'store' | 'zone' | 'clock'>): Day =>
  dayOfMinute(zoneOf(deps), deps.clock())

/** Days change on a full minute in every zone there is now, and every request asks: the last answer is kept. */
let asked = { zone: '', minute: Number.NaN, day: '' }

function dayOfMinute(zone: string, now: Date): Day {
  const minute = Math.floor(now.getTime() / 60_000)
  if (asked.minute !== minute || asked.zone !== zone) asked = { zone, minute, day: dayIn(zone, now) }
  return asked.day
}

/** Who is signed in. Only for pages behind the sign-in, where somebody always is. */
export function viewerOf(c: AppContext): Viewer {
  const viewer = c.var.viewer
  if (viewer === null) throw new Error('nobody is signed in here')
  return viewer
}

/** What a page needs to know of its request. */
export function frameFor(c: AppContext, deps: PageDeps): Frame {
  const { settings } = deps.store
  const viewer = c.get('viewer') ?? null
  const { may, mayOpen } = guardFor(viewer?.role ?? null)
  return {
    today: todayOf(deps),
    zone: zoneOf(deps),
    units: { temperature: settings.get('temperature'), weight: settings.get('weight') },
    viewer: viewer === null ? null : { name: viewer.name, role: viewer.role },
    may,
    mayOpen,
    words: (deps.words ?? wordsIn)(languageOfPage(c)),
    path: c.req.path,
    built: deps.assets.built,
  }
}

/** Whoever reads waits until the plans are of today; an entry makes those it changes itself. */
async function ofToday(c: AppContext, deps: Deps, today: Day): Promise<void> {
  const making = deps.daily === undefined ? deps.store.refresh(today) : deps.daily(today)
  if (c.req.method === 'GET') await making
}

/** Recomputes plans when the day has changed since the last request, and then calls `newDay`. */
export function frame(deps: Deps, newDay: (frame: Frame) => void = () => undefined) {
  let planned: Day | null = null
  return createMiddleware<Env>(async (c, next) => {
    const made = frameFor(c, deps)
    if (deps.daily !== undefined || planned !== made.today) await ofToday(c, deps, made.today)
    if (planned !== made.today) {
      planned = made.today
      newDay(made)
    }
    c.set('frame', made)
    await next()
  })
}
