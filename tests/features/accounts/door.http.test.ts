/** What a stranger finds: a sign-in page, and nothing else. */
import { fileURLToPath } from 'node:url'
import { beforeEach, describe, expect, test } from 'vitest'
import { localPath } from '../../../src/features/accounts/sign-in-route.tsx'
import { assetsIn } from '../../../src/node/assets.ts'
import { limitsOf } from '../../../src/people/limits.ts'
import { newToken } from '../../../src/people/tokens.ts'
import { PASSPHRASE } from '../../support/people.ts'
import { processorOf } from '../../support/processor.ts'
import { NAMES, ORIGIN, type TestYard, testYard, unlimited } from '../../support/yard-app.ts'

const PUBLIC = fileURLToPath(new URL('../../../web/public', import.meta.url))

let yard: TestYard
beforeEach(async () => {
  yard = testYard()
  await yard.session('operator')
})

const signIn = (name: string, passphrase: string, to = ''): Promise<Response> =>
  yard.post(null, '/sign-in', { name, passphrase, to })

const cookieIn = (response: Response): string => response.headers.get('set-cookie') ?? ''

describe('a stranger', () => {
  const PATHS = [
    '/',
    '/yard',
    '/colony/A-1',
    '/people',
    '/data',
    '/set-up',
    '/invite/abc',
    '/nowhere',
    '/changes/csv',
    '/api/v2/colonies',
    '/account/tokens/openapi.json',
    '/feed/abc.ics',
  ]

  test('is led to the sign-in page from every path, whether there is such a page or not', async () => {
    const answers = await Promise.all(
      PATHS.map(async (path) => {
        const response = await yard.ask(null, path)
        const headers = [...response.headers].filter(([name]) => name !== 'location')
        return JSON.stringify([response.status, headers, await response.text()])
      }),
    )
    expect(new Set(answers).size).toBe(1)
    expect((await yard.ask(null, '/nowhere')).status).toBe(303)
  })

  test('gets one and the same refusal for whatever is posted, whatever method is used', async () => {
    for (const method of ['POST', 'PUT', 'DELETE', 'PATCH']) {
      const answers = await Promise.all(
        PATHS.filter((p) => p !== '/set-up').map(async (path) => {
          const response = await yard.ask(null, path, {
            method,
            ...(method === 'DELETE' ? {} : { body: new URLSearchParams({ a: 'b' }) }),
          })
          return `${response.status} ${await response.text()}`
        }),
      )
      expect(new Set(answers).size, method).toBe(1)
      expect(answers[0]).toMatch(/^401/)
    }
    expect((await yard.send(null, [])).status).toBe(401)
  })

  test('gets one and the same 401 from the whole API, whatever path and method, its description included', async () => {
    const paths = [
      '',
      '/',
      '/openapi.json',
      '/me',
      '/colonies',
      '/colonies/A-1/plan',
      '/entries',
      '/nowhere/at/all',
    ]
    for (const method of ['GET', 'POST', 'PUT', 'DELETE', 'OPTIONS']) {
      const answers = await Promise.all(
        paths.map(async (path) => {
          const response = await yard.ask(null, `/api/v1${path}`, { method })
          return JSON.stringify([response.status, [...response.headers], await response.text()])
        }),
      )
      expect(new Set(answers).size, method).toBe(1)
      expect(answers[0], method).toMatch(/^\[401,/)
    }
    const heads = paths.map((path) => yard.ask(null, `/api/v1${path}`, { method: 'HEAD' }))
    expect(new Set((await Promise.all(heads)).map((r) => r.status))).toEqual(new Set([401]))
  })

  test('is given the program’s own files and the page of a letter that is not there, and they say nothing of the yard', async () => {
    yard.services.store.settings.set('yardName', 'Quarry yard')
    const shown = testYard({ deps: { assets: assetsIn(PUBLIC) } })
    const manifest = await (await shown.ask(null, '/manifest.webmanifest')).text()
    expect(manifest).not.toMatch(/bee|colon|rescue|hive|queen/i)
    const letters = await Promise.all(['/letter/abc', `/letter/${newToken()}`].map((p) => yard.ask(null, p)))
    expect(letters.map((r) => r.status)).toEqual([404, 404])
    const [one, two] = await Promise.all(letters.map((r) => r.text()))
    expect(one).toBe(two)
    const built = testYard({ deps: { assets: assetsIn() } })
    const worker = await built.ask(null, '/service-worker.js')
    for (const text of [manifest, one ?? '', await worker.text()])
      expect(/Quarry|Odalys/.test(text)).toBe(false)
  })

  test('learns no name of yard or person, and no day, from the sign-in page', async () => {
    yard.services.store.settings.set('yardName', 'Quarry yard')
    const text = await (await yard.ask(null, '/sign-in')).text()
    expect(text).toContain('<h1>Sign in</h1>')
    expect(text).not.toMatch(/Quarry|Odalys|2026|href="\/yard"/)
  })

  test('finds no demo door in a real yard', async () => {
    const response = await yard.post(null, '/sign-in/as', { name: NAMES.operator })
    expect(response.status).toBe(401)
    expect(cookieIn(response)).toBe('')
  })
})

describe('signing in', () => {
  test('opens a session: HttpOnly, Lax, for the whole site, and the page one wanted', async () => {
    const response = await signIn(NAMES.operator, PASSPHRASE, '/yard?show=left')
    expect(response.status).toBe(303)
    expect(response.headers.get('location')).toBe('/yard?show=left')
    expect(cookieIn(response)).toMatch(
      /^resettle=[\w-]{43}; Max-Age=7776000; Path=\/; HttpOnly; SameSite=Lax$/,
    )
  })

  test('takes the name in any case', async () =>
    expect((await signIn(` ${NAMES.operator.toUpperCase()} `, PASSPHRASE)).status).toBe(303))

  test('a wrong name and a wrong passphrase are told apart by nothing', async () => {
    const invited = yard.services.people.invite({ name: 'Juniper', role: 'helper', by: null })
    const closed = await yard.services.people.make({ name: 'Rowan', role: 'helper', passphrase: PASSPHRASE })
    if (!invited.ok || !closed.ok) throw new Error('no accounts')
    yard.services.people.close(closed.value.id)
    const tries = [
      ['Odalys', 'wrong passphrase here'],
      ['Nobody', PASSPHRASE],
      ['Juniper', PASSPHRASE],
      ['Rowan', PASSPHRASE],
      ['Odalys', ''],
    ] as const
    const pages = await Promise.all(
      tries.map(async ([name, passphrase]) => {
        const response = await signIn(name, passphrase)
        return `${response.status} ${cookieIn(response)} ${(await response.text()).replaceAll(name, 'NAME')}`
      }),
    )
    expect(new Set(pages).size).toBe(1)
    expect(pages[0]).toMatch(/^401 .*The name or the passphrase is not right/s)
  })

  test('takes as long for a name nobody has', async () => {
    const { peopleOn } = await import('../../../src/people/node.ts')
    const { COST } = await import('../../../src/people/passphrase.ts')
    const { openConnection } = await import('../../../src/store/node.ts')
    const connection = openConnection(':memory:')
    const people = peopleOn(connection, {
      clock: () => new Date(),
      cost: { ...COST, n: 4096 },
      limits: unlimited(),
    })
    await people.make({ name: 'Odalys', role: 'operator', passphrase: PASSPHRASE })
    await people.signIn('Nobody', 'x', '')
    // By turns, and by the processor: what else the machine does falls on both.
    const taken: Record<string, number[]> = { Odalys: [], Nobody: [] }
    for (let i = 0; i < 15; i++)
      for (const [name, times] of Object.entries(taken))
        times.push((await processorOf(() => people.signIn(name, 'wrong passphrase here', ''))).ms)
    const middle = (times: number[] = []): number => times.sort((a, b) => a - b)[7] ?? 0
    const [known, unknown] = [middle(taken.Odalys), middle(taken.Nobody)]
    expect(unknown / known).toBeGreaterThan(0.5)
    expect(unknown / known).toBeLessThan(2)
    connection.raw.close()
  })

  test('replaces the session the browser had', async () => {
    const before = await yard.session('operator')
    const response = await yard.ask('operator', '/sign-in', {
      method: 'POST',
      body: new URLSearchParams({ name: NAMES.operator, passphrase: PASSPHRASE }),
    })
    expect(cookieIn(response)).toContain('resettle=')
    expect(cookieIn(response)).not.toContain(before)
    expect(yard.services.people.sessions.holder(before)).toBeNull()
  })

  test('is limited by account and address, the same for names that nobody has, and says how long to wait', async () => {
    yard = testYard({ limits: limitsOf({ points: 3, window: 900 }, { points: 100, window: 900 }) })
    await yard.session('operator')
    for (const name of [NAMES.operator, 'Nobody']) {
      for (let i = 0; i < 3; i++) expect((await signIn(name, 'wrong passphrase here')).status).toBe(401)
      const refused = await signIn(name, PASSPHRASE)
      expect(refused.status).toBe(429)
      expect(Number(refused.headers.get('retry-after'))).toBeGreaterThan(800)
    }
  })

  test.each([
    ['https://elsewhere.example/', '/'],
    ['//elsewhere.example/', '/'],
    ['/\\elsewhere.example', '/'],
    ['/%5c%5celsewhere.example', '/%5c%5celsewhere.example'],
    // What these become once they are read as addresses begins with two slashes.
    ['/.//elsewhere.example', '/'],
    ['/a/..//elsewhere.example', '/'],
    ['/%2e//elsewhere.example', '/'],
    ['/./%2e%2e//elsewhere.example/x?y', '/'],
    ['javascript:alert(1)', '/'],
    ['/a\nb', '/'],
    ['', '/'],
    ['/colony/A-1?saved=1#x', '/colony/A-1?saved=1'],
  ])('leads on to this server only: %j to %s', (to, path) => expect(localPath(to)).toBe(path))
})

describe('a session', () => {
  const days = (n: number): string => new Date(Date.UTC(2026, 5, 1, 12) + n * 86_400_000).toISOString()
  const holder = async (): Promise<string | undefined> =>
    yard.services.people.sessions.holder(await yard.session('operator'))?.name

  test('that ran out is not counted among the browsers signed in', async () => {
    await holder()
    const { people } = yard.services
    const id = people.accounts.byName(NAMES.operator)?.id ?? ''
    expect(people.sessions.count(id)).toBe(1)
    yard.at(days(31))
    expect(people.sessions.count(id)).toBe(0)
    people.sessions.open(id)
    expect(people.sessions.count(id)).toBe(1)
  })

  test('lasts for a month without a visit, and not much longer', async () => {
    yard.at(days(29.9))
    expect(await holder()).toBe(NAMES.operator)
    yard.at(days(29.9 + 30.1))
    expect(await holder()).toBeUndefined()
  })

  test('ends after three months however often it is used', async () => {
    for (let day = 0; day <= 89; day += 10) {
      yard.at(days(day))
      expect(await holder()).toBe(NAMES.operator)
    }
    yard.at(days(90.1))
    expect(await holder()).toBeUndefined()
  })

  test('survives a clock that is set back', async () => {
    yard.at(days(20))
    expect(await holder()).toBe(NAMES.operator)
    yard.at(days(-400))
    expect(await holder()).toBe(NAMES.operator)
  })

  test('of a role that changed counts with the new role at once', async () => {
    await yard.session('helper')
    expect((await yard.ask('helper', '/intake')).status).toBe(403)
    const person = yard.services.people.accounts.byName(NAMES.helper)
    yard.services.people.setRole(person?.id ?? '', 'beekeeper')
    expect((await yard.ask('helper', '/intake')).status).toBe(200)
  })

  test('ends with the account, and in every browser at once when asked', async () => {
    const other = yard.services.people.sessions.open(
      yard.services.people.accounts.byName(NAMES.operator)?.id ?? '',
    )
    expect((await yard.post('operator', '/account/sign-out-everywhere', {})).status).toBe(303)
    expect(yard.services.people.sessions.holder(other)).toBeNull()
    expect((await yard.ask('operator', '/')).status).toBe(303)
  })

  test('ends in this browser alone on signing out, and its cookie is taken away', async () => {
    const other = yard.services.people.sessions.open(
      yard.services.people.accounts.byName(NAMES.operator)?.id ?? '',
    )
    const response = await yard.post('operator', '/sign-out', {})
    expect(cookieIn(response)).toMatch(/^resettle=; Max-Age=0/)
    expect(await holder()).toBeUndefined()
    expect(yard.services.people.sessions.holder(other)?.name).toBe(NAMES.operator)
  })

  test('is kept as a digest: a stolen database opens no session and no invitation', async () => {
    const token = await yard.session('operator')
    const invited = yard.services.people.invite({ name: 'Juniper', role: 'operator', by: null })
    const exported = JSON.stringify([...yard.services.store.journal()])
    expect(exported).not.toContain(token)
    expect(yard.services.people.sessions.holder(invited.ok ? invited.value.link.token : '')).toBeNull()
    for (const cookie of [newToken(), '', 'x', `${token}x`, token.slice(1), '%00', 'a'.repeat(4000)]) {
      const response = await yard.app.request(`${ORIGIN}/`, { headers: { Cookie: `resettle=${cookie}` } })
      expect(response.status, cookie).toBe(303)
    }
  })
})

describe('over TLS', () => {
  const outside = { url: 'https://yard.example', trust: () => false }

  test('the cookie is Secure and bound to the host, and browsers are told to insist on TLS', async () => {
    yard = testYard({ deps: { outside } })
    await yard.session('operator')
    const response = await yard.app.request('http://127.0.0.1:8420/sign-in', {
      method: 'POST',
      headers: { Origin: 'https://yard.example', 'Content-Type': 'application/x-www-form-urlencoded' },
      body: new URLSearchParams({ name: NAMES.operator, passphrase: PASSPHRASE }).toString(),
    })
    expect(cookieIn(response)).toMatch(
      /^__Host-resettle=[\w-]{43}; .*Path=\/; HttpOnly; Secure; SameSite=Lax$/,
    )
    expect(response.headers.get('strict-transport-security')).toContain('max-age=')
  })
})
