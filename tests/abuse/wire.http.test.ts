/** What comes over a raw connection: too much, too slowly, from another network, through a proxy that lies. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { connect } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pino } from 'pino'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { outsideFrom } from '../../src/app/address.ts'
import { pathForLog } from '../../src/app/logging.ts'
import { type Listening, listen } from '../../src/node/listen.ts'
import { intake, newId } from '../store/helpers.ts'
import { PASSPHRASE } from '../support/people.ts'
import { NAMES, type TestYard, testYard } from '../support/yard-app.ts'

let folder = ''
let yard: TestYard
let server: Listening
let session = ''
const lines: string[] = []

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'resettle-wire-'))
  yard = testYard({ file: join(folder, 'resettle.db') })
  session = await yard.session('operator')
  await yard.send('operator', [intake('A-1')])
  server = await listen({
    services: yard.services,
    port: 0,
    clock: yard.deps.clock,
    log: pino({ base: null }, { write: (line: string) => lines.push(line) }),
    times: { requestTimeout: 60_000, headersTimeout: 1000, connectionsCheckingInterval: 200 },
    patience: { answer: 1500, look: 500, least: 100 },
  })
})
afterAll(async () => {
  await server.stop()
  yard.services.close()
  rmSync(folder, { recursive: true, force: true })
})

interface Heard {
  text: string
  ms: number
}

/** Sends raw text and gives everything that comes back until the other side closes, or `patience` is over. */
function raw(head: string, more?: (write: (text: string) => void) => void, patience = 8000): Promise<Heard> {
  const started = performance.now()
  return new Promise((done) => {
    const { hostname, port } = new URL(server.url)
    const socket = connect(Number(port), hostname, () => {
      socket.write(head)
      more?.((text) => socket.write(text))
    })
    let text = ''
    const end = (): void => {
      clearTimeout(timer)
      socket.destroy()
      done({ text, ms: performance.now() - started })
    }
    const timer = setTimeout(end, patience)
    socket.on('data', (chunk) => {
      text += chunk.toString()
    })
    socket.on('error', end)
    socket.on('close', end)
  })
}

const head = (line: string, headers: Record<string, string> = {}): string =>
  [
    line,
    ...Object.entries({ Host: new URL(server.url).host, ...headers }).map(([k, v]) => `${k}: ${v}`),
    '',
    '',
  ].join('\r\n')

const own = (): Record<string, string> => ({
  Origin: server.url,
  Cookie: `resettle=${session}`,
  Accept: 'text/html',
  'Content-Type': 'application/x-www-form-urlencoded',
})

const journal = (): number => [...yard.services.store.journal()].length

describe('too much', () => {
  test.each(['/entries', '/colony/A-1/note', '/sign-in', '/people', '/nowhere'])(
    'a body over the limit to %s is refused before it is read',
    async (path) => {
      const before = journal()
      const { text } = await raw(
        head(`POST ${path} HTTP/1.1`, { ...own(), 'Content-Length': '900000000', Connection: 'close' }),
      )
      expect(text).toMatch(/^HTTP\/1\.1 413/)
      expect(journal()).toBe(before)
    },
  )

  test('a body without a length is cut off at the limit', async () => {
    const chunk = `10000\r\n${'x'.repeat(0x10000)}\r\n`
    const { text } = await raw(
      head('POST /colony/A-1/note HTTP/1.1', {
        ...own(),
        'Transfer-Encoding': 'chunked',
        Connection: 'close',
      }),
      (write) => {
        for (let i = 0; i < 40; i++) write(chunk)
        write('0\r\n\r\n')
      },
    )
    expect(text).toMatch(/^HTTP\/1\.1 413/)
  })

  test('headers without end are refused', async () => {
    const { text } = await raw(head('GET / HTTP/1.1', { 'X-Long': 'x'.repeat(64 * 1024) }))
    expect(text).toMatch(/^HTTP\/1\.1 431/)
  })

  test('a thousand fields, a field of a megabyte, names that objects already have', async () => {
    const fields = new URLSearchParams([
      ...Array.from({ length: 1000 }, (_, i) => [`field${i}`, 'x']),
      ['text', 'y'.repeat(900_000)],
      ['__proto__', 'x'],
      ['constructor', 'x'],
    ])
    const response = await fetch(`${server.url}/colony/A-1/note`, {
      method: 'POST',
      headers: own(),
      body: fields,
      redirect: 'manual',
    })
    expect([413, 422]).toContain(response.status)
    expect(Object.prototype).not.toHaveProperty('x')
  })
})

describe('too slowly', () => {
  test('headers that dribble in are cut off', async () => {
    const { text, ms } = await raw('GET / HTTP/1.1\r\nHost: x\r\n', (write) => {
      const timer = setInterval(() => write('X-A: b\r\n'), 100)
      setTimeout(() => clearInterval(timer), 5000)
    })
    expect(text).toMatch(/^HTTP\/1\.1 408/)
    expect(ms).toBeLessThan(5000)
  })

  test('a body that dribbles in is cut off, writes nothing, and holds up nobody else', async () => {
    const before = journal()
    const slow = raw(
      head('POST /colony/A-1/note HTTP/1.1', { ...own(), 'Content-Length': '5000' }),
      (write) => {
        const timer = setInterval(() => write('x'), 100)
        setTimeout(() => clearInterval(timer), 6000)
      },
    )
    expect((await fetch(`${server.url}/sign-in`)).status).toBe(200)
    const { text, ms } = await slow
    expect(text).toMatch(/^HTTP\/1\.1 408/)
    expect(ms).toBeLessThan(3000)
    expect(journal()).toBe(before)
    expect(yard.errors).toEqual([])
  })

  test('what arrives slowly but surely is taken, though it takes longer than an answer may', async () => {
    const before = journal()
    const body = new URLSearchParams({ id: newId(), on: '2026-06-01', text: 'x'.repeat(900) }).toString()
    const { text, ms } = await raw(
      head('POST /colony/A-1/note HTTP/1.1', {
        ...own(),
        'Content-Type': 'application/x-www-form-urlencoded',
        'Content-Length': String(body.length),
      }),
      (write) => {
        // 400 bytes a second: four times the least, and 2.5 seconds in all.
        for (let at = 0; at < body.length; at += 40)
          setTimeout(() => write(body.slice(at, at + 40)), at * 2.5)
      },
      6000,
    )
    expect(text).toMatch(/^HTTP\/1\.1 303/)
    expect(ms).toBeGreaterThan(2000)
    expect(journal()).not.toBe(before)
  })
})

describe('out of the house', () => {
  const secret = readFileSync(new URL('../../package.json', import.meta.url), 'utf8').slice(0, 30)
  test.each([
    '/assets/../../../package.json',
    '/assets/..%2f..%2f..%2fpackage.json',
    '/assets/%2e%2e/%2e%2e/%2e%2e/package.json',
    '/assets/..\\..\\..\\package.json',
    '/assets/....//....//package.json',
    '/assets//etc/passwd',
    '/icon.svg/../../../package.json',
    '/assets/%00package.json',
    '/changes/csv/../../../../package.json',
    '/photo/..%2f..%2fresettle.db',
    '/photos/..%2fresettle.db',
    '/photo/../../resettle.db',
    '//etc/passwd',
    '/data/export/../../../../etc/passwd',
  ])('%s leads nowhere', async (path) => {
    for (const cookie of [{}, { Cookie: `resettle=${session}` }]) {
      const { text } = await raw(head(`GET ${path} HTTP/1.1`, { ...cookie, Connection: 'close' }))
      expect(text).toMatch(/^HTTP\/1\.1 (303|400|404)/)
      expect(text).not.toContain(secret)
      expect(text).not.toContain('root:')
      expect(text).not.toContain('SQLite format 3')
    }
  })

  test.each(['TRACE', 'CONNECT', 'OPTIONS', 'PROPFIND', 'BREW'])(
    '%s is answered without harm',
    async (method) => {
      const { text } = await raw(head(`${method} / HTTP/1.1`, { Connection: 'close' }), undefined, 2000)
      expect(text).not.toMatch(/^HTTP\/1\.1 (2|5)/)
    },
  )

  test('a wrong address says nothing of how the server is built', async () => {
    const response = await fetch(`${server.url}/colony/%E0%A4%A`, {
      headers: { Cookie: `resettle=${session}` },
    })
    expect(response.status).toBeLessThan(500)
    expect(await response.text()).not.toMatch(/node_modules|\.tsx?:\d+|at \w+ \(/)
  })
})

describe('behind a proxy', () => {
  test('what it says is believed only when it is trusted', async () => {
    const one = await listen({
      services: yard.services,
      port: 0,
      outside: outsideFrom({ RESETTLE_TRUST_PROXY: 'loopback' }),
    })
    const two = await listen({
      services: yard.services,
      port: 0,
      outside: outsideFrom({ RESETTLE_TRUST_PROXY: '192.0.2.1' }),
    })
    const signIn = (url: string): Promise<Response> =>
      fetch(`${url}/sign-in`, {
        method: 'POST',
        redirect: 'manual',
        headers: {
          Origin: 'https://yard.example',
          'X-Forwarded-Proto': 'https',
          'X-Forwarded-Host': 'yard.example',
        },
        body: new URLSearchParams({ name: NAMES.operator, passphrase: PASSPHRASE }),
      })
    const trusted = await signIn(one.url)
    expect([trusted.status, trusted.headers.get('set-cookie')?.startsWith('__Host-resettle=')]).toEqual([
      303,
      true,
    ])
    expect((await signIn(two.url)).status).toBe(403)
    await one.stop()
    await two.stop()
  })

  test.each([
    [{ RESETTLE_TRUST_PROXY: 'everybody' }, 'RESETTLE_TRUST_PROXY'],
    [{ RESETTLE_URL: 'yard.example' }, 'RESETTLE_URL must be like'],
    [{ RESETTLE_URL: 'https://yard.example/sub' }, 'without a path'],
  ])('%j is refused in words', (env, why) => expect(() => outsideFrom(env)).toThrow(why))
})

describe('the log', () => {
  test('holds no passphrase, token, name, address, or word of the journal', async () => {
    lines.length = 0
    const made = yard.services.people.invite({ name: 'Juniper', role: 'helper', by: null })
    const token = made.ok ? made.value.link.token : ''
    const ask = (path: string, init: RequestInit = {}): Promise<Response> =>
      fetch(server.url + path, { redirect: 'manual', ...init, headers: { ...own(), ...init.headers } })
    await ask(`/invite/${token}`)
    await ask(`/set-up?token=${token}`)
    await ask('/sign-in', {
      method: 'POST',
      body: new URLSearchParams({ name: 'Secretname', passphrase: 'my secret passphrase' }),
    })
    await ask('/colony/SECRET-TAG?saved=secretquery')
    await ask('/colony/A-1/note', {
      method: 'POST',
      body: new URLSearchParams({ id: newId(), on: '2026-06-01', text: 'Secretnote' }),
    })
    const text = lines.join('')
    expect(lines.length).toBeGreaterThanOrEqual(5)
    expect(text).not.toMatch(/secret|127\.0\.0\.1|Juniper|Odalys/i)
    expect(text).not.toContain(token)
    expect(text).not.toContain(session)
    expect(JSON.parse(lines[0] ?? '')).toMatchObject({ method: 'GET', path: '/invite/…', status: 200 })
  })

  test.each([
    ['/', '/'],
    ['/colony/A-1/visit', '/colony/…/visit'],
    ['/invite/abc/def', '/invite/…/def'],
    ['/Some One/x', '/…/…'],
    ['/people/019/role', '/people/…/role'],
  ])('%s is logged as %s', (path, shown) => expect(pathForLog(path)).toBe(shown))
})
