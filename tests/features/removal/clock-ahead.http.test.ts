/** A phone whose clock was a day ahead: once it is right, its form takes what is so today. Invented. */
import { beforeEach, expect, test } from 'vitest'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { down, good, type Phone, phoneIn, wordsOf } from '../../support/phone.ts'
import { type TestYard, testYard } from '../../support/yard-app.ts'
import { DAY, READY } from './ready.ts'

const ID = '019e0000-0000-7000-8000-000000000043'
const PATH = `/removals/${ID}`
let yard: TestYard
let phone: Phone
beforeEach(async () => {
  yard = testYard({ day: DAY })
  await yard.session('operator')
  await yard.session('beekeeper')
  const { hours: _h, from: _f, until: _u, ...check } = READY.check
  const planned: Sheet = { ...READY, check: { ...check, done: [] }, job: { ...READY.job, plannedOn: DAY } }
  const stamp = { savedAt: `${DAY}T08:00:00.000Z`, savedBy: 'Odalys' }
  expect(yard.services.store.removals.save(ID, 0, planned, stamp).ok).toBe(true)
  phone = phoneIn(yard, 'beekeeper')
  phone.at(`${DAY}T12:00:00Z`)
  await phone.syncService.send()
  phone.network(down)
})
const hidden = (page: string, name: string): string =>
  /value="([^"]*)"/.exec(new RegExp(`<input[^>]*name="${name}"[^>]*>`).exec(page)?.[0] ?? '')?.[1] ?? ''
/** The list as it is tapped, with the day of the forecast as the form shows it. */
async function tap(more: Record<string, string> = {}) {
  const page = await phone.open(`${PATH}/check`)
  const body = new URLSearchParams([
    ...['version', 'shownOn', 'shownAt', 'on'].map((name) => [name, hidden(page, name)] as [string, string]),
    ['heard.at', hidden(page, 'shownAt')],
    ...(READY.check.done ?? []).map((tick) => ['done', tick] as [string, string]),
    ...Object.entries({
      cutMm: '3/4',
      vacuum: 'bee-vacuum',
      wires: 'none',
      is: 'go',
      hottestC: '75',
      ...more,
    }),
  ])
  const answer = await phone.syncService.form(
    new Request(`http://yard.test${PATH}/check`, { method: 'POST', body }),
  )
  return { status: answer?.status, text: wordsOf((await answer?.text()) ?? '') }
}

test('the forecast of the day that has not come is asked anew, and its words are of the clock', async () => {
  phone.at('2026-06-13T12:00:00Z')
  const read = { 'heard.by': 'Odalys', 'heard.news': 'none' }
  expect(await tap({ on: '2026-06-13', ...read })).toMatchObject({ status: 303 })
  phone.at(`${DAY}T12:10:00Z`)
  phone.network(good)
  await phone.syncService.send()
  phone.network(down)
  const said = wordsOf(await phone.open('/outbox'))
  expect(said).toContain('of a day that has not come: the phone’s clock was ahead')
  const page = await phone.open(`${PATH}/check`)
  expect(hidden(page, 'on')).toBe('')
  expect(wordsOf(page)).not.toContain('before Bram changed something')
  expect(wordsOf(page)).toContain('before all on the list was met')
  const mended = await tap()
  expect(mended.text).not.toContain('outdoor heat')
  expect(mended.status).toBe(303)
  phone.network(good)
  await phone.syncService.send()
  expect(await phone.syncService.state()).toMatchObject({ waiting: 0, refused: 0 })
  expect(yard.services.store.removals.get(ID)?.last.sheet).toMatchObject({
    check: { on: DAY, doneOn: DAY },
    decision: { is: 'go', on: DAY },
  })
})
