/** Answers: whole pages, and the way back after something was saved. */

import { html } from 'hono/html'
import type { Child } from 'hono/jsx'
import type { ContentfulStatusCode } from 'hono/utils/http-status'
import type { Refusal } from '../people/index.ts'
import type { ColonySummary } from '../store/index.ts'
import type { AppContext } from './context.ts'

/** A page. Never kept by a cache: it holds the day's plan. */
export function page(
  c: AppContext,
  body: Child,
  status: ContentfulStatusCode = 200,
): Response | Promise<Response> {
  c.header('Cache-Control', 'no-store')
  return c.html(html`<!doctype html>${body as never}`, status)
}

/**
 * A form that writes an entry, with what is wrong beside its fields where it was refused. Asked for anew each time, but
 * Back shows the very form that was sent, with its hidden ids: saving it again is the same entry, not a second one.
 */
export function formPage(c: AppContext, body: Child, refused: boolean): Response | Promise<Response> {
  c.header('Cache-Control', 'private, no-cache')
  return c.html(html`<!doctype html>${body as never}`, refused ? 422 : 200)
}

const CROWD_SECONDS = 5

/** The status of a refusal: 422, or 503 and when to come again where there were only too many at once. */
export function refusalStatus(c: AppContext, refusal?: Refusal): 422 | 503 {
  if (refusal?.busy === undefined) return 422
  c.header('Retry-After', String(CROWD_SECONDS))
  return 503
}

/** Whether a program sent it, which reads no pages. */
export const sendsJson = (c: AppContext): boolean =>
  /^application\/json\b/i.test(c.req.header('content-type') ?? '')

/** Where a colony's page is: by tag while it has the tag in the yard, by id after it left. */
export const colonyPath = (c: Pick<ColonySummary, 'id' | 'tag' | 'closedOn'>): string =>
  `/colony/${encodeURIComponent(c.closedOn === null ? c.tag : c.id)}`

/** To the colony's page, which says what was saved and what the plan says now. */
export const toColony = (c: AppContext, summary: ColonySummary, entryId: string): Response =>
  c.redirect(`${colonyPath(summary)}?saved=${entryId}`, 303)
