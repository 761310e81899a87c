/** Where a form leads once it is saved: to the colony, or onward on the round from which it was opened. */
import type { ColonySummary } from '../store/index.ts'
import type { AppContext } from './context.ts'
import { toColony } from './respond.tsx'

const ELSEWHERE = 'http://elsewhere.invalid'
const LONGEST = 400

/** The `then` of the address, when it is a page of the round; null otherwise, so that nobody can be led elsewhere. */
export function thenOf(c: AppContext): string | null {
  const then = c.req.query('then') ?? ''
  if (!then.startsWith('/round') || then.length > LONGEST || !URL.canParse(then, ELSEWHERE)) return null
  const { origin, pathname, search } = new URL(then, ELSEWHERE)
  return origin === ELSEWHERE && /^\/round(\/|$)/.test(pathname) ? `${pathname}${search}` : null
}

/** After saving. The page that comes says what was saved. */
export function onward(c: AppContext, summary: ColonySummary, entryId: string): Response {
  const then = thenOf(c)
  if (then === null) return toColony(c, summary, entryId)
  return c.redirect(`${then}${then.includes('?') ? '&' : '?'}saved=${entryId}`, 303)
}
