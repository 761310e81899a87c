/** Pages of other sites cannot write here in the name of whoever is signed in. */
import { beforeAll, describe, expect, test } from 'vitest'
import { intake, newId } from '../store/helpers.ts'
import { ORIGIN, type TestYard, testYard } from '../support/yard-app.ts'
import { everyRoute, type Route } from './routes.ts'

const FOREIGN: [string, Record<string, string>][] = [
  ['another origin', { Origin: 'https://elsewhere.example' }],
  ['another port', { Origin: 'http://yard.test:8080' }],
  ['the same host over TLS', { Origin: 'https://yard.test' }],
  ['a sandboxed frame', { Origin: 'null' }],
  ['a browser that says cross-site', { 'Sec-Fetch-Site': 'cross-site' }],
  ['a subdomain', { 'Sec-Fetch-Site': 'same-site', Origin: 'http://a.yard.test' }],
  ['an origin that begins the same', { Origin: 'http://yard.test.elsewhere.example' }],
  [
    'a browser that says two things',
    { 'Sec-Fetch-Site': 'same-origin', Origin: 'https://elsewhere.example' },
  ],
]

let yard: TestYard
let posts: Route[]
beforeAll(async () => {
  yard = testYard()
  await yard.send('operator', [intake('A-1')])
  posts = everyRoute(yard).filter((r) => r.method !== 'GET')
})

const state = (): string =>
  JSON.stringify([
    [...yard.services.store.journal()],
    yard.services.people.accounts.list(),
    yard.services.connection.raw.prepare('SELECT * FROM setting').all(),
    yard.services.connection.raw.prepare('SELECT digest FROM session ORDER BY digest').all(),
  ])

/** A session is nothing to the API: it asks for a token in a header, which no page can make a browser send elsewhere. */
const refusal = (path: string): number => (path.startsWith('/api/') ? 401 : 403)

const TYPES = [
  'application/x-www-form-urlencoded',
  'text/plain',
  'multipart/form-data; boundary=x',
  'application/json',
  '',
]

describe.each(FOREIGN)('%s', (_who, headers) => {
  test('is refused by every route that writes, whatever it sends', async () => {
    const session = await yard.session('operator')
    const before = state()
    for (const { method, path } of posts)
      for (const type of TYPES) {
        const filled = path.replaceAll(/:[a-z]+(\{[^}]*\})?/g, 'A-1')
        const response = await yard.app.request(ORIGIN + filled, {
          method,
          headers: {
            ...headers,
            Cookie: `resettle=${session}`,
            ...(type === '' ? {} : { 'Content-Type': type }),
          },
          body: new TextEncoder().encode(`text=hello&on=2026-06-01&id=${newId()}`),
        })
        expect(response.status, `${method} ${path} ${type}`).toBe(refusal(path))
      }
    expect(state()).toBe(before)
  })
})

test('a form without any sign of where it comes from is refused too', async () => {
  const session = await yard.session('operator')
  const before = state()
  for (const { method, path } of posts) {
    const response = await yard.app.request(ORIGIN + path.replaceAll(/:[a-z]+(\{[^}]*\})?/g, 'A-1'), {
      method,
      headers: { Cookie: `resettle=${session}` },
      body: new URLSearchParams({ text: 'hello', on: '2026-06-01' }),
    })
    expect(response.status, path).toBe(refusal(path))
  }
  expect(state()).toBe(before)
})

test('our own page may', async () => {
  const before = yard.services.store.changes({ limit: 500 }).length
  for (const headers of [{ Origin: ORIGIN }, { 'Sec-Fetch-Site': 'same-origin', Origin: ORIGIN }])
    expect(
      (
        await yard.app.request(`${ORIGIN}/colony/A-1/note`, {
          method: 'POST',
          headers: { ...headers, Cookie: `resettle=${await yard.session('helper')}` },
          body: new URLSearchParams({ text: 'hello', on: '2026-06-01', id: newId() }),
        })
      ).status,
    ).toBe(303)
  expect(yard.services.store.changes({ limit: 500 })).toHaveLength(before + 2)
})

test('reading never writes: every page opened twice changes nothing but plans', async () => {
  const before = state()
  for (const { path } of everyRoute(yard).filter((r) => r.method === 'GET'))
    for (let i = 0; i < 2; i++)
      await (await yard.ask('operator', path.replaceAll(/:[a-z]+(\{[^}]*\})?/g, 'A-1'))).text()
  expect(state()).toBe(before)
})
