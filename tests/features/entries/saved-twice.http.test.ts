/** Two browsers, or one impatient thumb, saving the same visit: one entry. Over a real connection. */
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type Listening, listen } from '../../../src/node/listen.ts'
import { intake, newId } from '../../store/helpers.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'

let yard: TestYard
let server: Listening
beforeAll(async () => {
  yard = testYard()
  await yard.send('operator', [intake('A-1', { on: '2026-05-01' })])
  server = await listen({ services: yard.services, port: 0, clock: yard.deps.clock })
})
afterAll(() => server.stop())

async function post(
  role: 'helper' | 'beekeeper',
  path: string,
  fields: Record<string, string>,
): Promise<Response> {
  return fetch(server.url + path, {
    method: 'POST',
    redirect: 'manual',
    headers: { Origin: server.url, Cookie: `resettle=${await yard.session(role)}` },
    body: new URLSearchParams(fields),
  })
}

const count = (): number => yard.services.store.colony('A-1')?.journal.length ?? 0

test('the same visit saved ten times at once is one entry, and every browser is told it is saved', async () => {
  const id = newId()
  const fields = { 'id.': id, on: '2026-05-06', opened: 'yes', eggs: 'none', cells: 'capped', by: 'ignored' }
  const before = count()
  const answers = await Promise.all(
    Array.from({ length: 10 }, () => post('helper', '/colony/A-1/visit', fields)),
  )
  expect(answers.map((a) => [a.status, a.headers.get('location')])).toEqual(
    Array.from({ length: 10 }, () => [303, `/colony/A-1?saved=${id}`]),
  )
  expect(count()).toBe(before + 1)
})

test('from a second browser, signed in as somebody else: still one, and it stays the first one’s', async () => {
  const id = newId()
  const fields = { id, on: '2026-05-07', text: 'Loud at noon.' }
  const before = count()
  const answers = await Promise.all([
    post('helper', '/colony/A-1/note', fields),
    post('beekeeper', '/colony/A-1/note', fields),
  ])
  expect(answers.map((a) => a.status)).toEqual([303, 303])
  expect(count()).toBe(before + 1)
})

test('the same id with other words is told apart, and the first one stands', async () => {
  const id = newId()
  const first = await post('helper', '/colony/A-1/note', { id, on: '2026-05-08', text: 'First words.' })
  const second = await post('helper', '/colony/A-1/note', { id, on: '2026-05-08', text: 'Other words.' })
  expect([first.status, second.status]).toEqual([303, 422])
  expect(await second.text()).toContain('Other words.')
  expect(yard.services.store.entry(id)?.entry).toMatchObject({ text: 'First words.' })
})
