/**
 * At least 20,000 requests to every route with every field, as a stranger and as each role: never a 500, never a write by
 * somebody who may not, never a word of theirs as HTML. The seed is printed; FUZZ_SEED=n repeats it.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { API, OPERATIONS, type Operation, QUERIES } from '../../src/features/api/operations.ts'
import { scopesFor } from '../../src/people/api-tokens.ts'
import { ROLES, type Role } from '../../src/people/index.ts'
import { ACTION_OF_KIND, may } from '../../src/people/permissions.ts'
import { digestOf } from '../../src/people/tokens.ts'
import { inspection, intake, newId, outcome } from '../store/helpers.ts'
import { LONG_ENOUGH, often } from '../support/long.ts'
import { NAMES, ORIGIN, type TestYard, testYard } from '../support/yard-app.ts'
import { type Attempt, attempt } from './attempts.ts'
import { changesSoFar, forgottenTables, type Snapshot, snapshotOf, trespasses } from './guarded.ts'
import { everyRoute, type Forms, filled, readForms, wellFormed } from './routes.ts'
import { BREAK, type Names, TAG } from './values.ts'

const REQUESTS = Number(process.env.FUZZ_REQUESTS ?? often(20_000, 4_000))
const IN_A_ROW = 200
const seed = Number(process.env.FUZZ_SEED ?? Date.now() % 2 ** 31)

interface Prepared {
  yard: TestYard
  /** Entries, people, letters, removal sheets, tokens, calendar addresses. */
  ids: string[]
  /** Of each role's person, for the API. */
  tokens: Record<Role, string>
  /** What is guarded, as it stands. */
  guarded: Snapshot
}

const TAGS = ['A-1', 'A-2', 'B 3']
const namesOf = ({ ids }: Prepared): Names => ({ tags: TAGS, ids: ids.map((_, i) => `#${i}#`) })

/** The ids that '#3#' stands for. */
const real = (text: string, ids: readonly string[]): string =>
  text.replaceAll(/#(\d+)#/g, (mark, n) => ids[Number(n)] ?? mark)

/** A small yard: colonies in and out, entries of everybody. The same ids each time. */
async function prepared(): Promise<Prepared> {
  const yard = testYard()
  for (const role of ROLES) await yard.session(role)
  const ids: string[] = []
  const record = (by: Role, ...entries: { id: string }[]): void => {
    const context = { today: '2026-06-01', recordedAt: '2026-06-01T09:00:00.000Z', recordedBy: NAMES[by] }
    const result = yard.services.store.append(entries, context)
    if (!result.ok) throw new Error(JSON.stringify(result.problems))
    ids.push(...entries.map((e) => e.id))
  }
  record('operator', intake('A-1'), intake('A-2'), intake('B 3'))
  record('beekeeper', inspection('A-1', '2026-05-15', { eggs: 'none' }))
  record('helper', inspection('A-1', '2026-05-20', { cells: 'capped' }))
  record('beekeeper', outcome('A-2', '2026-05-25'))
  const invited = yard.services.people.invite({ name: 'Juniper', role: 'helper', by: null })
  if (!invited.ok) throw new Error(invited.problems[0]?.message)
  const tokens = await keysAndPapers(yard, ids)
  return {
    yard,
    tokens,
    ids: [...ids, ...yard.services.people.accounts.list().map((p) => p.id)],
    guarded: snapshotOf(yard),
  }
}

/** One of everything that somebody might change who may not. Their ids join the others. */
async function keysAndPapers(yard: TestYard, ids: string[]): Promise<Record<Role, string>> {
  const { people, tokens, calendars, store } = yard.services
  const made = ROLES.map((role) => {
    const id = people.accounts.byName(NAMES[role])?.id ?? ''
    calendars.open(id, { shows: 'window', yard: null })
    const token = tokens.make({ person: { id, role }, name: 'scale', scopes: scopesFor(role), days: 365 })
    if (!token.ok) throw new Error(token.problems[0]?.message)
    ids.push(token.value.made.id, calendars.of(id)[0]?.key ?? '')
    return [role, token.value.token] as const
  })
  const stamp = { createdAt: '2026-06-01T09:00:00.000Z', createdBy: NAMES.operator }
  const [letter, sheet, colony = ''] = [newId(), newId(), ids[0]]
  const words = { asOf: '2026-06-01', words: null, expiresAt: '2099-01-01T00:00:00.000Z' }
  store.after.letters.add({ id: letter, colony, digest: digestOf('letter'), ...words, ...stamp })
  const saved = { savedAt: stamp.createdAt, savedBy: stamp.createdBy }
  store.after.records.save(colony, 0, { yard: 'Alder farm' }, saved)
  await yard.post('operator', '/removals/new', { id: sheet, name: 'Ottoline', version: '0' })
  if (store.removals.get(sheet) === null) throw new Error('no sheet')
  ids.push(letter, sheet)
  return Object.fromEntries(made) as Record<Role, string>
}

/** Opens every page once and reads its forms. */
async function formsOf({ yard, ids }: Prepared): Promise<Forms> {
  const routes = everyRoute(yard)
  const forms: Forms = new Map()
  // A page that is nobody's is the same under every name.
  for (const route of routes.filter((r) => r.method === 'GET'))
    for (const path of new Set(
      [...TAGS.slice(0, 2), ...ids.slice(0, 5)].map((n) => filled(route.path, [n])),
    )) {
      const response = await yard.ask(route.path === '/sign-in' ? null : 'operator', path)
      if (response.headers.get('content-type')?.includes('html'))
        readForms(await response.text(), path, routes, forms)
    }
  for (const { path, query } of Object.values<Operation>(OPERATIONS))
    forms.set(
      `GET ${API}${path.replaceAll(/\{(\w+)\}/g, ':$1')}`,
      asFields(Object.keys(QUERIES[query].shape)),
    )
  return forms
}

/** What the API is asked with, some of it as it should be. */
const asFields = (names: readonly string[]): Map<string, Set<string>> =>
  new Map(names.map((name) => [name, new Set(ASKED_OF_API[name])]))
const ASKED_OF_API: Record<string, string[]> = {
  limit: ['1', '200'],
  state: ['open', 'left', 'all'],
  toDo: ['true'],
  asOf: ['2026-05-20', '2026-06-01'],
  unitedIsLoss: ['true', 'false'],
}

function requestOf(a: Attempt, ids: readonly string[]): { path: string; init: RequestInit } {
  const query = new URLSearchParams(
    a.query.map(([k, v]) => [wellFormed(k), real(wellFormed(v), ids)]),
  ).toString()
  const path =
    filled(
      a.route.path,
      a.params.map((p) => real(p, ids)),
    ) + (query === '' ? '' : `?${query}`)
  const headers: Record<string, string> = { Accept: a.accept }
  if (a.route.method === 'GET') return { path, init: { method: 'GET', headers } }
  const kind = /(^|\/)entries$/.test(a.route.path) && a.body !== 'junk' ? 'json' : a.body
  const body = bodyOf(kind, a, ids)
  if (kind === 'json') headers['Content-Type'] = 'application/json'
  return { path, init: { method: a.route.method, headers, ...(body === undefined ? {} : { body }) } }
}

function bodyOf(kind: Attempt['body'], a: Attempt, ids: readonly string[]): RequestInit['body'] | undefined {
  const pairs = a.fields.map(([k, v]) => [wellFormed(k), real(wellFormed(v), ids)] as [string, string])
  if (kind === 'form') return new URLSearchParams(pairs)
  if (kind === 'json') return real(JSON.stringify(a.json), ids)
  if (kind === 'junk') return a.junk
  if (kind === 'empty') return undefined
  const form = new FormData()
  for (const [k, v] of pairs) form.append(k, v)
  form.append('file', new File([a.junk], TAG))
  return form
}

interface Seen {
  requests: number
  byRoute: Map<string, number>
  byStatus: Map<number, number>
  /** Answers of the API to those who sent a token. */
  ofApi: Map<number, number>
  written: number
}

const count = <K>(counts: Map<K, number>, key: K): void => void counts.set(key, (counts.get(key) ?? 0) + 1)

async function tryOut(prepared: Prepared, a: Attempt, seen: Seen): Promise<void> {
  const { yard, ids, tokens } = prepared
  const { store, people, connection } = yard.services
  const newest = (): number => Number(connection.raw.prepare('SELECT max(seq) FROM entry').pluck().get())
  const before = newest()
  const { path, init } = requestOf(a, ids)
  const person = a.role === null ? null : people.accounts.byName(NAMES[a.role])
  // A fresh session each time: an operator of the fuzz may just have ended the last one.
  const cookie = person === null ? {} : { Cookie: `resettle=${people.sessions.open(person.id)}` }
  const ofApi = a.route.path.startsWith(API) && a.role !== null
  const bearer = ofApi && a.role !== null ? { Authorization: `Bearer ${tokens[a.role]}` } : {}
  const headers = { Origin: ORIGIN, ...(init.headers as Record<string, string>), ...cookie, ...bearer }
  const untouched = changesSoFar(yard)
  const response = await yard.app.request(`${ORIGIN}${path}`, { ...init, headers })
  const text = await response.text()
  const what = `${a.role ?? 'a stranger'}: ${init.method} ${path.slice(0, 300)} -> ${response.status}`

  if (yard.errors.length > 0)
    throw new Error(`${what}: ${String((yard.errors[0] as Error).stack ?? yard.errors[0])}`)
  if (response.status >= 500) throw new Error(`${what}: ${text.slice(0, 300)}`)
  if (response.headers.get('content-security-policy') === null)
    throw new Error(`${what}: no security headers`)
  if (/[\r\n]/.test(response.headers.get('location') ?? '')) throw new Error(`${what}: header injection`)
  if (response.headers.get('content-type')?.includes('html')) {
    if (text.includes('<fuzz7')) throw new Error(`${what}: reflected as a tag: ${around(text, '<fuzz7')}`)
    if (text.includes(BREAK.slice(0, 6)))
      throw new Error(`${what}: left its attribute: ${around(text, BREAK.slice(0, 6))}`)
  }

  const written = newest() - before
  const rows = written === 0 ? [] : store.changes({ limit: written })
  for (const row of rows) {
    if (a.role === null) throw new Error(`${what}: a stranger wrote ${row.entry.kind}`)
    const imported = a.route.path === '/data/import' && may(a.role, 'safekeeping')
    if (row.recordedBy !== NAMES[a.role] && !imported)
      throw new Error(`${what}: written as ${row.recordedBy}`)
    if (!may(a.role, ACTION_OF_KIND[row.entry.kind])) throw new Error(`${what}: wrote ${row.entry.kind}`)
    const corrected = row.entry.replaces === undefined ? null : store.entry(row.entry.replaces)
    if (corrected !== null && corrected.recordedBy !== row.recordedBy && !may(a.role, 'correct-any'))
      throw new Error(`${what}: changed what ${corrected.recordedBy} had entered`)
  }
  if (changesSoFar(yard) !== untouched) {
    const after = snapshotOf(yard)
    const asker = person === null || a.role === null ? null : { id: person.id, role: a.role }
    const [trespass] = trespasses(prepared.guarded, after, asker)
    if (trespass !== undefined) throw new Error(`${what}: ${trespass}`)
    restoreRoles(yard)
    prepared.guarded = snapshotOf(yard)
  }
  connection.raw.prepare('DELETE FROM session').run()
  seen.requests++
  seen.written += rows.length
  count(seen.byRoute, `${a.route.method} ${a.route.path}`)
  count(seen.byStatus, response.status)
  if (ofApi) count(seen.ofApi, response.status)
}

const around = (text: string, mark: string): string =>
  text.slice(Math.max(0, text.indexOf(mark) - 80), text.indexOf(mark) + 40)

/** The operator of the fuzz may have closed an account or changed a role: everybody is again who they were, with a token. */
function restoreRoles({ services }: TestYard): void {
  for (const role of ROLES) {
    const update = 'UPDATE person SET role = ?, closed_at = NULL WHERE name = ?'
    services.connection.raw.prepare(update).run(role, NAMES[role])
  }
  services.connection.raw.prepare('UPDATE api_token SET revoked_at = NULL WHERE revoked_at IS NOT NULL').run()
}

test(`${REQUESTS} requests of every kind (seed ${seed})`, { timeout: LONG_ENOUGH }, async () => {
  console.log(`fuzz: seed ${seed}`)
  const sample = await prepared()
  const routes = everyRoute(sample.yard)
  const forms = await formsOf(sample)
  const seen: Seen = { requests: 0, byRoute: new Map(), byStatus: new Map(), ofApi: new Map(), written: 0 }

  const property = fc.asyncProperty(
    fc.array(attempt(routes, forms, namesOf(sample)), { minLength: IN_A_ROW, maxLength: IN_A_ROW }),
    async (attempts) => {
      const fresh = await prepared()
      for (const a of attempts) await tryOut(fresh, a, seen)
      expect(fresh.yard.services.store.verify()).toMatchObject({ ok: true, problems: [] })
      fresh.yard.services.close()
    },
  )
  await fc.assert(property, { seed, numRuns: Math.ceil(REQUESTS / IN_A_ROW), endOnFailure: true })

  const told = (counts: Map<number, number>): string =>
    [...counts]
      .sort(([a], [b]) => a - b)
      .map(([s, n]) => `${n} × ${s}`)
      .join(', ')
  console.log(
    `fuzz: ${seen.requests} requests to ${routes.length} routes, ${seen.written} entries written: ${told(seen.byStatus)}; with a token: ${told(seen.ofApi)}`,
  )
  expect(seen.requests).toBeGreaterThanOrEqual(REQUESTS)
  expect(seen.written).toBeGreaterThan(REQUESTS / 500)
  // Nothing was left out, and every kind of answer was met.
  expect(
    routes.filter((r) => (seen.byRoute.get(`${r.method} ${r.path}`) ?? 0) < often(REQUESTS / 1000, 2)),
  ).toEqual([])
  for (const status of [200, 303, 401, 403, 404, 422])
    expect(seen.byStatus.get(status) ?? 0, `${status}`).toBeGreaterThan(0)
  for (const status of [200, 201, 400, 403, 404, 415, 422])
    expect(seen.ofApi.get(status) ?? 0, `${status} of the API`).toBeGreaterThan(0)
})

test('every table is either guarded or nobody’s to change, and a change by a helper or a stranger is noticed', () => {
  const yard = testYard()
  expect(forgottenTables(yard)).toEqual([])
  const none = snapshotOf(yard)
  for (const table of Object.keys(none)) {
    const row = new Set([...(none[table] ?? []), '{"person":"somebody else"}'])
    const by = (role: Role): number => trespasses(none, { ...none, [table]: row }, { id: 'x', role }).length
    expect([by('helper'), by('operator')], table).toEqual([1, 0])
    expect(trespasses(none, { ...none, [table]: row }, null), table).toHaveLength(1)
    expect(trespasses({ ...none, [table]: row }, none, { id: 'x', role: 'helper' }), table).toHaveLength(2)
  }
})

test('a marker that is not escaped would be noticed', () => {
  expect(TAG).toContain('<fuzz7')
  expect(`<p>${TAG}</p>`.includes('<fuzz7')).toBe(true)
  expect(newId()).not.toBe(newId())
})
