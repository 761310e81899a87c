/** A form that the server showed, of a version that this phone has not heard of: the sheet is fetched before the form is judged. Invented. */
import { beforeEach, expect, test } from 'vitest'
import type { Sheet } from '../../src/records/removal-sheet.ts'
import { DAY, READY, TAPPED } from '../features/removal/ready.ts'
import { down, good, type Phone, phoneIn, wordsOf } from '../support/phone.ts'
import { type TestYard, testYard } from '../support/yard-app.ts'
import { formIn } from '../support/yard-on.ts'

const ID = '019e0000-0000-7000-8000-000000000072'
const PATH = `/removals/${ID}`
let yard: TestYard
let phone: Phone
const removals = () => yard.services.store.removals
const last = (): Sheet => removals().get(ID)?.last.sheet ?? READY
const saved = (s: Sheet): void => {
  const stamp = { savedAt: `${DAY}T08:30:00.000Z`, savedBy: 'Odalys' }
  expect(removals().save(ID, removals().get(ID)?.last.version ?? 0, s, stamp).ok).toBe(true)
}
/** The form as the server shows it. */
const shown = async (part: string) => formIn(await (await yard.ask('beekeeper', `${PATH}/${part}`)).text())
const post = async (part: string, fields: Record<string, string | string[]>) => {
  const body = new URLSearchParams()
  for (const [name, value] of Object.entries(fields)) for (const v of [value].flat()) body.append(name, v)
  const answer = await phone.syncService.form(
    new Request(`http://yard.test${PATH}/${part}`, { method: 'POST', body }),
  )
  return { status: answer?.status, words: wordsOf((await answer?.text()) ?? '') }
}
const hers = (): Sheet => ({ ...last(), site: { ...last().site, foundNote: 'It hisses behind the boards' } })

beforeEach(async () => {
  yard = testYard({ day: DAY })
  await yard.session('operator')
  await yard.session('beekeeper')
  yard.at(`${DAY}T08:30:00Z`)
  saved(READY)
  phone = phoneIn(yard, 'beekeeper')
  phone.at(`${DAY}T08:30:00Z`)
  await phone.syncService.send()
  phone.asked.length = 0
})

test('what a colleague said meanwhile is fetched first, and the form is of it', async () => {
  saved(hers())
  const answer = await post('check', { ...(await shown('check')), ...TAPPED, is: 'wait', reason: 'Rain' })
  expect(answer.status, answer.words).toBe(303)
  expect(phone.asked).toContain('GET /phone/round')
  await phone.syncService.send()
  expect(last()).toMatchObject({
    site: { foundNote: 'It hisses behind the boards' },
    decision: { is: 'wait', by: 'Bram' },
  })
})

test('a form of what the phone holds fetches nothing', async () => {
  expect((await post('check', { ...(await shown('check')), ...TAPPED })).status).toBe(303)
  expect(phone.asked).toEqual([])
})

test('where it cannot be fetched it is the phone that is behind, and so it says', async () => {
  saved(hers())
  const form = await shown('check')
  phone.network(down)
  const answer = await post('check', { ...form, ...TAPPED })
  expect(answer.status).toBe(422)
  expect(answer.words).toContain('This form is of a later version than is known here')
  expect(answer.words).not.toContain('The sheet was changed since')
  phone.network(good)
  expect((await post('check', { ...form, ...TAPPED })).words).not.toContain('later version')
})

test('a form of an older version than the phone holds comes back with what was changed since', async () => {
  const form = await shown('site')
  saved(hers())
  await phone.syncService.send()
  const answer = await post('site', { ...form, temper: '3' })
  expect(answer.words).toMatch(/It says now: .*It hisses behind the boards/)
})
