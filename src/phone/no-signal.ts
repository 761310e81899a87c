/** What a phone says when neither it nor the server can answer. */

import { html } from 'hono/html'
import { bareFrame } from '../app/index.ts'
import { NoSignalPage, NotKeptPage } from '../features/offline/index.ts'
import type { Language } from '../languages.ts'
import type { Frame } from '../parts/index.ts'

/** A whole page as an answer. */
export async function pageOf(body: unknown, status = 200): Promise<Response> {
  const page = await html`<!doctype html>${body as never}`
  return new Response(String(page), { status, headers: { 'Content-Type': 'text/html; charset=UTF-8' } })
}

/** The page is not one that this phone keeps. */
export const noSignal = (built: Frame['built'], language: Language): Promise<Response> =>
  pageOf(NoSignalPage({ frame: bareFrame('', built, language) }), 503)

/** A form that could neither be kept nor sent. */
export const notKept = (built: Frame['built'], language: Language): Promise<Response> =>
  pageOf(NotKeptPage({ frame: bareFrame('', built, language) }), 503)
