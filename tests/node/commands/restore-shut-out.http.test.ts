/** Going back to a backup must not let in again whoever was shut out since, by account, calendar address or token. */
import { mkdtempSync, rmSync, truncateSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { run } from '../../../src/node/commands/restore.ts'
import { openServices, type Services } from '../../../src/node/services.ts'
import { CHEAP, PASSPHRASE } from '../../support/people.ts'

let folder = ''
let services: Services
let said = ''
const database = (): string => join(folder, 'resettle.db')
const backup = (): string => join(folder, 'backup.db')
const idOf = (name: string): string => services.people.accounts.byName(name)?.id ?? ''
const stateOf = (name: string): string | undefined => services.people.accounts.byName(name)?.state

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'resettle-restore-people-'))
  vi.stubEnv('RESETTLE_DATA', folder)
  said = ''
  vi.spyOn(process.stdout, 'write').mockReturnValue(true)
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    said += text
    return true
  })
  services = openServices(database(), { cost: CHEAP })
  const staff = { Odalys: 'operator', Bram: 'operator', Teuila: 'helper', Rowan: 'beekeeper' } as const
  for (const [name, role] of Object.entries(staff))
    await services.people.make({ name, role, passphrase: PASSPHRASE })
})
afterEach(() => {
  services.close()
  vi.unstubAllEnvs()
  vi.restoreAllMocks()
  rmSync(folder, { recursive: true, force: true })
})

const backUp = (): void => void services.connection.raw.prepare('VACUUM INTO ?').run(backup())

async function goBack(spoil?: () => void): Promise<void> {
  services.close()
  spoil?.()
  expect(await run([backup(), '--replace']), said).toBe(0)
  services = openServices(database(), { cost: CHEAP })
}

test('no calendar address and no token of back then works', async () => {
  const feed = services.calendars.open(idOf('Teuila'), { shows: 'window', yard: null }) ?? ''
  const taken = services.calendars.open(idOf('Teuila'), { shows: 'window', yard: null }) ?? ''
  const person = { id: idOf('Odalys'), role: 'operator' as const }
  const token = services.tokens.make({ person, name: 'x', scopes: ['read'], days: 365 })
  backUp()
  services.calendars.revoke(idOf('Teuila'), services.calendars.of(idOf('Teuila'))[0]?.key ?? '')
  await goBack()
  for (const secret of [feed, taken]) expect(services.calendars.holder(secret)).toBeNull()
  expect(services.calendars.of(idOf('Teuila'))).toEqual([])
  expect(services.tokens.holder(token.ok ? token.value.token : '')).toBeNull()
  expect(said).toContain('calendar addresses')
})

test('what was closed since stays closed; older roles and passphrases are named, and nothing else of them', async () => {
  backUp()
  services.people.close(idOf('Rowan'))
  services.people.setRole(idOf('Teuila'), 'beekeeper')
  await services.people.putPassphrase(idOf('Bram'), 'gravel over slow lanterns')
  await goBack()
  expect(stateOf('Rowan')).toBe('closed')
  expect(stateOf('Bram')).toBe('active')
  expect(said).toContain('Closed since this backup, and closed again: Rowan\n')
  expect(said).toContain('Back in an older role: Teuila\n')
  expect(said).toContain('Back with an older passphrase: Bram\n')
  expect(said).not.toMatch(/scrypt|Odalys|No operator/)
})

test('nothing is said where nothing came back older', async () => {
  backUp()
  await goBack()
  expect(said).not.toMatch(/Back |Closed since|could not be read/)
})

test('when that leaves no operator, the terminal says how to make one', async () => {
  services.people.close(idOf('Bram'))
  backUp()
  await services.people.make({ name: 'Juniper', role: 'operator', passphrase: PASSPHRASE })
  services.people.close(idOf('Odalys'))
  await goBack()
  expect(stateOf('Odalys')).toBe('closed')
  expect(said).toContain('resettle person add NAME --role operator')
})

test('a replaced database that cannot be read is said to have told nothing', async () => {
  backUp()
  services.people.close(idOf('Rowan'))
  await goBack(() => truncateSync(database(), 6000))
  expect(stateOf('Rowan')).toBe('active')
  expect(said).toContain('could not be read')
})
