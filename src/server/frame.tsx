/** Before every page: which day it is in the yard, plans made for that day, units, and who signs. */
import { getCookie } from 'hono/cookie'
import { createMiddleware } from 'hono/factory'
import { type Day, dayIn } from '../days.ts'
import type { Deps, Env, Here } from './deps.ts'

export const NAME_COOKIE = 'resettle_name'
export const NAME_LIMIT = 60

/** The yard's time zone: its own choice, else the machine's. */
export const zoneOf = (deps: Deps): string => deps.store.settings.get('timeZone') ?? deps.zone

/** The yard's day now. */
export const todayOf = (deps: Deps): Day => dayIn(zoneOf(deps), deps.clock())

/** The name that signs entries made in this browser, or null. Becomes the account's name once there are accounts. */
export function signerOf(c: Here): string | null {
  const name = getCookie(c, NAME_COOKIE)?.trim() ?? ''
  return name === '' || name.length > NAME_LIMIT ? null : name
}

/** Makes plans anew when the day has changed since the last request. */
export function frame(deps: Deps) {
  let planned: Day | null = null
  return createMiddleware<Env>(async (c, next) => {
    const today = todayOf(deps)
    if (planned !== today) {
      deps.store.refresh(today)
      planned = today
    }
    const { settings } = deps.store
    c.set('frame', {
      today,
      zone: zoneOf(deps),
      units: { temperature: settings.get('temperature'), weight: settings.get('weight') },
      signer: signerOf(c),
      path: c.req.path,
      built: deps.assets.built,
    })
    await next()
  })
}
