/** The whole app in process on a database in memory, with somebody signed in. */

import { DIRECT } from '../../src/app/address.ts'
import { SILENT } from '../../src/app/logging.ts'
import { dayIn } from '../../src/days.ts'
import { createApp } from '../../src/node/app.ts'
import { assetsIn } from '../../src/node/assets.ts'
import { openServices } from '../../src/node/services.ts'
import type { Role } from '../../src/people/index.ts'
import type { PhotoFiles } from '../../src/photos/index.ts'
import type { Store } from '../../src/store/index.ts'
import { CHEAP, signInAs } from './people.ts'

export interface Yard {
  store: Store
  /** Where pictures are kept. */
  photos: PhotoFiles
  /** Opens a page. */
  get: (path: string) => Promise<Answer>
  /** Opens a page without an account. */
  stranger: (path: string) => Promise<Response>
  /** Posts a form; a list of values is a field ticked more than once. */
  post: (path: string, fields: Record<string, string | string[]>) => Promise<Answer>
  /** Posts JSON. */
  send: (path: string, body: unknown) => Promise<Answer>
  /** Gives a beekeeper an account. */
  account: (name: string) => Promise<void>
  /** Makes it that day, at noon or at the hour that is said. */
  setDay: (day: string, at?: string) => void
  /** What was reported as a bug of ours. */
  errors: string[]
}

interface Answer {
  status: number
  /** Where it leads, for a redirect. */
  to: string | null
  text: string
  headers: Headers
}

/** A yard on that day; Ines, an operator, is signed in unless another role is asked for. `file`: one that is filled already. */
export async function yardOn(day: string, role: Role = 'operator', file: string = ':memory:'): Promise<Yard> {
  let now = new Date(`${day}T12:00:00Z`)
  const services = openServices(file, { cost: CHEAP, clock: () => now })
  services.store.settings.set('timeZone', 'UTC')
  const session = await signInAs(services.people, { name: 'Ines', role })
  const errors: string[] = []
  const app = createApp({
    store: services.store,
    people: services.people,
    tokens: services.tokens,
    messages: services.messages,
    calendars: services.calendars,
    safekeeping: services.safekeeping,
    photos: services.photos,
    outside: DIRECT,
    setUpToken: null,
    demo: null,
    log: SILENT,
    clock: () => now,
    zone: 'UTC',
    assets: assetsIn(),
    report: (error, request) => errors.push(`${request}: ${error instanceof Error ? error.stack : error}`),
  })
  const base = 'http://yard.test'
  const ask = async (path: string, init: RequestInit = {}): Promise<Answer> => {
    const headers = new Headers(init.headers)
    headers.set('cookie', `resettle=${session}`)
    if (init.method === 'POST') headers.set('origin', base)
    const answer = await app.request(`${base}${path}`, { ...init, headers })
    return {
      status: answer.status,
      to: answer.headers.get('location'),
      text: await answer.text(),
      headers: answer.headers,
    }
  }
  return {
    store: services.store,
    photos: services.photos,
    errors,
    get: (path) => ask(path, { headers: { accept: 'text/html' } }),
    stranger: async (path) => app.request(`${base}${path}`, { headers: { accept: 'text/html' } }),
    post: (path, fields) => {
      const body = new URLSearchParams()
      for (const [name, value] of Object.entries(fields))
        for (const v of Array.isArray(value) ? value : [value]) body.append(name, v)
      return ask(path, { method: 'POST', body, headers: { accept: 'text/html' } })
    },
    send: (path, body) =>
      ask(path, {
        method: 'POST',
        body: typeof body === 'string' ? body : JSON.stringify(body),
        headers: { 'content-type': 'application/json' },
      }),
    account: async (name) => {
      await signInAs(services.people, { name, role: 'beekeeper' })
    },
    setDay: (next, at = '12:00') => {
      now = new Date(`${next}T${at}:00Z`)
    },
  }
}

/** An intake as its form posts it. */
export const INTAKE = {
  colony: 'W-12',
  stand: '4',
  yard: 'North field',
  on: '2026-05-01',
  'removal.type': 'wall',
  'removal.outdoorC': '75',
  queen: 'unseen',
  'brood.eggs': '0.5',
  'brood.open': '1',
  'brood.capped': '1',
  'bees.frames': '5',
  tiedComb: 'yes',
}

/** Puts entries straight into the store; throws when they are refused. */
export function given(yard: Yard, entries: Record<string, unknown>[]): void {
  const today = dayIn('UTC', new Date('2026-12-31T12:00:00Z'))
  const result = yard.store.append(entries, { today, recordedAt: '2026-05-01T12:00:00.000Z' })
  if (!result.ok) throw new Error(JSON.stringify(result.problems))
}

/** The text of the page, tags taken out, spaces made single. */
export const wordsOf = (html: string): string =>
  html
    .replaceAll(/<(script|style|svg)[\s\S]*?<\/\1>/g, ' ')
    .replaceAll(/<[^>]+>/g, ' ')
    .replaceAll(/\s+/g, ' ')

/** The big form of a page as it stands. */
export function formIn(text: string): Record<string, string[]> {
  const from = text.slice(text.indexOf('id="entry-form"'))
  const typed: Record<string, string[]> = {}
  for (const [tag] of from.slice(0, from.indexOf('</form>')).matchAll(/<input [^>]*>/g)) {
    const at = (name: string): string | undefined => new RegExp(`\\b${name}="([^"]*)"`).exec(tag)?.[1]
    const [name, type] = [at('name'), at('type')]
    if (name === undefined || ((type === 'radio' || type === 'checkbox') && !/ checked/.test(tag))) continue
    typed[name] = [...(typed[name] ?? []), at('value') ?? '']
  }
  return typed
}
