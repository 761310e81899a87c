/** Bram opens on his own “go” without signal, while Odalys refuses: the work is in the book at once, and the refusal stays. Invented. */
import { beforeEach, expect, test } from 'vitest'
import { placeOf } from '../../../src/features/removal/place.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { type Phone, phoneIn, wordsOf } from '../../support/phone.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { formIn } from '../../support/yard-on.ts'
import { DAY, READY, TAPPED } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000071'
const PATH = `/removals/${ID}`
const NEXT = '2026-06-13'
let yard: TestYard
let phone: Phone
const removals = () => yard.services.store.removals
const last = (): Sheet => removals().get(ID)?.last.sheet ?? READY
const saved = (s: Sheet, at = '08:00'): void => {
  const stamp = { savedAt: `${DAY}T${at}:00.000Z`, savedBy: 'Odalys' }
  expect(removals().save(ID, removals().get(ID)?.last.version ?? 0, s, stamp).ok).toBe(true)
}
const clock = (at: string, day = DAY) => {
  yard.at(`${day}T${at}:00Z`)
  phone.at(`${day}T${at}:00Z`)
}
const save = async (part: string, fields: Record<string, string | string[]>) => {
  const form = formIn(await phone.open(`${PATH}/${part}`))
  const body = new URLSearchParams()
  for (const [name, value] of Object.entries({ ...form, ...fields }))
    for (const v of [value].flat()) body.append(name, v)
  const answer = await phone.syncService.form(
    new Request(`http://yard.test${PATH}/${part}`, { method: 'POST', body }),
  )
  return { status: answer?.status, words: wordsOf((await answer?.text()) ?? '') }
}
const head = async () => wordsOf(await phone.open(PATH)).slice(0, 900)
const outbox = async () => wordsOf(await phone.open('/outbox'))

const refused = (at: string): Sheet => ({
  ...last(),
  decision: {
    ...placeOf(READY),
    is: 'refuse',
    by: 'Odalys',
    on: DAY,
    at,
    reason: 'The well cover is broken',
    unmet: [],
  },
})

/** Opened at 9:10; refused at `at`. */
async function crossed(at: string) {
  clock('09:00')
  const went = await save('check', TAPPED)
  expect(went.status, went.words).toBe(303)
  clock('09:10')
  const opened = await save('work', { now: 'openedAt', outdoorC: '70', water: 'yes' })
  expect(opened.status, opened.words).toBe(303)
  saved(refused(at), at)
  clock('09:30')
  await phone.signal()
}

beforeEach(async () => {
  yard = testYard({ day: DAY })
  await yard.session('operator')
  await yard.session('beekeeper')
  yard.at(`${DAY}T08:30:00Z`)
  saved(READY)
  phone = phoneIn(yard, 'beekeeper')
  phone.at(`${DAY}T08:30:00Z`)
  await phone.signal()
})

test.each([
  ['before it was opened', '09:05', { why: 'sent-later', by: 'Bram' }],
  ['after it', '09:20', undefined],
])('refused %s: what is open is in the book at once', async (_, at, mark) => {
  await crossed(at)
  expect(last().work).toMatchObject({ openedAt: '09:10' })
  if (mark === undefined) expect(last().work.withoutGo).toBeUndefined()
  else expect(last().work.withoutGo).toMatchObject(mark)
  expect(last().decision).toMatchObject({ is: 'refuse', by: 'Odalys' })
  const page = wordsOf(await (await yard.ask('operator', PATH)).text())
  expect(page).toContain('Begun, and refused')
})

test('the refusal stays in the head until it is decided over with a reason, the next day too', async () => {
  await crossed('09:05')
  await phone.signal()
  expect(await head()).toContain('The well cover is broken')
  await phone.post(`/outbox/sheet/${ID}/over`, {})
  await phone.signal()
  expect(await outbox()).toContain('Say what has changed since')
  clock('08:00', NEXT)
  await phone.signal()
  expect(await head()).toMatch(/Begun, and refused.*The well cover is broken/)
})

test('“Put mine over theirs” is mended with a reason, and leaves the outbox', async () => {
  await crossed('09:05')
  await phone.signal()
  await phone.post(`/outbox/sheet/${ID}/over`, {})
  await phone.signal()
  const reason = 'A steel plate lies on the well now'
  const went = await save('check', { ...TAPPED, reason })
  expect(went.status, went.words).toBe(303)
  await phone.signal()
  expect(await phone.syncService.state()).toMatchObject({ waiting: 0, refused: 0 })
  expect(last().decision).toMatchObject({ is: 'go', reason, over: { reason: 'The well cover is broken' } })
  expect(last().work).toMatchObject({ openedAt: '09:10', withoutGo: { by: 'Bram' } })
})

test('one that was refused before anybody opened it is not forgotten overnight, where a “go” waits on it', async () => {
  clock('09:00')
  expect((await save('check', TAPPED)).status).toBe(303)
  saved(refused('09:05'), '09:05')
  clock('09:30')
  await phone.signal()
  clock('08:00', NEXT)
  await phone.signal()
  expect(await head()).toMatch(/Refused.*The well cover is broken/)
})
