/** Going back to a backup must not bring back what was taken back since: letters, tokens; nor send a day's message twice. */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test, vi } from 'vitest'
import { addDays, dayIn } from '../../../src/days.ts'
import { run } from '../../../src/node/commands/restore.ts'
import { openServices } from '../../../src/node/services.ts'
import { digestOf } from '../../../src/people/tokens.ts'
import { intake } from '../../store/helpers.ts'
import { CHEAP } from '../../support/people.ts'

const folder = mkdtempSync(join(tmpdir(), 'resettle-restore-'))
const file = join(folder, 'resettle.db')
beforeAll(() => {
  vi.stubEnv('RESETTLE_DATA', folder)
  vi.spyOn(process.stdout, 'write').mockReturnValue(true)
  vi.spyOn(process.stderr, 'write').mockReturnValue(true)
})
afterAll(() => {
  vi.unstubAllEnvs()
  vi.restoreAllMocks()
  rmSync(folder, { recursive: true, force: true })
})

test('letters and tokens of back then are dead, the digest begins the next day, the record is kept', async () => {
  const services = openServices(file, { cost: CHEAP })
  services.store.settings.set('timeZone', 'UTC')
  const colony = intake('A-1')
  services.store.append([colony], { today: '2026-06-01', recordedAt: '2026-06-01T12:00:00.000Z' })
  const made = await services.people.make({
    name: 'Odalys',
    role: 'operator',
    passphrase: 'slow lantern over gravel',
  })
  if (!made.ok) throw new Error(made.problems[0]?.message)
  const person = made.value
  const token = services.tokens.make({ person, name: 'x', scopes: ['read'], days: 365 })
  if (!token.ok) throw new Error(token.problems[0]?.message)
  const stamp = {
    createdAt: '2026-06-01T12:00:00.000Z',
    createdBy: 'Odalys',
    expiresAt: '2099-01-01T00:00:00.000Z',
  }
  services.store.after.letters.add({
    id: 'L',
    colony: colony.id,
    digest: digestOf('secret'),
    asOf: '2026-06-01',
    words: null,
    ...stamp,
  })
  services.store.after.records.save(
    colony.id,
    0,
    { yard: 'Alder farm' },
    { savedAt: stamp.createdAt, savedBy: 'Odalys' },
  )
  services.messages.choices.set(
    person.id,
    { mail: 'o@quarry.example', hook: null, hour: 6, fromDay: '2026-06-01' },
    stamp.createdAt,
  )
  services.connection.raw.prepare('VACUUM INTO ?').run(join(folder, 'backup.db'))
  services.close()

  expect(await run([join(folder, 'backup.db'), '--replace'])).toBe(0)

  const again = openServices(file, { cost: CHEAP })
  const now = new Date().toISOString()
  expect(again.store.after.letters.list()).toHaveLength(1)
  expect(again.store.after.letters.open(digestOf('secret'), now)).toBeNull()
  expect(again.tokens.holder(token.value.token)).toBeNull()
  const tomorrow = addDays(dayIn('UTC', new Date()), 1)
  expect(again.messages.choices.of(person.id)?.fromDay).toBe(tomorrow)
  expect(again.store.after.records.of(colony.id)[0]?.record).toEqual({ yard: 'Alder farm' })
  again.close()
})
