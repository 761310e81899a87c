/** Leaving a phone on which something waits: the page says what of it can kill, what is sent later, and what is not. Invented. */
import { beforeEach, describe, expect, test } from 'vitest'
import type { Sheet } from '../../src/records/removal-sheet.ts'
import { DAY, READY } from '../features/removal/ready.ts'
import { answering, down, good, nextId, type Phone, phoneIn, sometimes, wordsOf } from '../support/phone.ts'
import { type TestYard, testYard } from '../support/yard-app.ts'
import { formIn } from '../support/yard-on.ts'

const ID = '019e0000-0000-7000-8000-000000000091'
const REASON = 'the roof truss is cracked through'
let yard: TestYard
let phone: Phone

const saved = async (part: string, more: Record<string, string>): Promise<void> => {
  const path = `/removals/${ID}/${part}`
  const fields = Object.entries({ ...formIn(await phone.open(path)), ...more })
  const body = new URLSearchParams(fields.flatMap(([name, vs]) => [vs].flat().map((v) => [name, v])))
  const answer = await phone.syncService.form(
    new Request(`http://yard.test${path}`, { method: 'POST', body }),
  )
  expect(answer?.status).toBe(303)
}
const leaving = async (): Promise<string> => {
  const request = new Request('http://yard.test/sign-out', { method: 'POST', body: new URLSearchParams() })
  return (await (await phone.syncService.signOutWarning(request))?.text()) ?? ''
}
const outbox = async (): Promise<string> => wordsOf(await phone.open('/outbox'))
/** The server takes nothing of what waits, and says no more than that. */
const refusing = sometimes(
  (path) => path.startsWith('/removals/sync'),
  answering(422, '{"problems":[{"field":"","message":"x"}]}'),
)
const hands = async (role: 'operator' | 'beekeeper'): Promise<void> => {
  phone.network(refusing)
  phone.heldBy(role)
  await phone.syncService.signedOut()
  await phone.syncService.send()
}

beforeEach(async () => {
  yard = testYard({ day: DAY })
  for (const role of ['operator', 'beekeeper'] as const) await yard.session(role)
  const stamp = { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Odalys' }
  const sheet: Sheet = READY
  expect(yard.services.store.removals.save(ID, 0, sheet, stamp).ok).toBe(true)
  phone = phoneIn(yard, 'beekeeper')
  phone.at(`${DAY}T12:00:00Z`)
  phone.network(good)
  await phone.syncService.send()
  phone.network(down)
  await saved('check', { is: 'refuse', reason: REASON })
  await saved('site', { temper: '5' })
})

test('what was found on a sheet that was erased meanwhile is named still, and a new call asked for', async () => {
  await saved('site', { hazards: 'asbestos' })
  yard.services.store.removals.erase(ID)
  phone.network(good)
  await phone.syncService.send()
  const page = await outbox()
  expect(page).toContain('Removal sheet: asbestos, fierce bees')
  expect(page).toContain('nothing can be added to it any more. On yours is: asbestos, fierce bees, a refusal')
  expect(page).toContain('Start a new call for that address')
  expect(wordsOf(await leaving())).toContain('asbestos')
})

describe('signing out', () => {
  test('names what of it can kill, and offers to send it', async () => {
    const page = await leaving()
    expect(wordsOf(page)).toContain('can kill waits here and reaches nobody: fierce bees, a refusal. Bram')
    expect(wordsOf(page)).toContain('Goes when Bram signs in on this phone')
    expect(page).toContain('Send them first')
    expect(page).not.toContain(REASON)
    expect(wordsOf(page)).not.toContain('has to mend it')
  })

  test('says of what was not accepted that it is not sent by that, and offers no sending', async () => {
    phone.network(refusing)
    await phone.syncService.send()
    const page = await leaving()
    expect(wordsOf(page)).toContain('1 not accepted')
    expect(wordsOf(page)).toContain('Not accepted: Bram has to mend it')
    expect(wordsOf(page)).toContain('can kill waits here and reaches nobody: fierce bees, a refusal. Bram')
    expect(page).not.toContain('Send them first')
    expect(wordsOf(page)).not.toContain('Goes when')
  })

  test('with only another person’s waiting there is nothing to send first', async () => {
    await hands('operator')
    const page = await leaving()
    expect(wordsOf(page)).toContain('1 waiting to be sent')
    expect(page).not.toContain('Send them first')
  })
})

describe('what another person wrote and was not accepted', () => {
  beforeEach(async () => {
    phone.network(refusing)
    await phone.syncService.send()
    await hands('operator')
  })

  test('is counted the same on every line of the page, and goes by no sign-in', async () => {
    const page = await outbox()
    expect(page).toContain('1 not accepted')
    expect(page).not.toContain('waiting to be sent')
    expect(page).toContain(
      'A removal sheet of Bram: fierce bees, a refusal. Not accepted: Bram has to mend it',
    )
    expect(page).not.toContain('Goes when Bram')
  })

  test('is cried as what reaches nobody', async () => {
    expect((await phone.syncService.state()).kills).toEqual([{ what: 'fierce bees, a refusal', by: 'Bram' }])
  })
})

test('an entry of another person that was not accepted is counted so in both places too', async () => {
  const db = await phone.database()
  const form = { id: nextId(), colony: 'N-1', yard: 'South field', on: DAY }
  const answer = await phone.post('/intake', { ...form, 'removal.type': 'floor', queen: 'unseen' })
  expect(answer.status, wordsOf(answer.html)).toBe(303)
  const [entry] = await db.getAll('outbox')
  expect(entry).toBeDefined()
  if (entry) await db.put('outbox', { ...entry, refused: [{ field: '', message: 'x' }] })
  phone.network(sometimes((path) => path === '/entries', down))
  phone.heldBy('operator')
  await phone.syncService.signedOut()
  await phone.syncService.send()
  const page = await outbox()
  const { waiting, refused } = await phone.syncService.state()
  expect({ waiting, refused }).toEqual({ waiting: 1, refused: 1 })
  expect(page).toContain('1 waiting to be sent, 1 not accepted')
  expect(page).toContain('Not accepted: Bram has to mend it')
})
