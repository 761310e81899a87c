/** Accounts at a removal: who is one person, whose account is new, and whose is closed. Invented people. */
import { beforeEach, expect, test } from 'vitest'
import { AS_TOLD } from '../../../src/features/removal/people.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { PASSPHRASE, signInAs } from '../../support/people.ts'
import { NAMES, type TestYard, testYard } from '../../support/yard-app.ts'
import { wordsOf } from '../../support/yard-on.ts'
import { sheetIn } from './one-phone.ts'
import { DAY, goAt, READY, unticked } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000009'
const PATH = `/removals/${ID}`
let yard: TestYard
beforeEach(async () => {
  yard = testYard({ day: '2026-06-01' })
  await yard.session('operator')
  yard.at(`${DAY}T12:00:00Z`)
})
const { last: sheet, saved, version } = sheetIn(() => yard, ID, { by: NAMES.operator })
const alone = { ...READY, check: unticked('not-alone') }
const account = async (name: string, by: string | null = null) => {
  const made = yard.services.people.accounts.make({ name, role: 'beekeeper', by })
  if (!made.ok) throw new Error(name)
  await yard.services.people.putPassphrase(made.value.id, PASSPHRASE)
  return made.value.id
}
const sign = (by: string) =>
  yard.post('operator', `${PATH}/second`, {
    item: 'not-alone',
    of: AS_TOLD['not-alone'],
    'not-alone.by': by,
    'not-alone.why': 'stays',
    passphrase: PASSPHRASE,
  })
const opens = async (): Promise<number> => {
  const work = { version: String(version()), on: DAY, outdoorC: '75', now: 'openedAt', water: 'yes' }
  return (await yard.post('operator', `${PATH}/work`, work)).status
}

test('two accounts of one name are one person', async () => {
  await account('Odalys A.')
  saved(alone)
  const answer = await sign('Odalys A.')
  expect(answer.status).toBe(422)
  expect(wordsOf(await answer.text())).toContain('two accounts of one name are one person')
  expect(sheet().check.seconds).toBeUndefined()
})

test('nobody signs for whoever gave them an account today; on another day they do', async () => {
  await account('Zed', NAMES.operator)
  await account('Bram', 'Ines')
  saved(alone)
  const answer = await sign('Zed')
  expect(wordsOf(await answer.text())).toContain('got their account today from whoever writes this')
  expect((await sign('Bram')).status, 'an account from somebody else').toBe(303)
  yard.at('2026-06-13T13:00:00Z')
  expect((await sign('Zed')).status).toBe(303)
})

test('a new account that signed is named on the sheet and in the list, an old one is not', async () => {
  await signInAs(yard.services.people, { name: 'Teuila', role: 'helper' })
  saved(alone)
  yard.at('2026-06-15T12:00:00Z')
  expect((await sign('Teuila')).status).toBe(303)
  const says = 'Second person with a new account: Teuila (account made 2026-06-12)'
  for (const path of [PATH, '/removals'])
    expect(wordsOf(await (await yard.ask('operator', path)).text())).toContain(says)
  yard.at('2026-06-22T12:00:00Z')
  const { seconds: _, ...check } = sheet().check
  saved({ ...sheet(), check })
  expect((await sign('Teuila')).status).toBe(303)
  expect(wordsOf(await (await yard.ask('operator', '/removals')).text())).not.toContain('new account')
})

test('an account that is closed opens nothing: neither what it signed nor its “go”', async () => {
  const id = await account('Bram', 'Ines')
  const decision: Sheet['decision'] = goAt(undefined, NAMES.operator)
  saved(alone)
  expect((await sign('Bram')).status).toBe(303)
  const signed = { ...sheet(), decision }
  saved(signed)
  const close = yard.services.people.accounts
  expect(close.close(id).ok).toBe(true)
  expect(await opens()).toBe(422)
  expect(sheet().check.seconds, 'it stays on the sheet').toHaveLength(1)
  saved({ ...READY, decision: { ...decision, by: 'Bram' } })
  expect(await opens()).toBe(422)
  expect(wordsOf(await (await yard.ask('operator', '/removals')).text())).toContain('No go any more')
  expect(close.reopen(id).ok).toBe(true)
  expect(await opens()).toBe(303)
})
