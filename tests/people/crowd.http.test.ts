/** A crowd at the door: hashing a passphrase takes its turn, and whoever finds no place is asked to come again. */
import { afterEach, beforeEach, expect, test } from 'vitest'
import type { Cost } from '../../src/people/index.ts'
import { newToken } from '../../src/people/tokens.ts'
import { PASSPHRASE } from '../support/people.ts'
import { NAMES, type TestYard, testYard } from '../support/yard-app.ts'

/** Slow enough that the queue stays full while a request comes in. */
const SLOW: Cost = { n: 4096, r: 8, p: 1 }
const PLACES = 34
const OTHER = 'gravel over slow lanterns'
const token = newToken()

let yard: TestYard
let crowd: Promise<unknown>
beforeEach(() => {
  yard = testYard({ services: { cost: SLOW }, deps: { setUpToken: token } })
})
afterEach(() => crowd)

/** Everybody chooses a passphrase at once: every place is taken. */
function gather(): void {
  const one = (_: unknown, n: number) =>
    yard.services.people.make({ name: `Guest ${n}`, role: 'helper', passphrase: PASSPHRASE })
  crowd = Promise.allSettled(Array.from({ length: PLACES }, one))
}

async function expectTurnedAway(response: Response): Promise<string> {
  const text = await response.text()
  expect([response.status, response.headers.get('retry-after')]).toEqual([503, '5'])
  expect(text).toContain('try again in a moment')
  expect(text).not.toContain(PASSPHRASE)
  expect(text).not.toContain(OTHER)
  expect(yard.errors).toEqual([])
  return text
}

test('setting up: what was typed is kept, but for the passphrase, and works a moment later', async () => {
  const fields = { token, name: 'Juniper', passphrase: OTHER, again: OTHER }
  gather()
  const text = await expectTurnedAway(await yard.post(null, '/set-up', fields))
  expect(text).toContain('value="Juniper"')
  expect(text).toContain(`value="${token}"`)
  expect(yard.services.people.accounts.byName('Juniper')).toBeNull()
})

test('an invitation stays good', async () => {
  const made = yard.services.people.invite({ name: 'Juniper', role: 'helper', by: null })
  const path = `/invite/${made.ok ? made.value.link.token : ''}`
  gather()
  await expectTurnedAway(await yard.post(null, path, { passphrase: OTHER, again: OTHER }))
  await crowd
  expect((await yard.post(null, path, { passphrase: OTHER, again: OTHER })).status).toBe(303)
})

test('a passphrase stays as it was', async () => {
  await yard.session('helper')
  const change = { old: PASSPHRASE, passphrase: OTHER, again: OTHER }
  gather()
  await expectTurnedAway(await yard.post('helper', '/account/passphrase', change))
  await crowd
  expect((await yard.post('helper', '/account/passphrase', change)).status).toBe(303)
})

test('signing in, known or not, is answered again once the crowd is gone', async () => {
  await yard.session('operator')
  const signIn = (name: string) => yard.services.people.signIn(name, 'wrong passphrase here', '')
  gather()
  const crowded = await Promise.all([NAMES.operator, 'Nobody'].map(signIn))
  expect(crowded).toEqual([
    { ok: false, why: 'wait', seconds: 5 },
    { ok: false, why: 'wait', seconds: 5 },
  ])
  await crowd
  const later = await Promise.all([NAMES.operator, 'Nobody'].map(signIn))
  expect(later).toEqual([
    { ok: false, why: 'wrong' },
    { ok: false, why: 'wrong' },
  ])
})
