/** Setting up, inviting, choosing passphrases, changing roles: over HTTP. */
import { beforeEach, describe, expect, test } from 'vitest'
import { listen } from '../../../src/node/listen.ts'
import { newToken } from '../../../src/people/tokens.ts'
import { PASSPHRASE } from '../../support/people.ts'
import { NAMES, type TestYard, testYard } from '../../support/yard-app.ts'

let yard: TestYard

const OTHER = 'gravel over slow lanterns'
const status = async (response: Promise<Response>): Promise<number> => (await response).status

describe('the set-up page', () => {
  const token = newToken()
  const filled = { token, name: 'Odalys', passphrase: PASSPHRASE, again: PASSPHRASE }
  beforeEach(() => {
    yard = testYard({ deps: { setUpToken: token } })
  })

  test('is where everything leads while there is no account', async () => {
    for (const path of ['/', '/yard', '/nowhere', '/sign-in'])
      expect((await yard.ask(null, path)).headers.get('location')).toBe('/set-up')
    expect(await (await yard.ask(null, `/set-up?token=${token}`)).text()).toContain(`value="${token}"`)
  })

  test('makes the first operator, signed in, once', async () => {
    const response = await yard.post(null, '/set-up', filled)
    expect(response.status).toBe(303)
    expect(response.headers.get('set-cookie')).toContain('resettle=')
    expect(yard.services.people.accounts.list()).toMatchObject([
      { name: 'Odalys', role: 'operator', state: 'active' },
    ])
    expect((await yard.ask(null, '/set-up')).headers.get('location')).toContain('/sign-in')
    expect(await status(yard.post(null, '/set-up', { ...filled, name: 'Mallory' }))).toBe(401)
    expect(yard.services.people.accounts.list()).toHaveLength(1)
  })

  test('makes one operator of two who hurry at the same time', async () => {
    const answers = await Promise.all(
      ['Odalys', 'Mallory', 'Third'].map((name) => status(yard.post(null, '/set-up', { ...filled, name }))),
    )
    expect(answers.filter((a) => a === 303)).toHaveLength(1)
    expect(yard.services.people.accounts.list()).toHaveLength(1)
  })

  test.each([
    [{ token: newToken() }, 'is not the one in the terminal'],
    [{ token: '' }, 'is not the one in the terminal'],
    [{ passphrase: 'short', again: 'short' }, 'at least 12 characters'],
    [{ again: OTHER }, 'is not the same as above'],
    [{ name: '' }, 'must not be empty'],
  ])('refuses %j: %s', async (wrong, why) => {
    const response = await yard.post(null, '/set-up', { ...filled, ...wrong })
    expect(response.status).toBe(422)
    const text = await response.text()
    expect(text).toContain(why)
    expect(text).not.toContain(PASSPHRASE)
    expect(yard.services.people.accounts.list()).toEqual([])
  })

  test('is the only way in from this machine; from elsewhere there is none until it is done', async () => {
    await expect(listen({ services: yard.services, port: 0, host: '0.0.0.0' })).rejects.toThrow(
      'There is no account yet',
    )
    await expect(listen({ services: yard.services, port: 0, host: '::' })).rejects.toThrow(
      'There is no account yet',
    )
    const local = await listen({ services: yard.services, port: 0 })
    expect(local.setUpUrl).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/set-up\?token=[\w-]{43}$/)
    await local.stop()
    await yard.session('helper')
    const everywhere = await listen({ services: yard.services, port: 0, host: '0.0.0.0' })
    expect(everywhere.setUpUrl).toBeNull()
    await everywhere.stop()
  })
})

describe('an invitation', () => {
  beforeEach(() => {
    yard = testYard()
  })
  const invite = async (name = 'Juniper', role = 'helper'): Promise<string> => {
    const response = await yard.post('operator', '/people', { name, role })
    const text = await response.text()
    expect(response.status).toBe(200)
    expect(text).toContain('<svg')
    return /http:\/\/yard\.test(\/invite\/[\w-]{43})/.exec(text)?.[1] ?? ''
  }
  const choose = (path: string, passphrase = PASSPHRASE): Promise<Response> =>
    yard.post(null, path, { passphrase, again: passphrase })

  test('lets its holder choose a passphrase, once, and signs in', async () => {
    const path = await invite()
    expect(await (await yard.ask(null, path)).text()).toContain('Hello Juniper')
    const response = await choose(path)
    expect([response.status, response.headers.get('location')]).toEqual([303, '/'])
    expect(yard.services.people.accounts.byName('Juniper')).toMatchObject({
      role: 'helper',
      state: 'active',
      createdBy: NAMES.operator,
    })
    expect(await status(choose(path, OTHER))).toBe(401)
    expect((await yard.ask(null, path)).headers.get('location')).toContain('/sign-in')
    expect((await yard.services.people.signIn('Juniper', PASSPHRASE, '')).ok).toBe(true)
  })

  test('is used by one of two who open it at the same time', async () => {
    const path = await invite()
    const answers = await Promise.all([choose(path), choose(path, OTHER)].map(status))
    expect(answers.filter((a) => a === 303)).toHaveLength(1)
  })

  test('runs out after a week', async () => {
    const path = await invite()
    yard.at('2026-06-08T11:59:00Z')
    expect(await status(yard.ask(null, path))).toBe(200)
    yard.at('2026-06-08T12:01:00Z')
    expect(await status(yard.ask(null, path))).toBe(303)
    expect(await status(choose(path))).toBe(401)
  })

  test('is void once another is made, or the account is closed', async () => {
    const path = await invite()
    const id = yard.services.people.accounts.byName('Juniper')?.id ?? ''
    const again = await (await yard.post('operator', `/people/${id}/link`, {})).text()
    const second = /\/invite\/[\w-]{43}/.exec(again)?.[0] ?? ''
    expect(await status(yard.ask(null, path))).toBe(303)
    expect(await status(yard.ask(null, second))).toBe(200)
    await yard.post('operator', `/people/${id}/close`, {})
    expect(await status(yard.ask(null, second))).toBe(303)
  })

  test('for a name that is or was somebody’s is refused', async () => {
    await invite('Juniper')
    const id = yard.services.people.accounts.byName('Juniper')?.id ?? ''
    yard.services.people.close(id)
    const response = await yard.post('operator', '/people', { name: ' JUNIPER ', role: 'helper' })
    expect(response.status).toBe(422)
    expect(await response.text()).toContain('is taken')
  })

  test('a link for a forgotten passphrase ends every session there was', async () => {
    const old = await yard.session('helper')
    const id = yard.services.people.accounts.byName(NAMES.helper)?.id ?? ''
    const text = await (await yard.post('operator', `/people/${id}/link`, {})).text()
    expect(await status(choose(/\/invite\/[\w-]{43}/.exec(text)?.[0] ?? '', OTHER))).toBe(303)
    expect(yard.services.people.sessions.holder(old)).toBeNull()
    expect((await yard.services.people.signIn(NAMES.helper, PASSPHRASE, '')).ok).toBe(false)
  })
})

describe('an account', () => {
  beforeEach(async () => {
    yard = testYard()
    for (const role of ['operator', 'helper'] as const) await yard.session(role)
  })
  const idOf = (name: string): string => yard.services.people.accounts.byName(name)?.id ?? ''

  test('changes its passphrase, knowing the old one; other browsers are signed out', async () => {
    const other = yard.services.people.sessions.open(idOf(NAMES.helper))
    const change = (old: string): Promise<Response> =>
      yard.post('helper', '/account/passphrase', { old, passphrase: OTHER, again: OTHER })
    const refused = await change('wrong')
    expect(refused.status).toBe(422)
    expect(await refused.text()).toContain('is not your passphrase')
    expect(await status(change(PASSPHRASE))).toBe(303)
    expect(yard.services.people.sessions.holder(other)).toBeNull()
    expect(await status(yard.ask('helper', '/account'))).toBe(200)
    expect((await yard.services.people.signIn(NAMES.helper, OTHER, '')).ok).toBe(true)
  })

  test('of the last operator can be neither closed nor given another role', async () => {
    for (const [what, fields] of [
      ['close', {}],
      ['role', { role: 'helper' }],
    ] as const) {
      const response = await yard.post('operator', `/people/${idOf(NAMES.operator)}/${what}`, fields)
      expect(response.status).toBe(422)
      expect(await response.text()).toContain('is the last operator who can sign in')
    }
    await yard.services.people.make({ name: 'Second', role: 'operator', passphrase: PASSPHRASE })
    expect(await status(yard.post('operator', `/people/${idOf('Second')}/close`, {}))).toBe(303)
    expect(await status(yard.post('operator', `/people/${idOf(NAMES.operator)}/close`, {}))).toBe(422)
  })

  test('that is closed is out at once and can be opened again', async () => {
    await yard.post('operator', `/people/${idOf(NAMES.helper)}/close`, {})
    expect(await status(yard.ask('helper', '/'))).toBe(303)
    expect((await yard.services.people.signIn(NAMES.helper, PASSPHRASE, '')).ok).toBe(false)
    await yard.post('operator', `/people/${idOf(NAMES.helper)}/reopen`, {})
    expect((await yard.services.people.signIn(NAMES.helper, PASSPHRASE, '')).ok).toBe(true)
  })

  test('is hashed anew with today’s settings at the next sign-in', async () => {
    const { hashed } = await import('../../../src/people/passphrase.ts')
    const old = await hashed(PASSPHRASE, { n: 32, r: 8, p: 1 })
    yard.services.people.accounts.setPassphrase(idOf(NAMES.helper), old)
    expect((await yard.services.people.signIn(NAMES.helper, PASSPHRASE, '')).ok).toBe(true)
    expect(yard.services.people.accounts.secretOf(NAMES.helper)?.passphrase).toMatch(/^scrypt\$16\$/)
  })
})
