/** What was found since a backup is not in it: after going back no “go” of before stands, and Today says so. Invented. */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test, vi } from 'vitest'
import { dayIn } from '../../../src/days.ts'
import { placeOf } from '../../../src/features/removal/place.ts'
import { run } from '../../../src/node/commands/restore.ts'
import { openServices } from '../../../src/node/services.ts'
import { READY } from '../../features/removal/ready.ts'
import { CHEAP } from '../../support/people.ts'
import { INTAKE, wordsOf, yardOn } from '../../support/yard-on.ts'

const folder = mkdtempSync(join(tmpdir(), 'resettle-restore-'))
const file = join(folder, 'resettle.db')
const ID = '019e0000-0000-7000-8000-000000000009'
const DONE = '019e0000-0000-7000-8000-000000000008'
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

test('a “go” of before the backup falls, and a job that was boxed is left as it was', async () => {
  const now = new Date()
  const on = dayIn('UTC', now)
  const decision = { is: 'go' as const, by: 'Ines', on, at: '00:01', unmet: [], ...placeOf(READY) }
  const stamp = { savedAt: now.toISOString(), savedBy: 'Ines' }
  const services = openServices(file, { cost: CHEAP })
  services.store.settings.set('timeZone', 'UTC')
  services.store.removals.save(ID, 0, { ...READY, decision }, stamp)
  const work = { openedAt: '00:02', boxedAt: '00:03', underGo: { by: 'Ines', on, at: '00:02' } }
  services.store.removals.save(DONE, 0, { ...READY, decision, work }, stamp)
  services.connection.raw.prepare('VACUUM INTO ?').run(join(folder, 'backup.db'))
  services.close()

  expect(await run([join(folder, 'backup.db'), '--replace'])).toBe(0)

  const again = openServices(file, { cost: CHEAP })
  const fell = again.store.removals.get(ID)?.last.sheet.decision?.fell
  expect(fell).toMatchObject({ on, setBack: true })
  expect(again.store.removals.get(DONE)?.last.version).toBe(1)
  expect(again.store.settings.get('setBack')).not.toBeNull()
  expect(again.store.verify().ok).toBe(true)
  again.close()
})

test('the sheet and Today say so, on the day and the next, and not after', async () => {
  const yard = await yardOn('2026-06-12')
  const on = '2026-06-12'
  const fell = { by: 'Going back to a backup', on, at: '11:00', setBack: true as const }
  const decision = { is: 'go' as const, by: 'Ines', on, at: '10:00', unmet: [], fell, ...placeOf(READY) }
  const stamp = { savedAt: `${on}T11:00:00.000Z`, savedBy: fell.by }
  yard.store.removals.save(ID, 0, { ...READY, decision }, stamp)
  yard.store.settings.set('setBack', `${on}T11:00:00.000Z`)
  const sheet = wordsOf((await yard.get(`/removals/${ID}`)).text)
  expect(sheet).toContain('It was go')
  expect(sheet).toContain('the book went back to an earlier copy (2026-06-12 11:00)')
  const opened = await yard.post(`/removals/${ID}/work`, { version: '1', outdoorC: '75', now: 'openedAt' })
  expect(opened.status).toBe(422)
  await yard.post('/intake', { ...INTAKE, on, otherJob: 'yes' })
  const says = async () =>
    wordsOf((await yard.get('/')).text).includes('The book went back to an earlier copy')
  expect(await says()).toBe(true)
  yard.setDay('2026-06-13')
  expect(await says()).toBe(true)
  yard.setDay('2026-06-14')
  expect(await says()).toBe(false)
})
