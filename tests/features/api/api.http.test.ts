/** The HTTP API: its description held to the standard and the answers to the description; tokens, scopes, roles, pages. */
import { Validator } from '@seriousme/openapi-schema-validator'
import { Ajv2020 } from 'ajv/dist/2020.js'
import addFormats from 'ajv-formats'
import { beforeAll, describe, expect, test } from 'vitest'
import { pathForLog } from '../../../src/app/logging.ts'
import { API_LIMIT } from '../../../src/features/api/bearer.ts'
import { API, OPERATIONS, type Operation } from '../../../src/features/api/operations.ts'
import { ENTRY_KINDS } from '../../../src/journal/entry.ts'
import { ROLES, type Role } from '../../../src/people/index.ts'
import { limitsOf } from '../../../src/people/limits.ts'
import { given, inspection, intake, newId, outcome, withdrawal } from '../../store/helpers.ts'
import { NAMES, ORIGIN, type TestYard, testYard } from '../../support/yard-app.ts'

type Json = Record<string, unknown>
const DAY = '2026-06-01'

let yard: TestYard
let document: Json
let tokens: Record<Role, string>

const tokenFor = async (
  role: Role,
  scopes: string[] = ['read', 'write', 'review'],
  where = yard,
): Promise<string> => {
  await where.session(role)
  const person = where.services.people.accounts.byName(NAMES[role])
  if (person === null) throw new Error('no such person')
  const allowed = role === 'operator' ? scopes : scopes.filter((s) => s !== 'review')
  const made = where.services.tokens.make({ person, name: `${role}’s`, scopes: allowed, days: 30 })
  if (!made.ok) throw new Error(made.problems[0]?.message)
  return made.value.token
}

const call = (
  path: string,
  token: string | null,
  init: RequestInit = {},
  where = yard,
): Promise<Response> => {
  const headers = new Headers(init.headers)
  if (token !== null) headers.set('Authorization', `Bearer ${token}`)
  return Promise.resolve(where.app.request(`${ORIGIN}${API}${path}`, { ...init, headers }))
}
const send = (token: string, body: unknown): Promise<Response> =>
  call('/entries', token, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: typeof body === 'string' ? body : JSON.stringify(body),
  })

beforeAll(async () => {
  yard = testYard({ day: DAY })
  yard.services.store.append(
    [
      ...Array.from({ length: 5 }, (_, i) => intake(`A-${i}`, { on: `2026-05-1${i}` })),
      inspection('A-0', '2026-05-15', { eggs: 'single', onFreshComb: true }),
      given('A-0', '2026-05-20', { what: 'syrup', litres: 1, cost: 47.31 }),
      outcome('A-4', '2026-05-30', { what: 'died' }),
    ],
    { today: DAY, recordedAt: `${DAY}T08:00:00.000Z`, recordedBy: NAMES.beekeeper },
  )
  tokens = {
    operator: await tokenFor('operator'),
    beekeeper: await tokenFor('beekeeper'),
    helper: await tokenFor('helper'),
  }
  document = (await (await call('/openapi.json', tokens.helper)).json()) as Json
})

/** Answers are open to new fields in the document; here a field that is not described is a fault. */
function closed(schema: unknown): unknown {
  if (Array.isArray(schema)) return schema.map(closed)
  if (schema === null || typeof schema !== 'object') return schema
  const made = Object.fromEntries(Object.entries(schema).map(([key, value]) => [key, closed(value)]))
  return made.type === 'object' && 'properties' in made && !('additionalProperties' in made)
    ? { ...made, additionalProperties: false }
    : made
}

/** A check of values against a component of the document. */
function checkOf(component: string): (value: unknown) => string[] {
  const ajv = new Ajv2020({ strict: false, allErrors: true })
  ;(addFormats as unknown as (a: Ajv2020) => void)(ajv)
  ajv.addSchema(closed(document) as Json, 'doc')
  const validate = ajv.compile({ $ref: `doc#/components/schemas/${component}` })
  return (value) =>
    validate(value) ? [] : (validate.errors ?? []).map((e) => `${e.instancePath} ${e.message}`)
}

describe('the description', () => {
  test('is valid OpenAPI 3.1 to an independent validator', async () => {
    expect(document.openapi).toBe('3.1.0')
    const { valid, errors } = await new Validator().validate(document as Parameters<Validator['validate']>[0])
    expect(errors ?? []).toEqual([])
    expect(valid).toBe(true)
    const broken = { ...document, paths: { '/x': { get: { responses: { '200': {} } } } } }
    expect((await new Validator().validate(broken as Parameters<Validator['validate']>[0])).valid).toBe(false)
  })

  test('is the same on the page of tokens, for whoever is signed in', async () => {
    expect(await (await yard.ask('helper', '/account/tokens')).text()).toContain(
      'href="/account/tokens/openapi.json"',
    )
    expect(await (await yard.ask('helper', '/account/tokens/openapi.json')).json()).toEqual(document)
  })

  test('has every operation there is, with its errors', () => {
    const paths = document.paths as Record<string, Record<string, { operationId: string; responses: Json }>>
    const ids = Object.values(paths).flatMap((methods) => Object.values(methods).map((o) => o.operationId))
    expect(ids.sort()).toEqual(Object.keys(OPERATIONS).sort())
    for (const methods of Object.values(paths))
      for (const o of Object.values(methods))
        for (const status of ['401', '403', '429']) expect(o.responses).toHaveProperty(status)
  })

  test('takes every kind of entry as the journal does, and refuses what the journal refuses', () => {
    const check = checkOf('EntryIn')
    const schemas = (
      document.components as {
        schemas: Record<string, { oneOf?: { properties: { kind: { const: string } } }[] }>
      }
    ).schemas
    expect(schemas.EntryIn?.oneOf?.map((s) => s.properties.kind.const)).toEqual(ENTRY_KINDS)
    const { by: _by, ...unsigned } = inspection('A-0', '2026-05-16', { eggs: 'none', signs: ['moths'] })
    for (const good of [
      intake('B-1'),
      unsigned,
      given('A-0', '2026-05-20', { cost: 3 }),
      withdrawal('A-0', newId()),
    ])
      expect(check(good)).toEqual([])
    for (const bad of [
      { ...unsigned, eggs: 'some' },
      { ...unsigned, on: '2026-02-30' },
      { ...unsigned, id: 'x' },
      { ...unsigned, surprise: 1 },
      { ...unsigned, framesOfBees: 0.3 },
      { ...unsigned, kind: 'inspektion' },
    ])
      expect(check(bad), JSON.stringify(bad)).not.toEqual([])
  })

  /** Every reading operation, with something to read. */
  const READS: Partial<Record<keyof typeof OPERATIONS, string[]>> = {
    whoAmI: ['/me'],
    listColonies: ['/colonies?state=all', '/colonies?toDo=true&yard=Quarry%20yard', '/colonies?text=a-1'],
    readColony: ['/colonies/A-0', '/colonies/A-4'],
    readPlan: [
      '/colonies/A-0/plan',
      '/colonies/A-0/plan?asOf=2026-05-12',
      '/colonies/A-4/plan',
      '/colonies/A-1/plan?asOf=2026-07-01',
    ],
    listColonyEntries: ['/colonies/A-0/entries'],
    listPlans: ['/plans'],
    listEntries: ['/entries?limit=3'],
    readReview: ['/review', '/review?asOf=2026-05-31&unitedIsLoss=true'],
  }

  test.each(Object.entries(READS))('%s answers as described', async (id, paths) => {
    const operation: Operation = OPERATIONS[id as keyof typeof OPERATIONS]
    const check = checkOf(operation.answers[200]?.schema ?? '')
    for (const path of paths ?? []) {
      const answer = await call(path, tokens.operator)
      const body: unknown = await answer.json()
      expect(answer.status, path).toBe(200)
      expect(check(body), path).toEqual([])
      expect(answer.headers.get('cache-control')).toBe('no-store')
    }
  })

  test('problems answer as described, with their own media type', async () => {
    const check = checkOf('Problem')
    const answers = [
      await call('/colonies', null),
      await call('/colonies/Z-9', tokens.operator),
      await call('/colonies?limit=0', tokens.operator),
      await call('/nowhere', tokens.operator),
      await call('/colonies', tokens.operator, { method: 'DELETE' }),
      await send(tokens.operator, '{'),
      await send(tokens.operator, [{ kind: 'inspection' }]),
      await send(tokens.operator, []),
      await send(tokens.operator, `"${'x'.repeat(1_200_000)}"`),
      await call('/entries', tokens.operator, { method: 'POST', body: 'id=1' }),
    ]
    expect(answers.map((a) => a.status)).toEqual([401, 404, 400, 404, 405, 400, 422, 422, 413, 415])
    for (const answer of answers) {
      expect(answer.headers.get('content-type')).toBe('application/problem+json')
      const body = (await answer.json()) as Json
      expect(check(body)).toEqual([])
      expect(body.status).toBe(answer.status)
    }
    expect(answers[0]?.headers.get('www-authenticate')).toBe('Bearer realm="resettle"')
    expect(answers[4]?.headers.get('allow')).toBe('GET, HEAD')
  })
})

describe('pages', () => {
  const itemsOf = async (answer: Response) =>
    (await answer.json()) as { items: { id: string; seq: number }[]; next: string | null }

  test.each([
    ['/colonies?state=all', 5],
    ['/plans', 4],
    ['/colonies/A-0/entries', 3],
    ['/entries', 8],
  ])('%s: following the Link header gives each once', async (path, count) => {
    const joined = path.includes('?') ? '&' : '?'
    const seen: unknown[] = []
    let to: string | null = `${ORIGIN}${API}${path}${joined}limit=2`
    while (to !== null) {
      const answer: Response = await call(to.replace(`${ORIGIN}${API}`, ''), tokens.operator)
      const { items, next } = await itemsOf(answer)
      expect(items.length).toBeLessThanOrEqual(2)
      seen.push(...items)
      const link = answer.headers.get('link') ?? ''
      expect(link).toContain('rel="first"')
      const found: RegExpExecArray | null = /<([^>]+)>; rel="next"/.exec(link)
      expect(found === null).toBe(next === null)
      to = found?.[1] ?? null
    }
    expect(seen).toHaveLength(count)
    expect(new Set(seen.map((s) => JSON.stringify(s))).size).toBe(count)
  })

  test('go on where they were, whatever was entered between', async () => {
    const first = await itemsOf(await call('/colonies?state=all&limit=3', tokens.operator))
    yard.services.store.append([intake('Z-0', { id: '00000000-0000-7000-8000-00000000000a' })], {
      today: DAY,
      recordedAt: `${DAY}T09:00:00.000Z`,
    })
    const second = await itemsOf(
      await call(`/colonies?state=all&limit=3&cursor=${first.next}`, tokens.operator),
    )
    expect(second.items.filter((i) => first.items.some((f) => f.id === i.id))).toEqual([])
    expect(second.items).toHaveLength(2)
  })

  test.each([
    'cursor=nonsense',
    'cursor=',
    'limit=1e3',
    'limit=201',
    'limit=-1',
    'limit=2&limit=3',
    'colour=red',
    'state=maybe',
  ])('?%s is not understood, and says so', async (query) => {
    expect((await call(`/colonies?${query}`, tokens.operator)).status).toBe(400)
  })
})

describe('writing', () => {
  test('is repeatable by id: 201, then 200, and once in the journal', async () => {
    const look = inspection('A-1', '2026-05-20', { eggs: 'none' })
    const first = await send(tokens.beekeeper, look)
    expect([first.status, await first.json()]).toEqual([201, { accepted: [look.id], already: [] }])
    const again = await send(tokens.beekeeper, [look])
    expect([again.status, await again.json()]).toEqual([200, { accepted: [], already: [look.id] }])
    expect(yard.services.store.entry(look.id)?.recordedBy).toBe(NAMES.beekeeper)
    const other = await send(tokens.beekeeper, { ...look, eggs: 'single' })
    expect(other.status).toBe(422)
  })

  test('is all or none, and names entry and field', async () => {
    const good = inspection('A-1', '2026-05-21')
    const answer = await send(tokens.beekeeper, [good, inspection('A-1', '2026-05-22', { eggs: 'some' })])
    expect(answer.status).toBe(422)
    expect(await answer.json()).toMatchObject({ errors: [{ entry: 2, field: 'eggs' }] })
    expect(yard.services.store.entry(good.id)).toBeNull()
  })

  test('is signed by the token’s owner where nobody is named; a helper signs for nobody else', async () => {
    const { by: _by, ...unsigned } = inspection('A-1', '2026-05-23')
    await send(tokens.beekeeper, unsigned)
    expect(yard.services.store.entry(unsigned.id)?.entry.by).toBe(NAMES.beekeeper)
    const forged = inspection('A-1', '2026-05-24', { by: NAMES.operator })
    await send(tokens.helper, forged)
    expect(yard.services.store.entry(forged.id)?.entry.by).toBe(NAMES.helper)
  })

  test('does no more than the owner’s role may', async () => {
    expect((await send(tokens.helper, intake('H-1'))).status).toBe(422)
    expect((await send(tokens.helper, outcome('A-2', '2026-05-30'))).status).toBe(422)
    expect((await send(tokens.helper, inspection('A-2', '2026-05-30'))).status).toBe(201)
  })
})

describe('tokens', () => {
  test('have scopes', async () => {
    const reader = await tokenFor('operator', ['read'])
    expect((await call('/colonies', reader)).status).toBe(200)
    const refused = await send(reader, inspection('A-3', '2026-05-30'))
    expect(refused.status).toBe(403)
    expect(refused.headers.get('www-authenticate')).toContain('error="insufficient_scope", scope="write"')
    expect((await call('/review', reader)).status).toBe(403)
    const writer = await tokenFor('operator', ['write'])
    expect((await call('/colonies', writer)).status).toBe(403)
    expect((await call('/me', writer)).status).toBe(200)
  })

  test.each(ROLES)('of a %s reach what the role may', async (role) => {
    const statuses = await Promise.all(
      ['/colonies', '/plans', '/entries', '/review'].map(async (p) => (await call(p, tokens[role])).status),
    )
    expect(statuses).toEqual(role === 'operator' ? [200, 200, 200, 200] : [200, 200, 403, 403])
    const text = await (await call('/colonies/A-0/entries', tokens[role])).text()
    expect(text.includes('12 Invented Way')).toBe(role !== 'helper')
    expect(text.includes('47.31')).toBe(role !== 'helper')
  })

  test('follow the role of their owner, and end with the account', async () => {
    const own = testYard({ day: DAY })
    await own.session('operator')
    const token = await tokenFor('beekeeper', ['read', 'write'], own)
    const id = own.services.people.accounts.byName(NAMES.beekeeper)?.id ?? ''
    own.services.people.setRole(id, 'helper')
    expect(await (await call('/me', token, {}, own)).json()).toMatchObject({ role: 'helper' })
    own.services.people.close(id)
    expect((await call('/me', token, {}, own)).status).toBe(401)
  })

  test('are kept as digests, run out, and can be taken back by their owner alone', async () => {
    const own = testYard({ day: DAY })
    const token = await tokenFor('operator', ['read'], own)
    const rows = JSON.stringify(own.services.connection.raw.prepare('SELECT * FROM api_token').all())
    expect(rows).not.toContain(token)
    expect((await call('/me', token, {}, own)).status).toBe(200)
    const owner = own.services.people.accounts.byName(NAMES.operator)?.id ?? ''
    const id = own.services.tokens.of(owner)[0]?.id ?? ''
    await own.post('helper', `/account/tokens/${id}/revoke`, {})
    expect((await call('/me', token, {}, own)).status).toBe(200)
    own.at('2026-07-02T12:00:00Z')
    expect((await call('/me', token, {}, own)).status).toBe(401)
    own.at(`${DAY}T13:00:00Z`)
    expect(own.services.tokens.of(owner)[0]?.usedAt).toBe(`${DAY}T12:00:00.000Z`)
    await own.post('operator', `/account/tokens/${id}/revoke`, {})
    const gone = await call('/me', token, {}, own)
    expect(gone.status).toBe(401)
    expect(gone.headers.get('www-authenticate')).toContain('error="invalid_token"')
  })

  test('are made on the person’s own page, shown once, with no more than the role allows', async () => {
    const made = await yard.post('helper', '/account/tokens', { name: 'scale', scopes: 'read', days: '30' })
    const token = /rst_[\w-]{43}/.exec(await made.text())?.[0] ?? ''
    expect((await call('/colonies', token)).status).toBe(200)
    const page = await (await yard.ask('helper', '/account/tokens')).text()
    expect(page).toContain('scale')
    expect(page).not.toContain(token)
    expect(page).not.toContain('value="review"')
    for (const fields of [
      { name: 'x', scopes: 'review', days: '30' },
      { name: '', scopes: 'read', days: '30' },
      { name: 'x', scopes: 'read', days: '9999' },
      { name: 'x', days: '30' },
    ])
      expect((await yard.post('helper', '/account/tokens', fields as Record<string, string>)).status).toBe(
        422,
      )
  })

  test('cannot be guessed for ever, nor used without end', async () => {
    const strict = testYard({
      day: DAY,
      limits: limitsOf({ points: 3, window: 900 }, { points: 3, window: 900 }),
    })
    const wrong = []
    for (let i = 0; i < 5; i++)
      wrong.push((await call('/me', `rst_${'x'.repeat(42)}${i}`, {}, strict)).status)
    expect(wrong).toEqual([401, 401, 401, 429, 429])
    const token = await tokenFor('operator', ['read'], strict)
    for (let i = 0; i < API_LIMIT.points; i++) await call('/me', token, {}, strict)
    const last = await call('/me', token, {}, strict)
    expect(last.status).toBe(429)
    expect(Number(last.headers.get('retry-after'))).toBeGreaterThan(0)
  })

  test('are asked for even of a browser that is signed in, and scripts of other sites get nowhere', async () => {
    expect((await yard.ask('operator', `${API}/colonies`)).status).toBe(401)
    // A browser asks first whether another site may send the header; it is never told yes.
    const asked = await call('/entries', null, {
      method: 'OPTIONS',
      headers: {
        Origin: 'https://elsewhere.example',
        'Access-Control-Request-Method': 'POST',
        'Access-Control-Request-Headers': 'authorization',
      },
    })
    expect(asked.status).toBe(401)
    expect(asked.headers.get('access-control-allow-origin')).toBeNull()
  })
})

test('the day’s plans are made before they are told', async () => {
  const own = testYard({ day: DAY })
  own.services.store.append([intake('A-1', { on: DAY })], { today: DAY, recordedAt: `${DAY}T08:00:00.000Z` })
  const token = await tokenFor('operator', ['read'], own)
  own.at('2026-06-06T12:00:00Z')
  expect(await (await call('/colonies/A-1', token, {}, own)).json()).toMatchObject({
    asOf: '2026-06-06',
    day: 5,
  })
})

test('the log holds no tag, no id and no token of it', () => {
  expect(pathForLog(`${API}/colonies/quarry/plan`)).toBe('/api/v1/colonies')
  expect(pathForLog(`${API}/entries/${newId()}`)).toBe('/api/v1/entries')
  expect(pathForLog('/api/secret/word')).toBe('/api')
  expect(pathForLog('/letter/abcdefghij')).toBe('/letter/…')
})

test('nothing of this was a bug of ours', () => expect(yard.errors).toEqual([]))
