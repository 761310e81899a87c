/** Another box of a job, logged through a phone, with signal or without: it is of that job, and marks it as by the server’s form. Invented. */
import { beforeEach, expect, test } from 'vitest'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import type { Phone } from '../../support/phone.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { formIn, INTAKE } from '../../support/yard-on.ts'
import { phoneAtNoon, sheetIn } from './one-phone.ts'
import { DAY, goAt, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000081'
const PATH = `/removals/${ID}`
let yard: TestYard
let phone: Phone
const { removals, last, saved } = sheetIn(() => yard, ID)
const GO: Sheet['decision'] = goAt('07:00', 'Bram')
const BOXED: Sheet = {
  ...READY,
  decision: GO,
  work: { on: DAY, openedAt: '07:10', boxedAt: '08:00', underGo: { by: 'Bram', on: DAY, at: '07:10' } },
}

/** Signal, and it is gone again. */
const signal = () => phone.signal()

/** A box as its form is tapped on the phone. */
async function box(tag: string, path: string): Promise<string> {
  const { id } = formIn(await phone.open(`${PATH}/intake`))
  const fields = {
    ...INTAKE,
    on: DAY,
    'removal.removedOn': DAY,
    'removal.type': 'wall',
    colony: tag,
    id: String(id),
  }
  expect((await phone.post(path, fields)).status).toBe(303)
  return String(id)
}

beforeEach(async () => {
  yard = testYard({ day: DAY })
  await yard.session('beekeeper')
  saved(BOXED)
  phone = await phoneAtNoon(yard)
})

test('two boxes of one job, logged without signal, are both of it, on the phone and once sent', async () => {
  const first = await box('Q-41', '/intake')
  const second = await box('Q-42', `${PATH}/intake`)
  expect(first).toBe(ID)
  expect(second).not.toBe(ID)
  expect(await phone.open(PATH)).toContain('Q-42')
  await signal()
  expect(removals().get(ID)?.colonies).toEqual([ID, second])
  expect(removals().ofColony(second as never)).toBe(ID)
  expect(yard.services.store.colony('Q-42')).not.toBeNull()
  expect(last().work.withoutGo).toBeUndefined()
  // What the phone heard since is what it shows.
  await signal()
  expect(await phone.open(PATH)).toContain('Q-42')
})

test('two phones that log one more each lose neither', async () => {
  await box('Q-41', '/intake')
  await signal()
  const other = await phoneAtNoon(yard, { role: 'operator' })
  const mine = await box('Q-42', `${PATH}/intake`)
  const held = phone
  phone = other
  const theirs = await box('Q-43', `${PATH}/intake`)
  await signal()
  phone = held
  await signal()
  expect(new Set(removals().get(ID)?.colonies)).toEqual(new Set([ID, mine, theirs]))
})

test('one of a job whose “go” fell here meanwhile marks it', async () => {
  await box('Q-41', '/intake')
  await signal()
  const fell = { by: 'Odalys', on: DAY, at: '09:00' }
  const second = await box('Q-42', `${PATH}/intake`)
  saved({ ...last(), decision: { ...GO, fell } as Sheet['decision'] }, 'Odalys')
  await signal()
  expect(removals().get(ID)?.colonies).toEqual([ID, second])
  expect(last().work.withoutGo).toMatchObject({ why: 'unsaid', on: DAY })
})
