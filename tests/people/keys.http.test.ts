/** Tokens and calendar addresses outlive sessions and passphrases: pages say so, and end them where that is wanted. */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { run as personCommand } from '../../src/node/commands/person.ts'
import { openServices } from '../../src/node/services.ts'
import { CHEAP, PASSPHRASE } from '../support/people.ts'
import { NAMES, type TestYard, testYard } from '../support/yard-app.ts'

const OTHER = 'gravel over slow lanterns'
const TICKED = { keys: 'yes' }

interface Pair {
  token: string
  feed: string
}

/** One of each, of a person. */
function pairOf(services: TestYard['services'], name: string): Pair {
  const person = services.people.accounts.byName(name)
  if (person === null) throw new Error(`no ${name}`)
  const made = services.tokens.make({ person, name: 'scale', scopes: ['read'], days: 365 })
  const feed = services.calendars.open(person.id, { shows: 'window', yard: null })
  if (!made.ok || feed === null) throw new Error('not made')
  return { token: made.value.token, feed }
}

const work = (services: TestYard['services'], { token, feed }: Pair): boolean[] => [
  services.tokens.holder(token) !== null,
  services.calendars.holder(feed) !== null,
]
const BOTH = [true, true]
const NEITHER = [false, false]

describe('over HTTP', () => {
  let yard: TestYard
  let pair: Pair
  let id = ''
  beforeEach(async () => {
    yard = testYard()
    await yard.session('operator')
    await yard.session('helper')
    id = yard.services.people.accounts.byName(NAMES.helper)?.id ?? ''
    pair = pairOf(yard.services, NAMES.helper)
  })
  const asked = async (role: 'helper' | 'operator' | null, path: string): Promise<string> =>
    (await yard.ask(role, path)).text()
  const inviteFor = async (): Promise<string> =>
    /\/invite\/[\w-]{43}/.exec(await (await yard.post('operator', `/people/${id}/link`, {})).text())?.[0] ??
    ''

  test.each([
    ['signing out everywhere', () => yard.post('helper', '/account/sign-out-everywhere', {})],
    [
      'a new passphrase',
      () => yard.post('helper', '/account/passphrase', { old: PASSPHRASE, passphrase: OTHER, again: OTHER }),
    ],
    ['being signed out', () => yard.post('operator', `/people/${id}/sign-out`, {})],
    ['a link', async () => yard.post(null, await inviteFor(), { passphrase: OTHER, again: OTHER })],
  ])('%s leaves them working where the box is not ticked', async (_what, act) => {
    expect((await act()).status).toBe(303)
    expect(work(yard.services, pair)).toEqual(BOTH)
  })

  test('one’s own page says how many there are, and takes them back with every browser', async () => {
    const page = await asked('helper', '/account')
    expect(page.match(/name="keys" value="yes" checked=""/g)).toHaveLength(2)
    expect(page).toContain('Take back 2 tokens and calendar addresses too: otherwise they work on')
    await yard.post('helper', '/account/sign-out-everywhere', TICKED)
    expect(work(yard.services, pair)).toEqual(NEITHER)
    expect(await asked('operator', '/account')).not.toContain('name="keys"')
  })

  test('a new passphrase takes them back, and a refused one nothing', async () => {
    const change = (old: string) =>
      yard.post('helper', '/account/passphrase', { old, passphrase: OTHER, again: OTHER, ...TICKED })
    expect((await change('wrong')).status).toBe(422)
    expect(work(yard.services, pair)).toEqual(BOTH)
    const changed = await change(PASSPHRASE)
    expect(work(yard.services, pair)).toEqual(NEITHER)
    expect(await asked('helper', changed.headers.get('location') ?? '')).toContain('are taken back')
  })

  test('a box that was emptied stays empty when the form comes back', async () => {
    const refused = await yard.post('helper', '/account/passphrase', {
      old: 'wrong',
      passphrase: OTHER,
      again: OTHER,
    })
    expect((await refused.text()).match(/name="keys" value="yes" checked/g)).toHaveLength(1)
  })

  test('a forgotten passphrase’s link offers it', async () => {
    const path = await inviteFor()
    expect(await asked(null, path)).toContain('Take back 2 tokens and calendar addresses too')
    await yard.post(null, path, { passphrase: OTHER, again: OTHER, ...TICKED })
    expect(work(yard.services, pair)).toEqual(NEITHER)
  })

  test('operators take back those of others, and no more than theirs', async () => {
    const own = pairOf(yard.services, NAMES.operator)
    expect(await asked('operator', '/people')).toContain(`2 tokens and calendar addresses of ${NAMES.helper}`)
    const done = await yard.post('operator', `/people/${id}/sign-out`, TICKED)
    expect(await asked('operator', done.headers.get('location') ?? '')).toContain('are taken back')
    expect([work(yard.services, pair), work(yard.services, own)]).toEqual([NEITHER, BOTH])
  })

  test('closing an account ends them for good', async () => {
    await yard.post('operator', `/people/${id}/close`, {})
    await yard.post('operator', `/people/${id}/reopen`, {})
    expect(yard.services.people.accounts.byId(id)?.state).toBe('active')
    expect(work(yard.services, pair)).toEqual(NEITHER)
  })

  test('so do those of an account that was closed when closing left them alone', async () => {
    yard.services.connection.raw.prepare("UPDATE person SET closed_at = '2026-05-01' WHERE id = ?").run(id)
    await yard.post('operator', `/people/${id}/reopen`, {})
    expect(work(yard.services, pair)).toEqual(NEITHER)
  })
})

describe('at the terminal', () => {
  let folder = ''
  let said = ''
  const opened = () => openServices(join(folder, 'resettle.db'), { cost: CHEAP })
  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), 'resettle-keys-'))
    vi.stubEnv('RESETTLE_DATA', folder)
    for (const stream of [process.stdout, process.stderr])
      vi.spyOn(stream, 'write').mockImplementation((text) => {
        said += text
        return true
      })
    said = ''
    const services = opened()
    for (const [name, role] of [
      ['Odalys', 'operator'],
      ['Teuila', 'helper'],
    ] as const)
      await services.people.make({ name, role, passphrase: PASSPHRASE })
    pairOf(services, 'Teuila')
    services.close()
  })
  afterEach(() => {
    vi.restoreAllMocks()
    vi.unstubAllEnvs()
    rmSync(folder, { recursive: true, force: true })
  })

  test('it is said what goes on working, and taken back when asked', async () => {
    expect(await personCommand(['sign-out', 'Teuila'])).toBe(0)
    expect(said).toBe(
      'ended 0 sessions; 2 tokens and calendar addresses not taken back: say --keys for that\n',
    )
    said = ''
    expect(await personCommand(['sign-out', 'Teuila', '--keys'])).toBe(0)
    expect(said).toBe('ended 0 sessions; took back 2 tokens and calendar addresses\n')
  })

  test('closing takes them back by itself', async () => {
    expect(await personCommand(['close', 'Teuila'])).toBe(0)
    expect(said).toBe('Teuila is closed; took back 2 tokens and calendar addresses\n')
    said = ''
    expect(await personCommand(['reopen', 'Teuila'])).toBe(0)
    expect(await personCommand(['sign-out', 'Teuila'])).toBe(0)
    expect(said).toBe('Teuila is open again\nended 0 sessions\n')
  })
})
