/**
 * The whole matrix, role by action, over HTTP: what each role can reach and write, and what it can't. That nothing
 * private reaches a helper on any page is in private.http.test.ts.
 */
import { beforeAll, describe, expect, test } from 'vitest'
import { ROLES, type Role } from '../../src/people/index.ts'
import { ACTIONS, type Action, may, PLACES } from '../../src/people/permissions.ts'
import { given, inspection, intake, newId, outcome, withdrawal } from '../store/helpers.ts'
import { NAMES, type TestYard, testYard } from '../support/yard-app.ts'

const SECRETS = ['Ms Invented', '12 Nowhere Lane', '47.31', 'Invented Orchard']

let yard: TestYard
let mine: Record<Role, string>
let others: Record<Role, string>

const record = (by: Role, ...entries: { id: string }[]): string => {
  const result = yard.services.store.append(entries, {
    today: '2026-06-01',
    recordedAt: '2026-06-01T09:00:00.000Z',
    recordedBy: NAMES[by],
  })
  if (!result.ok) throw new Error(JSON.stringify(result.problems))
  return entries[0]?.id ?? ''
}

beforeAll(async () => {
  yard = testYard()
  for (const role of ROLES) await yard.session(role)
  const site = { type: 'wall', site: 'Ms Invented, 12 Nowhere Lane' }
  record(
    'beekeeper',
    intake('A-1', { removal: site }),
    given('A-1', '2026-05-12', { what: 'mated-queen', cost: 47.31 }),
  )
  record(
    'beekeeper',
    intake('A-2', { removal: site }),
    outcome('A-2', '2026-05-20', { destination: 'Invented Orchard' }),
  )
  const looks = ROLES.map((role) => [role, record(role, inspection('A-1', '2026-05-15'))] as const)
  mine = Object.fromEntries(looks) as Record<Role, string>
  // What somebody else entered: of the operator the beekeeper's, of the others the operator's.
  others = { operator: mine.beekeeper, beekeeper: mine.operator, helper: mine.operator }
})

/** Does it, and says whether it was done; leaves the yard as it can be used by the next. */
type Try = (role: Role) => Promise<boolean>
const opens =
  (path: string): Try =>
  async (role) =>
    (await yard.ask(role, path)).status === 200
const writes =
  (make: (role: Role) => unknown): Try =>
  async (role) =>
    (await yard.send(role, make(role))).status === 200
const both =
  (...tries: Try[]): Try =>
  async (role) => {
    const done = await Promise.all(tries.map((t) => t(role)))
    if (new Set(done).size > 1) throw new Error(`${role} may do one and not the other: ${done}`)
    return done[0] === true
  }

const correction = (replaces: string) => inspection('A-1', '2026-05-15', { note: 'Mended.', replaces })
const personPosts =
  (what: string, fields: Record<string, string>): Try =>
  async (role) => {
    const id = yard.services.people.accounts.byName('Juniper')?.id ?? ''
    return (await yard.post(role, `/people/${id}/${what}`, fields)).status < 400
  }

/** For each action, a way to do it as a person of that role would. */
const TRIES: Partial<Record<Action, Try>> = {
  'see-colonies': both(opens('/'), opens('/yard'), opens('/colony/A-1')),
  'record-visit': both(
    opens('/colony/A-1/visit'),
    writes(() => inspection('A-1', '2026-05-30')),
    async (role) =>
      (await yard.post(role, '/colony/A-1/note', { on: '2026-06-01', text: 'Calm.', id: newId() })).status ===
      303,
  ),
  'correct-own': async (role) => {
    const id = record(role, inspection('A-1', '2026-05-16'))
    const corrected = correction(id)
    const one = await writes(() => corrected)(role)
    const two = await writes(() => withdrawal('A-1', corrected.id))(role)
    expect(one).toBe(two)
    return one
  },
  'own-account': opens('/account'),
  'log-intake': both(
    opens('/intake'),
    writes((role) => intake(`N-${role}`)),
  ),
  'record-outcome': async (role) => {
    record('operator', intake(`L-${role}`))
    const page = await opens(`/colony/L-${role}/outcome`)(role)
    const written = await writes(() => outcome(`L-${role}`, '2026-05-30'))(role)
    expect(page).toBe(written)
    return written
  },
  'clear-disease': async (role) => {
    const tag = `D-${role}`
    const on = '2026-06-01'
    record('operator', intake(tag), inspection(tag, '2026-05-20', { signs: ['brood-disease-suspected'] }))
    return writes(() => ({
      id: newId(),
      colony: tag,
      kind: 'disease-cleared',
      on,
      by: 'x',
      clearedBy: 'inspector',
    }))(role)
  },
  'correct-any': async (role) => {
    const corrected = correction(others[role])
    const one = await writes(() => corrected)(role)
    const id = record(role === 'operator' ? 'beekeeper' : 'operator', inspection('A-1', '2026-05-17'))
    const two =
      (await yard.post(role, `/entry/${id}/withdraw`, { reason: 'Wrong box.', id: newId() })).status === 303
    expect(one).toBe(two)
    return one
  },
  'sign-for-others': async (role) => {
    const look = inspection('A-1', '2026-05-29', { by: 'Somebody else' })
    await yard.send(role, look)
    return yard.services.store.entry(look.id)?.entry.by === 'Somebody else'
  },
  'see-private': async (role) => {
    const said = await everythingOn(role)
    const told = SECRETS.filter((s) => said.includes(s))
    if (told.length > 0 && told.length < SECRETS.length && role === 'helper')
      throw new Error(`a helper saw ${told}`)
    return told.length > 0
  },
  'see-supplies': both(opens('/supplies'), opens('/supplies/stands')),
  'removal-sheets': both(
    opens('/removals'),
    async (role) =>
      (await yard.post(role, '/removals/new', { id: newId(), name: 'Ottoline', version: '0' })).status ===
      303,
  ),
  'see-colony-changes': opens('/colony/A-1/changes'),
  'see-changes': both(opens('/changes'), opens('/changes/csv')),
  'review-survival': both(opens('/review'), opens('/review/report'), opens('/review/money.csv')),
  'change-settings': both(
    opens('/settings'),
    opens('/protocol'),
    opens('/removals/terms'),
    async (role) =>
      (await yard.post(role, '/settings', { temperature: 'F', weight: 'lb', timeZone: 'UTC' })).status < 400,
  ),
  'manage-people': both(
    opens('/people'),
    personPosts('role', { role: 'helper' }),
    personPosts('sign-out', {}),
  ),
  safekeeping: both(opens('/data'), opens('/data/export'), opens('/data/export?private=yes')),
}

const PAGES = ['/', '/yard', '/yard?show=left', '/colony/A-1', '/colony/A-2', '/colony/A-1/visit', '/changes']

/** All that a role can read. */
async function everythingOn(role: Role): Promise<string> {
  const ids = yard.services.store.changes({ limit: 500 }).map((r) => r.entry.id)
  const paths = [
    ...PAGES,
    ...ids.flatMap((id) => [`/entry/${id}/correct`, `/entry/${id}/withdraw`, `/colony/A-1?saved=${id}`]),
  ]
  const texts = await Promise.all(paths.map(async (path) => (await yard.ask(role, path)).text()))
  return texts.join('\n')
}

beforeAll(() => {
  yard.services.people.invite({ name: 'Juniper', role: 'helper', by: null })
})

test('every action that any page asks for is tried', () => {
  const asked = new Set(PLACES.map((p) => p.action))
  const untried = (Object.keys(ACTIONS) as Action[]).filter((a) => TRIES[a] === undefined)
  expect(untried.filter((a) => asked.has(a))).toEqual([])
})

describe.each(Object.entries(TRIES) as [Action, Try][])('%s', (action, tryIt) => {
  test.each(ROLES)('%s', async (role) => {
    expect(await tryIt(role)).toBe(may(role, action))
    expect(yard.errors).toEqual([])
  })
})

describe('a helper', () => {
  test('is told for whom a page is, and not shown ways that are not theirs', async () => {
    const response = await yard.ask('helper', '/people')
    expect(response.status).toBe(403)
    expect(await response.text()).toContain('This page is for operators')
    const today = await (await yard.ask('helper', '/')).text()
    expect(today).not.toMatch(/href="\/(intake|people|data|settings|changes)"/)
    const colony = await (await yard.ask('helper', '/colony/A-1')).text()
    expect(colony).not.toContain('It left the yard')
    expect(colony).not.toContain(`/entry/${mine.operator}/correct`)
  })

  test('cannot override a correction that somebody else made of the helper’s own entry', async () => {
    const own = record('helper', inspection('A-1', '2026-05-18'))
    record('beekeeper', inspection('A-1', '2026-05-18', { replaces: own, note: 'Seen again.' }))
    const response = await yard.send('helper', inspection('A-1', '2026-05-18', { replaces: own }))
    expect(response.status).toBe(422)
    expect(await response.text()).toContain(
      'correcting what somebody else entered is for beekeepers and operators',
    )
  })

  test('keeps a cost that was never shown when mending an entry of their own', async () => {
    const own = record('helper', given('A-1', '2026-05-19', { what: 'syrup', litres: 1, cost: 47.31 }))
    const mended = given('A-1', '2026-05-19', { what: 'syrup', litres: 2, replaces: own })
    expect((await yard.send('helper', mended)).status).toBe(200)
    expect(yard.services.store.entry(mended.id)?.entry).toMatchObject({ litres: 2, cost: 47.31 })
  })

  test('signs with their own name only, whatever is sent, and is the one who recorded it', async () => {
    const look = inspection('A-1', '2026-05-28', { by: NAMES.operator })
    await yard.send('helper', look)
    expect(yard.services.store.entry(look.id)).toMatchObject({
      recordedBy: NAMES.helper,
      entry: { by: NAMES.helper },
    })
  })

  test('cannot slip an intake or an outcome into a batch, or hide one behind a withdrawal', async () => {
    const before = yard.services.store.changes({ limit: 1 })[0]?.seq
    const sneaky = intake('S-1')
    for (const batch of [
      [inspection('A-1', '2026-05-30'), sneaky],
      [sneaky, withdrawal('S-1', sneaky.id)],
      [outcome('A-1', '2026-05-30', { by: NAMES.operator })],
    ])
      expect((await yard.send('helper', batch)).status).toBe(422)
    expect(yard.services.store.changes({ limit: 1 })[0]?.seq).toBe(before)
  })
})
