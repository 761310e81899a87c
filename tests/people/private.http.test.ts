/**
 * Nothing private reaches a helper: every address of the app and of the HTTP API is opened, with everything there is to
 * name in it. Routes are found by looking, so a new page is walked without anybody adding it.
 */
import { beforeAll, expect, test } from 'vitest'
import { API } from '../../src/features/api/operations.ts'
import { scopesFor } from '../../src/people/api-tokens.ts'
import { ROLES, type Role } from '../../src/people/index.ts'
import { digestOf } from '../../src/people/tokens.ts'
import { EMPTY_SHEET } from '../../src/records/removal-sheet.ts'
import { everyRoute, filled } from '../abuse/routes.ts'
import { given, inspection, intake, newId, outcome } from '../store/helpers.ts'
import { NAMES, type TestYard, testYard } from '../support/yard-app.ts'

/** Of the journal and of the API. */
const IN_JOURNAL = ['Ms Invented', '12 Nowhere Lane', '47.31', 'Invented Orchard']
/** Of removal sheets, move-out records and the account of somebody else. */
const ON_PAPERS = ['Ottoline Example', '0199-5550', '3 Imaginary Row', 'Hidden Alder farm']
const OF_OTHERS = ['https://hooks.quarry.example/', 'Secret scale']

let yard: TestYard
let names: string[]
let tokens: Record<Role, string>
let feed = ''

beforeAll(async () => {
  yard = testYard()
  for (const role of ROLES) await yard.session(role)
  const { store, people, messages, calendars } = yard.services
  const idOf = (role: Role): string => people.accounts.byName(NAMES[role])?.id ?? ''
  const site = { type: 'wall', site: 'Ms Invented, 12 Nowhere Lane' }
  const entries = [
    intake('A-1', { removal: site }),
    given('A-1', '2026-05-12', { what: 'mated-queen', cost: 47.31 }),
    inspection('A-1', '2026-05-15', { signs: ['brood-disease-suspected'] }),
    intake('A-2', { removal: site }),
    outcome('A-2', '2026-05-20', { destination: 'Invented Orchard' }),
  ]
  const at = '2026-06-01T09:00:00.000Z'
  const written = store.append(entries, { today: '2026-06-01', recordedAt: at, recordedBy: NAMES.beekeeper })
  if (!written.ok) throw new Error(JSON.stringify(written.problems))
  // What a helper entered, of which the cost was added by somebody who may know it.
  const own = given('A-1', '2026-05-21', { what: 'syrup', litres: 1, cost: 47.31 })
  const byHelper = store.append([own], { today: '2026-06-01', recordedAt: at, recordedBy: NAMES.helper })
  if (!byHelper.ok) throw new Error(JSON.stringify(byHelper.problems))
  const stamp = { savedAt: at, savedBy: NAMES.beekeeper }
  const [sheet, letter, gone = ''] = [newId(), newId(), entries[3]?.id]
  const job = { name: 'Ottoline Example', phone: '0199-5550', address: '3 Imaginary Row' }
  const saved = store.removals.save(sheet, 0, { ...EMPTY_SHEET, job }, stamp)
  if (!saved.ok) throw new Error(JSON.stringify(saved))
  store.after.records.save(gone, 0, { yard: 'Hidden Alder farm' }, stamp)
  const sent = { asOf: '2026-05-20', words: null, createdAt: at, createdBy: NAMES.beekeeper }
  const expiresAt = '2099-01-01T00:00:00.000Z'
  store.after.letters.add({ id: letter, colony: gone, digest: digestOf('letter'), expiresAt, ...sent })
  const choice = { mail: null, hook: 'https://hooks.quarry.example/', hour: 6, fromDay: '2026-06-01' }
  messages.choices.set(idOf('beekeeper'), choice, at)
  const made = ROLES.map((role) => {
    const name = role === 'helper' ? 'scale' : 'Secret scale'
    const token = yard.services.tokens.make({
      person: { id: idOf(role), role },
      name,
      scopes: scopesFor(role),
      days: 365,
    })
    if (!token.ok) throw new Error(token.problems[0]?.message)
    return [role, token.value.token] as const
  })
  tokens = Object.fromEntries(made) as Record<Role, string>
  feed = calendars.open(idOf('helper'), { shows: 'window', yard: null }) ?? ''
  names = ['A-1', 'A-2', ...[...entries, own].map((e) => e.id), sheet, letter]
})

/** Every address there is to read, with every name in it. */
const addresses = (): string[] => {
  const paths = everyRoute(yard)
    .filter((r) => r.method === 'GET')
    .flatMap(({ path }) => names.map((name) => filled(path, [name])))
  const asked = [
    '/yard?show=left',
    '/data/export?private=yes',
    `${API}/colonies?state=all`,
    `/feed/${feed}.ics`,
  ]
  const saved = names.map((id) => `/colony/A-1?saved=${id}`)
  return [...new Set([...paths, ...asked, ...saved])]
}

/** Which of the words somebody of that role is told, and where. */
async function toldTo(role: Role, words: readonly string[]): Promise<Map<string, string[]>> {
  const told = new Map<string, string[]>()
  for (const path of addresses()) {
    const headers = path.startsWith(API) ? { Authorization: `Bearer ${tokens[role]}` } : {}
    const text = await (await yard.ask(role, path, { headers })).text()
    for (const word of words) if (text.includes(word)) told.set(word, [...(told.get(word) ?? []), path])
  }
  return told
}

test('a helper is told of no customer, address, cost, buyer or letter, nor of what is somebody else’s alone', async () => {
  expect(addresses().length).toBeGreaterThan(400)
  expect(Object.fromEntries(await toldTo('helper', [...IN_JOURNAL, ...ON_PAPERS, ...OF_OTHERS]))).toEqual({})
  expect(yard.errors).toEqual([])
})

test('the same walk tells a beekeeper all of it, in the API too', async () => {
  const told = await toldTo('beekeeper', [...IN_JOURNAL, ...ON_PAPERS, ...OF_OTHERS])
  expect([...told.keys()].sort()).toEqual([...IN_JOURNAL, ...ON_PAPERS, ...OF_OTHERS].sort())
  const byProgram = [...told]
    .filter(([, paths]) => paths.some((p) => p.startsWith(API)))
    .map(([word]) => word)
  expect(byProgram.sort()).toEqual([...IN_JOURNAL].sort())
})
