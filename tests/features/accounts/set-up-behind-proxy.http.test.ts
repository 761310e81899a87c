/** The first start behind a TLS proxy: the address that is printed works, a wrong one says which is right, and a setting left out is said. */
import { expect, test } from 'vitest'
import { outsideFrom } from '../../../src/app/address.ts'
import { warningsFor } from '../../../src/node/commands/serve.ts'
import { listen } from '../../../src/node/listen.ts'
import { newToken } from '../../../src/people/tokens.ts'
import { PASSPHRASE } from '../../support/people.ts'
import { testYard } from '../../support/yard-app.ts'

const HOME = 'https://yard.example'
const outside = outsideFrom({ RESETTLE_URL: HOME, RESETTLE_TRUST_PROXY: 'loopback' })

const setUpFrom = (origin: string, where: { outside?: typeof outside } = { outside }) => {
  const token = newToken()
  const yard = testYard({ deps: { ...where, setUpToken: token } })
  const fields = { token, name: 'Odalys', passphrase: PASSPHRASE, again: PASSPHRASE }
  const body = new URLSearchParams(fields)
  return { yard, answer: yard.ask(null, '/set-up', { method: 'POST', headers: { Origin: origin }, body }) }
}

test('what is printed to make the first account is the address people use', async () => {
  const { services } = testYard()
  const server = await listen({ services, port: 0, outside })
  expect(server.setUpUrl).toMatch(/^https:\/\/yard\.example\/set-up\?token=[\w-]{43}$/)
  expect(server.url).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/)
  await server.stop()
})

test('the form works from there', async () => {
  const { yard, answer } = setUpFrom(HOME)
  expect((await answer).status).toBe(303)
  expect(yard.services.people.accounts.list()).toHaveLength(1)
})

test('from another address nothing is written, and a page says which address to open', async () => {
  for (const origin of ['http://127.0.0.1:8420', 'https://"><script>alert(1)</script>.example', 'null']) {
    const { yard, answer } = setUpFrom(origin)
    const response = await answer
    const text = await response.text()
    expect(response.status).toBe(403)
    expect(response.headers.get('content-type')).toContain('text/html')
    expect(text).toContain('<h1>This was sent from another address</h1>')
    expect(text).toContain(`href="${HOME}"`)
    expect(text).toContain('masthead')
    expect(text).not.toContain('<script>alert')
    expect(text).not.toContain('RESETTLE_URL')
    expect(yard.services.people.accounts.list()).toEqual([])
  }
})

test('where no address was set, the page names the setting too', async () => {
  const text = await (await setUpFrom(HOME, {}).answer).text()
  expect(text).toContain('href="http://yard.test"')
  expect(text).toContain('RESETTLE_URL')
})

test('a program is told in JSON', async () => {
  const response = await testYard({ deps: { outside } }).send('operator', [])
  expect([response.status, await response.json()]).toEqual([
    403,
    { error: 'sent from another address than this yard’s' },
  ])
})

test('an https address without a proxy that is believed is warned of at the start', () => {
  const warned = (env: Record<string, string>, host = '127.0.0.1'): string =>
    warningsFor(host, outsideFrom(env)).join()
  expect(warned({ RESETTLE_URL: HOME })).toContain('RESETTLE_TRUST_PROXY does not name it')
  expect(warned({ RESETTLE_URL: HOME, RESETTLE_TRUST_PROXY: 'loopback' })).toBe('')
  expect(warned({})).toBe('')
  expect(warned({}, '0.0.0.0')).toContain('without TLS')
})
